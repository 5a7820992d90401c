#pragma once

#include "quantity/quantity.h"

namespace fayline {

/// Moisture below which wood shrinks, where the species' own is not known (Wood Handbook ch. 4).
inline constexpr double fibreSaturation = 0.30;

/// Change of width per width and per unit of moisture between 6 % and 14 % (Wood Handbook Eq.
/// 13-2), from total shrinkage green to oven-dry: 0.105 gives 0.376, that is 0.00376 for each 1 %.
double dimensionalChangeCoefficient(double totalShrinkage);

/// Size at moisture `to` of a piece that measures `size` at moisture `from` (fractions: 0.12).
/// Shrinkage spread evenly over the moisture below fibre saturation; above it nothing changes
/// (Wood Handbook Eq. 4-9).
Length sizeAtMoisture(Length size, double totalShrinkage, double from, double to);

}  // namespace fayline
