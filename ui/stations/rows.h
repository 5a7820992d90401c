#pragma once

#include <QString>
#include <array>
#include <optional>
#include <string>
#include <vector>

#include "columns.h"
#include "desk/desk.h"

namespace fayline {

/// One cell as it stands.
struct Cell {
    QString shown;  ///< in the column's unit
    QString typed;  ///< as the builder typed it; empty where the rule stands, or bolts differ
    QString from;   ///< where the rule's value comes from
    bool decided = false;
    std::vector<std::string> whats;  ///< decisions it sets; none: it cannot be edited
    std::optional<Status> status;    ///< of the worst margin
    bool operator==(const Cell&) const = default;
};

struct StationRow {
    std::string frame;
    std::vector<std::string> bolts;
    std::array<Cell, columnCount> cells;
    std::optional<Status> status;  ///< worst at this frame; none where nothing is checked
    bool operator==(const StationRow&) const = default;
};

/// Every frame of the project on the desk, from forward aft.
std::vector<StationRow> stationRows(const Desk& desk);

}  // namespace fayline
