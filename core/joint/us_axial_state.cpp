// The US basis along the fastening, and both together.

#include <algorithm>

#include "joint/us_axial.h"
#include "joint/us_factors.h"
#include "prepared.h"
#include "result_parts.h"

namespace fayline {
namespace {

/// Allowable withdrawal of each length, before factors.
struct Grip {
    ForcePerLength perLength;
    const char* formula;
    std::string_view clause;
    Standing standing;
};

Grip gripOf(const Prepared& prepared) {
    const PreparedMember& last = prepared.last();
    if (prepared.isScrew()) {
        return {screwWithdrawalUs(*last.gravity, prepared.nominal),
                "W' = 2850 · G² · D · L · C_D · C_M", "ANSI/AWC NDS 12.2.2", Standing::read};
    }
    return {
        driftWithdrawalUltimate(*last.gravityTwelve, prepared.nominal) / usPublished.driftSafety,
        "W' = 6600 · G² · D · L / 5.5 · C_D · C_M",
        "Wood Handbook ch. 8 (8-9) over 5.5, as the code's wood screws stand to theirs",
        Standing::fromMemory};
}

void withdrawalNotes(const Prepared& prepared, std::vector<Remark>& outside) {
    const JointFastener& fastener = prepared.fastener();
    const auto add = [&](Rule rule) { outside.push_back({rule, -1, {}, {}, 0.0}); };
    if (prepared.last().given->endGrain) add(Rule::endGrainWithdrawal);
    if (fastener.kind == FastenerKind::drift) {
        if (!fastener.hole) {
            add(Rule::driftHoleUnknown);
        } else if (fastener.diameter - *fastener.hole < inches(0.125) - millimetres(0.01)) {
            add(Rule::driftHoleWide);
        }
        if (fastener.slant && fastener.slant->inDegrees() != 0.0)
            outside.push_back({Rule::slantNotCredited, -1, {}, {}, fastener.slant->inDegrees()});
    }
    if (prepared.isScrew() && prepared.penetration < 6.0 * prepared.nominal)
        outside.push_back(
            {Rule::shorterThanTheCode, -1, prepared.penetration, 6.0 * prepared.nominal, 0.0});
}

void withdrawal(const Prepared& prepared, const Bands& bands, BasisResult& result,
                JointTraces* traces) {
    if (!prepared.pointed) return;
    const PreparedMember& last = prepared.last();
    if (!last.gravity || !last.gravityTwelve) {
        result.missing.push_back(
            {LimitStateKind::withdrawal, "no specific gravity of the wood the point is in"});
        return;
    }
    const Grip grip = gripOf(prepared);
    WithdrawalResult& found = result.withdrawal.emplace();
    LimitState& state = found.state;
    found.holds = prepared.thread;
    found.referencePerLength = grip.perLength;
    if (last.given->endGrain) found.referencePerLength *= 0.75;
    const double duration = durationFactorUs(prepared.joint->duration);
    const double moisture = moistureFactorAxialUs(prepared.joint->service);
    state.kind = LimitStateKind::withdrawal;
    state.basis = Basis::us;
    state.reference = found.referencePerLength * found.holds;
    state.working = state.reference * duration * moisture;
    state.apart = bands.withdrawalApart;
    state.soft = false;
    state.standing = std::max(grip.standing, last.gravityStanding);
    if (duration * moisture != 1.0) state.standing = std::max(state.standing, Standing::fromMemory);
    state.clause = grip.clause;
    withdrawalNotes(prepared, state.outside);
    if (traces != nullptr) {
        Trace& trace = *traceOf(traces, Basis::us, LimitStateKind::withdrawal);
        startTrace(trace, "Drawn out of the inner timber, US basis", grip.formula, state);
        explainMember(last, Basis::us, trace);
        explainHold(prepared, trace);
        trace.lines.push_back({"W", "withdrawal, N for each mm",
                               inNewtonsPerMillimetre(found.referencePerLength),
                               std::string(std::string(grip.clause)), grip.standing});
        trace.lines.push_back({"C_D", "duration", duration, "NDS 2.3.2", Standing::fromMemory});
        trace.lines.push_back(
            {"C_M", "moisture in service", moisture, "NDS Table 11.3.3", Standing::fromMemory});
        trace.lines.push_back({"W'", "design load along it", state.working, "", std::nullopt});
        explainBand(state.apart,
                    "comes apart: Wood Handbook ultimate, wood a tenth lighter and "
                    "heavier, 0.7 in wet wood",
                    trace);
    }
}

void pullThrough(const Prepared& prepared, BasisResult& result, JointTraces* traces) {
    if (!prepared.isScrew()) return;
    const PreparedMember& first = prepared.members.front();
    if (!first.gravity) {
        result.missing.push_back(
            {LimitStateKind::pullThrough, "no specific gravity of the wood under the head"});
        return;
    }
    const Length head = prepared.screw.head.value;
    const double duration = durationFactorUs(prepared.joint->duration);
    const double moisture = moistureFactorAxialUs(prepared.joint->service);
    LimitState& state = result.pullThrough.emplace();
    state.kind = LimitStateKind::pullThrough;
    state.basis = Basis::us;
    state.reference = pullThroughUs(*first.gravity, head, first.thickness);
    state.working = state.reference * duration * moisture;
    state.soft = false;
    state.standing = std::max(Standing::fromMemory, first.gravityStanding);
    state.clause = "ANSI/AWC NDS 2018 12.2.5, round heads";
    if (prepared.fastener().head == FastenerEnd::countersunk)
        state.outside.push_back({Rule::countersunkHead, -1, {}, {}, 0.0});
    if (traces != nullptr) {
        Trace& trace = *traceOf(traces, Basis::us, LimitStateKind::pullThrough);
        startTrace(trace, "Head pulled through the outer timber, US basis",
                   "W_H' = 690 · π · D_H · G² · t · C_D · C_M for t ≤ 2.5 D_H", state);
        explainMember(first, Basis::us, trace);
        trace.lines.push_back(lineOf("D_H", "head", prepared.screw.head));
        trace.lines.push_back({"C_D", "duration", duration, "NDS 2.3.2", Standing::fromMemory});
        trace.lines.push_back(
            {"C_M", "moisture in service", moisture, "NDS Table 11.3.3", Standing::fromMemory});
        trace.lines.push_back({"W_H'", "design load", state.working, "", std::nullopt});
    }
}

void combined(const Prepared& prepared, BasisResult& result, JointTraces* traces) {
    const auto& load = prepared.joint->load;
    if (!load || !result.lateral) return;
    const auto axial = leastAxial(result);
    const auto shared = combinedFrame(*load, *result.lateral, axial);
    if (!shared) return;
    LimitState state = *shared;
    const Direction angle = toSurface(*load);
    const LimitState& side = result.lateral->state;
    state.basis = Basis::us;
    state.reference = axial ? combinedUs(side.reference, axial->reference, angle) : side.reference;
    state.working = axial ? combinedUs(side.working, axial->working, angle) : side.working;
    state.clause = "ANSI/AWC NDS 12.4.1, Hankinson's formula";
    if (!prepared.isScrew() && load->axial.si() > 0.0)
        addOnce(state.outside, {Rule::combinedExtended, -1, {}, {}, 0.0});
    if (traces != nullptr)
        explainCombined(*load, side, axial, state, "Z'_α = W' · Z' / (W' · cos²α + Z' · sin²α)",
                        *traceOf(traces, Basis::us, LimitStateKind::combined));
    result.combined = std::move(state);
}

}  // namespace

void usResult(const Prepared& prepared, const Bands& bands, const MetalStates& metal,
              BasisResult& result, JointTraces* traces) {
    usLateralState(prepared, bands, result, traces);
    withdrawal(prepared, bands, result, traces);
    pullThrough(prepared, result, traces);
    addEnds(metal, result);
    addMembers(prepared, Basis::us, result, traces);
    addGroup(prepared, Basis::us, result, traces);
    combined(prepared, result, traces);
}

}  // namespace fayline
