#pragma once

#include <string>
#include <vector>

#include "quantity/display.h"
#include "sheet/drawing.h"

namespace fayline {

/// A round length for a scale bar and what to write at its end.
struct ScaleLength {
    Length length;
    std::string text;  ///< "3 ft", "6 in", "2 m", "500 mm"
    int parts = 4;     ///< equal parts of the bar
    bool operator==(const ScaleLength&) const = default;
};

/// The longest round length that the bar may have at a scale: 1, 2, 3, 6 in; 1, 2, 3, 5, 10 ft …;
/// 10, 20, 50 … mm, 1, 2, 5 … m. The shortest one when none fits.
ScaleLength scaleLength(const DrawScale& scale, SizeMm room, UnitSystem units);

/// A bar of alternating parts between "0" and its length, all on one line, its right end and middle
/// at a place; room is what it may take in all, letter the height of its figures.
std::vector<DrawItem> scaleBar(const DrawScale& scale, PointMm rightEnd, SizeMm room, SizeMm letter,
                               UnitSystem units);

}  // namespace fayline
