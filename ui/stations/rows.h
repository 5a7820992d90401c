#pragma once

#include <QString>
#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "columns.h"
#include "desk/desk.h"
#include "words/values.h"

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

/// Makes rows of what is on the desk now; not to be kept through an edit.
class RowMaker {
  public:
    explicit RowMaker(const Desk& desk);

    [[nodiscard]] StationRow row(const std::string& frame) const;
    /// The worst check at a frame under the leading basis; null where nothing is checked.
    [[nodiscard]] const Check* worst(const std::string& frame) const;
    /// Writes only the worst margin, where the rest of a row still stands.
    void putWorst(StationRow& row) const;

  private:
    const Desk& desk_;
    Speech speech_;
    std::unordered_map<std::string_view, const Check*> worst_;
    std::unordered_map<std::string, std::vector<std::string>> boltsAt_;
    std::array<const Field*, columnCount> fields_{};
};

/// Every frame of the project on the desk, from forward aft.
std::vector<StationRow> stationRows(const Desk& desk);

}  // namespace fayline
