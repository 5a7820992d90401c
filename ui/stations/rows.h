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
    QString shown;  ///< in the column's unit; port | starboard where they differ
    QString
        typed;  ///< as the builder typed it; empty where the rule stands, or bolts or sides differ
    QString from;  ///< where the rule's value comes from, or why nothing can be decided
    bool decided = false;
    bool editable = false;
    std::optional<Status> status;  ///< of the worst margin
    bool operator==(const Cell&) const = default;
};

struct StationRow {
    std::string frame;
    std::vector<std::string> bolts;
    std::array<Cell, columnCount> cells;
    std::optional<Status> status;  ///< worst at this frame; none where nothing is checked
    bool operator==(const StationRow&) const = default;

    [[nodiscard]] const Cell& cell(Column column) const {
        return cells[static_cast<std::size_t>(column)];
    }
};

/// Every frame of the project on the desk, from forward aft.
std::vector<StationRow> stationRows(const Desk& desk);

}  // namespace fayline
