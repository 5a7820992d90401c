// Lateral yield of a whole fastening by the US equations, and what it physically gives at.

#include <algorithm>
#include <cmath>

#include "joint/us_axial.h"
#include "joint/us_lateral.h"
#include "prepared.h"

namespace fayline {
namespace {

constexpr UsReduction unreduced{1.0, 1.0, 1.0};

}  // namespace

std::optional<Stress> bearingUsOf(const PreparedMember& member, const GravityScale& scale) {
    if (member.given->lead) return member.given->lead->value;
    if (member.given->bearingUs) return member.given->bearingUs->value;
    if (!member.bearing) return std::nullopt;
    if (member.bearing->anyAngle) return member.bearing->along * scale.small;
    const Stress along = member.bearing->along * scale.linear;
    if (member.sine == 0.0) return along;
    const Stress across = member.bearing->across * scale.across;
    if (member.cosine == 0.0) return across;
    return along * (across / (along * (member.sine * member.sine) +
                              across * (member.cosine * member.cosine)));
}

std::optional<UsLateral> usLateralOf(const Prepared& prepared, Moment hinge,
                                     const UsReduction* reduction, const GravityScale& scale) {
    const Length width = prepared.inEquations;
    const UsReduction& divisors = reduction != nullptr ? *reduction : unreduced;
    const auto& members = prepared.members;
    const auto bearing = [&](std::size_t i) { return bearingUsOf(members[i], scale); };
    for (std::size_t i = 0; i < members.size(); ++i) {
        if (!bearing(i)) return std::nullopt;
    }
    if (members.size() == 3) {
        // NDS 12.3.8: the weaker side stands for both.
        const DowelInput dowel{min(*bearing(0), *bearing(2)) * width,
                               *bearing(1) * width,
                               min(members[0].bears, members[2].bears),
                               members[1].bears,
                               max(members[0].given->gap, members[1].given->gap),
                               hinge,
                               hinge};
        return usDoubleShear(dowelModes(dowel), divisors);
    }
    std::optional<UsLateral> least;
    for (std::size_t i = 0; i + 1 < members.size(); ++i) {
        const DowelInput dowel{*bearing(i) * width,
                               *bearing(i + 1) * width,
                               members[i].bears,
                               members[i + 1].bears,
                               members[i].given->gap,
                               hinge,
                               hinge};
        const UsLateral plane = usSingleShear(dowelModes(dowel), divisors);
        if (!least || plane.reference < least->reference) least = plane;
    }
    // NDS 12.3.9: more than two planes are each worth the least of them.
    const double planes = static_cast<double>(members.size() - 1);
    for (ModeLoad& mode : least->modes) mode.load *= planes;
    least->reference *= planes;
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
    const auto low = usLateralOf(prepared, *prepared.hinge, nullptr, light);
    const auto high = usLateralOf(prepared, *prepared.hingeTypical, nullptr, heavy);
    if (!low || !high) return std::nullopt;
    return Band{low->reference * wetWood(prepared), high->reference * wetWood(prepared)};
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
