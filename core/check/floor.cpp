#include "check/floor.h"

#include <algorithm>

#include "joint/us_factors.h"

namespace fayline {
namespace {

// ASTM D2555: coefficients of variation 0.16 bending, 0.14 shear; the lowest twentieth lies 1.645
// deviations under the mean. ASTM D245 divisors for hardwood: 2.3 bending, 4.5 shear. From memory.
constexpr double bendingLow = 1.0 - 1.645 * 0.16;
constexpr double shearLow = 1.0 - 1.645 * 0.14;
constexpr double bendingDivisor = 2.3;
constexpr double shearDivisor = 4.5;
/// Cracks, EN 1995-1-1 6.1.7.
constexpr double cracks = 0.67;

struct Strength {
    std::optional<Figure<Stress>> raw;
    Stress design;
    double factor = 1;
    const char* how = "";
};

Strength strengthOf(const FloorCheckInput& input, const FrameLoad& load, bool bending,
                    Basis basis) {
    Strength strength;
    if (!input.wood) return strength;
    const Wood& wood = *input.wood;
    if (basis == Basis::us) {
        strength.raw = bending ? wood.green.modulusOfRupture : wood.green.shear;
        strength.factor = (bending ? bendingLow / bendingDivisor : shearLow / shearDivisor) *
                          durationFactorUs(load.settings.duration);
        strength.how =
            "clear wood, green; lowest twentieth and divisor of ASTM D2555 and D245, "
            "with the load's duration";
    } else {
        strength.raw = bending ? wood.ec5.bending : wood.ec5.shear;
        strength.factor = kMod(load.settings.duration, Service::wet) / gammaM(load.settings.kind) *
                          (bending ? 1.0 : cracks);
        strength.how = bending ? "k_mod/γ_M" : "k_cr·k_mod/γ_M";
    }
    if (strength.raw) strength.design = strength.raw->value * strength.factor;
    return strength;
}

/// Load on one arm at which the throat reaches its design stress.
Force armCapacity(const FloorCheckInput& input, const FloorLoad& at, Force arm, bool bending,
                  Stress design) {
    const Length net = input.sided - input.bored;
    if (bending) {
        const Moment capacity = design * (net * input.throat * input.throat / 6.0);
        return capacity / at.bending * arm;
    }
    return design * (net * input.throat) / 1.5 / at.shear * arm;
}

Force armLoad(const FloorCheckInput& input, const FrameLoad& load) {
    return load.moment / input.spread + (load.up + load.down) / 2.0;
}

}  // namespace

std::vector<Check> checkFloor(const FloorCheckInput& input, const FrameLoad& atAxis) {
    const FrameLoad load = raisedBy(atAxis, input.rise);
    std::vector<Check> checks;
    const FloorLoad at = floorLoad(input.spread, input.keelSided, load);
    const Force arm = armLoad(input, load);
    if (arm <= Force{} || input.sided <= input.bored) return checks;
    for (const bool bending : {true, false}) {
        if ((bending && at.bending <= Moment{}) || at.shear <= Force{}) continue;
        for (const Basis basis : {Basis::us, Basis::ec5}) {
            const Strength strength = strengthOf(input, load, bending, basis);
            Check check;
            if (strength.raw) {
                LimitState state;
                state.kind = bending ? LimitStateKind::floorBending : LimitStateKind::floorShear;
                state.basis = basis;
                state.reference = armCapacity(input, at, arm, bending, strength.raw->value);
                state.working = armCapacity(input, at, arm, bending, strength.design);
                state.soft = false;
                state.standing = std::max(strength.raw->standing, Standing::fromMemory);
                state.clause = basis == Basis::us ? "ASTM D245; NDS 3.3, 3.4"
                               : bending          ? "EN 1995-1-1 6.1.6"
                                                  : "EN 1995-1-1 6.1.7";
                const double factor = basis == Basis::ec5 ? load.settings.ec5Factor : 1.0;
                check = compare(arm * factor, state, input.target);
            } else {
                check.limitState =
                    bending ? LimitStateKind::floorBending : LimitStateKind::floorShear;
                check.basis = basis;
                check.status = Status::unknown;
                check.demand = arm;
                check.why = input.wood ? "the catalogue has no such strength for the floor's wood"
                                       : "the floor's wood is not decided";
            }
            check.id = input.id;
            check.frame = input.frame;
            check.group = "floor";
            check.loadCase = load.loadCase;
            check.consequence = ConsequenceClass::keel;
            checks.push_back(std::move(check));
        }
    }
    return checks;
}

std::optional<Trace> explainFloor(const FloorCheckInput& input, const FrameLoad& atAxis,
                                  const Check& check) {
    const bool bending = check.limitState == LimitStateKind::floorBending;
    if (!bending && check.limitState != LimitStateKind::floorShear) return std::nullopt;
    Trace trace;
    trace.title =
        bending ? "Floor timber bent at its throat" : "Floor timber sheared at its throat";
    trace.formula = bending ? "σ = 6·M_max/((b−d)·h²)" : "τ = 1.5·V_max/((b−d)·h)";
    trace.clause = check.clause;
    trace.standing = check.standing;
    const FrameLoad load = raisedBy(atAxis, input.rise, &trace);
    const FloorLoad at = floorLoad(input.spread, input.keelSided, load, &trace);
    const Length net = input.sided - input.bored;
    trace.lines.push_back({"b−d", "siding less the bolt's hole", net, "", std::nullopt});
    trace.lines.push_back({"h", "throat", input.throat, "", std::nullopt});
    const Strength strength = strengthOf(input, load, bending, check.basis);
    const Stress stress = bending ? at.bending / (net * input.throat * input.throat / 6.0)
                                  : 1.5 * at.shear / (net * input.throat);
    trace.lines.push_back({bending ? "σ" : "τ", "stress from the case", stress, "", std::nullopt});
    if (strength.raw) {
        trace.lines.push_back({"f", "strength of the wood", strength.raw->value,
                               strength.raw->source, strength.raw->standing});
        trace.lines.push_back(
            {"k", strength.how, strength.factor, check.clause,
             check.basis == Basis::us ? Standing::fromMemory : Standing::derived});
        trace.lines.push_back({"f_d", "design strength", strength.design, "", std::nullopt});
    }
    if (check.demand)
        trace.lines.push_back(
            {"E_d", "design demand, as load on one arm", *check.demand, "", std::nullopt});
    if (check.margin)
        trace.lines.push_back(
            {"margin", "design capacity ÷ design demand", *check.margin, "", std::nullopt});
    trace.notes.emplace_back(
        "Straight grain at the throat is taken for granted: in a floor sawn from straight plank "
        "the "
        "arms run across the grain, and break there first.");
    return trace;
}

}  // namespace fayline
