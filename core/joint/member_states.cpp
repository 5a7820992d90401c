// What the timbers themselves can carry at a fastening: the wood the hole leaves, splitting across
// the grain, a row torn out along it.

#include <algorithm>
#include <cmath>

#include "joint/net_section.h"
#include "joint/splitting.h"
#include "joint/us_factors.h"
#include "material/design_stress.h"
#include "result_parts.h"

namespace fayline {
namespace {

constexpr double wetShear = 0.97;    // Merritt & Ricketts, Table 10.6
constexpr double alongLeast = 0.18;  // cosine and sine of 80°: less than that is not counted

Length boreOf(const Prepared& prepared) {
    return max(prepared.fastener().hole.value_or(prepared.nominal), prepared.nominal);
}

double slopeOf(const JointMember& member) {
    return member.grainSlope ? slopeOfGrainRatio(*member.grainSlope) : 1.0;
}

/// Design over tabulated strength of the timber, without slope of grain.
double woodShare(const Prepared& prepared, Basis basis, double wet) {
    if (basis == Basis::ec5) return ec5Share(prepared);
    return durationFactorUs(prepared.joint->duration) * (prepared.isWet() ? wet : 1.0);
}

struct Weakest {
    const PreparedMember* member = nullptr;
    Force load;
    Standing standing = Standing::derived;
    bool along = false;

