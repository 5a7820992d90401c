#pragma once

#include <string>
#include <vector>

#include "check/check.h"
#include "sheet/drawing.h"

namespace fayline {

/// The sign of a status, told apart by shape alone: short a filled square with a cross in it, near
/// a hollow triangle, unknown a question mark, outside a hollow diamond, ok a dot, unloaded a
/// dash.
std::vector<DrawItem> statusMark(Status status, PointMm at, SizeMm size, const std::string& id);
Role statusRole(Status status);
/// Role of a fastening's own line.
Role boltRole(Status status);

}  // namespace fayline
