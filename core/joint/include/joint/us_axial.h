#pragma once

#include "joint/direction.h"
#include "joint/us_coefficients.h"
#include "quantity/quantity.h"

namespace fayline {

/// Allowable withdrawal from side grain for each length of thread or shank (NDS 12.2). D is the
/// unthreaded shank's diameter.
ForcePerLength lagWithdrawalUs(SpecificGravityOvenDry gravity, Length diameter,
                               const UsCoefficients& coefficients = usPublished);
ForcePerLength screwWithdrawalUs(SpecificGravityOvenDry gravity, Length diameter,
                                 const UsCoefficients& coefficients = usPublished);
ForcePerLength nailWithdrawalUs(SpecificGravityOvenDry gravity, Length diameter,
                                const UsCoefficients& coefficients = usPublished);

/// Mean ultimate withdrawal from side grain of seasoned wood, with the published lead hole (Wood
/// Handbook 8-10, 8-9).
ForcePerLength screwWithdrawalUltimate(SpecificGravityTwelve gravity, Length diameter,
                                       const UsCoefficients& coefficients = usPublished);
ForcePerLength driftWithdrawalUltimate(SpecificGravityTwelve gravity, Length diameter,
                                       const UsCoefficients& coefficients = usPublished);

/// Allowable pull-through of a round head (NDS 12.2.5).
Force pullThroughUs(SpecificGravityOvenDry gravity, Length head, Length thickness,
                    const UsCoefficients& coefficients = usPublished);

/// Lateral Z' and axial W' loaded together, the load at this angle to the wood's surface: the size
/// of load that is just carried (NDS 12.4.1). Either may be nil.
Force combinedUs(Force lateral, Force axial, Angle toSurface);
Force combinedUs(Force lateral, Force axial, const Direction& toSurface);

}  // namespace fayline
