#pragma once

#include <optional>
#include <vector>

#include "quantity/quantity.h"

/// Heights read off lines of the profile.
namespace fayline::heights {

/// Height of a chain that runs aft, straight between its points; nothing beyond its ends.
std::optional<Length> onChain(const std::vector<Point>& chain, Length x);

/// The highest place of a closed outline at x; nothing where it does not reach.
std::optional<Length> topOfOutline(const std::vector<Point>& outline, Length x);

}  // namespace fayline::heights
