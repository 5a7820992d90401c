// The US basis sideways: Z' with its factors and the working.

#include <algorithm>

#include "joint/us_factors.h"
#include "joint/us_lateral.h"
#include "prepared.h"
#include "quantity/display.h"
#include "result_parts.h"

namespace fayline {
namespace {

constexpr const char* lateralClause =
    "ANSI/AWC NDS 12.3.1, Table 12.3.1A and B, by the general dowel equations of AWC TR12; factors "
    "Table 11.3.1";

double rowFactor(const Prepared& prepared, std::vector<Remark>& outside) {
    const auto& row = prepared.joint->row;
    if (!row || row->count <= 1 || prepared.nominal < inches(0.25)) return 1.0;
    if (!row->main || !row->side) {
        outside.push_back({Rule::rowNotWorked, -1, {}, {}, 0.0});
        return 1.0;
    }
    return groupFactorUs(row->count, row->spacing, prepared.nominal, *row->main, *row->side);
}

double placementFactor(const Prepared& prepared, std::vector<Remark>& outside) {
    if (!prepared.joint->placement) return 1.0;
    GeometryFactor least;
    for (const PreparedMember& member : prepared.members) {
        const auto factor =
            geometryFactorUs(*prepared.joint->placement, prepared.nominal, member.given->family);
        least.factor = std::min(least.factor, factor.factor);
        least.endTooNear |= factor.endTooNear;
        least.spacingTooNear |= factor.spacingTooNear;
        least.edgeTooNear |= factor.edgeTooNear;
    }
    if (least.endTooNear) outside.push_back({Rule::endTooNear, -1, {}, {}, 0.0});
    if (least.spacingTooNear) outside.push_back({Rule::spacingTooNear, -1, {}, {}, 0.0});
    if (least.edgeTooNear) outside.push_back({Rule::edgeTooNear, -1, {}, {}, 0.0});
    return least.factor;
}

void gravityNotes(const Prepared& prepared, std::vector<Remark>& outside) {
    for (std::size_t i = 0; i < prepared.members.size(); ++i) {
        const PreparedMember& member = prepared.members[i];
        if (!member.bearing) continue;
        const double gravity = member.gravity->value;
        if (gravity < 0.31 || gravity > 0.73)
            outside.push_back({Rule::gravityOutside, static_cast<int>(i), {}, {}, gravity});
    }
}

void kindNotes(const Prepared& prepared, std::vector<Remark>& outside) {
    const JointFastener& fastener = prepared.fastener();
    const auto add = [&](Rule rule) { outside.push_back({rule, -1, {}, {}, 0.0}); };
    if (prepared.isScrew() && prepared.penetration < 6.0 * prepared.nominal)
        outside.push_back(
            {Rule::shorterThanTheCode, -1, prepared.penetration, 6.0 * prepared.nominal, 0.0});
    if (fastener.kind == FastenerKind::rivet) add(Rule::rivetNotCovered);
    if (fastener.kind == FastenerKind::drift) add(Rule::driftNotTested);
    if (fastener.slant && fastener.slant->inDegrees() != 0.0)
        outside.push_back({Rule::slantNotCredited, -1, {}, {}, fastener.slant->inDegrees()});
    if (fastener.section == DowelSection::square) add(Rule::squareShank);
    if (prepared.nominal > inches(1.0)) add(Rule::thickerThanOneInch);
    if (prepared.joint->members.size() > 3) add(Rule::manyPlanes);
    for (const PreparedMember& member : prepared.members) {
        if (member.given->lead) return add(Rule::leadNotCovered);
    }
}

struct LateralFactors {
    double duration, moisture, row, placement, endGrain;
    [[nodiscard]] double product() const {
        return duration * moisture * row * placement * endGrain;
    }
};

/// A row across the grain holds the wood from shrinking.
bool restrains(const Joint& joint) {
    return joint.row && joint.row->count > 1 &&
           std::any_of(joint.members.begin(), joint.members.end(),
                       [](const JointMember& member) { return member.grain > Angle::degrees(45); });
}

LateralFactors factorsOf(const Prepared& prepared, std::vector<Remark>& outside) {
    const Joint& joint = *prepared.joint;
    const bool endGrain = std::any_of(joint.members.begin(), joint.members.end(),
                                      [](const JointMember& member) { return member.endGrain; });
    return {
        durationFactorUs(joint.duration),
        moistureFactorLateralUs(joint.fitted, joint.service, prepared.nominal, !restrains(joint)),
        rowFactor(prepared, outside), placementFactor(prepared, outside),
        endGrainFactorUs(endGrain)};
}

std::string bendingYieldSource(const FastenerMetal& metal) {
    if (metal.bendingYield) return metal.bendingYield->source;
    return "mean of yield and ultimate, ANSI/AWC NDS Appendix I; " + metal.ultimate->source;
}

void explainLateral(const Prepared& prepared, const UsReduction& reduction,
                    const LateralFactors& factors, const LateralResult& result, Trace& trace) {
    startTrace(trace, "Sideways load on the fastening, US basis",
               "Z' = min(modes) · C_D · C_M · C_g · C_Δ · C_eg", result.state);
    explainMembers(prepared, Basis::us, trace);
    auto& lines = trace.lines;
    for (const PreparedMember& member : prepared.members) {
        if (const auto bearing = bearingUsOf(member))
            lines.push_back({"F_e", nameOfMember(member) + ": dowel bearing at its grain angle",
                             *bearing, "NDS Table 12.3.3, 12.3.4", Standing::derived});
    }
    const bool body = prepared.inEquations == prepared.nominal;
    const std::string diameter =
        std::string("diameter in the equations: ") + (body ? "the body" : "the root");
    if (prepared.isScrew()) {
        lines.push_back(lineOf("D", diameter, prepared.screw.root));
    } else {
        lines.push_back({"D", diameter, prepared.inEquations, "decision", Standing::read});
    }
    if (const auto& own = prepared.fastener().yieldMoment) {
        lines.push_back({"M", "moment at a hinge", own->value, own->source, own->standing});
    } else {
        lines.push_back({"F_yb", "bending yield", *prepared.bendingYield,
                         bendingYieldSource(prepared.fastener().metal), prepared.bendingStanding});
        lines.push_back({"M", "moment at a hinge", *prepared.hinge,
                         "F_yb·D³/6 round, F_yb·a³/4 square", Standing::derived});
    }
    lines.push_back({"θ", "largest angle of load to grain, degrees", prepared.steepest.inDegrees(),
                     "", std::nullopt});
    lines.push_back(
        {"R_d", "reduction of Im, Is", reduction.bearing, "NDS Table 12.3.1B", Standing::derived});
    lines.push_back(
        {"R_d", "reduction of II", reduction.turning, "NDS Table 12.3.1B", Standing::derived});
    lines.push_back({"R_d", "reduction of IIIm, IIIs, IV", reduction.bending, "NDS Table 12.3.1B",
                     Standing::derived});
    for (const ModeLoad& mode : result.modes)
        lines.push_back({"Z_" + std::string(mode.name), "mode " + std::string(mode.name), mode.load,
                         "", std::nullopt});
    lines.push_back({"Z", "the least, mode " + std::string(result.governs), result.state.reference,
                     "", std::nullopt});
    lines.push_back({"C_D",
                     std::string("duration, ") + std::string(nameOf(prepared.joint->duration)),
                     factors.duration, "NDS 2.3.2", Standing::fromMemory});
    lines.push_back(
        {"C_M", "moisture in service", factors.moisture, "NDS Table 11.3.3", Standing::fromMemory});
    lines.push_back({"C_g", "row", factors.row, "NDS 11.3.6", Standing::fromMemory});
    lines.push_back({"C_Δ", "distances", factors.placement, "NDS 12.5.1", Standing::fromMemory});
    lines.push_back({"C_eg", "end grain", factors.endGrain, "NDS 12.5.2", Standing::fromMemory});
    lines.push_back({"Z'", "design load sideways", result.state.working, "", std::nullopt});
    explainBand(result.state.gives,
                "starts to give: the same equations unreduced, wood a tenth "
                "lighter and heavier, 0.7 in wet wood",
                trace);
}

}  // namespace

void usLateralState(const Prepared& prepared, const Bands& bands, BasisResult& result,
                    JointTraces* traces) {
    if (!prepared.hinge) {
        result.missing.push_back({LimitStateKind::lateral,
                                  "bending yield of the fastening, or yield and ultimate "
                                  "strength, is not given"});
        return;
    }
    const UsReduction reduction =
        usReduction(prepared.inEquations, prepared.nominal, prepared.steepest);
    const auto worked = usLateralOf(prepared, *prepared.hinge, reduction);
    if (!worked) {
        result.missing.push_back(
            {LimitStateKind::lateral, "no specific gravity or bearing strength for every member"});
        return;
    }
    LateralResult& found = result.lateral.emplace();
    found.planes = planesOf(*prepared.joint);
    found.modes = worked->modes;
    found.governs = worked->governs;
    LimitState& state = found.state;
    state.kind = LimitStateKind::lateral;
    state.basis = Basis::us;
    state.reference = worked->reference;
    const LateralFactors factors = factorsOf(prepared, state.outside);
    state.working = state.reference * factors.product();
    state.gives = bands.lateralGives;
    state.standing = std::max(worstOf(prepared, Basis::us), prepared.bendingStanding);
    if (factors.product() != 1.0) state.standing = std::max(state.standing, Standing::fromMemory);
    state.clause = lateralClause;
    gravityNotes(prepared, state.outside);
    kindNotes(prepared, state.outside);
    if (traces != nullptr) {
        explainLateral(prepared, reduction, factors, found,
                       *traceOf(traces, Basis::us, LimitStateKind::lateral));
    }
}

}  // namespace fayline
