// Sizes of a fastening and its hole against the timbers it joins and each other.

#include <cmath>
#include <numbers>

#include "geometry_parts.h"
#include "joint/rivet.h"
#include "joint/work_joint.h"

namespace fayline {
namespace {

Length gripOf(const Joint& joint) {
    Length grip;
    for (std::size_t i = 0; i < joint.members.size(); ++i) {
        const JointMember& member = joint.members[i];
        grip += member.thickness - member.counterbore;
        if (i + 1 < joint.members.size()) grip += member.gap;
    }
    return grip;
}

void boltSizes(const Joint& joint, std::vector<GeometryFinding>& findings) {
    const JointFastener& bolt = joint.fastener;
    if (bolt.hole) {
        findings.push_back(
            notLess("hole_fit", *bolt.hole, bolt.diameter, Standing::commonPractice));
        findings.push_back(
            notMore("hole_loose", *bolt.hole, bolt.diameter + inches(0.0625), Standing::read));
    }
    if (bolt.length.si() <= 0.0 || !bolt.nutHeight || !bolt.pitch) return;
    const double nuts =
        (bolt.head == FastenerEnd::nut ? 1.0 : 0.0) + (bolt.point == FastenerEnd::nut ? 1.0 : 0.0);
    if (nuts == 0.0) return;
    Length beyond = bolt.length - gripOf(joint) - *bolt.nutHeight * nuts;
    for (const auto* washer : {&bolt.headBearing, &bolt.pointBearing}) {
        if (*washer) beyond -= (*washer)->thickness;
    }
    findings.push_back(notLess("beyond_nut", beyond, *bolt.pitch * nuts, Standing::commonPractice));
}

void driftSizes(const Joint& joint, std::vector<GeometryFinding>& findings) {
    if (!joint.fastener.hole) return;
    findings.push_back(
        notMore("drift_hole", *joint.fastener.hole, joint.fastener.diameter, Standing::fromMemory));
}

void rivetSizes(const Joint& joint, std::vector<GeometryFinding>& findings) {
    const JointFastener& rivet = joint.fastener;
    const Length side = rivet.diameter;
    if (rivet.hole && rivet.section == DowelSection::square) {
        findings.push_back(
            notLess("corner_bite", side * std::numbers::sqrt2, *rivet.hole, Standing::derived));
        findings.push_back(notLess("square_hole", *rivet.hole, side * 0.9, Standing::judgement));
    } else if (rivet.hole) {
        findings.push_back(
            notMore("rivet_hole", *rivet.hole, side + inches(1.0 / 64.0), Standing::judgement));
    }
    if (rivet.length.si() <= 0.0 || !rivet.pointBearing) return;
    const Length stands = standOff(rivet.length, gripOf(joint), rivet.pointBearing->thickness);
    findings.push_back(notLess("stand_off", stands, side, Standing::commonPractice));
    findings.push_back(notMore("stand_off_most", stands, side * 1.5, Standing::commonPractice));
}

}  // namespace

GeometryFinding notLess(std::string_view what, Length has, Length needs, Standing standing) {
    return {what, has, needs, has >= needs, false, standing};
}

GeometryFinding notMore(std::string_view what, Length has, Length needs, Standing standing) {
    return {what, has, needs, has <= needs, true, standing};
}

void addGeometry(const Prepared& prepared, std::vector<GeometryFinding>& findings) {
    switch (prepared.fastener().kind) {
        case FastenerKind::woodScrew:
            return screwSizes(prepared, findings);
        case FastenerKind::bolt:
            return boltSizes(*prepared.joint, findings);
        case FastenerKind::drift:
            return driftSizes(*prepared.joint, findings);
        case FastenerKind::rivet:
            return rivetSizes(*prepared.joint, findings);
    }
}

std::vector<GeometryFinding> jointGeometry(const Joint& joint) {
    std::vector<GeometryFinding> findings;
    addGeometry(prepare(joint), findings);
    return findings;
}

}  // namespace fayline
