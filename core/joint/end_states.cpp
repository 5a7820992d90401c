// What the wood, or lead, under the ends of a fastening can carry.

#include <algorithm>
#include <array>

#include "joint/ec5_axial.h"
#include "joint/lead_bearing.h"
#include "joint/us_axial.h"
#include "joint/us_factors.h"
#include "joint/washer.h"
#include "result_parts.h"

namespace fayline {
namespace {

struct End {
    const PreparedMember* member = nullptr;
    EndBearing bearing;
    std::string_view name;
};

/// Those ends of known size that bear on wood, or on lead.
struct Ends {
    std::array<End, 2> all;
    std::size_t count = 0;
    std::size_t sized = 0;  ///< whatever they bear on

    void add(const PreparedMember& member, const EndBearing& bearing, std::string_view name,
             bool lead) {
        ++sized;
        if (member.given->lead.has_value() == lead) all[count++] = {&member, bearing, name};
    }
    [[nodiscard]] const End* begin() const { return all.data(); }
    [[nodiscard]] const End* end() const { return all.data() + count; }
};

Ends endsOf(const Prepared& prepared, bool lead) {
    const JointFastener& fastener = prepared.fastener();
    Ends ends;
    if (fastener.headBearing) {
        ends.add(prepared.members.front(), *fastener.headBearing, "head end", lead);
    } else if (fastener.headDiameter && !prepared.isScrew()) {
        ends.add(prepared.members.front(),
                 {*fastener.headDiameter, fastener.headHeight.value_or(Length{})}, "head end",
                 lead);
    }
    if (fastener.pointBearing)
        ends.add(prepared.members.back(), *fastener.pointBearing, "point end", lead);
    return ends;
}

Length boreOf(const Prepared& prepared) {
    return max(prepared.fastener().hole.value_or(prepared.nominal), prepared.nominal);
}

/// With `told`, the sources too: only a working needs them.
WasherInput washerOf(const Prepared& prepared, const End& end, bool told) {
    const Joint& joint = *prepared.joint;
    const JointMember& member = *end.member->given;
    WasherInput input;
    input.diameter = end.bearing.diameter;
    input.thickness = end.bearing.thickness;
    input.hole = boreOf(prepared);
    input.bolt = prepared.nominal;
    input.timberWidth = member.width;
    if (member.acrossUs) {
        input.usAllowable = member.acrossUs->value;
        if (told) input.usSource = member.acrossUs->source;
        input.usStanding = member.acrossUs->standing;
    }
    if (member.acrossEc5) {
        input.ec5Characteristic = member.acrossEc5->value;
        if (told) input.ec5Source = member.acrossEc5->source;
        input.ec5Standing = member.acrossEc5->standing;
    }
    if (member.acrossMean) input.meanWet = member.acrossMean->value;
    input.service = joint.service;
    input.duration = joint.duration;
    input.kindOfLoad = joint.kindOfLoad;
    return input;
}

void takeWeaker(std::optional<LimitState>& least, const End*& weakest,
                std::optional<LimitState> state, const End& end) {
    if (!state || (least && least->working <= state->working)) return;
    least = std::move(state);
    weakest = &end;
}

/// The weaker end under each basis, a washer's sizes gathered once for both.
void addWashers(const Prepared& prepared, const Ends& ends, BasisResult& us, BasisResult& ec5,
                JointTraces* traces) {
    const End* weakest[2] = {};
    for (const End& end : ends) {
        const WasherInput washer = washerOf(prepared, end, false);
        takeWeaker(us.washer, weakest[0], washerUs(washer), end);
        takeWeaker(ec5.washer, weakest[1], washerEc5(washer), end);
    }
    for (const Basis basis : {Basis::us, Basis::ec5}) {
        BasisResult& result = basis == Basis::us ? us : ec5;
        if (!result.washer) {
            if (ends.sized == 0 || ends.count > 0)
                result.missing.push_back(
                    {LimitStateKind::washer,
                     ends.sized == 0
                         ? "no size of head, washer, ring or rove is given"
                         : "no strength across the grain is known for the wood under the ends"});
            continue;
        }
        const End& end = *weakest[basis == Basis::us ? 0 : 1];
        result.washer->place = end.name;
        if (ends.sized == 1)
            result.washer->outside.push_back({Rule::otherEndUnknown, -1, {}, {}, 0.0});
        if (traces == nullptr) continue;
        Trace& trace = *traceOf(traces, basis, LimitStateKind::washer);
        trace = {};
        (basis == Basis::us ? &washerUs : &washerEc5)(washerOf(prepared, end, true), &trace);
        trace.clause = clauseOf(*result.washer);
        trace.outside = textsOf(result.washer->outside);
    }
}

std::optional<Force> punchingLoad(const End& end, Basis basis) {
    const PreparedMember& member = *end.member;
    if (basis == Basis::us) {
        if (!member.gravity) return std::nullopt;
        return pullThroughUs(*member.gravity, end.bearing.diameter, member.thickness);
    }
    if (!member.density) return std::nullopt;
    return pullThroughNail(*member.density, end.bearing.diameter);
}

void addPunching(const Prepared& prepared, const Ends& ends, Basis basis, BasisResult& result,
                 JointTraces* traces) {
    const End* weakest = nullptr;
    std::optional<Force> least;
    for (const End& end : ends) {
        const auto load = punchingLoad(end, basis);
        if (!load || (least && *least <= *load)) continue;
        least = load;
        weakest = &end;
    }
    if (!least) {
        if (ends.count > 0)
            result.missing.push_back(
                {LimitStateKind::punching, "no density of the wood under the ends"});
        return;
    }
    const Joint& joint = *prepared.joint;
    const bool us = basis == Basis::us;
    LimitState& state = result.punching.emplace();
    state.kind = LimitStateKind::punching;
    state.basis = basis;
    state.reference = *least;
    state.working =
        *least * (us ? durationFactorUs(joint.duration) * moistureFactorAxialUs(joint.service)
                     : ec5Share(prepared));
    state.soft = false;
    state.standing = std::max(Standing::fromMemory, us ? weakest->member->gravityStanding
                                                       : weakest->member->densityStanding);
    state.clause = us ? "ANSI/AWC NDS 2018 12.2.5, the washer as a round head"
                      : "EN 1995-1-1 8.3.2(6), the washer as a head";
    state.place = weakest->name;
    state.outside.push_back({Rule::punchingExtended, -1, {}, {}, 0.0});
    if (traces != nullptr) {
        Trace& trace = *traceOf(traces, basis, LimitStateKind::punching);
        startTrace(
            trace, us ? "Washer drawn through, US basis" : "Washer drawn through, Eurocode 5",
            us ? "W_H' = 690 · π · D · G² · t · C_D · C_M for t ≤ 2.5 D, else 1725 · π · D² · G²"
               : "R_d = 70·10⁻⁶ · ρ_k² · D² · k_mod / γ_M",
            state);
        explainMember(*weakest->member, basis, trace);
        trace.lines.push_back(
            {"D", "washer, ring or rove", weakest->bearing.diameter, "decision", std::nullopt});
        if (us) {
            trace.lines.push_back({"C_D", "duration", durationFactorUs(joint.duration), "NDS 2.3.2",
                                   Standing::fromMemory});
            trace.lines.push_back({"C_M", "moisture in service",
                                   moistureFactorAxialUs(joint.service), "NDS Table 11.3.3",
                                   Standing::fromMemory});
        } else {
            explainEc5Factors(prepared, trace);
        }
        trace.lines.push_back({"R", "design load on it", state.working, "", std::nullopt});
    }
}

}  // namespace

std::optional<LimitState> leadUnderEnds(const Prepared& prepared, JointTraces* traces) {
    if (!prepared.members.front().given->lead && !prepared.last().given->lead) return std::nullopt;
    const Ends ends = endsOf(prepared, true);
    std::optional<LimitState> least;
    const End* weakest = nullptr;
    const auto inputOf = [&](const End& end) {
        const Figure<Stress>& lead = *end.member->given->lead;
        return LeadBearingInput{end.bearing.diameter, boreOf(prepared), lead.value, lead.standing,
                                prepared.fastener().metal.factor};
    };
    for (const End& end : ends) {
        LimitState state = leadBearing(inputOf(end));
        if (least && least->working <= state.working) continue;
        least = std::move(state);
        weakest = &end;
    }
    if (!least) return least;
    least->place = weakest->name;
    if (traces != nullptr) {
        const Figure<Stress>& lead = *weakest->member->given->lead;
        Trace& trace = *traceOf(traces, Basis::metal, LimitStateKind::crushing);
        startTrace(trace, "Lead crushed under the end", "F = f · π/4 · (D² − d²) / (2 · n)",
                   *least);
        trace.lines = {
            {"D", "washer, ring or head", weakest->bearing.diameter, "decision", std::nullopt},
            {"d", "hole", boreOf(prepared), "decision", std::nullopt},
            {"f", "tensile strength of the lead", lead.value, lead.source, lead.standing},
            {"n", "metal factor, on half the strength", prepared.fastener().metal.factor,
             prepared.fastener().metal.factorSource, Standing::fromMemory},
            {"F", "design load on it", least->working, "", std::nullopt}};
    }
    return least;
}

void addWood(const Prepared& prepared, BasisResult& us, BasisResult& ec5, JointTraces* traces) {
    const FastenerKind kind = prepared.fastener().kind;
    if (kind != FastenerKind::bolt && kind != FastenerKind::rivet) return;
    const Ends ends = endsOf(prepared, false);
    addWashers(prepared, ends, us, ec5, traces);
    addPunching(prepared, ends, Basis::us, us, traces);
    addPunching(prepared, ends, Basis::ec5, ec5, traces);
}

void addEnds(const MetalStates& metal, BasisResult& result) {
    result.crushing = metal.lead;
    result.metal = metal.tension;
    result.headShear = metal.headShear;
    result.threadStrip = metal.threadStrip;
    result.missing.insert(result.missing.end(), metal.missing.begin(), metal.missing.end());
}

}  // namespace fayline
