#pragma once

#include <string>

#include "quantity/quantity.h"
#include "quantity/result.h"

namespace fayline::detail {

/// A length for a message: "38.1 mm".
std::string inWords(Length value);

/// Adds a problem unless low <= value <= high (never true of NaN).
void requireWithin(Problems& problems, Length value, Length low, Length high,
                   const std::string& where, const std::string& name);

inline constexpr Length farthest = metres(200.0);
inline constexpr Length thinnestTimber = millimetres(5.0);
inline constexpr Length thickestTimber = metres(2.0);

}  // namespace fayline::detail
