#include "joint/rod.h"

#include <cmath>
#include <numbers>

namespace fayline {
namespace {

constexpr const char* metalClause =
    "metal set: the smaller of yield and half the ultimate, on the net area at the thread root, by "
    "the metal factor";

Stress limitStress(const RodInput& rod) {
    return min(rod.yield, rod.ultimate / 2.0);
}

Standing weakest(const RodInput& rod) {
    return std::max(rod.strengthStanding, rod.factorStanding);
}

std::vector<Remark> rangeNotes(const RodInput& rod) {
    std::vector<Remark> notes;
    if (netArea(rod).si() <= 0) notes.push_back({Rule::noMetalLeft, -1, {}, {}, 0.0});
    return notes;
}

void explainArea(const RodInput& rod, Trace& trace) {
    trace.lines.push_back({"d_root", "diameter at the thread root", rod.root,
                           "thread table of the catalogue", Standing::derived});
    trace.lines.push_back({"c", "corrosion allowance off the radius", rod.corrosion,
                           "decision or rule of the program", Standing::judgement});
    trace.lines.push_back({"A", "net area = π/4·(d_root − 2c)²", netArea(rod), "", std::nullopt});
    trace.lines.push_back(
        {"f_y", "least yield", rod.yield, rod.strengthSource, rod.strengthStanding});
    trace.lines.push_back(
        {"f_u", "least ultimate", rod.ultimate, rod.strengthSource, rod.strengthStanding});
    trace.lines.push_back({"f_lim", "min(f_y, f_u/2)", limitStress(rod), "", std::nullopt});
    trace.lines.push_back({"n", "metal factor", rod.factor, rod.factorSource, rod.factorStanding});
}

}  // namespace

Area netArea(const RodInput& rod) {
    const Length diameter = rod.root - 2.0 * rod.corrosion;
    if (diameter.si() <= 0) return {};
    return std::numbers::pi / 4.0 * (diameter * diameter);
}

LimitState rodTension(const RodInput& rod, Trace* trace) {
    const Area area = netArea(rod);
    LimitState state;
    state.kind = LimitStateKind::metal;
    state.basis = Basis::metal;
    state.reference = limitStress(rod) * area;
    state.working = state.reference / rod.factor;
    state.gives =
        Band{rod.yield * area, max(rod.yield, rod.yieldTypical.value_or(rod.yield)) * area};
    state.apart = Band{rod.ultimate * area,
                       max(rod.ultimate, rod.ultimateTypical.value_or(rod.ultimate)) * area};
    state.soft = true;
    state.standing = weakest(rod);
    state.clause = metalClause;
    state.outside = rangeNotes(rod);
    if (trace != nullptr) {
        trace->title = "Rod in tension at the thread root";
        trace->formula = "T_d = min(f_y, f_u/2) · A / n";
        trace->clause = metalClause;
        trace->standing = state.standing;
        trace->outside = textsOf(state.outside);
        explainArea(rod, *trace);
        trace->lines.push_back({"T_d", "design tension", state.working, "", std::nullopt});
        trace->notes.emplace_back(
            "Neither timber code covers bronze rod; the metal set stands the same under both.");
    }
    return state;
}

std::optional<LimitState> rodCombined(const RodInput& rod, Force tension, Force shear,
                                      Trace* trace) {
    const double size = std::hypot(tension.si(), shear.si());
    const double equivalent =
        std::sqrt(tension.si() * tension.si() + 3.0 * shear.si() * shear.si());
    if (size <= 0 || tension.si() < 0) return std::nullopt;
    LimitState state = rodTension(rod);
    const double along = size / equivalent;
    state.kind = LimitStateKind::combined;
    state.reference *= along;
    state.working *= along;
    for (auto* band : {&state.gives, &state.apart}) {
        (*band)->low *= along;
        (*band)->high *= along;
    }
    state.clause = "metal set: von Mises, √(T² + 3V²), on the net area at the thread root";
    if (trace != nullptr) {
        trace->title = "Rod in tension and shear together";
        trace->formula = "√(T² + 3V²) ≤ min(f_y, f_u/2) · A / n";
        trace->clause = state.clause;
        trace->standing = state.standing;
        trace->outside = textsOf(state.outside);
        explainArea(rod, *trace);
        trace->lines.push_back({"T", "tension", tension, "load case", Standing::derived});
        trace->lines.push_back({"V", "shear", shear, "load case", Standing::derived});
        trace->lines.push_back({"T_eq", "√(T² + 3V²)", newtons(equivalent), "", std::nullopt});
        trace->lines.push_back({"R_d", "size of load, along the load given, that is just met",
                                state.working, "", std::nullopt});
    }
    return state;
}

}  // namespace fayline
