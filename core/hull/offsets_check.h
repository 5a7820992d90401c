#pragma once

#include <string>
#include <vector>

#include "hull/offsets.h"

namespace fayline::detail {

/// Where the parts of a table of offsets stand in its file.
struct SourceLines {
    std::string file;
    int waterline = 0;
    int header = 0;
    std::vector<std::vector<int>> points;  ///< per station, per point
};

/// All checks of a table of offsets. With `lines` the problems name file and line and speak of
/// lines; without, they name "offsets.STATION" and speak of points, counted from 1.
Problems checkTable(const Offsets& offsets, const SourceLines* lines);

}  // namespace fayline::detail
