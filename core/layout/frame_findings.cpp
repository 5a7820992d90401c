#include "frame_findings.h"

#include <cmath>

#include "practice.h"
#include "quantity/display.h"

namespace fayline {
namespace {

/// Wood left beyond a screw's point, as practice asks: common practice, no published source.
constexpr Length tipCover = millimetres(6);

/// The choice a hole was made from.
const FasteningChoice* choiceOf(const FrameFasteningInput& in, const Hole& hole) {
    const bool port = hole.side == "port";
    if (hole.group == "heel") return port ? &*in.heelPort : &*in.heelStarboard;
    if (hole.group == "arm") return port ? &*in.armPort : &*in.armStarboard;
    if (hole.group == "floor") return &*in.floorBolt;
    return &*in.plank[static_cast<std::size_t>(strakeOf(hole)) - 1];
}

void checkScrew(const FrameFasteningInput& in, const Hole& hole, const FasteningChoice& choice,
                std::vector<Finding>& findings) {
    const bool plank = hole.group == "plank";
    const Length outer = (plank ? in.planking : in.moulded) - choice.counterbore;
    const Length bite = hole.length - outer;
    const std::string place =
        plank ? hole.frame + ".plank"
              : hole.frame + "." + (hole.side == "port" ? "P" : "S") + "." + hole.group;
    if (bite <= Length{}) {
        findings.push_back({"grip",
                            {hole.id},
                            -bite,
                            hole.id + " does not reach the inner timber",
                            {place + ".length="}});
        return;
    }
    if (plank) {
        const Length left = in.moulded - bite;
        if (left < Length{}) {
            findings.push_back(
                {"tip_out",
                 {hole.id},
                 -left,
                 hole.id + " shows its point by " + shown(-left) + " inside the frame",
                 {place + ".length="}});
        } else if (left < tipCover) {
            findings.push_back(
                {"near",
                 {hole.id},
                 tipCover - left,
                 hole.id + " leaves only " + shown(left) + " of frame beyond its point",
                 {place + ".length="}});
        }
    }
    // Thread begins two thirds of the length from the point: where that lies in the outer piece,
    // the joint cannot draw up.
    if (hole.length / 3.0 < outer - millimetres(0.05)) {
        findings.push_back(
            {"thread_bound",
             {hole.id},
             outer - hole.length / 3.0,
             hole.id +
                 " has thread in the outer piece; bore that a slip fit or take a longer shank",
             {}});
    }
    if (choice.counterbore >= (plank ? in.planking : in.moulded)) {
        findings.push_back({"counterbore",
                            {hole.id},
                            choice.counterbore - in.planking,
                            hole.id + " is counterbored into the joint",
                            {place + ".counterbore="}});
    }
}

/// A drift must bite in what the heel stands on.
void checkHeelBite(const Hole& hole, std::vector<Finding>& findings) {
    const Length bite = hole.length - hole.grip;
    const Length least = biteDiameters * hole.diameter;
    if (hole.kind != "drift" || bite >= least) return;
    findings.push_back({"grip",
                        {hole.id},
                        least - bite,
                        hole.id + " has " + shown(max(Length{}, bite)) + " in the " +
                            hole.joins.back() + "; 4 diameters are " + shown(least),
                        {hole.frame + (hole.side == "port" ? ".P" : ".S") +
                         ".heel.length=" + wholeUp(hole.length + least - bite)}});
}

void checkPlankEdge(const FrameFasteningInput& in, std::vector<Finding>& findings) {
    for (std::size_t strake = 0; strake + 1 < in.seams.size() && strake < in.plank.size();
         ++strake) {
        if (!in.plank[strake] || in.plank[strake]->count < 2) continue;
        const Length width = in.seams[strake + 1] - in.seams[strake];
        const Length needs =
            (5.0 + 4.0 * (in.plank[strake]->count - 1)) * in.plank[strake]->diameter;
        if (width < needs) {
            const std::string name = "strake" + std::to_string(strake + 1);
            findings.push_back({"edge",
                                {in.frame + ".P.plank." + std::to_string(strake + 1) + ".1"},
                                needs - width,
                                name + " is " + shown(width) + " wide at " + in.frame + "; " +
                                    std::to_string(in.plank[strake]->count) + " fastenings want " +
                                    shown(needs),
                                {name + ".plank.count=1"}});
        }
    }
}

/// A floor that only one arm holds works against the keel's far edge.
void checkBothArms(const FrameFasteningInput& in, std::vector<Finding>& findings) {
    if (!in.floor || in.armPort.has_value() == in.armStarboard.has_value()) return;
    const bool port = in.armPort.has_value();
    findings.push_back({"floor",
                        {in.frame + (port ? ".P.arm.1" : ".S.arm.1")},
                        std::nullopt,
                        in.frame + "'s floor is fastened to its frame on " +
                            (port ? "port" : "starboard") + " alone",
                        {in.frame + (port ? ".S.arm.count=" : ".P.arm.count=")}});
}

}  // namespace

void frameFindings(const FrameFasteningInput& input, FrameFastenings& fastenings) {
    for (const Hole& hole : fastenings.holes) {
        const FasteningChoice* choice = choiceOf(input, hole);
        if (choice->kind == FasteningKind::woodScrew)
            checkScrew(input, hole, *choice, fastenings.findings);
        if (hole.group == "heel") checkHeelBite(hole, fastenings.findings);
    }
    checkPlankEdge(input, fastenings.findings);
    checkBothArms(input, fastenings.findings);
    clearanceFindings(input, fastenings);
}

}  // namespace fayline
