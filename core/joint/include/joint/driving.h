#pragma once

#include "quantity/quantity.h"

namespace fayline {

/// Torque at which a round root starts to yield: π/16·d³·τ_y.
Moment rootYields(Length root, Stress shearYield);
/// Torque that twists it off, all of it at the ultimate shear: π/12·d³·τ_u.
Moment rootTwistsOff(Length root, Stress shearUltimate);

/// Friction of a screw in wood, dry and with wax or soap: judgement.
inline constexpr double frictionDry = 0.4;
inline constexpr double frictionWaxed = 0.15;

/// Torque the last turn takes: wood pressing on the root over the thread's length at its mean
/// crushing strength across the grain: μ·p·π·d·L·d/2. A judgement: no formula is published; try one
/// on a scrap.
Moment drivingTorque(Length root, Length thread, Stress pressure, double friction);

}  // namespace fayline
