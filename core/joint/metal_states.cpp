// What the metal of a fastening can carry: tension at the root, solid heads and peened ends, nuts.

#include <algorithm>

#include "joint/head_shear.h"
#include "joint/rod.h"
#include "joint/thread_strip.h"
#include "prepared.h"
#include "result_parts.h"

namespace fayline {

namespace {

RodInput rodOf(const Prepared& prepared, bool told) {
    const FastenerMetal& metal = prepared.fastener().metal;
    RodInput rod;
    rod.root = prepared.root;
    rod.corrosion = prepared.fastener().corrosion;
    rod.yield = metal.yield->value;
    rod.ultimate = metal.ultimate->value;
    if (metal.yieldTypical) rod.yieldTypical = metal.yieldTypical->value;
    if (metal.ultimateTypical) rod.ultimateTypical = metal.ultimateTypical->value;
    rod.factor = metal.factor;
    rod.strengthStanding = std::max(metal.yield->standing, metal.ultimate->standing);
    if (told) {
        rod.factorSource = metal.factorSource;
        rod.strengthSource = metal.ultimate->source;
    }
    return rod;
}

bool isSolid(FastenerEnd end) {
    return end == FastenerEnd::head || end == FastenerEnd::formedHead;
}

bool isPeened(FastenerEnd end) {
    return end == FastenerEnd::peened || end == FastenerEnd::rove || end == FastenerEnd::clenchRing;
}

void explainHead(const Prepared& prepared, const HeadShearInput& input, const LimitState& state,
                 bool peened, Trace& trace) {
    const FastenerMetal& metal = prepared.fastener().metal;
    startTrace(trace, peened ? "Peened end sheared off" : "Head sheared off its shank",
               input.section == DowelSection::round ? "F = π · d · h · τ_u / (2 · n)"
                                                    : "F = 4 · a · h · τ_u / (2 · n)",
               state);
    trace.lines = {
        {input.section == DowelSection::round ? "d" : "a", "shank", input.shank, "decision",
         std::nullopt},
        {"h", peened ? "height of the peened end" : "height of the head", input.height, "decision",
         std::nullopt},
        {"τ_u", "ultimate shear", input.shear, metal.shear->source, metal.shear->standing},
        {"n", "metal factor, on half the ultimate", input.factor, metal.factorSource,
         Standing::fromMemory},
        {"F", "design load on it", state.working, "", std::nullopt}};
}

/// The weaker of a solid head and a peened end.
void addHeads(const Prepared& prepared, MetalStates& states, JointTraces* traces) {
    const JointFastener& fastener = prepared.fastener();
    const bool solid = isSolid(fastener.head) || isSolid(fastener.point);
    const bool peened = isPeened(fastener.head) || isPeened(fastener.point);
    const bool wanted = fastener.kind == FastenerKind::bolt || fastener.kind == FastenerKind::rivet;
    const bool hasHead = fastener.headHeight.has_value();
    const bool hasPeen = peened && fastener.peenHeight;
    if (!hasHead && !hasPeen && (!wanted || (!solid && !peened))) return;
    const auto missing = [&](std::string_view why) {
        states.missing.push_back({LimitStateKind::headShear, why});
    };
    if (!fastener.metal.shear) return missing("ultimate shear strength of the metal is not given");
    if (wanted && solid && !hasHead) missing("height of the head is not given");
    if (wanted && peened && !hasPeen) missing("height of the peened end is not given");
    if (!hasHead && !hasPeen) return;
    const bool byPeen = hasPeen && (!hasHead || *fastener.peenHeight < *fastener.headHeight);
    const HeadShearInput input{prepared.nominal, fastener.section,
                               byPeen ? *fastener.peenHeight : *fastener.headHeight,
                               fastener.metal.shear->value, fastener.metal.factor};
    LimitState state = headShear(input);
    state.standing = std::max(state.standing, fastener.metal.shear->standing);
    if (byPeen) {
        state.place = "peened end";
        state.outside.push_back({Rule::peenedEndExtended, -1, {}, {}, 0.0});
    }
    if (traces != nullptr)
        explainHead(prepared, input, state, byPeen,
                    *traceOf(traces, Basis::metal, LimitStateKind::headShear));
    states.headShear = std::move(state);
}

void addThread(const Prepared& prepared, MetalStates& states, JointTraces* traces) {
    const JointFastener& fastener = prepared.fastener();
    const bool nut = fastener.head == FastenerEnd::nut || fastener.point == FastenerEnd::nut;
    if (fastener.kind != FastenerKind::bolt || !nut) return;
    const auto missing = [&](std::string_view why) {
        states.missing.push_back({LimitStateKind::threadStrip, why});
    };
    if (!fastener.pitch) return missing("pitch of the thread is not given");
    if (!fastener.nutHeight) return missing("height of the nut is not given");
    if (!fastener.metal.shear) return missing("ultimate shear strength of the metal is not given");
    const Figure<Stress>& own = *fastener.metal.shear;
    const Figure<Stress>& nuts = fastener.nutShear ? *fastener.nutShear : own;
    const ThreadStripInput input{prepared.nominal, *fastener.pitch, *fastener.nutHeight,
                                 own.value,        nuts.value,      fastener.metal.factor};
    LimitState state =
        threadStrip(input, traceOf(traces, Basis::metal, LimitStateKind::threadStrip));
    state.standing = std::max({state.standing, own.standing, nuts.standing});
    if (traces != nullptr) {
        Trace& trace = *traceOf(traces, Basis::metal, LimitStateKind::threadStrip);
        trace.standing = state.standing;
        trace.notes.push_back("Shear strength of the bolt: " + own.source + "; of the nut: " +
                              (fastener.nutShear ? nuts.source : "taken as the bolt's"));
    }
    states.threadStrip = std::move(state);
}

}  // namespace

MetalStates metalStates(const Prepared& prepared, JointTraces* traces) {
    const FastenerMetal& metal = prepared.fastener().metal;
    MetalStates states;
    if (!metal.yield || !metal.ultimate) {
        states.missing.push_back(
            {LimitStateKind::metal, "yield and ultimate strength of the metal are not given"});
    } else if (!prepared.rootKnown) {
        states.missing.push_back(
            {LimitStateKind::metal, "diameter at the root of the thread is not given"});
    } else {
        states.tension = rodTension(rodOf(prepared, traces != nullptr),
                                    traceOf(traces, Basis::metal, LimitStateKind::metal));
    }
    addHeads(prepared, states, traces);
    addThread(prepared, states, traces);
    states.lead = leadUnderEnds(prepared, traces);
    return states;
}

}  // namespace fayline
