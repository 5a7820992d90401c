#include "joint/dowel.h"

#include <algorithm>
#include <cmath>

namespace fayline {
namespace {

/// The positive root of A·P² + B·P + C = 0 for A > 0, B ≥ 0, C ≤ 0, in the form that loses no
/// digits when B is large.
Force positiveRoot(double a, double b, double c) {
    const double root = std::sqrt(b * b - 4.0 * a * c);
    if (b + root <= 0.0) return {};
    return newtons(-2.0 * c / (b + root));
}

}  // namespace

DowelModes dowelModes(const DowelInput& input) {
    const double qs = input.sideBearing.si();
    const double qm = input.mainBearing.si();
    DowelModes modes;
    modes.im = input.mainBearing * input.mainLength;
    modes.is = input.sideBearing * input.sideLength;
    if (qs <= 0.0 || qm <= 0.0) return modes;
    const double ls = input.sideLength.si();
    const double lm = input.mainLength.si();
    const double g = input.gap.si();
    const double ms = input.sideMoment.si();
    const double mm = input.mainMoment.si();
    const double side = qs * ls * ls / 4.0;
    const double main = qm * lm * lm / 4.0;
    modes.ii = positiveRoot(0.25 / qs + 0.25 / qm, ls / 2.0 + g + lm / 2.0, -side - main);
    modes.iiim = positiveRoot(0.5 / qs + 0.25 / qm, g + lm / 2.0, -ms - main);
    modes.iiis = positiveRoot(0.25 / qs + 0.5 / qm, ls / 2.0 + g, -side - mm);
    modes.iv = positiveRoot(0.5 / qs + 0.5 / qm, g, -ms - mm);
    return modes;
}

Moment dowelMoment(Stress bendingYield, Length width, DowelSection section) {
    const double cube = width.si() * width.si() * width.si();
    return Moment::fromSi(bendingYield.si() * cube / (section == DowelSection::round ? 6.0 : 4.0));
}

const ModeLoad& leastMode(const ModeLoads& modes) {
    return *std::min_element(modes.begin(), modes.end(),
                             [](const ModeLoad& a, const ModeLoad& b) { return a.load < b.load; });
}

}  // namespace fayline
