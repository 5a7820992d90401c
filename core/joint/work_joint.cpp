#include "joint/work_joint.h"

#include <cmath>
#include <numbers>

#include "prepared.h"

namespace fayline {
namespace {

/// Torque at which the root of a screw starts to yield, and twists off: elastic and plastic torsion
/// of a round bar, shear yield by von Mises.
std::optional<DrivingResult> drivingOf(const Prepared& prepared, JointTraces* traces) {
    const FastenerMetal& metal = prepared.fastener().metal;
    if (!prepared.isScrew() || !metal.yield || !metal.ultimate) return std::nullopt;
    const double cube_m3 = std::pow(prepared.root.si(), 3);
    const Stress shearYield = metal.yield->value / std::numbers::sqrt3;
    const Stress shearUltimate = metal.shear ? metal.shear->value : metal.ultimate->value * 0.6;
    const DrivingResult result{
        Moment::fromSi(std::numbers::pi / 16.0 * cube_m3 * shearYield.si()),
        Moment::fromSi(std::numbers::pi / 12.0 * cube_m3 * shearUltimate.si())};
    if (traces != nullptr) {
        Trace& trace = *traceOf(traces, Basis::metal, LimitStateKind::driving);
        trace = {"Screw twisted off while driving",
                 "T_y = π/16 · d³ · f_y/√3, T_u = π/12 · d³ · τ_u",
                 {},
                 "torsion of a round bar",
                 Standing::derived,
                 {"No published formula gives the torque driving takes: try it on a scrap with the "
                  "lead hole and wax to be used."},
                 {}};
        trace.lines = {
            {"d", "root", prepared.root, prepared.screw.root.source, prepared.screw.root.standing},
            {"f_y", "least yield", metal.yield->value, metal.yield->source, metal.yield->standing},
            {"τ_u", "ultimate shear", shearUltimate,
             metal.shear ? metal.shear->source : "0.6 of the ultimate strength",
             metal.shear ? metal.shear->standing : Standing::derived},
            {"T_y", "starts to yield", result.gives, "", std::nullopt},
            {"T_u", "twists off", result.apart, "", std::nullopt}};
    }
    return result;
}

}  // namespace

std::vector<LimitState> BasisResult::states() const {
    std::vector<LimitState> all;
    if (lateral) all.push_back(lateral->state);
    if (withdrawal) all.push_back(withdrawal->state);
    for (const auto* state : {&pullThrough, &washer, &metal, &headShear, &combined}) {
        if (*state) all.push_back(**state);
    }
    return all;
}

Result<JointResult> workJoint(const Joint& joint, JointTraces* traces) {
    if (auto wrong = problemOf(joint)) return tl::unexpected(*std::move(wrong));
    const Prepared prepared = prepare(joint);
    const Bands bands = bandsOf(prepared);
    JointResult result;
    result.us = usResult(prepared, bands, traces);
    result.ec5 = ec5Result(prepared, bands, traces);
    result.driving = drivingOf(prepared, traces);
    result.geometry = screwGeometry(joint);
    result.firstToGo = firstToGo(result.us, joint.load);
    result.cautions = prepared.cautions;
    return result;
}

}  // namespace fayline
