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

ForcePerLength slipModulusEc5(Density mean1, Density mean2, Length diameter,
                              const Ec5Coefficients& coefficients) {
    const double density = jointDensity_kgPerM3(mean1, mean2);
    return newtonsPerMillimetre(density * std::sqrt(density) * inMillimetres(diameter) /
                                coefficients.slipDivisor);
}

ForcePerLength slipModulusDriven(Density mean1, Density mean2, Length diameter) {
    return newtonsPerMillimetre(std::pow(jointDensity_kgPerM3(mean1, mean2), 1.5) *
                                std::pow(inMillimetres(diameter), 0.8) / 30.0);
}

std::optional<PlaneSlip> slipOf(const Prepared& prepared, std::size_t plane) {
    if (plane + 1 >= prepared.members.size()) return std::nullopt;
    const auto& first = prepared.members[plane].density;
    const auto& second = prepared.members[plane + 1].density;
    if (!first || !second) return std::nullopt;
    const ForcePerLength published =
        slipModulusEc5(first->value * meanOfCharacteristic, second->value * meanOfCharacteristic,
                       prepared.nominal);
    const bool wet = prepared.isWet();
    return PlaneSlip{published * (strengthShare * (wet ? wetShare : 1.0)), published, wet};
}

std::optional<PlaneSlip> slipBracket(const Joint& joint, std::size_t plane) {
    return slipOf(prepare(joint), plane);
}

std::string_view sourceOf(const PlaneSlip& slip) {
    return slip.wet ? "stiff: EN 1995-1-1 Table 7.1; soft: two thirds of it as for strength (2.1), "
                      "and 0.7 for wet wood, a judgement"
                    : "stiff: EN 1995-1-1 Table 7.1; soft: two thirds of it as for strength (2.1)";
}

}  // namespace fayline
