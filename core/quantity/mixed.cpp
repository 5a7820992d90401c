#include "mixed.h"

#include <algorithm>
#include <iterator>

namespace fayline::detail {
namespace {

constexpr std::size_t longestWhole = 9;
constexpr int largestExponent = 400;

tl::expected<Piece, Refusal> takeDecimal(Cursor& cursor) {
    std::string_view text = cursor.peek().text;
    Piece piece;
    if (const auto e = text.find_first_of("eE"); e != std::string_view::npos) {
        std::string_view exponent = text.substr(e + 1);
        const bool isNegative = exponent.starts_with('-');
        if (!isWhole(exponent.substr(0, 1))) exponent.remove_prefix(1);
        const auto size = smallWhole(exponent);
        if (!size || *size > largestExponent) {
            return refusalOf(isNegative ? OutOfRange::tooSmall : OutOfRange::tooLarge);
        }
        piece.exponent = static_cast<int>(isNegative ? -*size : *size);
        text = text.substr(0, e);
    }
    const auto point = text.find_first_of(".,");
    if (point != std::string_view::npos) {
        if (text.find_first_of(".,", point + 1) != std::string_view::npos) {
            return tl::unexpected(Refusal{"number.separators",
                                          " has more than one point or comma; digits are never "
                                          "grouped, both mark the decimals",
                                          "1.5 or 1,5"});
        }
        if (point + 1 == text.size()) {
            return malformed("a digit is missing behind the point or comma");
        }
        piece.exponent -= static_cast<int>(text.size() - point - 1);
    }
    std::copy_if(text.begin(), text.end(), std::back_inserter(piece.digits),
                 [](char c) { return c != '.' && c != ','; });
    cursor.skip();
    return piece;
}

tl::expected<Piece, Refusal> takeFraction(Cursor& cursor, bool behindWhole) {
    const std::string_view above = cursor.peek().text;
    if (!cursor.sees(Mark::number, 2)) return malformed("a number is missing below the stroke");
    const auto numerator = smallWhole(above);
    const auto divisor = smallWhole(cursor.peek(2).text);
    if (!numerator || !divisor) {
        return malformed("a fraction has two whole numbers of at most nine digits");
    }
    if (*divisor == 0) {
        return tl::unexpected(Refusal{"number.zero_denominator",
                                      " has a zero below the stroke of its fraction",
                                      "a number from 1 up there"});
    }
    if (behindWhole && *numerator >= *divisor) {
        return malformed("a fraction behind a whole number is less than one");
    }
    cursor.skip(3);
    if (cursor.sees(Mark::slash)) return malformed("a fraction has one stroke");
    return Piece{std::string(above), 0, *divisor, {}};
}

}  // namespace

tl::unexpected<Refusal> malformed(const std::string& why) {
    return tl::unexpected(Refusal{"number.malformed", " cannot be read: " + why, ""});
}

tl::unexpected<Refusal> refusalOf(OutOfRange outOfRange) {
    if (outOfRange == OutOfRange::tooLarge) {
        return tl::unexpected(Refusal{"number.too_large", " is too large to reckon with", ""});
    }
    return tl::unexpected(Refusal{"number.too_small", " is too small to tell from zero", ""});
}

tl::expected<Pieces, Refusal> takeMixed(Cursor& cursor) {
    const auto alone = [](Piece piece) { return Pieces{std::move(piece)}; };
    if (cursor.sees(Mark::slash, 1)) return takeFraction(cursor, false).map(alone);
    const bool dash =
        cursor.sees(Mark::dash, 1) && !cursor.peek(1).blankBefore && !cursor.peek(2).blankBefore;
    const std::size_t fractionAt = dash ? 2 : 1;
    if (!cursor.sees(Mark::number, fractionAt) || !cursor.sees(Mark::slash, fractionAt + 1)) {
        return takeDecimal(cursor).map(alone);
    }
    if (!isWhole(cursor.peek().text)) {
        return malformed("a number with a point has a fraction behind it");
    }
    auto whole = takeDecimal(cursor);
    if (!whole) return tl::unexpected(std::move(whole.error()));
    if (dash) cursor.skip();
    auto fraction = takeFraction(cursor, true);
    if (!fraction) return tl::unexpected(std::move(fraction.error()));
    return Pieces{std::move(*whole), std::move(*fraction)};
}

bool isWhole(std::string_view number) {
    return number.find_first_not_of("0123456789") == std::string_view::npos;
}

std::optional<std::int64_t> smallWhole(std::string_view number) {
    if (number.empty() || !isWhole(number) || number.size() > longestWhole) return std::nullopt;
    std::int64_t value = 0;
    for (const char c : number) value = value * 10 + (c - '0');
    return value;
}

}  // namespace fayline::detail
