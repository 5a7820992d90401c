#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <bit>
#include <cmath>
#include <numeric>

#include "by_kind.h"
#include "quantity/printing.h"
#include "quantity/reading.h"

namespace fayline {
namespace {

/// Every finite double alike, huge and subnormal ones included; never minus zero.
double anyDouble() {
    const auto bits = *rc::gen::arbitrary<std::uint64_t>();
    // A shuffle, as small numbers are drawn more often than large ones.
    const auto value = std::bit_cast<double>(bits * 0x9E3779B97F4A7C15U);
    RC_PRE(std::isfinite(value) && (value != 0.0 || !std::signbit(value)));
    return value;
}

/// A double of a size that occurs in a hull, with all its bits in use.
double ordinaryDouble() {
    const double value = std::abs(anyDouble());
    int exponent = 0;
    const double mantissa = std::frexp(value, &exponent);
    return std::ldexp(mantissa, *rc::gen::inRange(-30, 40));
}

bool isSame(double a, double b) {
    return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b);
}

template <class Q, class Unit, class Read>
void comesBack(Read read, double si, Unit first, Unit last) {
    for (int i = static_cast<int>(first); i <= static_cast<int>(last); ++i) {
        const auto unit = static_cast<Unit>(i);
        const std::string text = exactText(Q::fromSi(si), unit);
        const auto back = read(text, "", std::nullopt);
        if (!back) RC_FAIL(text + ": " + back.error().line());
        if (!isSame(back->si(), si)) RC_FAIL(text + " came back as another double");
    }
}

void allComeBack(double si) {
    comesBack<Length>(readLength, si, LengthUnit::mm, LengthUnit::feetInchesEighths);
    comesBack<Area>(readArea, si, AreaUnit::mm2, AreaUnit::ft2);
    comesBack<Mass>(readMass, si, MassUnit::g, MassUnit::lb);
    comesBack<Force>(readForce, si, ForceUnit::n, ForceUnit::kgf);
    comesBack<Stress>(readStress, si, StressUnit::pa, StressUnit::ksi);
    comesBack<Density>(readDensity, si, DensityUnit::kgPerM3, DensityUnit::lbPerIn3);
    RC_ASSERT(isSame(readAngle(exactText(Angle::degrees(si)), "")->inDegrees(), si));
    RC_ASSERT(isSame(*readRatio(exactText(si), ""), si));
}

RC_GTEST_PROP(ExactTextProperty, AnyDoubleComesBackBitForBit, ()) {
    allComeBack(anyDouble());
}

RC_GTEST_PROP(ExactTextProperty, OrdinaryDoublesComeBackBitForBit, ()) {
    allComeBack(ordinaryDouble());
}

/// The digits of a plain decimal such as "0.0123 in", and the power of ten of the last of them.
std::pair<std::uint64_t, int> digitsOf(const std::string& text) {
    std::uint64_t digits = 0;
    int exponent = 0;
    bool behindPoint = false;
    for (const char c : text) {
        if (c == '.') behindPoint = true;
        if (c < '0' || c > '9') continue;
        digits = digits * 10 + static_cast<std::uint64_t>(c - '0');
        if (behindPoint) --exponent;
    }
    while (digits > 0 && digits % 10 == 0) {
        digits /= 10;
        ++exponent;
    }
    return {digits, exponent};
}

RC_GTEST_PROP(ExactTextProperty, NoShorterDecimalReadsTheSame, ()) {
    const auto value = Length::fromSi(ordinaryDouble());
    const std::string text = exactText(value, LengthUnit::in);
    RC_PRE(value > Length{} && text.find('e') == std::string::npos);
    const auto [digits, exponent] = digitsOf(text);
    // The two decimals with one digit less on either side are nearer than all shorter ones.
    for (const std::uint64_t shorter : {digits / 10, digits / 10 + 1}) {
        const auto other =
            readLength(std::to_string(shorter) + "e" + std::to_string(exponent + 1) + " in", "");
        RC_ASSERT(!other || !isSame(other->si(), value.si()));
    }
}

RC_GTEST_PROP(SpellingProperty, EverySpellingOfAFractionIsOneDouble, ()) {
    const auto feet = *rc::gen::inRange<std::int64_t>(0, 200);
    const auto inches = *rc::gen::inRange<std::int64_t>(0, 12);
    const std::int64_t divisor = std::int64_t{1} << *rc::gen::inRange(1, 7);
    const auto numerator = *rc::gen::inRange<std::int64_t>(0, divisor);
    const std::int64_t parts = (feet * 12 + inches) * divisor + numerator;
    const double wanted = double(parts * 127) / double(divisor * 5000);

    const std::string f = std::to_string(feet);
    const std::string i = std::to_string(inches);
    const std::string all = std::to_string(feet * 12 + inches);
    const std::string fraction = std::to_string(numerator) + "/" + std::to_string(divisor);
    const std::string decimal = exactText(double(parts) / double(divisor));
    const std::string hundredths = exactText(double(parts * 254) / double(divisor));  // of a mm
    for (const std::string& text :
         {all + " " + fraction + " in", all + "-" + fraction + "\"", f + "' " + i + " " + fraction,
          f + "'-" + i + "-" + fraction + "\"", f + "ft" + i + "in + " + fraction + " in",
          std::to_string(parts) + "/" + std::to_string(divisor) + " in", decimal + " in",
          fraction + "\" + " + f + "' + " + i + " inches", hundredths + "e-1 mm"}) {
        const auto read = readLength(text, "");
        if (!read) RC_FAIL(read.error().line());
        if (!isSame(read->si(), wanted)) RC_FAIL(text + " is another double");
    }
    const auto negative = readLength("-" + all + " " + fraction + " in", "");
    RC_ASSERT(negative && negative->si() == -wanted);
}

RC_GTEST_PROP(DisplayProperty, WholeStepsReadBackUnchanged, ()) {
    const auto steps = *rc::gen::inRange(-200'000, 200'000);
    const auto read = [](const std::string& text, std::optional<LengthUnit> bare = {}) {
        return readLength(text, "", bare).value();
    };
    const Length inchSteps = read(std::to_string(std::abs(steps)) + "/64 in");
    const Length value = steps < 0 ? -inchSteps : inchSteps;
    RC_ASSERT(read(displayLength(value, LengthStyle::inchFractions)) == value);
    RC_ASSERT(read(displayLength(value, LengthStyle::inchFractions, UnitMark::leftOut),
                   LengthUnit::in) == value);
    RC_ASSERT(read(displayLength(value, LengthStyle::feetInches)) == value);
    const Length sixteenths = read(std::to_string(std::abs(steps)) + "/16 in");
    RC_ASSERT(read(displayLength(sixteenths, LengthStyle::feetInchesEighths)) == sixteenths);
    const Length halves = read(exactText(steps / 2.0) + " mm");
    RC_ASSERT(read(displayLength(halves, LengthStyle::millimetres)) == halves);
}

/// Pieces of which quantities, and things just beside quantities, are made.
std::string soup() {
    const auto parts = *rc::gen::container<std::vector<std::string>>(rc::gen::element<std::string>(
        "1", "40", "5/8", "0", "12", " ", "-", "+", "/", ".", ",", "'", "\"", "in", "ft", "mm",
        "lb", "kN", "e", "e5", "½", "⅝", "′", "²", "°", "#", "No.", "%", "2", "N/mm2", "\xFF"));
    return std::accumulate(parts.begin(), parts.end(), std::string());
}

RC_GTEST_PROP(ReadingProperty, AnythingIsReadOrRefusedInWords, ()) {
    const std::string text =
        *rc::gen::arbitrary<bool>() ? soup() : *rc::gen::arbitrary<std::string>();
    for (const auto* kind : {"length", "mass", "force", "angle", "ratio", "gauge", "count"}) {
        const auto read = readByKind(kind, text, "");
        RC_ASSERT(read.has_value());
        if (*read) {
            RC_ASSERT(std::isfinite(**read));
        } else {
            RC_ASSERT(!read->error().code.empty());
            RC_ASSERT(!read->error().what.empty());
            RC_ASSERT(!read->error().allowed.empty());
            RC_ASSERT(read->error().line().find('\n') == std::string::npos);
        }
    }
}

}  // namespace
}  // namespace fayline
