#include "joint/ec5_lateral.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace fayline {
namespace {

/// Johansen's modes without gap.
struct Johansen {
    Force a, b, c, d, e, f;
};

Johansen johansen(const Ec5Dowel& dowel, const Ec5Coefficients& coefficients) {
    const double strength_MPa = inMegapascals(dowel.embedment1);
    const double d_mm = inMillimetres(dowel.diameter);
    const double t1_mm = inMillimetres(dowel.thickness1);
    const double t2_mm = inMillimetres(dowel.thickness2);
    const double moment_Nmm = inNewtonMetres(dowel.yieldMoment) * 1000.0;
    const double beta = dowel.embedment2 / dowel.embedment1;
    const double perLength = strength_MPa * d_mm;
    // Each root multiplied out by its thickness, so that a thickness of nil divides nothing.
    const double turning =
        std::sqrt(beta * t1_mm * t1_mm +
                  2.0 * beta * beta * (t1_mm * t1_mm + t1_mm * t2_mm + t2_mm * t2_mm) +
                  beta * beta * beta * t2_mm * t2_mm) -
        beta * (t1_mm + t2_mm);
    const double hinge2 = std::sqrt(2.0 * beta * (1.0 + beta) * t1_mm * t1_mm +
                                    4.0 * beta * (2.0 + beta) * moment_Nmm / perLength) -
                          beta * t1_mm;
    const double hinge1 = std::sqrt(2.0 * beta * beta * (1.0 + beta) * t2_mm * t2_mm +
                                    4.0 * beta * (1.0 + 2.0 * beta) * moment_Nmm / perLength) -
                          beta * t2_mm;
    return {newtons(perLength * t1_mm),
            newtons(beta * perLength * t2_mm),
            newtons(perLength / (1.0 + beta) * turning),
            newtons(coefficients.oneHinge * perLength / (2.0 + beta) * hinge2),
            newtons(coefficients.oneHinge * perLength / (1.0 + 2.0 * beta) * hinge1),
            newtons(coefficients.twoHinges * std::sqrt(2.0 * beta / (1.0 + beta)) *
                    std::sqrt(2.0 * moment_Nmm * perLength))};
}

double ratio(Force with, Force without) {
    return without.si() > 0.0 ? with / without : 1.0;
}

Johansen withGap(const Ec5Dowel& dowel, Johansen modes) {
    if (dowel.gap.si() <= 0.0) return modes;
    DowelInput input{dowel.embedment1 * dowel.diameter,
                     dowel.embedment2 * dowel.diameter,
                     dowel.thickness1,
                     dowel.thickness2,
                     {},
                     dowel.yieldMoment,
                     dowel.yieldMoment};
    const DowelModes closed = dowelModes(input);
    input.gap = dowel.gap;
    const DowelModes open = dowelModes(input);
    modes.c *= ratio(open.ii, closed.ii);
    modes.d *= ratio(open.iiis, closed.iiis);
    modes.e *= ratio(open.iiim, closed.iiim);
    modes.f *= ratio(open.iv, closed.iv);
    return modes;
}

constexpr std::array<std::string_view, 6> single{"a", "b", "c", "d", "e", "f"};
constexpr std::array<std::string_view, 4> twice{"g", "h", "j", "k"};

/// The rope helps all but the first two modes, in which nothing bends or turns.
template <std::size_t N>
Ec5Lateral withRope(const std::array<std::string_view, N>& names, const std::array<Force, N>& modes,
                    Force axial, double ropeLimit) {
    const double pull_N = max(axial, {}).si() / 4.0;
    std::array<Force, N> ropes{};
    std::array<Force, N> totals{};
    for (std::size_t i = 0; i < N; ++i) {
        const double most_N = modes[i].si() * ropeLimit;
        ropes[i] = i < 2 ? Force{} : newtons(most_N < pull_N ? most_N : pull_N);
        totals[i] = modes[i] + ropes[i];
    }
    const std::size_t least = ModeLoads(names, totals).least();
    return {ModeLoads(names, modes), ropes[least], totals[least], names[least]};
}

}  // namespace

Ec5Lateral ec5SingleShear(const Ec5Dowel& dowel, Force axial, double ropeLimit,
                          const Ec5Coefficients& coefficients) {
    const Johansen m = withGap(dowel, johansen(dowel, coefficients));
    return withRope<6>(single, {m.a, m.b, m.c, m.d, m.e, m.f}, axial, ropeLimit);
}

Ec5Lateral ec5DoubleShear(const Ec5Dowel& dowel, Force axial, double ropeLimit,
                          const Ec5Coefficients& coefficients) {
    const Johansen m = withGap(dowel, johansen(dowel, coefficients));
    return withRope<4>(twice, {m.a, m.b / 2.0, m.d, m.f}, axial, ropeLimit);
}

}  // namespace fayline
