#pragma once

#include <string_view>

#include "joint/dowel.h"
#include "joint/ec5_coefficients.h"

namespace fayline {

/// One plane of a dowel as EN 1995-1-1 8.2.2 sees it: member 1 on the head's side.
struct Ec5Dowel {
    Stress embedment1, embedment2;
    Length thickness1, thickness2;  ///< thickness, or penetration of the point
    Length diameter;
    Moment yieldMoment;
    Length gap;  ///< not in the standard; see ec5SingleShear
    bool operator==(const Ec5Dowel&) const = default;
};

/// The share of the Johansen part the rope may add at most (8.2.2(2)).
struct RopeLimits {
    static constexpr double roundNail = 0.15;
    static constexpr double squareNail = 0.25;
    static constexpr double bolt = 0.25;
    static constexpr double screw = 1.0;
    static constexpr double dowel = 0.0;
};

struct Ec5Lateral {
    ModeLoads modes;  ///< one plane, before the rope: a–f single, g h j k double
    Force rope;       ///< added to the governing mode of one plane
    Force onePlane;   ///< characteristic, rope included
    std::string_view governs;
    bool operator==(const Ec5Lateral&) const = default;
};

/// Modes a to f (8.6). The standard knows no gap: with one, every mode is reduced in the ratio in
/// which the general dowel equations reduce it for the same bearing and moment. `axial` is the
/// fastening's characteristic axial capacity, a quarter of which ropes modes c to f up to
/// `ropeLimit` of their Johansen part.
Ec5Lateral ec5SingleShear(const Ec5Dowel& dowel, Force axial, double ropeLimit,
                          const Ec5Coefficients& coefficients = ec5Published);

/// Modes g, h, j, k (8.7) of one of two planes; thickness2 is the whole middle member.
Ec5Lateral ec5DoubleShear(const Ec5Dowel& dowel, Force axial, double ropeLimit,
                          const Ec5Coefficients& coefficients = ec5Published);

}  // namespace fayline
