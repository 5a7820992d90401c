#include "check/ballast.h"

#include <algorithm>
#include <cmath>

namespace fayline {
namespace {

WasherInput inCase(WasherInput washer, const CaseSettings& settings) {
    washer.duration = settings.duration;
    washer.kindOfLoad = settings.kind;
    return washer;
}

double demandFactor(Basis basis, const CaseSettings& settings) {
    return basis == Basis::ec5 ? settings.ec5Factor : 1.0;
}

Check unknown(LimitStateKind kind, Basis basis, const std::string& why) {
    Check check;
    check.limitState = kind;
    check.basis = basis;
    check.status = Status::unknown;
    check.why = why;
    return check;
}

void label(Check& check, const BoltCheckInput& input, LoadCase loadCase) {
    check.id = input.id;
    check.frame = input.frame;
    check.group = "ballast";
    check.loadCase = loadCase;
    check.consequence = ConsequenceClass::keel;
}

void explainDemand(const BoltForces& forces, const CaseLoads& loads, const Check& check,
                   Trace& trace) {
    const auto say = [&](const char* symbol, std::string meaning, TraceValue value,
                         std::string source = "", std::optional<Standing> standing = std::nullopt) {
        trace.lines.push_back(
            {symbol, std::move(meaning), std::move(value), std::move(source), standing});
    };
    say("F", std::string("load of the case, ") + std::string(titleOf(loads.loadCase)),
        newtons(std::hypot(loads.total.y.si(), loads.total.z.si())), loads.settings.source,
        loads.settings.standing);
    say("M", "its moment about the joint of keel and ballast", abs(loads.totalMoment.x));
    say("T_equal", "all bolts alike about the lee edge (for comparison)", forces.equalForce,
        "old rule, statics", Standing::derived);
    say("T_windward", "windward bolts alone (for comparison)", forces.windwardOnly, "statics",
        Standing::derived);
    say("T_elastic", "in proportion to distance (for comparison)", forces.elastic, "statics",
        Standing::derived);
    say("T_cracked", "bolts against a crushing timber bed: governs", forces.cracked,
        "statics, cracked section", Standing::derived);
    say("share", "larger of tributary and rigid share over an even share", forces.envelope,
        "statics", Standing::derived);
    say("T", "tension to be carried", forces.demandAxial);
    say("V", "shear to be carried", forces.demandLateral);
    if (check.basis == Basis::ec5) {
        say("γ", "demand factor of the case, Eurocode 5 side", loads.settings.ec5Factor,
            loads.settings.source, loads.settings.standing);
    }
    if (check.demand) say("E_d", "design demand", *check.demand);
}

void finish(const Check& check, Trace& trace) {
    if (check.margin)
        trace.lines.push_back(
            {"margin", "design capacity ÷ design demand", *check.margin, "", std::nullopt});
    trace.notes.emplace_back(
        "A guide, not a certificate: a naval architect, a surveyor or the class rules in force "
        "decide what holds a ballast keel.");
}

}  // namespace

std::vector<Check> checkBallastBolt(const BoltCheckInput& input, const BoltForces& forces,
                                    LoadCase loadCase, const CaseSettings& settings) {
    std::vector<Check> checks;
    if (input.rod) {
        checks.push_back(compare(forces.demandAxial, rodTension(*input.rod), input.target));
        if (const auto combined =
                rodCombined(*input.rod, forces.demandAxial, forces.demandLateral)) {
            const Force size =
                newtons(std::hypot(forces.demandAxial.si(), forces.demandLateral.si()));
            checks.push_back(compare(size, *combined, input.target));
        }
    } else {
        checks.push_back(unknown(LimitStateKind::metal, Basis::metal, input.whyNoRod));
    }
    for (const Basis basis : {Basis::us, Basis::ec5}) {
        std::optional<LimitState> state;
        if (input.washer) {
            const WasherInput washer = inCase(*input.washer, settings);
            state = basis == Basis::us ? washerUs(washer) : washerEc5(washer);
        }
        if (state) {
            checks.push_back(
                compare(forces.demandAxial * demandFactor(basis, settings), *state, input.target));
        } else {
            const std::string why = input.washer
                                        ? "the wood has no figure for bearing across the grain"
                                        : input.whyNoWasher;
            checks.push_back(unknown(LimitStateKind::washer, basis, why));
        }
    }
    for (Check& check : checks) label(check, input, loadCase);
    return checks;
}

std::vector<Check> checkBallastBed(const WasherInput& wood, const CaseLoads& loads, double target) {
    std::vector<Check> checks;
    if (!loads.bed) return checks;
    const BedInput bed{loads.bed->resultant, loads.bed->highest, inCase(wood, loads.settings)};
    for (const Basis basis : {Basis::us, Basis::ec5}) {
        const auto state = basis == Basis::us ? bedUs(bed) : bedEc5(bed);
        Check check =
            state ? compare(bed.contact * demandFactor(basis, loads.settings), *state, target)
                  : unknown(LimitStateKind::crushing, basis,
                            "the keel's wood has no figure for bearing across the grain");
        check.id = "keel";
        check.group = "ballast";
        check.loadCase = loads.loadCase;
        checks.push_back(std::move(check));
    }
    return checks;
}

std::optional<Trace> explainBallastBolt(const BoltCheckInput& input, const CaseLoads& loads,
                                        const Check& check) {
    const auto forces = std::find_if(loads.bolts.begin(), loads.bolts.end(),
                                     [&](const BoltForces& f) { return f.id == input.id; });
    if (forces == loads.bolts.end()) return std::nullopt;
    Trace trace;
    explainDemand(*forces, loads, check, trace);
    if (check.limitState == LimitStateKind::metal && input.rod) {
        rodTension(*input.rod, &trace);
    } else if (check.limitState == LimitStateKind::combined && input.rod) {
        rodCombined(*input.rod, forces->demandAxial, forces->demandLateral, &trace);
    } else if (check.limitState == LimitStateKind::washer && input.washer) {
        const WasherInput washer = inCase(*input.washer, loads.settings);
        check.basis == Basis::us ? washerUs(washer, &trace) : washerEc5(washer, &trace);
    } else {
        return std::nullopt;
    }
    finish(check, trace);
    return trace;
}

std::optional<Trace> explainBallastBed(const WasherInput& wood, const CaseLoads& loads,
                                       const Check& check) {
    if (!loads.bed || check.limitState != LimitStateKind::crushing) return std::nullopt;
    Trace trace;
    const BedInput bed{loads.bed->resultant, loads.bed->highest, inCase(wood, loads.settings)};
    const auto state = check.basis == Basis::us ? bedUs(bed, &trace) : bedEc5(bed, &trace);
    if (!state) return std::nullopt;
    if (check.basis == Basis::ec5) {
        trace.lines.push_back({"γ", "demand factor of the case, Eurocode 5 side",
                               loads.settings.ec5Factor, loads.settings.source,
                               loads.settings.standing});
    }
    if (check.demand)
        trace.lines.push_back({"E_d", "design demand", *check.demand, "", std::nullopt});
    finish(check, trace);
    return trace;
}

}  // namespace fayline
