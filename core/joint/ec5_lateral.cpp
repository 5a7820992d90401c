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

/// A mode, and whether the rope helps it.
struct Roped {
    ModeLoad mode;
    bool bends;
};

template <std::size_t N>
Ec5Lateral withRope(const std::array<Roped, N>& modes, Force axial, double ropeLimit) {
    Ec5Lateral result;
    bool first = true;
    for (const Roped& roped : modes) {
        const Force rope =
            roped.bends ? min(max(axial, {}) / 4.0, roped.mode.load * ropeLimit) : Force{};
        const Force total = roped.mode.load + rope;
        if (first || total < result.onePlane) {
            result.onePlane = total;
            result.rope = rope;
            result.governs = roped.mode.name;
            first = false;
        }
        result.modes.push_back(roped.mode);
    }
    return result;
}

}  // namespace

Ec5Lateral ec5SingleShear(const Ec5Dowel& dowel, Force axial, double ropeLimit,
                          const Ec5Coefficients& coefficients) {
    const Johansen modes = withGap(dowel, johansen(dowel, coefficients));
    return withRope(std::array<Roped, 6>{{{{"a", modes.a}, false},
                                          {{"b", modes.b}, false},
                                          {{"c", modes.c}, true},
                                          {{"d", modes.d}, true},
                                          {{"e", modes.e}, true},
                                          {{"f", modes.f}, true}}},
                    axial, ropeLimit);
}

Ec5Lateral ec5DoubleShear(const Ec5Dowel& dowel, Force axial, double ropeLimit,
                          const Ec5Coefficients& coefficients) {
    const Johansen modes = withGap(dowel, johansen(dowel, coefficients));
    return withRope(std::array<Roped, 4>{{{{"g", modes.a}, false},
                                          {{"h", modes.b / 2.0}, false},
                                          {{"j", modes.d}, true},
                                          {{"k", modes.f}, true}}},
                    axial, ropeLimit);
}

}  // namespace fayline
