#include "joint/us_bearing.h"

#include <cmath>

namespace fayline {
namespace {

constexpr double quarterInch_in = 0.25;
constexpr double smallest_in = 0.17;
constexpr double psi_Pa = 4.4482216152605 / (0.0254 * 0.0254);

Stress fromPsi(double value_psi, BearingRounding rounding) {
    if (rounding == BearingRounding::toFiftyPsi) value_psi = 50.0 * std::round(value_psi / 50.0);
    return Stress::fromSi(value_psi * psi_Pa);
}

}  // namespace

Stress hankinson(Stress along, Stress across, const Direction& toGrain) {
    return along * (across / (along * (toGrain.sine * toGrain.sine) +
                              across * (toGrain.cosine * toGrain.cosine)));
}

Stress hankinson(Stress along, Stress across, Angle toGrain) {
    return hankinson(along, across, Direction::of(toGrain));
}

DowelBearing dowelBearingPair(SpecificGravityOvenDry gravity, Length nominal,
                              BearingRounding rounding, const UsCoefficients& coefficients) {
    const double diameter_in = inInches(nominal);
    if (diameter_in < quarterInch_in) {
        const Stress any = fromPsi(coefficients.bearingSmall_psi *
                                       std::pow(gravity.value, coefficients.bearingSmallExponent),
                                   rounding);
        return {any, any, true};
    }
    return {fromPsi(coefficients.bearingParallel_psi * gravity.value, rounding),
            fromPsi(coefficients.bearingAcross_psi *
                        std::pow(gravity.value, coefficients.bearingAcrossExponent) /
                        std::sqrt(diameter_in),
                    rounding),
            false};
}

Stress dowelBearingUs(SpecificGravityOvenDry gravity, Length nominal, Angle toGrain,
                      BearingRounding rounding, const UsCoefficients& coefficients) {
    if (toGrain == Angle{} && inInches(nominal) >= quarterInch_in)
        return fromPsi(coefficients.bearingParallel_psi * gravity.value, rounding);
    const DowelBearing pair = dowelBearingPair(gravity, nominal, rounding, coefficients);
    if (pair.anyAngle) return pair.along;
    if (toGrain == Angle::degrees(90)) return pair.across;
    return hankinson(pair.along, pair.across, toGrain);
}

Stress dowelBearingUs(SpecificGravityOvenDry gravity, Length nominal, const Direction& toGrain) {
    if (toGrain.sine == 0.0 && inInches(nominal) >= quarterInch_in)
        return fromPsi(usPublished.bearingParallel_psi * gravity.value, BearingRounding::none);
    const DowelBearing pair = dowelBearingPair(gravity, nominal);
    return pair.anyAngle ? pair.along : hankinson(pair.along, pair.across, toGrain);
}

UsReduction usReduction(Length inEquations, Length nominal, Angle steepest,
                        const UsCoefficients& coefficients) {
    const double grain = 1.0 + coefficients.grainRise * steepest.inDegrees() / 90.0;
    const double diameter_in = inInches(inEquations);
    if (diameter_in >= quarterInch_in) {
        return {coefficients.reductionBearing * grain, coefficients.reductionTurning * grain,
                coefficients.reductionBending * grain};
    }
    double small = diameter_in <= smallest_in
                       ? coefficients.smallReduction
                       : coefficients.smallSlope_perIn * diameter_in + coefficients.smallOffset;
    if (inInches(nominal) >= quarterInch_in) small *= grain;
    return {small, small, small};
}

}  // namespace fayline
