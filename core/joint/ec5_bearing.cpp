#include "joint/ec5_bearing.h"

#include <cmath>

namespace fayline {

Stress embedmentSmall(CharacteristicDensity density, Length diameter, LeadHole hole,
                      const Ec5Coefficients& coefficients) {
    const double diameter_mm = inMillimetres(diameter);
    const double size = hole == LeadHole::none
                            ? std::pow(diameter_mm, coefficients.undrilledExponent)
                            : 1.0 - coefficients.diameterSlope * diameter_mm;
    return megapascals(coefficients.embedment * inKilogramsPerCubicMetre(density.value) * size);
}

Stress embedmentLarge(CharacteristicDensity density, Length diameter, const Direction& toGrain,
                      WoodFamily family, const Ec5Coefficients& coefficients) {
    const Stress along = embedmentSmall(density, diameter, LeadHole::drilled, coefficients);
    const double across = (family == WoodFamily::softwood ? coefficients.acrossSoftwood
                                                          : coefficients.acrossHardwood) +
                          coefficients.acrossSlope * inMillimetres(diameter);
    return along / (across * toGrain.sine * toGrain.sine + toGrain.cosine * toGrain.cosine);
}

Stress embedmentLarge(CharacteristicDensity density, Length diameter, Angle toGrain,
                      WoodFamily family, const Ec5Coefficients& coefficients) {
    return embedmentLarge(density, diameter, Direction::of(toGrain), family, coefficients);
}

Length effectiveThread(Length root, const Ec5Coefficients& coefficients) {
    return root * coefficients.rootToEffective;
}

Moment yieldMomentEc5(Stress ultimate, Length width, DowelSection section,
                      const Ec5Coefficients& coefficients) {
    const double factor =
        section == DowelSection::round ? coefficients.yieldRound : coefficients.yieldSquare;
    const double moment_Nmm = factor * inMegapascals(ultimate) *
                              std::pow(inMillimetres(width), coefficients.yieldExponent);
    return newtonMetres(moment_Nmm / 1000.0);
}

}  // namespace fayline
