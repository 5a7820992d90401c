#pragma once

#include <QSize>
#include <vector>

#include "paint/paint.h"

namespace fayline {

/// The names of the first row of stops along the lower edge of a view, for when the drawing's own
/// names are out of sight; nothing while they can be seen. In millimetres of the view.
std::vector<DrawItem> pinnedNames(const Drawing& drawing, const PaintMap& map, QSize view,
                                  SizeMm letter);

}  // namespace fayline
