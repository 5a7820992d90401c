#pragma once

#include <optional>
#include <vector>

#include "quantity/quantity.h"

namespace fayline {

/// A point of one side of a section.
struct SectionPoint {
    Length y;  ///< out from the centreline, never negative
    Length z;  ///< above base
    bool operator==(const SectionPoint&) const = default;
};

/// One side of the hull cut square to x: a chain of straight pieces from the centreline to the
/// sheer, outside of everything. Mirrored it is the whole section, closed level across its top.
struct Section {
    Length x;
    std::vector<SectionPoint> points;

    [[nodiscard]] Length lowest() const;
    /// Height of its last point.
    [[nodiscard]] Length top() const;
    /// Length of one side from the centreline to the top.
    [[nodiscard]] Length girth() const;
    /// The part of the girth at or below a height.
    [[nodiscard]] Length wettedGirth(Length z) const;
    /// Area of both sides below a height; a height above the top counts as the top.
    [[nodiscard]] Area areaBelow(Length z) const;
    /// Height of the centre of that area; nothing where the area is nil.
    [[nodiscard]] std::optional<Length> centreHeightBelow(Length z) const;
    /// Out to the outermost crossing at a height; nothing where the section does not reach it.
    [[nodiscard]] std::optional<Length> halfBreadthAt(Length z) const;
    /// Width of one side of the water plane at a height, hollows left out; nil where the section is
    /// clear of the water. A height above the top takes the top's width.
    [[nodiscard]] Length waterplaneHalfBreadth(Length z) const;
};

}  // namespace fayline
