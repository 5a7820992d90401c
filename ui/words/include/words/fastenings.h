#pragma once

#include <QString>
#include <string>
#include <utility>
#include <vector>

#include "project/project.h"
#include "quantity/display.h"

namespace fayline {

/// What stands for a group of fastenings at a frame: decided for the hull, for the frame, and for
/// the side ("P", "S", or empty for what is decided for both).
FasteningDecisions standingAt(const Project& project, const std::string& group,
                              const std::string& frame, const std::string& side);

/// "No. 14", "3/8\"", "1/4\" square"; empty while not decided.
QString sizeWords(const FasteningDecisions& decided, UnitSystem units);
/// "2 × No. 14 × 2\"", "3 × 3/8\""; "none" for nil; empty while nothing is decided.
QString summaryWords(const FasteningDecisions& decided, UnitSystem units);

/// Reads a summary back: number × size × length, any of them left out from behind; "none" is nil.
/// Gives field names and texts; a bare number for a size is taken as a gauge for screws, else in
/// the builder's units. `kind` is what stands there. Empty when it cannot be told what is meant.
std::vector<std::pair<std::string, std::string>> readSummary(const QString& typed,
                                                             const std::string& kind);

/// Whether a field of a fastening group means anything for a kind of fastening; before the kind is
/// decided only kind, number, metal and reason do.
bool matters(const std::string& field, const std::string& kind);

/// What must still be decided before holes can be placed for a group, as field names; empty when
/// all is decided or there are none of them.
std::vector<std::string> undecidedOf(const FasteningDecisions& decided);

}  // namespace fayline
