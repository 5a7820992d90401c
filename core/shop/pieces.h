#pragma once

#include <optional>
#include <string>

#include "layout/hole.h"
#include "quantity/display.h"
#include "shop/takeoff.h"

/// What one hole asks for, piece by piece.
namespace fayline::pieces {

/// Length as bought or cut: a screw's own; anything cut, up to the next 1/8 in or 5 mm.
Length boughtLength(const Hole& hole, UnitSystem units);

/// Side of a square shank or diameter of a round one.
Length acrossOf(const Hole& hole);

/// Volume of one fastening by its true shape, head included: a screw's cone of a head, plain third
/// and threaded two thirds; a rod's threads counted as full metal; a rivet's head, when it is
/// bought headed.
Volume volumeOf(const Hole& hole, Length length);

/// A hexagon of this height, less its hole.
Volume nutVolume(const Nut& nut, Length bolt);
/// A flat ring.
Volume ringVolume(Length outside, Length inside, Length thickness);

/// "No. 14", "3/8 in", "1/4 in square".
std::string sizeText(const Hole& hole, UnitSystem units);
/// With the unit behind it: "3/8 in", "10 mm".
std::string lengthText(Length length, UnitSystem units);

}  // namespace fayline::pieces
