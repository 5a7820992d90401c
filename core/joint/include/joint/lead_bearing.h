#pragma once

#include "joint/limit_state.h"

namespace fayline {

/// Head, nut or washer pressing on ballast lead.
struct LeadBearingInput {
    Length diameter, hole;
    Stress strength;  ///< tensile strength of the lead, taken as the pressure it bears
    Standing standing = Standing::judgement;
    double factor = 2.5;  ///< metal factor, on half the strength: lead creeps
    bool operator==(const LeadBearingInput&) const = default;
};

/// f·π/4·(D² − d²); works at half of it over the factor; nobody has published what comes apart.
LimitState leadBearing(const LeadBearingInput& input);

}  // namespace fayline
