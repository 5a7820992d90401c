// Eurocode 5 along the fastening, and both together.

#include <algorithm>
#include <numbers>

#include "joint/ec5_axial.h"
#include "prepared.h"
#include "quantity/display.h"
#include "result_parts.h"

namespace fayline {
namespace {

void rangeNotes(const Prepared& prepared, std::vector<Remark>& outside) {
    const Length d = prepared.nominal;
    if (d < millimetres(6) || d > millimetres(12))
        outside.push_back({Rule::screwDiameterOutside, -1, d, {}, 0.0});
    const double ratio = prepared.inEquations / d;
    if (ratio < 0.6 || ratio > 0.75) outside.push_back({Rule::screwRootOutside, -1, {}, {}, ratio});
    if (prepared.thread < 6.0 * d)
        outside.push_back({Rule::shorterThanTheCode, -1, prepared.thread, 6.0 * d, 0.0});
    if (prepared.last().given->endGrain) outside.push_back({Rule::endGrainAxis, -1, {}, {}, 0.0});
}

/// n^0.9 of n screws drawn out together, for each (8.41).
double drawnShare(const Prepared& prepared) {
    const Joint& joint = *prepared.joint;
    const int count = joint.group ? static_cast<int>(joint.group->places.size())
                      : joint.row ? joint.row->count
                                  : 1;
    return count <= 1 ? 1.0 : effectiveAxial(count) / count;
}

void withdrawal(const Prepared& prepared, const Bands& bands, BasisResult& result,
                JointTraces* traces) {
    if (!prepared.pointed) return;
    if (!prepared.isScrew()) {
        result.missing.push_back(
            {LimitStateKind::withdrawal, "Eurocode 5 gives no withdrawal for drifts"});
        return;
    }
    const PreparedMember& last = prepared.last();
    if (!last.density) {
        result.missing.push_back(
            {LimitStateKind::withdrawal, "no characteristic density of the wood the point is in"});
        return;
    }
    WithdrawalResult& found = result.withdrawal.emplace();
    LimitState& state = found.state;
    found.holds = prepared.thread;
    const Angle axis = last.given->endGrain ? Angle{} : Angle::degrees(90);
    state.kind = LimitStateKind::withdrawal;
    state.basis = Basis::ec5;
    state.reference = screwWithdrawalEc5(*last.density, prepared.nominal, prepared.thread, axis);
    if (found.holds.si() > 0.0) found.referencePerLength = state.reference / found.holds;
    state.working = state.reference * drawnShare(prepared) * ec5Share(prepared);
    state.apart = bands.withdrawalApart;
    state.soft = false;
    state.standing = std::max(Standing::fromMemory, last.densityStanding);
    state.clause = "EN 1995-1-1:2004+A1:2008 8.7.2 (8.38 to 8.40); Tables 3.1, 2.3";
    rangeNotes(prepared, state.outside);
    if (traces != nullptr) {
        Trace& trace = *traceOf(traces, Basis::ec5, LimitStateKind::withdrawal);
        startTrace(trace, "Drawn out of the inner timber, Eurocode 5",
                   "R_d = 0.52 · d^-0.5 · l_ef^-0.1 · ρ_k^0.8 · d · l_ef · k_d · k_mod / γ_M",
                   state);
        explainMember(last, Basis::ec5, trace);
        explainHold(prepared, trace);
        trace.lines.push_back({"F_ax,Rk", "characteristic withdrawal", state.reference,
                               std::string(state.clause), Standing::fromMemory});
        trace.lines.push_back({"n_ef/n", "screws drawn out together", drawnShare(prepared),
                               "EN 1995-1-1 8.41", Standing::read});
        explainEc5Factors(prepared, trace);
        trace.lines.push_back({"R_d", "design load along it", state.working, "", std::nullopt});
    }
}

void pullThrough(const Prepared& prepared, BasisResult& result, JointTraces* traces) {
    if (!prepared.isScrew()) return;
    const PreparedMember& first = prepared.members.front();
    if (!first.density) {
        result.missing.push_back(
            {LimitStateKind::pullThrough, "no characteristic density of the wood under the head"});
        return;
    }
    const auto& declared = prepared.fastener().headStrengthEc5;
    const Length head = prepared.screw.head.value;
    LimitState& state = result.pullThrough.emplace();
    state.kind = LimitStateKind::pullThrough;
    state.basis = Basis::ec5;
    state.reference = declared ? pullThroughDeclared(declared->value, kilogramsPerCubicMetre(350),
                                                     *first.density, head)
                               : pullThroughNail(*first.density, head);
    state.working = state.reference * ec5Share(prepared);
    state.soft = false;
    state.standing = std::max(Standing::fromMemory, first.densityStanding);
    state.clause =
        declared ? "EN 1995-1-1:2004+A1:2008 8.7.2 (8.40b)" : "EN 1995-1-1 8.3.2(6), smooth nails";
    if (!declared) state.outside.push_back({Rule::headNotDeclared, -1, {}, {}, 0.0});
    if (traces != nullptr) {
        Trace& trace = *traceOf(traces, Basis::ec5, LimitStateKind::pullThrough);
        startTrace(trace, "Head pulled through the outer timber, Eurocode 5",
                   declared ? "R_d = f_head · d_h² · (ρ_k/350)^0.8 · k_mod / γ_M"
                            : "R_d = 70·10⁻⁶ · ρ_k² · d_h² · k_mod / γ_M",
                   state);
        explainMember(first, Basis::ec5, trace);
        trace.lines.push_back(lineOf("d_h", "head", prepared.screw.head));
        if (declared)
            trace.lines.push_back({"f_head", "declared at 350 kg/m³", declared->value,
                                   declared->source, declared->standing});
        explainEc5Factors(prepared, trace);
        trace.lines.push_back({"R_d", "design load", state.working, "", std::nullopt});
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
    const bool squared = prepared.isScrew();
    state.basis = Basis::ec5;
    const Force none;
    state.reference = combinedEc5(side.reference, axial ? axial->reference : none, angle, squared);
    state.working = combinedEc5(side.working, axial ? axial->working : none, angle, squared);
    state.clause = squared ? "EN 1995-1-1 8.7.3 (8.28)" : "EN 1995-1-1 8.3.3 (8.27)";
    if (!squared && load->axial.si() > 0.0)
        addOnce(state.outside, {Rule::combinedExtended, -1, {}, {}, 0.0});
    if (traces != nullptr)
        explainCombined(*load, side, axial, state,
                        squared ? "(F_ax/R_ax)² + (F_v/R_v)² ≤ 1" : "F_ax/R_ax + F_v/R_v ≤ 1",
                        *traceOf(traces, Basis::ec5, LimitStateKind::combined));
    result.combined = std::move(state);
}

}  // namespace

double ec5Share(const Prepared& prepared) {
    return kMod(prepared.joint->duration, prepared.joint->service) /
           gammaM(prepared.joint->kindOfLoad);
}

void explainEc5Factors(const Prepared& prepared, Trace& trace) {
    const Joint& joint = *prepared.joint;
    const bool wet = joint.service == Service::wet;
    trace.lines.push_back({"k_mod",
                           std::string("service class ") + (wet ? "3" : "2") + ", " +
                               std::string(nameOf(joint.duration)),
                           kMod(joint.duration, joint.service), "EN 1995-1-1 Table 3.1",
                           Standing::fromMemory});
    trace.lines.push_back({"γ_M", "connections, " + std::string(nameOf(joint.kindOfLoad)) + " load",
                           gammaM(joint.kindOfLoad), "EN 1995-1-1 Table 2.3",
                           Standing::fromMemory});
}

Force ec5AxialForRope(const Prepared& prepared, const BasisResult& result) {
    const auto& ultimate = prepared.fastener().metal.ultimate;
    if (!ultimate || !prepared.rootKnown) return {};
    const Force tension =
        ultimate->value * (prepared.root * prepared.root) * (0.25 * std::numbers::pi);
    if (prepared.isScrew()) {
        if (!result.withdrawal || !result.pullThrough) return {};
        return min(tension, min(result.withdrawal->state.reference, result.pullThrough->reference));
    }
    if (prepared.fastener().kind == FastenerKind::bolt && result.washer)
        return min(tension, result.washer->reference);
    return {};
}

void ec5Result(const Prepared& prepared, const Bands& bands, const MetalStates& metal,
               BasisResult& result, JointTraces* traces) {
    withdrawal(prepared, bands, result, traces);
    pullThrough(prepared, result, traces);
    addEnds(metal, result);
    ec5LateralState(prepared, bands, result, traces);
    addMembers(prepared, Basis::ec5, result, traces);
    addGroup(prepared, Basis::ec5, result, traces);
    combined(prepared, result, traces);
}

}  // namespace fayline
