#include "practice.h"

#include <cmath>

#include "quantity/display.h"

namespace fayline {
namespace {

/// What rounding of arithmetic may leave over.
constexpr double noise_mm = 1e-6;

std::string whole(double value_mm) {
    return std::to_string(std::lround(value_mm)) + " mm";
}

}  // namespace

Length spread(Length from, Length to, int i, int count) {
    if (count <= 1) return (from + to) / 2.0;
    return from + (static_cast<double>(i) / (count - 1)) * (to - from);
}

std::string shown(Length length) {
    return displayLength(length, LengthStyle::millimetres, UnitMark::shown, {64, 10});
}

std::string wholeUp(Length length) {
    return whole(std::ceil(inMillimetres(length) - noise_mm));
}

std::string wholeDown(Length length) {
    return whole(std::floor(inMillimetres(length) + noise_mm));
}

}  // namespace fayline
