// Eurocode 5 sideways: F_v,Rk of all planes with rope, row and the working.

#include <algorithm>

#include "joint/ec5_axial.h"
#include "joint/ec5_bearing.h"
#include "joint/ec5_lateral.h"
#include "prepared.h"
#include "quantity/display.h"
#include "result_parts.h"

namespace fayline {
namespace {

/// What every plane shares.
struct Ec5Dowelling {
    SourcedLength diameter;  ///< d, or d_ef of a screw
    bool large = false;      ///< bolts' embedment, grain counts
    double ropeLimit = 0.0;
    const char* rope = "";  ///< which limit, for the working
    Moment yieldMoment;
};

SourcedLength effectiveDiameter(const Prepared& prepared) {
    if (!prepared.isScrew()) return {prepared.nominal, Standing::read, "diameter"};
    const Length shank = prepared.fastener().length - prepared.screw.thread.value;
    const Length before = prepared.fastener().length - prepared.penetration;
    if (shank - before >= 4.0 * prepared.nominal) {
        return {prepared.nominal, prepared.screw.body.standing,
                "the shank enters the last member by four diameters: d_ef = d (8.7.1)"};
    }
    return {effectiveThread(prepared.inEquations), prepared.screw.root.standing,
            "1.1 times the root (8.7.1)"};
}

Ec5Dowelling dowellingOf(const Prepared& prepared) {
    Ec5Dowelling dowelling;
    dowelling.diameter = effectiveDiameter(prepared);
    const Length d = dowelling.diameter.value;
    switch (prepared.fastener().kind) {
        case FastenerKind::woodScrew:
            dowelling.large = d > millimetres(6);
            dowelling.ropeLimit = RopeLimits::screw;
            dowelling.rope = "screws, at most the Johansen part itself";
            break;
        case FastenerKind::bolt:
            dowelling.large = true;
            dowelling.ropeLimit = RopeLimits::bolt;
            dowelling.rope = "bolts, at most a quarter of the Johansen part";
            break;
        case FastenerKind::drift:
            dowelling.large = true;
            dowelling.ropeLimit = RopeLimits::dowel;
            dowelling.rope = "dowels, none";
            break;
        case FastenerKind::rivet:
            dowelling.large = d > millimetres(8);
            dowelling.ropeLimit = 0.0;
            dowelling.rope = "none: the standard knows no rivets";
            break;
    }
    const JointFastener& fastener = prepared.fastener();
    dowelling.yieldMoment =
        fastener.yieldMoment ? fastener.yieldMoment->value
                             : yieldMomentEc5(fastener.metal.ultimate->value, d, fastener.section);
    return dowelling;
}

std::optional<Stress> embedmentOf(const PreparedMember& member, const Ec5Dowelling& dowelling) {
    if (member.given->lead) return member.given->lead->value;
    if (member.given->embedmentEc5) return member.given->embedmentEc5->value;
    if (!member.density) return std::nullopt;
    const Length d = dowelling.diameter.value;
    if (!dowelling.large) return embedmentSmall(*member.density, d, LeadHole::drilled);
    return embedmentLarge(*member.density, d, member.grain, member.given->family);
}

/// Two members: modes a–f. Three: g h j k, the weaker outer member for both. More: each inner
/// member with its two neighbours, the least of all (8.1.3).
std::optional<Ec5Lateral> planesOfJoint(const Prepared& prepared, const Ec5Dowelling& dowelling,
                                        Force axial) {
    const auto& members = prepared.members;
    for (const PreparedMember& member : members) {
        if (!embedmentOf(member, dowelling)) return std::nullopt;
    }
    const auto strength = [&](std::size_t i) { return *embedmentOf(members[i], dowelling); };
    if (members.size() == 2) {
        const Ec5Dowel dowel{strength(0),
                             strength(1),
                             members[0].reaches,
                             members[1].reaches,
                             dowelling.diameter.value,
                             dowelling.yieldMoment,
                             members[0].given->gap};
        return ec5SingleShear(dowel, axial, dowelling.ropeLimit);
    }
    std::optional<Ec5Lateral> governing;
    for (std::size_t i = 1; i + 1 < members.size(); ++i) {
        const Ec5Dowel dowel{min(strength(i - 1), strength(i + 1)),
                             strength(i),
                             min(members[i - 1].reaches, members[i + 1].reaches),
                             members[i].reaches,
                             dowelling.diameter.value,
                             dowelling.yieldMoment,
                             max(members[i - 1].given->gap, members[i].given->gap)};
        const Ec5Lateral plane = ec5DoubleShear(dowel, axial, dowelling.ropeLimit);
        if (!governing || plane.onePlane < governing->onePlane) governing = plane;
    }
    return governing;
}

double rowShare(const Prepared& prepared, const Ec5Dowelling& dowelling) {
    const auto& row = prepared.joint->row;
    if (!row || row->count <= 1) return 1.0;
    const double spacing_d = row->spacing / dowelling.diameter.value;
    const double effective = dowelling.large
                                 ? effectiveBolts(row->count, spacing_d, prepared.steepest)
                                 : effectiveNails(row->count, spacing_d);
    return std::min(1.0, effective / row->count);
}

void notes(const Prepared& prepared, std::vector<Remark>& outside) {
    const JointFastener& fastener = prepared.fastener();
    const auto add = [&](Rule rule) { outside.push_back({rule, -1, {}, {}, 0.0}); };
    const auto any = [&](auto holds) {
        return std::any_of(prepared.members.begin(), prepared.members.end(), holds);
    };
    if (std::any_of(prepared.members.begin(), prepared.members.end() - 1,
                    [](const PreparedMember& m) { return m.given->gap.si() > 0.0; }))
        add(Rule::gapNotInTheCode);
    if (fastener.kind == FastenerKind::rivet) add(Rule::rivetNotCovered);
    if (fastener.kind == FastenerKind::drift) add(Rule::driftNotTested);
    if (prepared.isScrew() && prepared.penetration < 4.0 * prepared.nominal)
        outside.push_back(
            {Rule::shorterThanTheCode, -1, prepared.penetration, 4.0 * prepared.nominal, 0.0});
    if (any([](const PreparedMember& m) { return m.given->endGrain; })) add(Rule::endGrainLateral);
    if (any([](const PreparedMember& m) { return m.given->lead.has_value(); }))
        add(Rule::leadNotCovered);
}

void explain(const Prepared& prepared, const Ec5Dowelling& dowelling, Force axial, double share,
             const LateralResult& result, Trace& trace) {
    startTrace(trace, "Sideways load on the fastening, Eurocode 5",
               "R_d = planes · (min Johansen + rope) · n_ef/n · k_mod / γ_M", result.state);
    explainMembers(prepared, Basis::ec5, trace);
    auto& lines = trace.lines;
    lines.push_back(lineOf("d", "diameter in the equations", dowelling.diameter));
    for (const PreparedMember& member : prepared.members)
        lines.push_back({"f_h", nameOfMember(member) + ": embedment strength",
                         *embedmentOf(member, dowelling),
                         dowelling.large ? "EN 1995-1-1 8.31 to 8.33" : "EN 1995-1-1 8.16",
                         dowelling.large ? Standing::fromMemory : Standing::read});
    if (const auto& own = prepared.fastener().yieldMoment) {
        lines.push_back({"M_y", "yield moment", own->value, own->source, own->standing});
    } else {
        const Figure<Stress>& ultimate = *prepared.fastener().metal.ultimate;
        lines.push_back(
            {"f_u", "least ultimate", ultimate.value, ultimate.source, ultimate.standing});
        lines.push_back({"M_y", "yield moment", dowelling.yieldMoment,
                         "EN 1995-1-1 8.14, 8.30, from the ultimate strength", Standing::read});
    }
    for (const ModeLoad& mode : result.modes)
        lines.push_back({"F_" + std::string(mode.name),
                         "mode " + std::string(mode.name) + ", one plane", mode.load, "",
                         std::nullopt});
    lines.push_back({"F_ax", "characteristic along the fastening", axial, "", std::nullopt});
    lines.push_back(
        {"rope", dowelling.rope, result.rope, "EN 1995-1-1 8.2.2(2)", Standing::fromMemory});
    lines.push_back({"F_v,Rk", "all planes, mode " + std::string(result.governs),
                     result.state.reference, "", std::nullopt});
    lines.push_back(
        {"n_ef/n", "row along the grain", share, "EN 1995-1-1 8.17, 8.34", Standing::fromMemory});
    explainEc5Factors(prepared, trace);
    lines.push_back({"R_d", "design load sideways", result.state.working, "", std::nullopt});
}

}  // namespace

void ec5LateralState(const Prepared& prepared, const Bands& bands, BasisResult& result,
                     JointTraces* traces) {
    const JointFastener& fastener = prepared.fastener();
    if (!fastener.metal.ultimate && !fastener.yieldMoment) {
        result.missing.push_back(
            {LimitStateKind::lateral, "ultimate strength of the metal is not given"});
        return;
    }
    const Ec5Dowelling dowelling = dowellingOf(prepared);
    const Force axial = ec5AxialForRope(prepared, result);
    const auto planes = planesOfJoint(prepared, dowelling, axial);
    if (!planes) {
        result.missing.push_back(
            {LimitStateKind::lateral, "no characteristic density or embedment for every member"});
        return;
    }
    LateralResult& found = result.lateral.emplace();
    found.planes = planesOf(*prepared.joint);
    found.modes = planes->modes;
    found.rope = planes->rope;
    found.governs = planes->governs;
    LimitState& state = found.state;
    state.kind = LimitStateKind::lateral;
    state.basis = Basis::ec5;
    state.reference = planes->onePlane * static_cast<double>(found.planes);
    notes(prepared, state.outside);
    const bool endGrain =
        std::any_of(prepared.members.begin(), prepared.members.end(),
                    [](const PreparedMember& member) { return member.given->endGrain; });
    const double share = rowShare(prepared, dowelling) * (endGrain ? 1.0 / 3.0 : 1.0);
    state.working = state.reference * share * ec5Share(prepared);
    state.gives = bands.lateralGives;
    state.standing = std::max(
        {worstOf(prepared, Basis::ec5),
         fastener.yieldMoment ? fastener.yieldMoment->standing : fastener.metal.ultimate->standing,
         Standing::fromMemory});
    state.clause = prepared.members.size() == 2 ? "EN 1995-1-1 8.2.2 (8.6); Tables 3.1, 2.3"
                                                : "EN 1995-1-1 8.2.2 (8.7); Tables 3.1, 2.3";
    if (traces != nullptr)
        explain(prepared, dowelling, axial, share, found,
                *traceOf(traces, Basis::ec5, LimitStateKind::lateral));
}

}  // namespace fayline
