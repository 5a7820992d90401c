#include "joint/slip.h"

#include <cmath>

#include "prepared.h"

namespace fayline {
namespace {

// From the characteristic to the mean density: 1.2 in every row of EN 338:2016 Tables 1 and 3.
constexpr double meanOfCharacteristic = 1.2;
constexpr double strengthShare = 2.0 / 3.0;
constexpr double wetShare = 0.7;

double jointDensity_kgPerM3(Density mean1, Density mean2) {
    return std::sqrt(inKilogramsPerCubicMetre(mean1) * inKilogramsPerCubicMetre(mean2));
}

ForcePerLength newtonsPerMillimetre(double value) {
    return newtons(value) / millimetres(1);
}

}  // namespace

ForcePerLength slipModulusEc5(Density mean1, Density mean2, Length diameter) {
    return newtonsPerMillimetre(std::pow(jointDensity_kgPerM3(mean1, mean2), 1.5) *
                                inMillimetres(diameter) / 23.0);
}

ForcePerLength slipModulusDriven(Density mean1, Density mean2, Length diameter) {
    return newtonsPerMillimetre(std::pow(jointDensity_kgPerM3(mean1, mean2), 1.5) *
                                std::pow(inMillimetres(diameter), 0.8) / 30.0);
}

std::optional<SlipBracket> slipBracket(const Joint& joint, std::size_t plane) {
    if (plane + 1 >= joint.members.size()) return std::nullopt;
    const Prepared prepared = prepare(joint);
    const auto& first = prepared.members[plane].density;
    const auto& second = prepared.members[plane + 1].density;
    if (!first || !second) return std::nullopt;
    const ForcePerLength published =
        slipModulusEc5(first->value.value * meanOfCharacteristic,
                       second->value.value * meanOfCharacteristic, prepared.nominal);
    const bool wet = joint.service == Service::wet;
    return SlipBracket{{published * (strengthShare * (wet ? wetShare : 1.0)), Standing::judgement,
                        "two thirds of EN 1995-1-1 Table 7.1 (2.1)"},
                       {published, Standing::fromMemory, "EN 1995-1-1 Table 7.1"},
                       wet ? "two thirds as for strength, and 0.7 for wet wood, a judgement"
                           : "two thirds as for strength"};
}

}  // namespace fayline
