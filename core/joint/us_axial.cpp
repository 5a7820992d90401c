#include "joint/us_axial.h"

#include <cmath>
#include <numbers>

namespace fayline {
namespace {

constexpr double pound_N = 4.4482216152605;

ForcePerLength perInch(double load_lb) {
    return newtons(load_lb * pound_N) / inches(1.0);
}

}  // namespace

ForcePerLength lagWithdrawalUs(SpecificGravityOvenDry gravity, Length diameter,
                               const UsCoefficients& coefficients) {
    return perInch(coefficients.lagWithdrawal *
                   std::pow(gravity.value, coefficients.lagGravityExponent) *
                   std::pow(inInches(diameter), coefficients.lagDiameterExponent));
}

ForcePerLength screwWithdrawalUs(SpecificGravityOvenDry gravity, Length diameter,
                                 const UsCoefficients& coefficients) {
    return perInch(coefficients.screwWithdrawal_psi * gravity.value * gravity.value *
                   inInches(diameter));
}

ForcePerLength nailWithdrawalUs(SpecificGravityOvenDry gravity, Length diameter,
                                const UsCoefficients& coefficients) {
    return perInch(coefficients.nailWithdrawal_psi *
                   std::pow(gravity.value, coefficients.nailGravityExponent) * inInches(diameter));
}

ForcePerLength screwWithdrawalUltimate(SpecificGravityTwelve gravity, Length diameter,
                                       const UsCoefficients& coefficients) {
    return perInch(coefficients.screwUltimate_psi * gravity.value * gravity.value *
                   inInches(diameter));
}

ForcePerLength driftWithdrawalUltimate(SpecificGravityTwelve gravity, Length diameter,
                                       const UsCoefficients& coefficients) {
    return perInch(coefficients.driftUltimate_psi * gravity.value * gravity.value *
                   inInches(diameter));
}

Force pullThroughUs(SpecificGravityOvenDry gravity, Length head, Length thickness,
                    const UsCoefficients& coefficients) {
    const double head_in = inInches(head);
    const double thickness_in = inInches(thickness);
    const double squared = gravity.value * gravity.value;
    const double load_lb =
        thickness_in <= 2.5 * head_in
            ? coefficients.pullThroughThin_psi * std::numbers::pi * head_in * squared * thickness_in
            : coefficients.pullThroughThick_psi * std::numbers::pi * head_in * head_in * squared;
    return newtons(load_lb * pound_N);
}

Force combinedUs(Force lateral, Force axial, Angle toSurface) {
    return combinedUs(lateral, axial, Direction::of(toSurface));
}

Force combinedUs(Force lateral, Force axial, const Direction& toSurface) {
    const double sine = toSurface.sine;
    const double cosine = toSurface.cosine;
    const Force denominator = axial * (cosine * cosine) + lateral * (sine * sine);
    if (denominator.si() <= 0.0) return {};
    return lateral * (axial / denominator);
}

}  // namespace fayline
