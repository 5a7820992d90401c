#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

#include "exact.h"
#include "lexer.h"

namespace fayline::detail {

/// Why a text is refused. The quoted text and `says` make the sentence.
struct Refusal {
    std::string code;
    std::string says;
    std::string allowed;  ///< empty: the examples of the wanted kind
};

/// " cannot be read: WHY".
tl::unexpected<Refusal> malformed(const std::string& why);
tl::unexpected<Refusal> refusalOf(OutOfRange outOfRange);

/// A number before its unit is known: a decimal, a fraction, or a whole number and a fraction.
using Pieces = std::vector<Piece>;

/// Takes 40, 40.625, 40,625, 6.25e-3, 5/8, 40 5/8, 40-5/8. The cursor stands on a number.
tl::expected<Pieces, Refusal> takeMixed(Cursor& cursor);

/// Digits only.
bool isWhole(std::string_view number);
/// A whole number of at most nine digits.
std::optional<std::int64_t> smallWhole(std::string_view number);

}  // namespace fayline::detail
