#pragma once

#include <cstddef>
#include <vector>

#include "hull/section.h"

namespace fayline::detail {

/// The curve through one station's points, as a chain of short straight pieces.
///
/// A point is a corner, and stays sharp, when the section turns there by 40 degrees or more, or by
/// 10 degrees or more and at least three times as much as at either neighbour (judgement). Between
/// corners the curve is smooth: circular where the points lie on a circle, straight where they lie
/// on a line, and its direction at a point is never outside those of the two chords that meet
/// there. At the centreline it is level unless the mirrored section has a corner there.
struct Contour {
    struct Corner {
        std::size_t at = 0;  ///< place in points
        double turn = 0.0;   ///< radians; positive like a chine, negative like a garboard's hollow
    };
    std::vector<SectionPoint> points;
    std::vector<Corner> corners;  ///< in order; never the first or last point
    std::vector<Length> girth;    ///< along the chain to each point
    std::vector<Length> rise;     ///< the same, counting heights gone up or down only
};

/// `points` run from keel to sheer, no two neighbours equal, at least two.
Contour contourThrough(std::vector<SectionPoint> points);

}  // namespace fayline::detail
