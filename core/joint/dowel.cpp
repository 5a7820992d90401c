#include "joint/dowel.h"

#include <array>
#include <cmath>

namespace fayline {
namespace {

/// Four equations A·P² + B·P + C = 0 for A > 0, B ≥ 0, C ≤ 0.
struct Quadratics {
    std::array<double, 4> a, b, c;
};

/// Their positive roots, in the form that loses no digits when B is large.
std::array<double, 4> positiveRoots(const Quadratics& all) {
    std::array<double, 4> roots{};
    for (std::size_t i = 0; i < 4; ++i) {
        const double sum = all.b[i] + std::sqrt(all.b[i] * all.b[i] - 4.0 * all.a[i] * all.c[i]);
        roots[i] = sum > 0.0 ? -2.0 * all.c[i] / sum : 0.0;
    }
    return roots;
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
    const double perSide = 0.25 / qs;
    const double perMain = 0.25 / qm;
    const auto roots = positiveRoots({{perSide + perMain, 2.0 * perSide + perMain,
                                       perSide + 2.0 * perMain, 2.0 * (perSide + perMain)},
                                      {ls / 2.0 + g + lm / 2.0, g + lm / 2.0, ls / 2.0 + g, g},
                                      {-side - main, -ms - main, -side - mm, -ms - mm}});
    modes.ii = newtons(roots[0]);
    modes.iiim = newtons(roots[1]);
    modes.iiis = newtons(roots[2]);
    modes.iv = newtons(roots[3]);
    return modes;
}

Moment dowelMoment(Stress bendingYield, Length width, DowelSection section) {
    const double cube = width.si() * width.si() * width.si();
    return Moment::fromSi(bendingYield.si() * cube / (section == DowelSection::round ? 6.0 : 4.0));
}

}  // namespace fayline
