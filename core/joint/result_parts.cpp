#include "result_parts.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "quantity/display.h"

namespace fayline {

std::string nameOfMember(const PreparedMember& member) {
    return member.given->name.empty() ? "a member" : member.given->name;
}

void startTrace(Trace& trace, std::string title, std::string formula, const LimitState& state) {
    trace = {};
    trace.title = std::move(title);
    trace.formula = std::move(formula);
    trace.clause = clauseOf(state);
    trace.standing = state.standing;
    trace.outside = textsOf(state.outside);
}

TraceLine lineOf(std::string symbol, std::string meaning, const SourcedLength& size) {
    return {std::move(symbol), std::move(meaning), size.value, std::string(size.source),
            size.standing};
}

void explainMember(const PreparedMember& member, Basis basis, Trace& trace) {
    const std::string name = nameOfMember(member);
    const MemberFigures figures = figuresOf(*member.given);
    auto& lines = trace.lines;
    lines.push_back(
        {"t", name + ": thickness less counterbore", member.thickness, "decision", std::nullopt});
    if (member.given->lead)
        lines.push_back({"f", name + ": lead, pressure it bears", member.given->lead->value,
                         member.given->lead->source, member.given->lead->standing});
    if (basis == Basis::us && figures.gravity)
        lines.push_back({"G", name + ": specific gravity, oven-dry", figures.gravity->value.value,
                         figures.gravity->source, figures.gravity->standing});
    if (basis == Basis::ec5 && figures.density)
        lines.push_back({"ρ_k", name + ": characteristic density", figures.density->value.value,
                         figures.density->source, figures.density->standing});
    if (basis == Basis::us && member.given->bearingUs)
        lines.push_back({"F_e", name + ": bearing strength, measured",
                         member.given->bearingUs->value, member.given->bearingUs->source,
                         member.given->bearingUs->standing});
    if (basis == Basis::ec5 && member.given->embedmentEc5)
        lines.push_back({"f_h", name + ": embedment strength, declared",
                         member.given->embedmentEc5->value, member.given->embedmentEc5->source,
                         member.given->embedmentEc5->standing});
}

void explainMembers(const Prepared& prepared, Basis basis, Trace& trace) {
    for (std::size_t i = 0; i < prepared.members.size(); ++i) {
        const PreparedMember& member = prepared.members[i];
        explainMember(member, basis, trace);
        const Length bears = basis == Basis::us ? member.bears : member.reaches;
        if (bears != member.thickness)
            trace.lines.push_back(
                {"l", nameOfMember(member) + ": length that bears", bears, "", std::nullopt});
        if (i + 1 < prepared.members.size() && member.given->gap.si() > 0.0)
            trace.lines.push_back({"g", "gap behind " + nameOfMember(member), member.given->gap,
                                   "decision", std::nullopt});
    }
}

void explainHold(const Prepared& prepared, Trace& trace) {
    if (prepared.isScrew()) {
        trace.lines.push_back(lineOf("D", "body", prepared.screw.body));
    } else {
        trace.lines.push_back({"D", "body", prepared.nominal, "decision", Standing::read});
    }
    trace.lines.push_back(
        {"p", "reaches into the last member", prepared.penetration, "", std::nullopt});
    trace.lines.push_back(
        {"L", prepared.isScrew() ? "thread inside it" : "length inside it", prepared.thread,
         prepared.isScrew() ? std::string(prepared.screw.thread.source) : "",
         prepared.isScrew() ? std::optional(prepared.screw.thread.standing) : std::nullopt});
}

void explainBand(const std::optional<Band>& band, const std::string& what, Trace& trace) {
    if (!band) return;
    trace.notes.push_back(what + ": " + displayForce(band->low, UnitSystem::millimetres) + " to " +
                          displayForce(band->high, UnitSystem::millimetres));
}

Standing worstOf(const Prepared& prepared, Basis basis) {
    Standing worst = Standing::derived;
    for (const PreparedMember& member : prepared.members) {
        const JointMember& given = *member.given;
        if (given.lead) {
            worst = std::max(worst, Standing::judgement);
        } else if (basis == Basis::us) {
            if (given.bearingUs) {
                worst = std::max(worst, given.bearingUs->standing);
            } else if (member.gravity) {
                worst = std::max(worst, member.gravityStanding);
            }
        } else if (given.embedmentEc5) {
            worst = std::max(worst, given.embedmentEc5->standing);
        } else if (member.density) {
            worst = std::max(worst, member.densityStanding);
        }
    }
    return worst;
}

std::optional<LeastAxial> leastAxial(const BasisResult& basis) {
    std::optional<LeastAxial> least;
    basis.each([&](const LimitState& state) {
        if (!isAxial(state.kind) || (least && least->working <= state.working)) return;
        least = LeastAxial{state.working, state.reference, state.kind, state.standing};
    });
    return least;
}

std::optional<LimitState> combinedFrame(const JointLoad& load, const LateralResult& lateral,
                                        const std::optional<LeastAxial>& axial) {
    const bool pulled = load.axial.si() > 0.0;
    const bool sheared = load.lateral.si() > 0.0;
    if (load.axial.si() < 0.0 || (!pulled && !sheared) || (pulled && !axial)) return std::nullopt;
    LimitState state;
    state.kind = LimitStateKind::combined;
    state.soft = !pulled;
    state.standing = lateral.state.standing;
    state.outside = lateral.state.outside;
    if (pulled) state.standing = std::max(state.standing, axial->standing);
    if (!pulled) {
        state.gives = lateral.state.gives;
        state.apart = lateral.state.apart;
    }
    return state;
}

void explainCombined(const JointLoad& load, const LimitState& side,
                     const std::optional<LeastAxial>& axial, const LimitState& state,
                     const std::string& formula, Trace& trace) {
    startTrace(trace, "Sideways and along the fastening together", formula, state);
    trace.lines.push_back({"F_v", "sideways", load.lateral, "the load given", std::nullopt});
    trace.lines.push_back({"F_ax", "along it", load.axial, "the load given", std::nullopt});
    trace.lines.push_back({"α", "load to the wood's surface, degrees",
                           std::asin(toSurface(load).sine) * 180.0 / std::numbers::pi, "",
                           std::nullopt});
    trace.lines.push_back({"Z", "design load sideways", side.working, "", std::nullopt});
    if (axial)
        trace.lines.push_back({"W", "design load along it, " + std::string(nameOf(axial->kind)),
                               axial->working, "", std::nullopt});
    trace.lines.push_back({"R", "size of load, along the load given, that is just met",
                           state.working, "", std::nullopt});
}

}  // namespace fayline
