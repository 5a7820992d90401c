// Lateral yield of a whole fastening by the US equations, and what it physically gives at.

#include <algorithm>
#include <cmath>

#include "joint/us_axial.h"
#include "joint/us_lateral.h"
#include "prepared.h"

namespace fayline {
namespace {

inline std::optional<Stress> bears(const PreparedMember& member, const GravityScale& scale) {
    if (member.given->lead) return member.given->lead->value;
    if (member.given->bearingUs) return member.given->bearingUs->value;
    if (!member.bearing) return std::nullopt;
    if (member.bearing->anyAngle) return member.bearing->along * scale.small;
    const Stress along = member.bearing->along * scale.linear;
    if (member.bearsAt.sine == 0.0) return along;
    return hankinson(along, member.bearing->across * scale.across, member.bearsAt);
}

}  // namespace

std::optional<Stress> bearingUsOf(const PreparedMember& member, const GravityScale& scale) {
    return bears(member, scale);
}

namespace {

/// Bearing of each member, and each plane's dowel; false when a member has no figure.
template <typename Visit>
bool eachPlane(const Prepared& prepared, Moment hinge, const GravityScale& scale, Visit visit) {
    const Length width = prepared.inEquations;
    const auto& members = prepared.members;
    const auto side = [&](const PreparedMember& member) { return bears(member, scale); };
    auto before = side(members[0]);
    if (!before) return false;
    if (members.size() == 3) {
        // NDS 12.3.8: the weaker side stands for both.
        const auto middle = side(members[1]);
        const auto after = side(members[2]);
        if (!middle || !after) return false;
        visit(dowelModes({min(*before, *after) * width, *middle * width,
                          min(members[0].bears, members[2].bears), members[1].bears,
                          max(members[0].given->gap, members[1].given->gap), hinge, hinge}));
        return true;
    }
    for (std::size_t i = 0; i + 1 < members.size(); ++i) {
        const auto after = side(members[i + 1]);
        if (!after) return false;
        visit(dowelModes({*before * width, *after * width, members[i].bears, members[i + 1].bears,
                          members[i].given->gap, hinge, hinge}));
        before = after;
    }
    return true;
}

/// The yield load of the whole fastening, its mode not asked for.
std::optional<Force> leastYield(const Prepared& prepared, Moment hinge, const GravityScale& scale) {
    const bool both = prepared.members.size() == 3;
    std::optional<Force> least;
    const bool known = eachPlane(prepared, hinge, scale, [&](const DowelModes& m) {
        const Force one = both ? min(m.im, 2.0 * min(m.is, min(m.iiis, m.iv)))
                               : min(min(m.im, m.is), min(min(m.ii, m.iiim), min(m.iiis, m.iv)));
        if (!least || one < *least) least = one;
    });
    if (!known) return std::nullopt;
    return both ? *least : *least * static_cast<double>(prepared.members.size() - 1);
}

}  // namespace

std::optional<UsLateral> usLateralOf(const Prepared& prepared, Moment hinge,
                                     const UsReduction& reduction) {
    const bool both = prepared.members.size() == 3;
    std::optional<UsLateral> least;
    const bool known = eachPlane(prepared, hinge, {}, [&](const DowelModes& modes) {
        const UsLateral plane =
            both ? usDoubleShear(modes, reduction) : usSingleShear(modes, reduction);
        if (!least || plane.reference < least->reference) least = plane;
    });
    if (!known) return std::nullopt;
    // NDS 12.3.9: more than two planes are each worth the least of them.
    if (prepared.members.size() > 3) {
        const double planes = static_cast<double>(prepared.members.size() - 1);
        least->modes.scale(planes);
        least->reference *= planes;
    }
    return least;
}

namespace {

// One standard deviation of specific gravity is a tenth of it (Wood Handbook, Table 5-6).
constexpr double lightWood = 0.9;
constexpr double heavyWood = 1.1;

GravityScale scaleBy(double factor) {
    return {factor, std::pow(factor, usPublished.bearingAcrossExponent),
            std::pow(factor, usPublished.bearingSmallExponent)};
}

double wetWood(const Prepared& prepared) {
    return prepared.isWet() ? 0.7 : 1.0;
}

std::optional<Band> lateralBand(const Prepared& prepared) {
    static const GravityScale light = scaleBy(lightWood);
    static const GravityScale heavy = scaleBy(heavyWood);
    if (!prepared.hinge) return std::nullopt;
    const auto low = leastYield(prepared, *prepared.hinge, light);
    const auto high = leastYield(prepared, *prepared.hingeTypical, heavy);
    if (!low || !high) return std::nullopt;
    return Band{*low * wetWood(prepared), *high * wetWood(prepared)};
}

std::optional<Band> withdrawalBand(const Prepared& prepared) {
    const PreparedMember& last = prepared.last();
    if (!prepared.pointed || !last.gravityTwelve || last.given->endGrain) return std::nullopt;
    const auto perLength = prepared.isScrew() ? &screwWithdrawalUltimate : &driftWithdrawalUltimate;
    const Force mean = perLength(*last.gravityTwelve, prepared.nominal, usPublished) *
                       prepared.thread * wetWood(prepared);
    return Band{mean * (lightWood * lightWood), mean * (heavyWood * heavyWood)};
}

}  // namespace

Bands bandsOf(const Prepared& prepared) {
    return {lateralBand(prepared), withdrawalBand(prepared)};
}

}  // namespace fayline
