#pragma once

#include <optional>

#include "material/wood.h"

namespace fayline {

// Design stresses of a timber along its grain. US: allowable, ten years' load, dry, straight grain,
// no knots. Where none is assigned they come from small clear green pieces: the lowest twentieth
// (ASTM D2555, coefficients of variation 0.16 in bending and 0.14 in shear) by the divisors of ASTM
// D245; both from memory. Nothing where the wood has no such figure.

/// Lowest twentieth of the bending strength over 2.3 for hardwood, 2.1 for softwood.
std::optional<Figure<Stress>> bendingUs(const Wood& wood);
/// 0.55 of the allowable bending stress (ASTM D245).
std::optional<Figure<Stress>> tensionUs(const Wood& wood);
/// As assigned; else the lowest twentieth of the shear strength over 4.5 for hardwood, 4.1 for
/// softwood.
std::optional<Figure<Stress>> shearUs(const Wood& wood);

/// Characteristic tension along the grain: 0.6 of the class's bending strength (EN 384).
std::optional<Figure<Stress>> tensionEc5(const Wood& wood);

/// What is left of strength in bending and tension where the grain slopes 1 in `run`: 1 at 20 and
/// more, 0.40 at 6 (ASTM D245 Table 1, from memory; straight lines between). Steeper than that
/// nothing is published: 0.40 · run / 6.
double slopeOfGrainRatio(double run);

}  // namespace fayline
