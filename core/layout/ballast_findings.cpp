#include <algorithm>
#include <cmath>

#include "layout/ballast_bolts.h"
#include "practice.h"

namespace fayline {
namespace {

void checkRules(const BoltChoice& bolt, const BoltRules& rules, std::vector<Finding>& findings) {
    if (rules.leastDiameter && bolt.diameter < *rules.leastDiameter) {
        findings.push_back({"rule",
                            {bolt.id},
                            *rules.leastDiameter - bolt.diameter,
                            bolt.id + " is thinner than the class rule's least, " +
                                wholeUp(*rules.leastDiameter) + " (" + rules.diameterSource + ")",
                            {bolt.id + ".diameter=" + wholeUp(*rules.leastDiameter)}});
    }
    if (rules.washerDiameters) {
        const Length least = *rules.washerDiameters * bolt.diameter;
        // A washer sold by the whole millimetre counts as the next one up.
        if (bolt.washerDiameter + millimetres(0.5) < least) {
            findings.push_back(
                {"rule",
                 {bolt.id},
                 least - bolt.washerDiameter,
                 bolt.id + " washer is narrower than the class rule's four bolt diameters, " +
                     wholeUp(least) + " (" + rules.washerSource + ")",
                 {bolt.id + ".washer_diameter=" + wholeUp(least)}});
        }
    }
    if (rules.washerThickness) {
        Length least = *rules.washerThickness * bolt.diameter;
        if (rules.washerThicknessCap) least = min(least, *rules.washerThicknessCap);
        if (bolt.washerThickness + millimetres(0.1) < least) {
            findings.push_back(
                {"rule",
                 {bolt.id},
                 least - bolt.washerThickness,
                 bolt.id + " washer is thinner than the class rule's quarter of the bolt, " +
                     wholeUp(least) + " (" + rules.washerSource + ")",
                 {bolt.id + ".washer_thickness=" + wholeUp(least)}});
        }
    }
}

void checkPlace(const BoltChoice& bolt, const PlacedBolt& placed, const BallastBoltInput& input,
                std::vector<Finding>& findings) {
    const auto section = sectionAt(input.sections, placed.joint.x);
    if (!section) return;
    const Length edge = section->breadth / 2.0 - abs(placed.joint.y);
    const Length least = edgeDiameters * bolt.diameter;
    if (edge < least) {
        const Length allowed = section->breadth / 2.0 - least;
        const double side = placed.joint.y < Length{} ? -1.0 : 1.0;
        std::vector<std::string> cure;
        if (allowed >= Length{})
            cure.push_back(bolt.id + ".offset=" +
                           wholeUp(side * millimetres(std::floor(inMillimetres(allowed)))));
        findings.push_back({"edge",
                            {bolt.id},
                            least - edge,
                            bolt.id + " stands " + wholeUp(edge) +
                                " from the side of the keel; 2.5 diameters are " + wholeUp(least),
                            cure});
    }
    const Length end =
        min(placed.joint.x - input.sections.front().x, input.sections.back().x - placed.joint.x);
    if (end < endDiameters * bolt.diameter) {
        findings.push_back({"end",
                            {bolt.id},
                            endDiameters * bolt.diameter - end,
                            bolt.id + " stands " + wholeUp(end) +
                                " from the ballast's end; 4 diameters are " +
                                wholeUp(endDiameters * bolt.diameter),
                            {}});
    }
    if (placed.grip <= Length{}) {
        findings.push_back(
            {"grip",
             {bolt.id},
             -placed.grip,
             bolt.id + " has nothing to grip: its lower pocket reaches above its upper washer",
             {bolt.id + ".recess="}});
    }
    if (!bolt.between && placed.between) {
        findings.push_back({"floor",
                            {bolt.id},
                            std::nullopt,
                            bolt.id + " is meant to go through a floor but stands between floors",
                            {bolt.id + ".x=", bolt.id + ".through=between"}});
    }
    if (placed.seatWidth && *placed.seatWidth < 0.75 * bolt.washerDiameter) {
        findings.push_back({"edge",
                            {bolt.id},
                            bolt.washerDiameter - *placed.seatWidth,
                            bolt.id + " washer, " + wholeUp(bolt.washerDiameter) +
                                ", hangs over its floor, " + wholeUp(*placed.seatWidth) +
                                " wide under it",
                            {}});
    }
}

void checkPair(const Hole& a, const Hole& b, std::vector<Finding>& findings) {
    const Length gap = distanceBetween(a, b);
    const Length touching = (a.diameter + b.diameter) / 2.0;
    const Length pitch = pitchDiameters * max(a.diameter, b.diameter);
    if (gap < touching) {
        findings.push_back({"clash",
                            {a.id, b.id},
                            touching - gap,
                            a.id + " and " + b.id + " run into each other",
                            {}});
    } else if (gap < pitch) {
        findings.push_back({"spacing",
                            {a.id, b.id},
                            pitch - gap,
                            a.id + " and " + b.id + " stand " + wholeUp(gap) +
                                " apart; 4 diameters are " + wholeUp(pitch),
                            {}});
    }
}

}  // namespace

std::vector<Finding> ballastBoltFindings(const BallastBoltInput& input,
                                         const BallastBoltLayout& layout) {
    std::vector<Finding> findings;
    for (const BoltChoice& bolt : input.bolts) {
        checkRules(bolt, input.rules, findings);
        const auto placed = std::find_if(layout.placed.begin(), layout.placed.end(),
                                         [&](const PlacedBolt& p) { return p.id == bolt.id; });
        if (placed != layout.placed.end()) checkPlace(bolt, *placed, input, findings);
    }
    for (std::size_t i = 0; i < layout.holes.size(); ++i) {
        for (std::size_t j = i + 1; j < layout.holes.size(); ++j)
            checkPair(layout.holes[i], layout.holes[j], findings);
    }
    return findings;
}

}  // namespace fayline
