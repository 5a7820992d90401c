#pragma once

#include "joint/dowel.h"
#include "joint/limit_state.h"

namespace fayline {

/// A solid head, or a peened end, that the shank is drawn through: shear round the shank over the
/// height of the head.
struct HeadShearInput {
    Length shank;  ///< diameter, or side of a square one
    DowelSection section = DowelSection::round;
    Length height;
    Stress shear;         ///< ultimate
    double factor = 2.5;  ///< metal factor, on half the ultimate
    bool operator==(const HeadShearInput&) const = default;
};

/// π·d·h·τ_u, 4·a·h·τ_u square.
Force headShearLoad(const HeadShearInput& input);

/// Comes apart at that load, suddenly; works at half of it over the factor.
LimitState headShear(const HeadShearInput& input);

/// Height of a head as strong in shear as its shank in tension: f_u/(4·τ_u) of the diameter.
double equalHeadHeight(Stress ultimate, Stress shear);

}  // namespace fayline
