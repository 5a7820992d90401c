#pragma once

#include <optional>
#include <string>

#include "quantity/result.h"

namespace fayline {

/// The reader for a kind named in a table ("length"), its value in SI units; `bare` is the name of
/// a unit's enumerator or empty. Nothing for a kind or unit that does not exist.
std::optional<Result<double>> readByKind(const std::string& kind, const std::string& text,
                                         const std::string& bare);

}  // namespace fayline
