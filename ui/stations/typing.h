#pragma once

#include <QString>
#include <optional>
#include <string>

#include "rows.h"

namespace fayline {

/// The decisions a text means in one cell; none where nothing can be decided. "a | b" decides port
/// and starboard apart where sides may differ; a single text stands for both again. `kind` is the
/// kind of fastening that stands there, or is being decided in the same breath. Nothing when a
/// summary cannot be read.
std::optional<Typed> typedInCell(const Desk& desk, const StationRow& row, Column column,
                                 const QString& text, const std::string& kind);

/// The kind that stands for a fastening's column in a row; empty for other columns.
std::string kindAt(const Desk& desk, const StationRow& row, Column column);

}  // namespace fayline
