#pragma once

#include "joint/direction.h"
#include "joint/dowel.h"
#include "joint/ec5_coefficients.h"
#include "material/wood.h"

namespace fayline {

enum class LeadHole { drilled, none };

/// Characteristic embedment strength of wood under nails of up to 8 mm and screws of up to 6 mm
/// effective diameter, at any angle to the grain (EN 1995-1-1 8.15, 8.16).
Stress embedmentSmall(CharacteristicDensity density, Length diameter, LeadHole hole,
                      const Ec5Coefficients& coefficients = ec5Published);

/// The same under bolts, dowels and larger screws (8.31, 8.32).
Stress embedmentLarge(CharacteristicDensity density, Length diameter, Angle toGrain,
                      WoodFamily family, const Ec5Coefficients& coefficients = ec5Published);

Stress embedmentLarge(CharacteristicDensity density, Length diameter, const Direction& toGrain,
                      WoodFamily family, const Ec5Coefficients& coefficients = ec5Published);

/// Diameter that counts where the thread is in the shear plane: 1.1 times its root (8.7.1).
Length effectiveThread(Length root, const Ec5Coefficients& coefficients = ec5Published);

/// Characteristic yield moment, 0.3·f_u·d^2.6 round and 0.45·f_u·a^2.6 square (8.14, 8.30).
Moment yieldMomentEc5(Stress ultimate, Length width, DowelSection section,
                      const Ec5Coefficients& coefficients = ec5Published);

}  // namespace fayline
