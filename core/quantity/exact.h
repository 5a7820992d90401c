#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <tl/expected.hpp>

namespace fayline::detail {

/// A unit as an exact ratio: one of it is numerator / denominator of the SI unit.
struct Factor {
    std::int64_t numerator = 1;
    std::int64_t denominator = 1;
};

/// digits × 10^exponent / divisor × factor, exactly. Digits only, no sign and no point.
struct Piece {
    std::string digits;
    int exponent = 0;
    std::int64_t divisor = 1;
    Factor factor;
};

enum class OutOfRange { tooLarge, tooSmall };

/// The sum of the pieces rounded once to the nearest double, ties to even. tooSmall: the sum is not
/// zero and rounds to zero.
tl::expected<double, OutOfRange> roundedSum(std::span<const Piece> pieces);

/// digits × 10^exponent, the last digit not zero (except "0").
struct Decimal {
    std::string digits;
    int exponent = 0;
};

/// The decimal with the fewest digits which, times the factor and rounded once, gives the value
/// back; the nearest of these. The value is finite and not negative, the result below 18 digits.
Decimal shortestDecimal(double value, Factor factor);

}  // namespace fayline::detail
