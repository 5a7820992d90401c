// Lateral yield of a whole fastening by the US equations, and what it physically gives at.

#include <algorithm>

#include "joint/us_axial.h"
#include "joint/us_lateral.h"
#include "prepared.h"

namespace fayline {
namespace {

constexpr UsReduction unreduced{1.0, 1.0, 1.0};

}  // namespace

std::optional<Stress> bearingUsOf(const Prepared& prepared, const PreparedMember& member,
                                  double gravityFactor) {
    if (member.given->bearingUs) return member.given->bearingUs->value;
    if (!member.gravity) return std::nullopt;
    // NDS 12.3.3: in end grain the bearing across the grain counts.
    const Angle angle = member.given->endGrain ? Angle::degrees(90) : member.given->grain;
    return dowelBearingUs({member.gravity->value.value * gravityFactor}, prepared.nominal, angle);
}

std::optional<UsLateral> usLateralOf(const Prepared& prepared, Stress bendingYield,
                                     const UsReduction* reduction, double gravityFactor) {
    std::vector<Stress> bearing;
    for (const PreparedMember& member : prepared.members) {
        const auto strength = bearingUsOf(prepared, member, gravityFactor);
        if (!strength) return std::nullopt;
        bearing.push_back(*strength);
    }
    const Length width = prepared.inEquations;
    const Moment moment = dowelMoment(bendingYield, width, prepared.fastener().section);
    const UsReduction& divisors = reduction != nullptr ? *reduction : unreduced;
    const auto& members = prepared.members;
    if (members.size() == 3) {
        // NDS 12.3.8: the weaker side stands for both.
        const DowelInput dowel{min(bearing[0], bearing[2]) * width,
                               bearing[1] * width,
                               min(members[0].bears, members[2].bears),
                               members[1].bears,
                               max(members[0].given->gap, members[1].given->gap),
                               moment,
                               moment};
        return usDoubleShear(dowelModes(dowel), divisors);
    }
    std::optional<UsLateral> least;
    for (std::size_t i = 0; i + 1 < members.size(); ++i) {
        const DowelInput dowel{bearing[i] * width,
                               bearing[i + 1] * width,
                               members[i].bears,
                               members[i + 1].bears,
                               members[i].given->gap,
                               moment,
                               moment};
        UsLateral plane = usSingleShear(dowelModes(dowel), divisors);
        if (!least || plane.reference < least->reference) least = std::move(plane);
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

double wetWood(const Prepared& prepared) {
    return prepared.joint->service == Service::wet ? 0.7 : 1.0;
}

Stress typicalBendingYield(const Prepared& prepared) {
    const FastenerMetal& metal = prepared.fastener().metal;
    const Stress least = prepared.bendingYield->value;
    if (!metal.yieldTypical || !metal.ultimateTypical) return least;
    return max(least, (metal.yieldTypical->value + metal.ultimateTypical->value) / 2.0);
}

std::optional<Band> lateralBand(const Prepared& prepared) {
    if (!prepared.bendingYield) return std::nullopt;
    const auto low = usLateralOf(prepared, prepared.bendingYield->value, nullptr, lightWood);
    const auto high = usLateralOf(prepared, typicalBendingYield(prepared), nullptr, heavyWood);
    if (!low || !high) return std::nullopt;
    return Band{low->reference * wetWood(prepared), high->reference * wetWood(prepared)};
}

std::optional<Band> withdrawalBand(const Prepared& prepared) {
    const PreparedMember& last = prepared.last();
    if (!prepared.pointed || !last.gravityTwelve || last.given->endGrain) return std::nullopt;
    const auto perLength = prepared.isScrew() ? &screwWithdrawalUltimate : &driftWithdrawalUltimate;
    const double gravity = last.gravityTwelve->value.value;
    const auto at = [&](double factor) {
        return perLength({gravity * factor}, prepared.nominal, usPublished) * prepared.thread *
               wetWood(prepared);
    };
    return Band{at(lightWood), at(heavyWood)};
}

}  // namespace

Bands bandsOf(const Prepared& prepared) {
    return {lateralBand(prepared), withdrawalBand(prepared)};
}

}  // namespace fayline
