// What the metal of a fastening, and the wood under its ends, can carry.

#include <algorithm>
#include <numbers>

#include "joint/rod.h"
#include "joint/washer.h"
#include "prepared.h"

namespace fayline {
namespace {

struct End {
    const PreparedMember* member;
    EndBearing bearing;
    std::string name;  ///< for the clause
};

std::vector<End> endsOf(const Prepared& prepared) {
    const JointFastener& fastener = prepared.fastener();
    std::vector<End> ends;
    if (fastener.headBearing) {
        ends.push_back({&prepared.members.front(), *fastener.headBearing, "head end"});
    } else if (fastener.headDiameter) {
        ends.push_back({&prepared.members.front(),
                        {*fastener.headDiameter, fastener.headHeight.value_or(Length{})},
                        "head end"});
    }
    if (fastener.pointBearing)
        ends.push_back({&prepared.members.back(), *fastener.pointBearing, "point end"});
    return ends;
}

WasherInput washerOf(const Prepared& prepared, const End& end) {
    const Joint& joint = *prepared.joint;
    const JointMember& member = *end.member->given;
    WasherInput input;
    input.diameter = end.bearing.diameter;
    input.thickness = end.bearing.thickness;
    input.hole = max(joint.fastener.hole.value_or(prepared.nominal), prepared.nominal);
    input.bolt = prepared.nominal;
    if (member.acrossUs) {
        input.usAllowable = member.acrossUs->value;
        input.usSource = member.acrossUs->source;
        input.usStanding = member.acrossUs->standing;
    }
    if (member.acrossEc5) {
        input.ec5Characteristic = member.acrossEc5->value;
        input.ec5Source = member.acrossEc5->source;
        input.ec5Standing = member.acrossEc5->standing;
    }
    if (member.acrossMean) input.meanWet = member.acrossMean->value;
    input.service = joint.service;
    input.duration = joint.duration;
    input.kindOfLoad = joint.kindOfLoad;
    return input;
}

/// The weaker end under one basis, worked once more for its working when that is wanted.
template <typename Worker>
std::optional<LimitState> weakerEnd(const Prepared& prepared, const std::vector<End>& ends,
                                    Worker worker, Basis basis, JointTraces* traces) {
    const End* weakest = nullptr;
    std::optional<LimitState> least;
    for (const End& end : ends) {
        auto state = worker(washerOf(prepared, end), nullptr);
        if (!state || (least && least->working <= state->working)) continue;
        least = std::move(state);
        weakest = &end;
    }
    if (!least) return least;
    least->clause += "; " + weakest->name;
    if (ends.size() == 1)
        least->outside.emplace_back("the other end's size is not given and not judged");
    if (traces != nullptr) {
        Trace& trace = *traceOf(traces, basis, LimitStateKind::washer);
        trace = {};
        worker(washerOf(prepared, *weakest), &trace);
        trace.clause = least->clause;
        trace.outside = least->outside;
    }
    return least;
}

RodInput rodOf(const Prepared& prepared) {
    const FastenerMetal& metal = prepared.fastener().metal;
    RodInput rod;
    rod.root = prepared.root;
    rod.corrosion = prepared.fastener().corrosion;
    rod.yield = metal.yield->value;
    rod.ultimate = metal.ultimate->value;
    if (metal.yieldTypical) rod.yieldTypical = metal.yieldTypical->value;
    if (metal.ultimateTypical) rod.ultimateTypical = metal.ultimateTypical->value;
    rod.factor = metal.factor;
    rod.factorSource = metal.factorSource;
    rod.strengthStanding = std::max(metal.yield->standing, metal.ultimate->standing);
    rod.strengthSource = metal.ultimate->source;
    return rod;
}

std::optional<LimitState> headShear(const Prepared& prepared, Trace* trace) {
    const JointFastener& fastener = prepared.fastener();
    if (!fastener.headHeight || !fastener.metal.shear) return std::nullopt;
    const Figure<Stress>& strength = *fastener.metal.shear;
    const double perimeter = fastener.section == DowelSection::round ? std::numbers::pi : 4.0;
    const Force apart = strength.value * (prepared.nominal * *fastener.headHeight) * perimeter;
    LimitState state;
    state.kind = LimitStateKind::headShear;
    state.basis = Basis::metal;
    state.reference = apart;
    state.working = apart / fastener.metal.factor / 2.0;
    state.apart = Band{apart, apart};
    state.soft = false;
    state.standing = std::max({strength.standing, Standing::derived, Standing::fromMemory});
    state.clause = "metal set: shear round the shank through the height of the head";
    if (trace != nullptr) {
        *trace = {"Head sheared off its shank",
                  "F = p · h · τ_u / (2 · n)",
                  {},
                  state.clause,
                  state.standing,
                  {},
                  {}};
        trace->lines = {
            {"d", "shank", prepared.nominal, "decision", std::nullopt},
            {"h", "height of the head", *fastener.headHeight, "decision", std::nullopt},
            {"τ_u", "ultimate shear", strength.value, strength.source, strength.standing},
            {"n", "metal factor, on half the ultimate", fastener.metal.factor,
             fastener.metal.factorSource, Standing::fromMemory},
            {"F", "design load on the head", state.working, "", std::nullopt}};
    }
    return state;
}

}  // namespace

EndWash endWash(const Prepared& prepared, JointTraces* traces) {
    EndWash result;
    const std::vector<End> ends = endsOf(prepared);
    result.why = ends.empty() ? "no size of head, washer, ring or rove is given"
                              : "no strength across the grain is known for the wood under the ends";
    result.us = weakerEnd(prepared, ends, &washerUs, Basis::us, traces);
    result.ec5 = weakerEnd(prepared, ends, &washerEc5, Basis::ec5, traces);
    return result;
}

MetalStates metalStates(const Prepared& prepared, JointTraces* traces) {
    const FastenerMetal& metal = prepared.fastener().metal;
    MetalStates states;
    if (!metal.yield || !metal.ultimate) {
        states.why = "yield and ultimate strength of the metal are not given";
    } else if (!prepared.rootKnown) {
        states.why = "diameter at the root of the thread is not given";
    } else {
        states.tension =
            rodTension(rodOf(prepared), traceOf(traces, Basis::metal, LimitStateKind::metal));
    }
    if (prepared.fastener().headHeight && metal.shear)
        states.headShear =
            headShear(prepared, traceOf(traces, Basis::metal, LimitStateKind::headShear));
    return states;
}

}  // namespace fayline
