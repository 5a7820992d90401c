#pragma once

#include <string>
#include <vector>

#include "record_flow.h"

namespace fayline {

/// A table on a record's pages: columns as wide as they need, cells that are too long broken into
/// lines. Heads are repeated on a new page; a row is never split.
struct FlowTable {
    std::vector<std::string> heads;
    std::vector<std::vector<std::string>> rows;
    std::vector<bool> heavy;
    std::vector<double> widths_mm;  ///< empty: from the cells
    bool bare = false;              ///< no heads, no rules between rows
};

void put(RecordFlow& flow, const FlowTable& table);

/// Height of the heads and the first `rows` rows, to keep them together.
double heightOf(const FlowTable& table, std::size_t rows);

}  // namespace fayline