    void take(const PreparedMember& other, Force least, Standing how, bool isAlong) {
        if (member != nullptr && load <= least) return;
        *this = {&other, least, how, isAlong};
    }
};

void netSection(const Prepared& prepared, Basis basis, BasisResult& result, JointTraces* traces) {
    Weakest weakest;
    bool asked = false;
    for (const PreparedMember& member : prepared.members) {
        const JointMember& given = *member.given;
        if (given.lead || given.endGrain || member.grain.cosine < alongLeast || !given.width)
            continue;
        asked = true;
        const auto& stress = basis == Basis::us ? given.tensionUs : given.tensionEc5;
        if (!stress) continue;
        weakest.take(member,
                     netSectionLoad(stress->value * slopeOf(given), *given.width, boreOf(prepared),
                                    given.thickness, member.grain),
                     stress->standing, true);
    }
    if (weakest.member == nullptr) {
        if (asked)
            result.missing.push_back(
                {LimitStateKind::netSection, "tension strength along the grain is not given"});
        return;
    }
    const JointMember& given = *weakest.member->given;
    const bool us = basis == Basis::us;
    LimitState& state = result.netSection.emplace();
    state.kind = LimitStateKind::netSection;
    state.basis = basis;
    state.reference = weakest.load;
    state.working = weakest.load * woodShare(prepared, basis, 1.0);
    state.soft = false;
    state.standing = std::max(Standing::fromMemory, weakest.standing);
    state.clause = us ? "ANSI/AWC NDS 3.1.2, 3.8.1" : "EN 1995-1-1 5.2, 6.1.2";
    if (given.grainSlope && *given.grainSlope < 6.0)
        state.outside.push_back({Rule::slopeOfGrain, -1, {}, {}, *given.grainSlope});
    if (traces != nullptr) {
        Trace& trace = *traceOf(traces, basis, LimitStateKind::netSection);
        const auto& stress = us ? *given.tensionUs : *given.tensionEc5;
        startTrace(trace, "Timber torn at the hole",
                   us ? "F = F_t · k · t · (b − d) / cos α · C_D"
                      : "F = f_t,0,k · k · t · (b − d) / cos α · k_mod / γ_M",
                   state);
        trace.lines = {
            {us ? "F_t" : "f_t,0,k", nameOfMember(*weakest.member) + ": tension along the grain",
             stress.value, stress.source, stress.standing},
            {"k", "slope of grain", slopeOf(given), "ASTM D245", Standing::fromMemory},
            {"t", "thickness", given.thickness, "decision", std::nullopt},
            {"b", "width", *given.width, "decision", std::nullopt},
            {"d", "hole", boreOf(prepared), "decision", std::nullopt},
            {"α", "load to the grain, degrees", given.grain.inDegrees(), "decision", std::nullopt}};
        if (!us) explainEc5Factors(prepared, trace);
        trace.lines.push_back({"F", "design load sideways", state.working, "", std::nullopt});
    }
}

/// Load on each fastening at which one timber splits across its grain.
std::optional<Force> splitAcross(const Prepared& prepared, const PreparedMember& member,
                                 Basis basis) {
    const JointMember& given = *member.given;
    const auto& place = prepared.joint->placement;
    if (member.grain.sine < alongLeast || given.endGrain || !given.width || !place ||
        !place->edge || !place->edgeLoadedAcross)
        return std::nullopt;
    const SplitTimber timber{given.thickness, *given.width, *place->edge};
    if (basis == Basis::us && !given.shearUs) return std::nullopt;
    const Force all =
        basis == Basis::ec5 ? splittingEc5(timber) : splittingUs(timber, given.shearUs->value);
    const int row = prepared.joint->row ? std::max(prepared.joint->row->count, 1) : 1;
    return all / member.grain.sine / static_cast<double>(row);
}

/// Load on each fastening at which its row is torn out along the grain; US only, for Eurocode 5
/// counts it in n_ef.
std::optional<Force> tornOut(const Prepared& prepared, const PreparedMember& member, Basis basis) {
    const JointMember& given = *member.given;
    const auto& place = prepared.joint->placement;
    if (basis != Basis::us || member.grain.cosine < alongLeast || given.endGrain || !place ||
        !place->end || place->load != EndLoad::towardEnd || !given.shearUs)
        return std::nullopt;
    Length critical = *place->end;
    if (place->spacing) critical = min(critical, *place->spacing);
    return rowTornOut(given.shearUs->value, given.thickness, critical) / member.grain.cosine;
}

std::string_view whyNoSplitting(const Prepared& prepared) {
    const auto& place = prepared.joint->placement;
    const bool across = std::any_of(
        prepared.members.begin(), prepared.members.end(),
        [](const PreparedMember& m) { return !m.given->lead && m.grain.sine >= alongLeast; });
    if (!across) return {};
    if (!place || !place->edge || !place->edgeLoadedAcross)
        return "distance to the loaded edge is not given";
    return "width or shear strength of the timber is not given";
}

void explainSplitting(const Prepared& prepared, Basis basis, const Weakest& weakest,
                      const LimitState& state, Trace& trace) {
    const JointMember& given = *weakest.member->given;
    const bool us = basis == Basis::us;
    const char* across = us ? "F = 2/3 · F_v · t · d_e · (d_e/d)² / (n · sin α) · C_D · C_M"
                            : "F = 14 · b · √(h_e/(1 − h_e/h)) / (n · sin α) · k_mod / γ_M";
    startTrace(trace, weakest.along ? "Row torn out along the grain" : "Timber split by its load",
               weakest.along ? "F = F_v · t · s / cos α · C_D · C_M" : across, state);
    trace.lines.push_back({"t", nameOfMember(*weakest.member) + ": thickness", given.thickness,
                           "decision", std::nullopt});
    if (us)
        trace.lines.push_back({"F_v", "shear along the grain", given.shearUs->value,
                               given.shearUs->source, given.shearUs->standing});
    const Placement& place = *prepared.joint->placement;
    if (weakest.along) {
        trace.lines.push_back({"s", "end distance, or spacing if less",
                               place.spacing ? min(*place.end, *place.spacing) : *place.end,
                               "decision", std::nullopt});
    } else {
        trace.lines.push_back(
            {us ? "d" : "h", "width across the grain", *given.width, "decision", std::nullopt});
        trace.lines.push_back({us ? "d_e" : "h_e", "loaded edge to the farthest fastening",
                               *place.edge, "decision", std::nullopt});
        trace.notes.emplace_back("All of the load is taken to pass to one side of the joint.");
    }
    trace.lines.push_back(
        {"α", "load to the grain, degrees", given.grain.inDegrees(), "decision", std::nullopt});
    if (!us) explainEc5Factors(prepared, trace);
    trace.lines.push_back({"F", "design load sideways", state.working, "", std::nullopt});
}

void splitting(const Prepared& prepared, Basis basis, BasisResult& result, JointTraces* traces) {
    Weakest weakest;
    bool hard = false;
    for (const PreparedMember& member : prepared.members) {
        const JointMember& given = *member.given;
        if (given.lead) continue;
        const Standing standing =
            basis == Basis::us && given.shearUs ? given.shearUs->standing : Standing::derived;
        if (const auto load = splitAcross(prepared, member, basis)) {
            weakest.take(member, *load, standing, false);
            hard = hard || given.family == WoodFamily::hardwood;
        }
        if (const auto load = tornOut(prepared, member, basis))
            weakest.take(member, *load, standing, true);
    }
    if (weakest.member == nullptr) {
        const std::string_view why = whyNoSplitting(prepared);
        if (!why.empty()) result.missing.push_back({LimitStateKind::splitting, why});
        return;
    }
    LimitState& state = result.splitting.emplace();
    state.kind = LimitStateKind::splitting;
    state.basis = basis;
    state.reference = weakest.load;
    state.working = weakest.load * woodShare(prepared, basis, wetShear);
    state.soft = false;
    state.standing = std::max(Standing::fromMemory, weakest.standing);
    state.clause = basis == Basis::ec5 ? "EN 1995-1-1 8.1.4 (8.4)"
                   : weakest.along     ? "ANSI/AWC NDS Appendix E.3"
                                       : "ANSI/AWC NDS 3.4.3.3";
    state.place = weakest.along ? "out along the row" : "across the grain";
    if (weakest.along) state.outside.push_back({Rule::tornRowExtended, -1, {}, {}, 0.0});
    if (basis == Basis::ec5 && hard)
        state.outside.push_back({Rule::splittingForSoftwood, -1, {}, {}, 0.0});
    if (traces != nullptr)
        explainSplitting(prepared, basis, weakest, state,
                         *traceOf(traces, basis, LimitStateKind::splitting));
}

}  // namespace

void addMembers(const Prepared& prepared, Basis basis, BasisResult& result, JointTraces* traces) {
    netSection(prepared, basis, result, traces);
    splitting(prepared, basis, result, traces);
}

}  // namespace fayline
