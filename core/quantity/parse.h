#pragma once

#include <optional>
#include <string_view>

#include "exact.h"
#include "quantity/result.h"
#include "unit_table.h"

namespace fayline::detail {

/// What a number without a unit means.
struct Bare {
    std::optional<Factor> factor;        ///< the unit taken; none: refused
    bool onlyFeetInchesEighths = false;  ///< refused, and three groups asked for
};

/// A whole text as one quantity of the wanted kind, in its SI unit (angles in degrees).
Result<double> parseQuantity(std::string_view text, std::string_view where, Kind wanted,
                             const Bare& bare);

/// "250 lb is a mass, a length is wanted".
Problem wrongKind(std::string_view text, std::string_view where, Kind found, Kind wanted);

}  // namespace fayline::detail
