#include "quantity/printing.h"

#include <array>
#include <charconv>
#include <cmath>

#include "exact.h"
#include "unit_table.h"

namespace fayline {
namespace {

using detail::Decimal;
using detail::Factor;

/// Without an exponent while that stays short: 0.00005, 12300000.
std::string decimalText(const Decimal& decimal) {
    constexpr int longestPlain = 21;
    const auto size = static_cast<int>(decimal.digits.size());
    const int point = size + decimal.exponent;  // digits before the decimal point
    if (decimal.exponent >= 0 && point <= longestPlain) {
        return decimal.digits + std::string(static_cast<std::size_t>(decimal.exponent), '0');
    }
    if (decimal.exponent < 0 && point > 0) {
        const auto whole = static_cast<std::size_t>(point);
        return decimal.digits.substr(0, whole) + "." + decimal.digits.substr(whole);
    }
    constexpr int mostZeros = 6;
    if (point <= 0 && -point <= mostZeros) {
        return "0." + std::string(static_cast<std::size_t>(-point), '0') + decimal.digits;
    }
    std::string text = decimal.digits.substr(0, 1);
    if (size > 1) text += "." + decimal.digits.substr(1);
    return text + "e" + std::to_string(point - 1);
}

std::string numberText(double value, Factor factor) {
    const std::string sign = value < 0.0 ? "-" : "";
    return sign + decimalText(detail::shortestDecimal(std::abs(value), factor));
}

double nearestNumber(double value, Factor factor) {
    const std::string text = numberText(value, factor);
    double number = 0.0;
    std::from_chars(text.data(), text.data() + text.size(), number);
    return number;
}

/// Feet-inches-eighths, when the length is exactly that.
std::optional<std::string> threeGroups(Length value) {
    constexpr double sixteenthsPerMetre = 16.0 / 0.0254;
    constexpr double mostSixteenths = 192.0 * 999'999'999.0;  // feet of nine digits are read
    const double nearest = std::round(std::abs(value.si()) * sixteenthsPerMetre);
    if (nearest > mostSixteenths) return std::nullopt;
    const auto sixteenths = static_cast<std::int64_t>(nearest);
    const detail::Piece piece{std::to_string(sixteenths), 0, 16, detail::factorOf(LengthUnit::in)};
    if (detail::roundedSum({&piece, 1}) != std::abs(value.si())) return std::nullopt;
    const std::int64_t inches = sixteenths / 16;
    return (value < Length{} ? "-" : "") + std::to_string(inches / 12) + "-" +
           std::to_string(inches % 12) + "-" + std::to_string(sixteenths % 16 / 2) +
           (sixteenths % 2 == 1 ? "+" : "");
}

template <class Q, class Unit>
std::string exact(Q value, Unit unit) {
    return numberText(value.si(), detail::factorOf(unit)) + " " + std::string(unitText(unit));
}

}  // namespace

std::string exactText(Length value, LengthUnit unit) {
    if (unit == LengthUnit::feetInchesEighths) {
        if (const auto groups = threeGroups(value)) return *groups;
        return exact(value, LengthUnit::in);
    }
    return exact(value, unit);
}
std::string exactText(Area value, AreaUnit unit) {
    return exact(value, unit);
}
std::string exactText(Mass value, MassUnit unit) {
    return exact(value, unit);
}
std::string exactText(Force value, ForceUnit unit) {
    return exact(value, unit);
}
std::string exactText(Stress value, StressUnit unit) {
    return exact(value, unit);
}
std::string exactText(Density value, DensityUnit unit) {
    return exact(value, unit);
}
std::string exactText(Angle value) {
    return numberText(value.inDegrees(), {}) + " deg";
}
std::string exactText(Gauge value) {
    return "No. " + std::to_string(value.number());
}
std::string exactText(double ratio) {
    return numberText(ratio, {});
}

double numberIn(Length value, LengthUnit unit) {
    return nearestNumber(value.si(), detail::factorOf(unit));
}
double numberIn(Area value, AreaUnit unit) {
    return nearestNumber(value.si(), detail::factorOf(unit));
}
double numberIn(Mass value, MassUnit unit) {
    return nearestNumber(value.si(), detail::factorOf(unit));
}
double numberIn(Force value, ForceUnit unit) {
    return nearestNumber(value.si(), detail::factorOf(unit));
}
double numberIn(Stress value, StressUnit unit) {
    return nearestNumber(value.si(), detail::factorOf(unit));
}
double numberIn(Density value, DensityUnit unit) {
    return nearestNumber(value.si(), detail::factorOf(unit));
}

}  // namespace fayline
