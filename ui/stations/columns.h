#pragma once

#include <QString>
#include <string>
#include <vector>

#include "project/fields.h"
#include "quantity/display.h"

namespace fayline {

/// The columns of the grid, a row per frame. The frame itself is the row's heading.
enum class Column {
    place,
    floor,
    sided,
    throat,
    wood,
    bolt,
    diameter,
    metal,
    washer,
    thickness,
    worst
};
inline constexpr int columnCount = 11;

/// The row of the decision table behind a column; null for the bolt's name and the worst margin.
const Field* fieldOf(Column column);

/// Whether a column's decisions are those of the ballast bolts at the frame.
bool isBoltColumn(Column column);

/// The decisions behind one cell: none, one, or one for each bolt at the frame.
std::vector<std::string> decisionsOf(Column column, const std::string& frame,
                                     const std::vector<std::string>& bolts);

/// "Floor siding", "Washer ⌀".
QString titleOf(Column column);
/// The unit a bare number takes; empty where there is none.
QString unitOf(Column column, UnitSystem units);

}  // namespace fayline
