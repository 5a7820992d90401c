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

double rowFactor(const Prepared& prepared, std::vector<std::string>& outside) {
    const auto& row = prepared.joint->row;
    if (!row || row->count <= 1 || prepared.nominal < inches(0.25)) return 1.0;
    if (!row->main || !row->side) {
        outside.emplace_back(
            "action of the row not worked out: the members' sections and moduli are not given");
        return 1.0;
    }
    return groupFactorUs(row->count, row->spacing, prepared.nominal, *row->main, *row->side);
}

double placementFactor(const Prepared& prepared, std::vector<std::string>& outside) {
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
    if (least.endTooNear) outside.emplace_back("nearer to the end than the code's least distance");
    if (least.spacingTooNear) outside.emplace_back("spaced closer than three diameters");
    if (least.edgeTooNear) outside.emplace_back("nearer to the edge than the code allows");
    return least.factor;
}

void gravityNotes(const Prepared& prepared, std::vector<std::string>& outside) {
    for (const PreparedMember& member : prepared.members) {
        if (member.given->bearingUs || !member.gravity) continue;
        const double gravity = member.gravity->value.value;
        if (gravity < 0.31 || gravity > 0.73) {
            outside.push_back("specific gravity " + rounded(gravity, 2) + " of " +
                              nameOfMember(member) +
                              " lies outside the 0.31 to 0.73 the bearing strengths are published "
                              "for");
        }
    }
}

void kindNotes(const Prepared& prepared, std::vector<std::string>& outside) {
    const JointFastener& fastener = prepared.fastener();
    if (prepared.isScrew() && prepared.penetration < 6.0 * prepared.nominal) {
        outside.push_back("traditional, shorter than the code: " + bothUnits(prepared.penetration) +
                          " in the last member, the code wants six diameters, " +
                          bothUnits(6.0 * prepared.nominal) + "; worked with its true length");
    }
    if (fastener.kind == FastenerKind::rivet)
        outside.emplace_back("yield theory extended: no standard covers rivets on roves");
    if (fastener.kind == FastenerKind::drift)
        outside.emplace_back(
            "a bolt of this size is the ceiling: drifts were never tested "
            "sideways (Wood Handbook ch. 8)");
    if (fastener.section == DowelSection::square)
        outside.emplace_back("square shank: yield theory with its side as width, extended");
    if (prepared.nominal > inches(1.0))
        outside.emplace_back("thicker than the 1 in the reductions are published for");
    if (prepared.joint->members.size() > 3)
        outside.emplace_back("more than two planes: each taken as the least of them");
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

LateralFactors factorsOf(const Prepared& prepared, std::vector<std::string>& outside) {
    const Joint& joint = *prepared.joint;
    const bool endGrain = std::any_of(joint.members.begin(), joint.members.end(),
                                      [](const JointMember& member) { return member.endGrain; });
    return {
        durationFactorUs(joint.duration),
        moistureFactorLateralUs(joint.fitted, joint.service, prepared.nominal, !restrains(joint)),
        rowFactor(prepared, outside), placementFactor(prepared, outside),
        endGrainFactorUs(endGrain)};
}

void explainLateral(const Prepared& prepared, const UsReduction& reduction,
                    const LateralFactors& factors, const LateralResult& result, Trace& trace) {
    startTrace(trace, "Sideways load on the fastening, US basis",
               "Z' = min(modes) · C_D · C_M · C_g · C_Δ · C_eg", result.state);
    explainMembers(prepared, Basis::us, trace);
    auto& lines = trace.lines;
    for (const PreparedMember& member : prepared.members) {
        if (const auto bearing = bearingUsOf(prepared, member))
            lines.push_back({"F_e", nameOfMember(member) + ": dowel bearing at its grain angle",
                             *bearing, "NDS Table 12.3.3, 12.3.4", Standing::derived});
    }
    lines.push_back(
        {"D",
         prepared.inEquations == prepared.nominal ? "diameter in the equations: the body"
                                                  : "diameter in the equations: the root",
         prepared.inEquations, prepared.isScrew() ? prepared.screw.root.source : "decision",
         prepared.isScrew() ? prepared.screw.root.standing : Standing::read});
    lines.push_back({"F_yb", "bending yield", prepared.bendingYield->value,
                     prepared.bendingYield->source, prepared.bendingYield->standing});
    lines.push_back({"M", "moment at a hinge",
                     dowelMoment(prepared.bendingYield->value, prepared.inEquations,
                                 prepared.fastener().section),
                     "F_yb·D³/6 round, F_yb·a³/4 square", Standing::derived});
    lines.push_back({"θ", "largest angle of load to grain, degrees", prepared.steepest.inDegrees(),
                     "", std::nullopt});
    lines.push_back(
        {"R_d", "reduction of Im, Is", reduction.bearing, "NDS Table 12.3.1B", Standing::derived});
    lines.push_back(
        {"R_d", "reduction of II", reduction.turning, "NDS Table 12.3.1B", Standing::derived});
    lines.push_back({"R_d", "reduction of IIIm, IIIs, IV", reduction.bending, "NDS Table 12.3.1B",
                     Standing::derived});
    for (const ModeLoad& mode : result.modes)
        lines.push_back({"Z_" + mode.name, "mode " + mode.name, mode.load, "", std::nullopt});
    lines.push_back(
        {"Z", "the least, mode " + result.governs, result.state.reference, "", std::nullopt});
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
    if (!prepared.bendingYield) {
        result.missing.push_back({LimitStateKind::lateral,
                                  "bending yield of the fastening, or yield and ultimate "
                                  "strength, is not given"});
        return;
    }
    const UsReduction reduction =
        usReduction(prepared.inEquations, prepared.nominal, prepared.steepest);
    const auto worked = usLateralOf(prepared, prepared.bendingYield->value, &reduction);
    if (!worked) {
        result.missing.push_back(
            {LimitStateKind::lateral, "no specific gravity or bearing strength for every member"});
        return;
    }
    LateralResult found;
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
    state.standing = std::max(worstOf(prepared, Basis::us), prepared.bendingYield->standing);
    if (factors.product() != 1.0) state.standing = std::max(state.standing, Standing::fromMemory);
    state.clause = lateralClause;
    gravityNotes(prepared, state.outside);
    kindNotes(prepared, state.outside);
    if (traces != nullptr) {
        explainLateral(prepared, reduction, factors, found,
                       *traceOf(traces, Basis::us, LimitStateKind::lateral));
    }
    result.lateral = std::move(found);
}

}  // namespace fayline
