#pragma once

#include "joint/ec5_coefficients.h"
#include "quantity/quantity.h"

namespace fayline {

/// A timber that a load across its grain tries to split: `depth` across the grain in the load's
/// direction, `reach` from the loaded edge to the farthest fastening.
struct SplitTimber {
    Length thickness, depth, reach;
    bool operator==(const SplitTimber&) const = default;
};

/// Characteristic shear on one side of the joint at which the timber splits: 14·b·√(h_e/(1 −
/// h_e/h)) in newtons and millimetres (EN 1995-1-1 8.1.4, 8.4), made for softwood. Nil without
/// reach; no more than as if the reach were 0.95 of the depth, for the formula runs away there.
Force splittingEc5(const SplitTimber& timber, const Ec5Coefficients& coefficients = ec5Published);

/// The same as ANSI/AWC NDS 3.4.3.3 limits it within five depths of an end: 2/3·F_v·b·d_e·(d_e/d)²;
/// from memory.
Force splittingUs(const SplitTimber& timber, Stress shear);

/// A row torn out along the grain, each fastening's part: F_v·t·s, s the lesser of end distance and
/// spacing: two planes of mean stress half the highest (ANSI/AWC NDS Appendix E.3, from memory).
Force rowTornOut(Stress shear, Length thickness, Length critical);

}  // namespace fayline
