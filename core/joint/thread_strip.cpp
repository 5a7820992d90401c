#include "joint/thread_strip.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fayline {
namespace {

constexpr const char* stripClause =
    "metal set: ultimate shear on the thread's strip area (Machinery's Handbook 24, length of "
    "engagement)";
const double flank = 1.0 / std::numbers::sqrt3;  // tan 30°

/// Limits of size in millimetres, 6H nut on 6g bolt.
struct Limits {
    double pitch_mm, nutMinorMost_mm, nutPitchMost_mm, boltMajorLeast_mm, boltPitchLeast_mm;
};

Limits limitsOf(Length nominal, Length pitch) {
    const double d = inMillimetres(nominal);
    const double p = inMillimetres(pitch);
    const double logarithm = std::log(p);
    const double allowance = (15.0 + 11.0 * p) / 1000.0;
    const double pitchTolerance = 90.0 * std::exp(0.4 * logarithm + 0.1 * std::log(d)) / 1000.0;
    const double nutPitchTolerance = 1.32 * pitchTolerance;
    const double minorTolerance =
        (p >= 1.0 ? 230.0 * std::exp(0.7 * logarithm) : 433.0 * p - 190.0 * std::pow(p, 1.22)) /
        1000.0;
    const double majorTolerance =
        (180.0 * std::exp(2.0 / 3.0 * logarithm) - 3.15 / std::sqrt(p)) / 1000.0;
    const double pitchDiameter = d - 0.649519 * p;
    const double minorDiameter = d - 1.082532 * p;
    return {p, minorDiameter + minorTolerance, pitchDiameter + nutPitchTolerance,
            d - allowance - majorTolerance, pitchDiameter - allowance - pitchTolerance};
}

Area stripArea(double engaged_mm, double pitch_mm, double diameter_mm, double overlap_mm) {
    const double width_mm = std::max(0.0, pitch_mm / 2.0 + flank * overlap_mm);
    return squareMillimetres(std::numbers::pi * std::max(0.0, engaged_mm) / pitch_mm * diameter_mm *
                             width_mm);
}

}  // namespace

namespace {

Area boltArea(const Limits& limits, Length engaged) {
    return stripArea(inMillimetres(engaged), limits.pitch_mm, limits.nutMinorMost_mm,
                     limits.boltPitchLeast_mm - limits.nutMinorMost_mm);
}

Area nutArea(const Limits& limits, Length engaged) {
    return stripArea(inMillimetres(engaged), limits.pitch_mm, limits.boltMajorLeast_mm,
                     limits.boltMajorLeast_mm - limits.nutPitchMost_mm);
}

}  // namespace

Area boltStripArea(Length nominal, Length pitch, Length engaged) {
    return boltArea(limitsOf(nominal, pitch), engaged);
}

Area nutStripArea(Length nominal, Length pitch, Length engaged) {
    return nutArea(limitsOf(nominal, pitch), engaged);
}

LimitState threadStrip(const ThreadStripInput& input, Trace* trace) {
    const Limits limits = limitsOf(input.nominal, input.pitch);
    const Area bolt = boltArea(limits, input.engaged);
    const Area nut = nutArea(limits, input.engaged);
    const bool boltFirst = input.boltShear * bolt <= input.nutShear * nut;
    const Force apart = min(input.boltShear * bolt, input.nutShear * nut);
    LimitState state;
    state.kind = LimitStateKind::threadStrip;
    state.basis = Basis::metal;
    state.reference = apart;
    state.working = apart / 2.0 / input.factor;
    state.apart = Band{apart, apart};
    state.soft = false;
    state.standing = Standing::fromMemory;
    state.clause = stripClause;
    if (trace != nullptr) {
        trace->title = boltFirst ? "Thread of the bolt stripped" : "Thread of the nut stripped";
        trace->formula = "F = τ_u · A_s / (2 · n)";
        trace->clause = stripClause;
        trace->standing = state.standing;
        trace->lines = {{"L", "height of nut that holds", input.engaged, "decision", std::nullopt},
                        {"A_s", "strip area of the bolt", bolt, "6H/6g", Standing::fromMemory},
                        {"A_s", "strip area of the nut", nut, "6H/6g", Standing::fromMemory},
                        {"τ_u", "ultimate shear", boltFirst ? input.boltShear : input.nutShear,
                         "metal", std::nullopt},
                        {"n", "metal factor, on half the ultimate", input.factor, "metal set",
                         Standing::fromMemory},
                        {"F", "design load on the nut", state.working, "", std::nullopt}};
    }
    return state;
}

}  // namespace fayline
