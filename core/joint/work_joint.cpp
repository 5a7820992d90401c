#include "joint/work_joint.h"

#include <numbers>

#include "geometry_parts.h"
#include "joint/driving.h"
#include "quantity/display.h"

namespace fayline {
namespace {

constexpr double shearOfUltimate = 0.6;

void explainDriving(const Prepared& prepared, Stress shearUltimate, const DrivingResult& result,
                    Trace& trace) {
    const FastenerMetal& metal = prepared.fastener().metal;
    trace = {"Screw twisted off while driving",
             "T_y = π/16 · d³ · f_y/√3, T_u = π/12 · d³ · τ_u; T = μ · p · π/2 · d² · L",
             {},
             "torsion of a round bar; driving torque: judgement",
             Standing::judgement,
             {"No published formula gives the torque driving takes: try it on a scrap with the "
              "lead hole and wax to be used."},
             {}};
    trace.lines = {
        {"d", "root", prepared.root, std::string(prepared.screw.root.source),
         prepared.screw.root.standing},
        {"f_y", "least yield", metal.yield->value, metal.yield->source, metal.yield->standing},
        {"τ_u", "ultimate shear", shearUltimate,
         metal.shear ? metal.shear->source : "0.6 of the ultimate strength",
         metal.shear ? metal.shear->standing : Standing::derived},
        {"T_y", "starts to yield", result.gives, "", std::nullopt},
        {"T_u", "twists off", result.apart, "", std::nullopt}};
    if (!result.dry) return;
    const Figure<Stress>& across = *prepared.last().given->acrossMean;
    trace.lines.push_back({"p", "wood pressing on the root, mean across the grain", across.value,
                           across.source, across.standing});
    trace.lines.push_back({"L", "thread in the inner timber", prepared.thread, "", std::nullopt});
    trace.lines.push_back(
        {"μ", "friction, dry", frictionDry, "no published figure", Standing::judgement});
    trace.lines.push_back({"T", "driving it dry", *result.dry, "", std::nullopt});
    trace.lines.push_back({"μ", "friction, waxed or soaped", frictionWaxed, "no published figure",
                           Standing::judgement});
    trace.lines.push_back({"T", "driving it waxed", *result.waxed, "", std::nullopt});
}

std::optional<DrivingResult> drivingOf(const Prepared& prepared, JointTraces* traces) {
    const FastenerMetal& metal = prepared.fastener().metal;
    if (!prepared.isScrew() || !metal.yield || !metal.ultimate) return std::nullopt;
    const Stress shearYield = metal.yield->value / std::numbers::sqrt3;
    const Stress shearUltimate =
        metal.shear ? metal.shear->value : metal.ultimate->value * shearOfUltimate;
    DrivingResult result;
    result.gives = rootYields(prepared.root, shearYield);
    result.apart = rootTwistsOff(prepared.root, shearUltimate);
    if (const auto& across = prepared.last().given->acrossMean) {
        result.dry = drivingTorque(prepared.root, prepared.thread, across->value, frictionDry);
        result.waxed = drivingTorque(prepared.root, prepared.thread, across->value, frictionWaxed);
    }
    if (traces != nullptr)
        explainDriving(prepared, shearUltimate, result,
                       *traceOf(traces, Basis::metal, LimitStateKind::driving));
    return result;
}

/// A design load above what the wood starts to give at: said in its working.
void explainAboveGiving(const BasisResult& basis, JointTraces& traces) {
    basis.each([&](const LimitState& state) {
        const auto found = traces.find({state.basis, state.kind});
        if (state.basis == Basis::metal || !worksAboveGiving(state) || found == traces.end())
            return;
        found->second.notes.push_back(
            "The design load stands above " +
            displayForce(state.gives->low, UnitSystem::millimetres) +
            ", where wood a tenth lighter than the mean may start to give when wet. " +
            std::string(whyAboveGiving(state.basis)));
    });
}

void addCautions(const JointMember& member, std::vector<std::string>& cautions) {
    const MemberFigures figures = figuresOf(member);
    const std::string name = member.name.empty() ? "a member" : member.name;
    if (!member.gravity && figures.gravity)
        cautions.push_back("specific gravity of " + name +
                           " worked out: " + figures.gravity->source);
    if (!member.density && figures.density)
        cautions.push_back("characteristic density of " + name +
                           " worked out: " + figures.density->source);
}

}  // namespace

std::vector<LimitState> BasisResult::states() const {
    std::vector<LimitState> all;
    each([&](const LimitState& state) { all.push_back(state); });
    return all;
}

Result<JointResult> workJoint(const Joint& joint, JointTraces* traces) {
    if (auto wrong = problemOf(joint)) return tl::unexpected(*std::move(wrong));
    const Prepared prepared = prepare(joint);
    const Bands bands = bandsOf(prepared);
    const MetalStates metal = metalStates(prepared, traces);
    Result<JointResult> result;
    addWood(prepared, result->us, result->ec5, traces);
    usResult(prepared, bands, metal, result->us, traces);
    ec5Result(prepared, bands, metal, result->ec5, traces);
    result->driving = drivingOf(prepared, traces);
    addGeometry(prepared, result->geometry);
    result->slip.reserve(joint.members.size() - 1);
    for (std::size_t i = 0; i + 1 < joint.members.size(); ++i) {
        if (const auto slip = slipOf(prepared, i)) result->slip.push_back(*slip);
    }
    if (traces != nullptr) {
        explainAboveGiving(result->us, *traces);
        explainAboveGiving(result->ec5, *traces);
    }
    return result;
}

std::vector<std::string> jointCautions(const Joint& joint) {
    std::vector<std::string> cautions;
    for (const JointMember& member : joint.members) addCautions(member, cautions);
    return cautions;
}

}  // namespace fayline
