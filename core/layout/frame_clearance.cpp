#include <algorithm>

#include "frame_findings.h"
#include "practice.h"
#include "quantity/display.h"

namespace fayline {
namespace {

/// Wood between two holes bored for different work: a bit wanders (common practice).
constexpr double clearDiameters = 2.0;
/// Fastenings of one plank stand off one grain line of the frame by two diameters (common practice,
/// no published source).
constexpr double staggerDiameters = 2.0;
/// Below this a shortfall is no one's to see.
constexpr Length hair = millimetres(0.05);

bool isPlank(const Hole& hole) {
    return hole.group == "plank";
}

/// Where a group's decisions stand: "F9.P.arm", "F9.floor_bolt".
std::string placeOf(const Hole& hole) {
    if (hole.group == "floor") return hole.frame + ".floor_bolt";
    if (hole.group == "ballast") return hole.id;
    if (isPlank(hole)) return hole.frame + ".plank";
    return hole.frame + (hole.side == "port" ? ".P." : ".S.") + hole.group;
}

std::vector<std::string> cureFor(const Hole& a, const Hole& b) {
    if (b.group == "ballast") return {b.id + ".offset=", placeOf(a) + ".count="};
    return {placeOf(isPlank(a) ? b : a) + ".count=", placeOf(b) + ".diameter="};
}

void checkPair(const Hole& a, const Hole& b, std::vector<Finding>& findings) {
    if (isPlank(a) && isPlank(b)) return;
    const Length gap = distanceBetween(a, b);
    const Length touching = (a.diameter + b.diameter) / 2.0;
    if (gap < touching) {
        findings.push_back(
            {"clash",
             {a.id, b.id},
             touching - gap,
             a.id + " and " + b.id + " run into each other by " + shown(touching - gap),
             cureFor(a, b)});
        return;
    }
    if (a.group == b.group && a.side == b.side) {
        const Length pitch = pitchDiameters * max(a.diameter, b.diameter);
        if (a.kind == "bolt" && gap + hair < pitch)
            findings.push_back({"spacing",
                                {a.id, b.id},
                                pitch - gap,
                                a.id + " and " + b.id + " stand " + shown(gap) +
                                    " apart; 4 diameters are " + shown(pitch),
                                {placeOf(a) + ".count="}});
        return;
    }
    // A plank's screw beside another hole wants its own two diameters, a bolt the bolt's.
    const Length body =
        isPlank(a) || isPlank(b) ? min(a.diameter, b.diameter) : max(a.diameter, b.diameter);
    const Length clear = gap - touching;
    if (clear + hair < clearDiameters * body)
        findings.push_back({"near",
                            {a.id, b.id},
                            clearDiameters * body - clear,
                            a.id + " leaves " + shown(clear) + " of wood to " + b.id +
                                "; 2 diameters are " + shown(clearDiameters * body),
                            cureFor(a, b)});
}

void tooNearAnEdge(const Hole& hole, Length edge, const char* of, const std::string& cure,
                   std::vector<Finding>& findings) {
    const Length least = edgeDiameters * hole.diameter;
    if (edge + hair >= least) return;
    findings.push_back({"edge",
                        {hole.id},
                        least - edge,
                        hole.id + " stands " + shown(edge) + " from the edge of the " + of +
                            "; 2.5 diameters are " + shown(least),
                        {cure}});
}

void checkEdges(const FrameFasteningInput& in, const Hole& hole, std::vector<Finding>& findings) {
    if (hole.kind != "bolt" && hole.kind != "drift") return;
    if (hole.group == "arm")
        tooNearAnEdge(hole, in.moulded / 2.0, "frame", placeOf(hole) + ".diameter=", findings);
    if (hole.group != "floor" || !in.floor) return;
    tooNearAnEdge(hole, in.floor->siding / 2.0, "floor", hole.frame + ".floor.sided=", findings);
    if (in.keelSided)
        tooNearAnEdge(hole, *in.keelSided / 2.0 - abs(hole.start.y), "keel",
                      placeOf(hole) + ".count=", findings);
}

/// Told once a frame: the same siding gives every crossing the same stagger.
void checkGrain(const FrameFasteningInput& in, const std::vector<Hole>& holes,
                std::vector<Finding>& findings) {
    for (std::size_t i = 0; i + 1 < holes.size(); ++i) {
        const Hole& a = holes[i];
        const Hole& b = holes[i + 1];
        if (!isPlank(a) || !isPlank(b) || a.joins != b.joins) continue;
        const Length stagger = abs(a.start.x - b.start.x);
        const Length least = staggerDiameters * max(a.diameter, b.diameter);
        if (stagger + hair >= least) continue;
        findings.push_back({"grain_line",
                            {a.id, b.id},
                            least - stagger,
                            in.frame + ": two fastenings of a plank stand " + shown(stagger) +
                                " off one line of the frame's grain; 2 diameters are " +
                                shown(least),
                            {in.frame + ".plank.count=1", in.frame + ".frame.sided="}});
        return;
    }
}

}  // namespace

void clearanceFindings(const FrameFasteningInput& input, FrameFastenings& fastenings) {
    const std::vector<Hole>& holes = fastenings.holes;
    std::vector<Finding>& findings = fastenings.findings;
    for (std::size_t i = 0; i < holes.size(); ++i) {
        for (std::size_t j = i + 1; j < holes.size(); ++j) checkPair(holes[i], holes[j], findings);
        for (const Hole& bolt : input.ballast) checkPair(holes[i], bolt, findings);
        checkEdges(input, holes[i], findings);
    }
    checkGrain(input, holes, findings);
}

}  // namespace fayline
