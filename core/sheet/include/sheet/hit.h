#pragma once

#include <optional>
#include <string>

#include "sheet/drawing.h"

namespace fayline {

/// How near a place must be to an item to pick it.
struct Tolerance {
    double mm = 2.0;
};

/// Shortest way from a place to an item, in millimetres; nil inside a filled area.
double distanceMm(const DrawItem& item, PointMm place);

/// The id at a place. Lines, marks and texts within the tolerance come before areas, the nearest
/// before others, the one painted last before one equally near.
std::optional<std::string> hit(const Drawing& drawing, PointMm place, Tolerance tolerance = {});

}  // namespace fayline
