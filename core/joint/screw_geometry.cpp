// Sizes of a wood screw, its bit and its hole.

#include "geometry_parts.h"

namespace fayline {
namespace {

/// The code's lead hole for withdrawal as a part of the root: 0.9 above a gravity of 0.6, 0.7 above
/// 0.5, none below (NDS 12.1.5 as summed up by Merritt & Ricketts).
double leastPilot(const PreparedMember& last) {
    if (!last.gravity) return 0.0;
    return last.gravity->value > 0.6 ? 0.9 : last.gravity->value > 0.5 ? 0.7 : 0.0;
}

void counterboreSizes(const Prepared& prepared, std::vector<GeometryFinding>& findings) {
    const JointMember& outer = prepared.joint->members.front();
    if (outer.counterbore.si() <= 0.0) return;
    findings.push_back(notLess("counterbore", prepared.members.front().thickness,
                               outer.thickness * (2.0 / 3.0), Standing::commonPractice));
    findings.push_back(
        notLess("bung_depth", outer.counterbore, millimetres(6), Standing::commonPractice));
    if (prepared.fastener().bung)
        findings.push_back(notLess("bung", *prepared.fastener().bung, prepared.screw.head.value,
                                   Standing::derived));
}

void pilotSizes(const Prepared& prepared, const ScrewHole& hole,
                std::vector<GeometryFinding>& findings) {
    if (!hole.pilot) return;
    const Length root = prepared.screw.root.value;
    const Length middle = hole.pilotTip ? (*hole.pilot + *hole.pilotTip) / 2.0 : *hole.pilot;
    findings.push_back(
        notLess("pilot", middle, root * leastPilot(prepared.last()), Standing::read));
    findings.push_back(notMore("pilot_wide", middle, root, Standing::commonPractice));
    if (hole.pilotTip)
        findings.push_back(
            notMore("pilot_tip", *hole.pilotTip, prepared.nominal * 0.55, Standing::fromMemory));
}

void bitSizes(const Prepared& prepared, const ScrewHole& hole,
              std::vector<GeometryFinding>& findings) {
    const Length length = prepared.fastener().length;
    if (hole.bit) {
        findings.push_back(notMore("bit_long", *hole.bit, length, Standing::commonPractice));
        findings.push_back(
            notLess("bit_short", *hole.bit, length - prepared.nominal, Standing::commonPractice));
    }
    if (!hole.bit && !hole.collar) return;
    // The screw sits on the floor of its counterbore; the collar stops on the timber's face.
    const Length reach = prepared.joint->members.front().counterbore + hole.bit.value_or(length);
    GeometryFinding collar{"stop_collar",    hole.collar.value_or(reach), reach, true, false,
                           Standing::derived};
    collar.met = abs(collar.has - collar.needs) <= millimetres(0.5);
    findings.push_back(collar);
}

}  // namespace

void screwSizes(const Prepared& prepared, std::vector<GeometryFinding>& findings) {
    findings.reserve(6);
    const Length length = prepared.fastener().length;
    const Length before = length - prepared.penetration;
    findings.push_back(notLess("thread_bound", length - prepared.screw.thread.value, before,
                               Standing::commonPractice));
    findings.push_back(
        notLess("penetration", prepared.penetration, 6.0 * prepared.nominal, Standing::read));
    // Judgement: less wood than this in front of the point bulges or lets water to the metal.
    findings.push_back(notLess("tip_out", prepared.last().thickness - prepared.penetration,
                               millimetres(6), Standing::judgement));
    counterboreSizes(prepared, findings);
    const ScrewHole& hole = prepared.fastener().screwHole;
    if (hole.slipFit)
        findings.push_back(
            notLess("slip_fit", *hole.slipFit, prepared.nominal, Standing::commonPractice));
    pilotSizes(prepared, hole, findings);
    bitSizes(prepared, hole, findings);
    if (prepared.joint->heel)
        findings.push_back(
            notLess("heel_embedment", prepared.penetration, inches(1.5), Standing::commonPractice));
}

}  // namespace fayline
