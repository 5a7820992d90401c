#include "quantity/reading.h"

#include <array>

#include "lexer.h"
#include "parse.h"
#include "quantity/text.h"

namespace fayline {
namespace {

using detail::Bare;
using detail::Kind;

constexpr int largestGauge = 30;

template <class Q, class BareUnit>
Result<Q> read(std::string_view text, std::string_view where, Kind kind,
               std::optional<BareUnit> bare) {
    Bare taken;
    if (bare) taken.factor = detail::factorOf(*bare);
    return detail::parseQuantity(text, where, kind, taken).map(&Q::fromSi);
}

/// Digits with a sign at most; nothing when they do not fit an int.
std::optional<int> wholeNumber(std::string_view text) {
    const bool negative = text.starts_with('-');
    if (negative || text.starts_with('+')) text.remove_prefix(1);
    while (text.size() > 1 && text.front() == '0') text.remove_prefix(1);
    constexpr std::size_t mostDigits = 9;
    if (text.empty() || text.size() > mostDigits) return std::nullopt;
    int value = 0;
    for (const char c : text) {
        if (c < '0' || c > '9') return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return negative ? -value : value;
}

std::string fromTo(int least, int most) {
    return "from " + std::to_string(least) + " to " + std::to_string(most);
}

/// The kind of a text with a unit, when it can be read as one of these.
std::optional<Kind> kindOf(std::string_view text) {
    constexpr std::array kinds{Kind::length, Kind::mass,    Kind::force, Kind::stress,
                               Kind::area,   Kind::density, Kind::angle};
    for (const Kind kind : kinds) {
        if (detail::parseQuantity(text, "", kind, Bare{})) return kind;
    }
    return std::nullopt;
}

}  // namespace

Result<Length> readLength(std::string_view text, std::string_view where,
                          std::optional<LengthUnit> bare) {
    if (bare == LengthUnit::feetInchesEighths) {
        return detail::parseQuantity(text, where, Kind::length, Bare{std::nullopt, true})
            .map(&Length::fromSi);
    }
    return read<Length>(text, where, Kind::length, bare);
}

Result<Area> readArea(std::string_view text, std::string_view where, std::optional<AreaUnit> bare) {
    return read<Area>(text, where, Kind::area, bare);
}

Result<Mass> readMass(std::string_view text, std::string_view where, std::optional<MassUnit> bare) {
    return read<Mass>(text, where, Kind::mass, bare);
}

Result<Force> readForce(std::string_view text, std::string_view where,
                        std::optional<ForceUnit> bare) {
    return read<Force>(text, where, Kind::force, bare);
}

Result<Stress> readStress(std::string_view text, std::string_view where,
                          std::optional<StressUnit> bare) {
    return read<Stress>(text, where, Kind::stress, bare);
}

Result<Density> readDensity(std::string_view text, std::string_view where,
                            std::optional<DensityUnit> bare) {
    return read<Density>(text, where, Kind::density, bare);
}

Result<Angle> readAngle(std::string_view text, std::string_view where) {
    return detail::parseQuantity(text, where, Kind::angle, Bare{detail::Factor{}, false})
        .map(&Angle::degrees);
}

Result<double> readRatio(std::string_view text, std::string_view where) {
    return detail::parseQuantity(text, where, Kind::number, Bare{detail::Factor{}, false});
}

Result<int> readCount(std::string_view text, std::string_view where, int least, int most) {
    const auto digits = trimmed(text);
    const std::string allowed = "a whole number " + fromTo(least, most);
    if (digits.empty()) {
        return tl::unexpected(
            Problem{"number.empty", std::string(where), "a whole number is missing here", allowed});
    }
    const auto count = wholeNumber(digits);
    if (!count) {
        return tl::unexpected(Problem{"number.malformed", std::string(where),
                                      "\"" + quotable(digits) +
                                          "\" is not a whole number that "
                                          "can be counted with",
                                      allowed});
    }
    if (*count < least || *count > most) {
        return tl::unexpected(Problem{"number.out_of_limits", std::string(where),
                                      std::to_string(*count) + " is outside the limits", allowed});
    }
    return *count;
}

Result<Gauge> readGauge(std::string_view text, std::string_view where) {
    const auto typed = trimmed(text);
    const std::string allowed = "a gauge such as No. 14, " + fromTo(0, largestGauge);
    if (typed.empty()) {
        return tl::unexpected(
            Problem{"number.empty", std::string(where), "a gauge is missing here", allowed});
    }
    const std::string spelling = lowered(detail::plainSpelling(typed));
    std::string_view number = spelling;
    for (const std::string_view sign : {"no.", "no", "#"}) {
        if (!number.starts_with(sign)) continue;
        number = trimmed(number.substr(sign.size()));
        break;
    }
    const auto gauge = number.starts_with('+') ? std::nullopt : wholeNumber(number);
    if (gauge && *gauge >= 0 && *gauge <= largestGauge && !number.starts_with('-')) {
        return Gauge(*gauge);
    }
    if (const auto kind = kindOf(typed)) {
        return tl::unexpected(detail::wrongKind(typed, where, *kind, Kind::gauge));
    }
    return tl::unexpected(Problem{gauge ? "number.out_of_limits" : "number.malformed",
                                  std::string(where), "\"" + quotable(typed) + "\" is not a gauge",
                                  allowed});
}

}  // namespace fayline
