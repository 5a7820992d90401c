#include "joint/lead_bearing.h"

#include <numbers>

namespace fayline {

LimitState leadBearing(const LeadBearingInput& input) {
    const Area disc = input.diameter * input.diameter - input.hole * input.hole;
    const Force flows = input.strength * max(disc, Area{}) * (std::numbers::pi / 4.0);
    LimitState state;
    state.kind = LimitStateKind::crushing;
    state.basis = Basis::metal;
    state.reference = flows;
    state.working = flows / 2.0 / input.factor;
    state.gives = Band{flows, flows};
    state.soft = true;
    state.standing = std::max(input.standing, Standing::judgement);
    state.clause = "metal set: half the lead's tensile strength as pressure, by the metal factor";
    state.outside.push_back({Rule::leadNotCovered, -1, {}, {}, 0.0});
    return state;
}

}  // namespace fayline
