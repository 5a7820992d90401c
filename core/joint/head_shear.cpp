#include "joint/head_shear.h"

#include <numbers>

namespace fayline {

Force headShearLoad(const HeadShearInput& input) {
    const double perimeter = input.section == DowelSection::round ? std::numbers::pi : 4.0;
    return input.shear * (input.shank * input.height) * perimeter;
}

LimitState headShear(const HeadShearInput& input) {
    const Force apart = headShearLoad(input);
    LimitState state;
    state.kind = LimitStateKind::headShear;
    state.basis = Basis::metal;
    state.reference = apart;
    state.working = apart / input.factor / 2.0;
    state.apart = Band{apart, apart};
    state.soft = false;
    state.standing = Standing::fromMemory;
    state.clause = "metal set: shear round the shank through the height of the head";
    return state;
}

double equalHeadHeight(Stress ultimate, Stress shear) {
    return ultimate / (4.0 * shear);
}

}  // namespace fayline
