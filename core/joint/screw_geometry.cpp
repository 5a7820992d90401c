#include "joint/screw.h"
#include "joint/work_joint.h"
#include "prepared.h"
#include "quantity/display.h"

namespace fayline {
namespace {

GeometryFinding atLeast(std::string what, Length has, Length needs, std::string met,
                        std::string missed) {
    GeometryFinding finding;
    finding.what = std::move(what);
    finding.has = has;
    finding.needs = needs;
    finding.met = has >= needs;
    finding.says = finding.met ? std::move(met) : std::move(missed);
    return finding;
}

GeometryFinding threadBound(const Prepared& prepared) {
    const Length shank = prepared.fastener().length - prepared.screw.thread.value;
    const Length before = prepared.fastener().length - prepared.penetration;
    return atLeast("thread_bound", shank, before, "the plain shank reaches the inner timber",
                   "thread-bound: the thread still grips the outer timber, so the joint cannot be "
                   "drawn tight; a longer shank or a deeper counterbore, short by " +
                       bothUnits(before - shank));
}

GeometryFinding penetration(const Prepared& prepared) {
    return atLeast("penetration", prepared.penetration, 6.0 * prepared.nominal,
                   "six diameters or more in the inner timber",
                   "traditional, shorter than the code: the code wants six diameters in the inner "
                   "timber");
}

GeometryFinding tipOut(const Prepared& prepared) {
    const Length left = prepared.last().thickness - prepared.penetration;
    // Judgement: less wood than this in front of the point bulges or lets water to the metal.
    const Length wanted = millimetres(6);
    return atLeast("tip_out", left, wanted, "wood enough beyond the point",
                   left.si() < 0.0 ? "the point comes out by " + bothUnits(-left)
                                   : "only " + bothUnits(left) + " of wood beyond the point");
}

void addCounterbore(const Prepared& prepared, std::vector<GeometryFinding>& findings) {
    const JointMember& outer = prepared.joint->members.front();
    if (outer.counterbore.si() <= 0.0) return;
    findings.push_back(atLeast("counterbore", prepared.members.front().thickness,
                               outer.thickness * (2.0 / 3.0),
                               "two thirds of the outer timber left under the head",
                               "counterbore deeper than a third of the outer timber"));
    findings.push_back(atLeast("bung_depth", outer.counterbore, millimetres(6),
                               "deep enough to hold a bung",
                               "too shallow for a bung: fill it instead"));
    if (!prepared.fastener().bung) return;
    const Length head = prepared.screw.head.value;
    findings.push_back(
        atLeast("bung", *prepared.fastener().bung, head, "the head goes down the counterbore",
                "the head, " + bothUnits(head) + ", does not go down the counterbore"));
}

}  // namespace

std::vector<GeometryFinding> screwGeometry(const Joint& joint) {
    std::vector<GeometryFinding> findings;
    if (joint.fastener.kind != FastenerKind::woodScrew) return findings;
    const Prepared prepared = prepare(joint);
    findings.push_back(threadBound(prepared));
    findings.push_back(penetration(prepared));
    findings.push_back(tipOut(prepared));
    addCounterbore(prepared, findings);
    return findings;
}

}  // namespace fayline
