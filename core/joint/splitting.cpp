#include "joint/splitting.h"

#include <algorithm>
#include <cmath>

namespace fayline {

Force splittingEc5(const SplitTimber& timber, const Ec5Coefficients& coefficients) {
    if (timber.reach.si() <= 0.0 || timber.depth.si() <= 0.0) return {};
    const double part = std::min(timber.reach / timber.depth, 0.95);
    const double reach_mm = part * inMillimetres(timber.depth);
    return newtons(coefficients.splitting * inMillimetres(timber.thickness) *
                   std::sqrt(reach_mm / (1.0 - part)));
}

Force splittingUs(const SplitTimber& timber, Stress shear) {
    if (timber.reach.si() <= 0.0 || timber.depth.si() <= 0.0) return {};
    const Length reach = min(timber.reach, timber.depth);
    const double part = reach / timber.depth;
    return shear * (timber.thickness * reach) * (2.0 / 3.0 * part * part);
}

Force rowTornOut(Stress shear, Length thickness, Length critical) {
    return shear * (thickness * max(critical, Length{}));
}

}  // namespace fayline
