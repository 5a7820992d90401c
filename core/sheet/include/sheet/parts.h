#pragma once

#include <vector>

#include "sheet/drawing.h"

namespace fayline {

/// The lines of a hatch, cut at the area's edge by the even-odd rule.
std::vector<shape::Line> linesOf(const shape::Hatch& hatch);

/// What a dimension consists of: extension lines, dimension line, arrow heads or datum circle,
/// figure. The figure stands above its line and reads from below or from the right.
std::vector<DrawItem> partsOf(const shape::Dimension& dimension);

/// Points on the edge of a rectangle with rounded corners, clockwise.
std::vector<PointMm> roundedRectangle(const RectMm& rect, SizeMm corner);

}  // namespace fayline
