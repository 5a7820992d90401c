#include "quantity/display.h"

#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <numeric>

#include "quantity/printing.h"

namespace fayline {
namespace {

constexpr const char* notKnown = "not known";

/// Above this the count of steps is no longer whole in a double; such a length is shown exactly.
constexpr double mostSteps = 1.0e15;

/// No exponent, point as decimal mark, trailing zeros kept.
std::string fixedText(double value, int decimals) {
    std::array<char, 400> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                   std::chars_format::fixed, decimals);
    std::string text(buffer.data(), end.ptr);
    const bool isZero = text.find_first_of("123456789") == std::string::npos;
    return isZero && text.starts_with('-') ? text.substr(1) : text;
}

std::string withoutTrailingZeros(std::string text) {
    if (text.find('.') == std::string::npos) return text;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.')) text.pop_back();
    return text;
}

double roundedTo(double value, int significant) {
    std::array<char, 64> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                   std::chars_format::scientific, significant - 1);
    double nearest = 0.0;
    std::from_chars(buffer.data(), end.ptr, nearest);
    return nearest;
}

/// Zeros in place of whole digits that do not count: 12345 becomes 12300.
std::string significantText(double value, int significant) {
    const double nearest = roundedTo(value, significant);
    if (nearest == 0.0) return "0";
    const int magnitude = static_cast<int>(std::floor(std::log10(std::abs(nearest))));
    return withoutTrailingZeros(fixedText(nearest, std::max(0, significant - 1 - magnitude)));
}

/// Whether the text of the value reaches a size: 999.7 to three digits is 1000.
bool showsAtLeast(double size, double value, int significant) {
    return roundedTo(std::abs(value), significant) >= size;
}

std::string withUnit(double value, int significant, const char* unit) {
    if (!std::isfinite(value)) return notKnown;
    return significantText(value, significant) + " " + unit;
}

std::string fractionText(std::int64_t numerator, std::int64_t denominator) {
    const std::int64_t common = std::gcd(numerator, denominator);
    return std::to_string(numerator / common) + "/" + std::to_string(denominator / common);
}

/// 40-5/8, 40, 5/8, 0.
std::string mixedText(std::int64_t steps, std::int64_t perInch) {
    const std::int64_t whole = steps / perInch;
    const std::int64_t rest = steps % perInch;
    if (rest == 0) return std::to_string(whole);
    if (whole == 0) return fractionText(rest, perInch);
    return std::to_string(whole) + "-" + fractionText(rest, perInch);
}

std::string feetText(std::int64_t steps, std::int64_t perInch) {
    const std::int64_t feet = steps / (12 * perInch);
    const std::string inches = mixedText(steps % (12 * perInch), perInch) + "\"";
    return feet == 0 ? inches : std::to_string(feet) + "'-" + inches;
}

std::string threeGroups(std::int64_t sixteenths) {
    const std::int64_t inches = sixteenths / 16;
    return std::to_string(inches / 12) + "-" + std::to_string(inches % 12) + "-" +
           std::to_string(sixteenths % 16 / 2) + (sixteenths % 2 == 1 ? "+" : "");
}

std::string millimetresText(Length value, UnitMark mark, int perMillimetre) {
    const double steps = std::round(inMillimetres(value) * perMillimetre);
    constexpr int decimals = 6;
    return withoutTrailingZeros(fixedText(steps / perMillimetre, decimals)) +
           (mark == UnitMark::shown ? " mm" : "");
}

constexpr double newtonsPerPound = 4.4482216152605;
constexpr double kilogramsPerPound = 0.45359237;
constexpr double pascalsPerPsi = newtonsPerPound / (0.0254 * 0.0254);
constexpr double kgPerM3PerLbPerFt3 = kilogramsPerPound / (0.3048 * 0.3048 * 0.3048);

}  // namespace

std::string displayLength(Length value, LengthStyle style, UnitMark mark, LengthStep step) {
    if (!isFinite(value)) return notKnown;
    if (style == LengthStyle::millimetres) {
        return millimetresText(value, mark, step.perMillimetre);
    }
    const int perInch = style == LengthStyle::feetInchesEighths ? 16 : step.perInch;
    const double exactSteps = std::round(std::abs(inInches(value)) * perInch);
    if (exactSteps > mostSteps) return exactText(value, LengthUnit::in);
    const auto steps = static_cast<std::int64_t>(exactSteps);
    const std::string sign = value < Length{} && steps > 0 ? "-" : "";
    switch (style) {
        case LengthStyle::inchFractions:
            return sign + mixedText(steps, perInch) + (mark == UnitMark::shown ? "\"" : "");
        case LengthStyle::feetInches:
            return sign + feetText(steps, perInch);
        case LengthStyle::feetInchesEighths:
            return sign + threeGroups(steps);
        case LengthStyle::millimetres:
            break;
    }
    return notKnown;
}

std::string displayForce(Force value, UnitSystem system, int significant) {
    const double force_N = value.si();
    if (system == UnitSystem::inches) {
        return withUnit(force_N / newtonsPerPound, significant, "lb");
    }
    if (showsAtLeast(1000.0, force_N, significant)) {
        return withUnit(force_N / 1000.0, significant, "kN");
    }
    return withUnit(force_N, significant, "N");
}

std::string displayStress(Stress value, UnitSystem system, int significant) {
    const double stress_Pa = value.si();
    if (system == UnitSystem::inches) {
        const double stress_psi = stress_Pa / pascalsPerPsi;
        if (!showsAtLeast(10'000.0, stress_psi, significant)) {
            return withUnit(stress_psi, significant, "psi");
        }
        return withUnit(stress_psi / 1000.0, significant, "ksi");
    }
    if (stress_Pa != 0.0 && !showsAtLeast(1.0e5, stress_Pa, significant)) {
        return withUnit(stress_Pa / 1000.0, significant, "kPa");
    }
    return withUnit(stress_Pa / 1.0e6, significant, "MPa");
}

std::string displayMass(Mass value, UnitSystem system, int significant) {
    if (system == UnitSystem::inches) {
        return withUnit(value.si() / kilogramsPerPound, significant, "lb");
    }
    return withUnit(value.si(), significant, "kg");
}

std::string displayDensity(Density value, UnitSystem system, int significant) {
    if (system == UnitSystem::inches) {
        return withUnit(value.si() / kgPerM3PerLbPerFt3, significant, "lb/ft³");
    }
    return withUnit(value.si(), significant, "kg/m³");
}

std::string displayAngle(Angle value) {
    if (!std::isfinite(value.inDegrees())) return notKnown;
    return withoutTrailingZeros(fixedText(value.inDegrees(), 1)) + "°";
}

std::string marginText(double margin) {
    if (!std::isfinite(margin)) return notKnown;
    // Cut the shortest decimal of the double: 0.29 stays 0.29, and nothing below 1 reads 1.00.
    std::array<char, 400> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), margin,
                                   std::chars_format::fixed);
    std::string text(buffer.data(), end.ptr);
    auto point = text.find('.');
    if (point == std::string::npos) {
        point = text.size();
        text += '.';
    }
    const std::size_t decimals = std::abs(margin) < 10.0 ? 2 : 1;
    text.resize(point + 1 + decimals, '0');
    return "×" + text;
}

std::string bothUnits(Length value) {
    return rounded(inInches(value), 2) + " in (" + rounded(inMillimetres(value), 1) + " mm)";
}

std::string rounded(double value, int decimals) {
    // Not printf: the decimal mark must not follow the locale.
    std::array<char, 400> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value,
                                   std::chars_format::fixed, decimals);
    return {text.data(), end.ptr};
}

}  // namespace fayline
