#pragma once

#include <string>
#include <vector>

#include "sheet/drawing.h"

namespace fayline {

/// What shows that an id is chosen: a box around all its items, and its name on top unless the
/// drawing names everything; nothing when the drawing does not hold it. Painted over the drawing,
/// so that choosing changes nothing below.
std::vector<DrawItem> selectionOf(const Drawing& drawing, const std::string& id, SizeMm letter);

}  // namespace fayline
