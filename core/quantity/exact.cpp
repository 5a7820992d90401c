#include "exact.h"

#include <array>
#include <boost/multiprecision/cpp_int.hpp>
#include <cmath>
#include <limits>

namespace fayline::detail {
namespace {

using boost::multiprecision::cpp_int;

constexpr int mantissaBits = 53;
constexpr int lowestExponent = -1022;
constexpr int highestExponent = 1023;
constexpr std::uint64_t exactlyHeld = std::uint64_t{1} << mantissaBits;
constexpr int mostDigits = 17;

struct Fraction {
    cpp_int numerator;
    cpp_int denominator;
};

cpp_int powerOfTen(int exponent) {
    return boost::multiprecision::pow(cpp_int(10), static_cast<unsigned>(exponent));
}

int highestBit(const cpp_int& n) {
    return static_cast<int>(boost::multiprecision::msb(n));
}

Fraction fractionOf(const Piece& piece) {
    Fraction f{cpp_int(0), cpp_int(piece.divisor)};
    for (const char digit : piece.digits) f.numerator = f.numerator * 10 + (digit - '0');
    f.numerator *= piece.factor.numerator;
    f.denominator *= piece.factor.denominator;
    (piece.exponent > 0 ? f.numerator : f.denominator) *= powerOfTen(std::abs(piece.exponent));
    return f;
}

/// The usual case: both sides of the ratio are whole doubles, so one division rounds once.
bool fits(std::uint64_t& product, std::uint64_t factor) {
    return !__builtin_mul_overflow(product, factor, &product) && product <= exactlyHeld;
}

double quickly(const Piece& piece, bool& done) {
    constexpr int mostShort = 18;
    done = false;
    if (piece.digits.size() > mostShort || std::abs(piece.exponent) > mostShort) return 0.0;
    std::uint64_t numerator = 0;
    for (const char digit : piece.digits) {
        numerator = numerator * 10 + static_cast<std::uint64_t>(digit - '0');
    }
    auto denominator = static_cast<std::uint64_t>(piece.divisor);
    std::uint64_t power = 1;
    for (int i = 0; i < std::abs(piece.exponent); ++i) power *= 10;
    if (!fits(piece.exponent > 0 ? numerator : denominator, power)) return 0.0;
    if (!fits(numerator, static_cast<std::uint64_t>(piece.factor.numerator))) return 0.0;
    if (!fits(denominator, static_cast<std::uint64_t>(piece.factor.denominator))) return 0.0;
    done = true;
    return static_cast<double>(numerator) / static_cast<double>(denominator);
}

tl::expected<double, OutOfRange> rounded(const Fraction& f) {
    if (f.numerator == 0) return 0.0;
    // Scaled so that the quotient has 55 or 56 bits: enough to round from, with the remainder.
    const int shift = mantissaBits + 2 - (highestBit(f.numerator) - highestBit(f.denominator));
    const cpp_int numerator = shift > 0 ? cpp_int(f.numerator << shift) : f.numerator;
    const cpp_int denominator = shift < 0 ? cpp_int(f.denominator << -shift) : f.denominator;
    cpp_int wholePart;
    cpp_int remainder;
    boost::multiprecision::divide_qr(numerator, denominator, wholePart, remainder);
    auto quotient = static_cast<std::uint64_t>(wholePart);
    const int topBit = highestBit(wholePart);
    const int exponent = topBit - shift;
    if (exponent > highestExponent) return tl::unexpected(OutOfRange::tooLarge);
    const int kept = mantissaBits - std::max(0, lowestExponent - exponent);
    if (kept < 0) return tl::unexpected(OutOfRange::tooSmall);
    const int dropped = topBit + 1 - kept;
    const std::uint64_t half = std::uint64_t{1} << (dropped - 1);
    const std::uint64_t tail = quotient & ((half << 1) - 1);
    quotient >>= dropped;
    const bool isTie = tail == half && remainder == 0;
    if (tail >= half && (!isTie || quotient % 2 == 1)) ++quotient;
    const double value = std::ldexp(static_cast<double>(quotient), dropped - shift);
    if (std::isinf(value)) return tl::unexpected(OutOfRange::tooLarge);
    if (quotient == 0) return tl::unexpected(OutOfRange::tooSmall);
    return value;
}

/// value / factor, exactly.
Fraction fractionOf(double value, Factor factor) {
    int exponent = 0;
    const double mantissa = std::frexp(value, &exponent);
    Fraction f{cpp_int(static_cast<std::uint64_t>(std::ldexp(mantissa, mantissaBits))), cpp_int(1)};
    exponent -= mantissaBits;
    (exponent > 0 ? f.numerator : f.denominator) <<= static_cast<unsigned>(std::abs(exponent));
    f.numerator *= factor.denominator;
    f.denominator *= factor.numerator;
    return f;
}

/// The first 17 digits of a fraction, what is left behind them, and the power of ten of the last.
struct Leading {
    std::uint64_t digits = 0;
    int exponent = 0;
    bool exact = false;
    bool aboveHalf = false;
};

Leading leadingDigits(const Fraction& f) {
    const std::uint64_t least = 10'000'000'000'000'000U;
    const double bits = highestBit(f.numerator) - highestBit(f.denominator);
    int exponent = static_cast<int>(std::floor(bits * std::log10(2.0))) - (mostDigits - 1);
    while (true) {
        Fraction scaled = f;
        (exponent < 0 ? scaled.numerator : scaled.denominator) *= powerOfTen(std::abs(exponent));
        cpp_int whole;
        cpp_int remainder;
        boost::multiprecision::divide_qr(scaled.numerator, scaled.denominator, whole, remainder);
        if (whole >= least && whole < cpp_int(least) * 10) {
            return {static_cast<std::uint64_t>(whole), exponent, remainder == 0,
                    remainder * 2 > scaled.denominator};
        }
        exponent += whole < least ? -1 : 1;
    }
}

Decimal withoutTrailingZeros(std::uint64_t digits, int exponent) {
    while (digits % 10 == 0) {
        digits /= 10;
        ++exponent;
    }
    return {std::to_string(digits), exponent};
}

}  // namespace

tl::expected<double, OutOfRange> roundedSum(std::span<const Piece> pieces) {
    if (pieces.size() == 1) {
        bool done = false;
        const double value = quickly(pieces.front(), done);
        if (done) return value;
    }
    Fraction sum{cpp_int(0), cpp_int(1)};
    for (const auto& piece : pieces) {
        const Fraction f = fractionOf(piece);
        sum.numerator = sum.numerator * f.denominator + f.numerator * sum.denominator;
        sum.denominator *= f.denominator;
    }
    return rounded(sum);
}

Decimal shortestDecimal(double value, Factor factor) {
    if (value == 0.0) return {"0", 0};
    const Leading leading = leadingDigits(fractionOf(value, factor));
    std::uint64_t unit = 1;
    for (int i = 1; i < mostDigits; ++i) unit *= 10;
    for (int dropped = mostDigits - 1; dropped >= 0; --dropped, unit /= 10) {
        const std::uint64_t below = leading.digits / unit;
        const std::uint64_t rest = leading.digits % unit;
        const bool upFirst = unit == 1 ? leading.aboveHalf : rest >= unit - rest;
        const std::array<std::uint64_t, 2> candidates{below + (upFirst ? 1 : 0),
                                                      below + (upFirst ? 0 : 1)};
        for (const std::uint64_t candidate : candidates) {
            if (candidate == 0) continue;
            const Decimal decimal = withoutTrailingZeros(candidate, leading.exponent + dropped);
            const Piece piece{decimal.digits, decimal.exponent, 1, factor};
            if (roundedSum({&piece, 1}) == value) return decimal;
        }
    }
    return withoutTrailingZeros(leading.digits, leading.exponent);
}

}  // namespace fayline::detail
