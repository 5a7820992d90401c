#pragma once

#include <span>
#include <vector>

#include "quantity/quantity.h"

namespace fayline::detail {

/// Slopes of one cubic at its two ends.
struct EndSlopes {
    double from = 0.0;
    double to = 0.0;
};

/// Slopes of the curve through (x, v), for each bay between neighbouring x: a modified Akima
/// spline, drawn towards a monotone one (PCHIP) where it would leave the range of the four values
/// around a bay by more than an eighth of their spread, which is what a parabola needs, or go below
/// `least`. Two points give a straight line, three a parabola under the same rule. Where the line
/// through the points turns sharply (the heel of a sternpost) the curve has a knuckle: fully at 20
/// degrees and four times the turn at either neighbour, not at all below 10 degrees or twice
/// (judgement).
std::vector<EndSlopes> slopesAlong(std::span<const Length> x, std::span<const Length> v);

/// The cubic's value a fraction of the bay behind its fore end.
Length cubicAt(double fraction, Length bay, Length from, Length to, EndSlopes slopes);

}  // namespace fayline::detail
