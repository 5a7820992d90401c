#include "check/fastening.h"

#include <algorithm>
#include <cmath>

#include "joint/work_joint.h"
#include "quantity/display.h"

namespace fayline {
namespace {

Force sizeOf(const SetDemand& demand) {
    return newtons(std::hypot(demand.lateral.si(), demand.axial.si()));
}

JointLoad loadOf(const SetDemand& demand) {
    return {demand.lateral, demand.axial};
}

/// Heads, nuts and washers drawn through are worked out where their sizes are known; a hull's
/// decisions do not ask for them.
bool askedOfHulls(LimitStateKind kind) {
    return kind != LimitStateKind::headShear && kind != LimitStateKind::threadStrip &&
           kind != LimitStateKind::punching && kind != LimitStateKind::netSection &&
           kind != LimitStateKind::splitting;
}

void label(Check& check, const SetCheckInput& input, const FrameLoad& load) {
    check.id = input.set.id;
    check.frame = input.set.frame;
    check.group = input.set.group;
    check.stands = input.set.count;
    check.loadCase = load.loadCase;
    check.consequence = input.consequence;
}

/// A demand within a band is judged at both its ends: the figures shown are those of the
/// unfavourable one.
void judgeBand(Check& check, const SetDemand& demand, double target) {
    if (!check.margin) return;
    const double best = *check.margin / demand.lowest;
    check.why = marginText(*check.margin) + " to " + marginText(best) + ": " + demand.band;
    if (*check.margin >= target) return;
    if (best < 1.0) {
        check.status = Status::isShort;
    } else if (*check.margin >= 1.0) {
        check.status = Status::near;
    } else {
        check.status = Status::outside;
        check.outside.push_back("short at one end of the band of its load, not at the other");
    }
}

void addStates(const SetCheckInput& input, const FrameLoad& load, const SetDemand& demand,
               const BasisResult& basis, bool metalToo, std::vector<Check>& checks) {
    basis.each([&](const LimitState& state) {
        if (state.basis == Basis::metal && !metalToo) return;
        const auto own = demandFor(state.kind, loadOf(demand));
        if (!own) return;
        const double factor = state.basis == Basis::ec5 ? load.settings.ec5Factor : 1.0;
        checks.push_back(compare(*own * factor, state, input.target));
        if (demand.lowest < 1.0) judgeBand(checks.back(), demand, input.target);
    });
    for (const MissingState& missing : basis.missing) {
        if (!demandFor(missing.kind, loadOf(demand)) || !askedOfHulls(missing.kind)) continue;
        Check check;
        check.limitState = missing.kind;
        check.basis = metalToo ? Basis::us : Basis::ec5;
        check.status = Status::unknown;
        check.why = missing.why;
        checks.push_back(std::move(check));
    }
}

}  // namespace

std::optional<Force> demandFor(LimitStateKind kind, const JointLoad& load) {
    const bool sheared = load.lateral > Force{}, pulled = load.axial > Force{};
    switch (kind) {
        case LimitStateKind::lateral:
        case LimitStateKind::netSection:
        case LimitStateKind::splitting:
            if (sheared) return load.lateral;
            return std::nullopt;
        case LimitStateKind::combined:
            if (sheared && pulled) return newtons(std::hypot(load.lateral.si(), load.axial.si()));
            return std::nullopt;
        case LimitStateKind::withdrawal:
        case LimitStateKind::pullThrough:
        case LimitStateKind::washer:
        case LimitStateKind::metal:
        case LimitStateKind::headShear:
        case LimitStateKind::threadStrip:
        case LimitStateKind::punching:
        case LimitStateKind::crushing:
            if (pulled) return load.axial;
            return std::nullopt;
        default:
            return std::nullopt;
    }
}

Joint inCase(Joint joint, const CaseSettings& settings, const SetDemand& demand) {
    joint.duration = settings.duration;
    joint.kindOfLoad = settings.kind;
    joint.load.reset();
    if (demand.lateral > Force{} && demand.axial > Force{})
        joint.load = JointLoad{demand.lateral, demand.axial};
    return joint;
}

Check quietCheck(const SetCheckInput& input, const FrameLoad& load, const SetDemand& demand) {
    Check check;
    label(check, input, load);
    check.limitState = LimitStateKind::lateral;
    check.basis = Basis::us;
    check.status = demand.known ? Status::unloaded : Status::unknown;
    if (demand.known) check.demand = Force{};
    check.why = demand.why;
    return check;
}

std::vector<Check> checkSet(const SetCheckInput& input, const FrameLoad& load,
                            const SetDemand& demand, const JointResult* result,
                            const std::string& why) {
    std::vector<Check> checks;
    if (result == nullptr) {
        Check check = quietCheck(input, load, demand);
        check.status = Status::unknown;
        check.demand = sizeOf(demand);
        check.why = why;
        checks.push_back(std::move(check));
        return checks;
    }
    addStates(input, load, demand, result->us, true, checks);
    addStates(input, load, demand, result->ec5, false, checks);
    for (Check& check : checks) label(check, input, load);
    return checks;
}

std::optional<Trace> explainSet(const SetCheckInput& input, const FrameLoad& load,
                                const Check& check) {
    Trace trace;
    if (!load.settings.source.empty())
        trace.lines.push_back({"case", "what the case counts", std::string(titleOf(load.loadCase)),
                               load.settings.source, load.settings.standing});
    const SetDemand demand = demandOn(input.set, load, &trace);
    if (!demand.why.empty()) trace.notes.push_back(demand.why);
    if (check.basis == Basis::ec5) {
        trace.lines.push_back({"γ", "demand factor of the case, Eurocode 5 side",
                               load.settings.ec5Factor, load.settings.source,
                               load.settings.standing});
    }
    if (check.demand)
        trace.lines.push_back({"E_d", "design demand", *check.demand, "", std::nullopt});
    if (input.joint && check.working) {
        JointTraces traces;
        const auto result = workJoint(inCase(*input.joint, load.settings, demand), &traces);
        const auto found = traces.find({check.basis, check.limitState});
        if (result && found != traces.end()) {
            Trace& own = found->second;
            trace.title = own.title;
            trace.formula = own.formula;
            trace.clause = own.clause;
            trace.standing = own.standing;
            trace.lines.insert(trace.lines.end(), own.lines.begin(), own.lines.end());
            trace.notes.insert(trace.notes.end(), own.notes.begin(), own.notes.end());
            trace.outside = own.outside;
        }
    }
    if (!demand.band.empty()) trace.notes.push_back(demand.band);
    if (check.margin)
        trace.lines.push_back(
            {"margin", "design capacity ÷ design demand", *check.margin, "", std::nullopt});
    trace.notes.emplace_back(
        "A guide, not a certificate: a naval architect, a surveyor or the class rules in force "
        "decide.");
    return trace;
}

}  // namespace fayline
