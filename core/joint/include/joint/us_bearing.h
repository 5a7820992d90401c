#pragma once

#include "joint/direction.h"
#include "joint/us_coefficients.h"
#include "quantity/quantity.h"

namespace fayline {

/// Tables of the standard are made with bearing strengths rounded to 50 psi; the formulas are not.
enum class BearingRounding { none, toFiftyPsi };

/// Dowel bearing strength of wood under a dowel of this nominal diameter, the load at this angle to
/// the grain (NDS Table 12.3.3; Hankinson's formula between, NDS 12.3.4). Below 1/4 in the angle
/// does not matter. G published for 0.31 to 0.73.
Stress dowelBearingUs(SpecificGravityOvenDry gravity, Length nominal, Angle toGrain,
                      BearingRounding rounding = BearingRounding::none,
                      const UsCoefficients& coefficients = usPublished);

/// The same along and across the grain, for those who need it at several angles or gravities.
struct DowelBearing {
    Stress along, across;
    bool anyAngle = false;  ///< below 1/4 in: one strength, and G counts with its own exponent
    bool operator==(const DowelBearing&) const = default;
};
DowelBearing dowelBearingPair(SpecificGravityOvenDry gravity, Length nominal,
                              BearingRounding rounding = BearingRounding::none,
                              const UsCoefficients& coefficients = usPublished);

Stress dowelBearingUs(SpecificGravityOvenDry gravity, Length nominal, const Direction& toGrain);

/// Hankinson's formula: what a property worth `along` with the grain and `across` over it is worth
/// at an angle (NDS appendix J).
Stress hankinson(Stress along, Stress across, Angle toGrain);
Stress hankinson(Stress along, Stress across, const Direction& toGrain);

/// Divisors from yield to reference load for the three families of modes.
struct UsReduction {
    double bearing;  ///< Im, Is
    double turning;  ///< II
    double bending;  ///< IIIm, IIIs, IV
    bool operator==(const UsReduction&) const = default;
};

/// NDS Table 12.3.1B. `inEquations` is the diameter the yield equations use (the root of a threaded
/// screw), `nominal` its name; `steepest` the largest angle between load and grain in any member.
UsReduction usReduction(Length inEquations, Length nominal, Angle steepest,
                        const UsCoefficients& coefficients = usPublished);

}  // namespace fayline
