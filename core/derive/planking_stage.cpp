#include "planking_stage.h"

#include <algorithm>

#include "fastening_stages.h"

namespace fayline {
namespace {

std::optional<FasteningChoice> groupChoice(const Project& project, const char* group,
                                           const Catalogue& catalogue) {
    return choiceOf(fasteningAt(project, {group}), catalogue);
}

/// Over the keel timber its own siding, no wider than the rabbet is; where the rabbet lies above
/// its top, the deadwood on it. Beyond its ends stem and sternpost are as wide as a rabbet that is
/// given says, and as deep as they need be; a derived one says nothing of them.
std::optional<GarboardSeat> garboardSeat(const Structure& structure,
                                         const std::optional<RabbetPlace>& rabbet, Length planking,
                                         Length x) {
    if (!rabbet || !structure.keel) return std::nullopt;
    const KeelTimber& keel = *structure.keel;
    const auto top = keelTopAt(keel, x);
    if (!top && rabbet->derived) return std::nullopt;
    GarboardSeat seat;
    seat.half = rabbet->at.y;
    if (!top) {
        seat.member = x < keel.from ? "stem" : "sternpost";
        return seat;
    }
    if (!rabbet->derived) {
        seat.half = min(seat.half, keel.sided / 2.0);
    } else {
        seat.half = keel.sided / 2.0;
    }
    if (rabbet->at.z + planking >= *top) {
        seat.member = "deadwood";
        return seat;
    }
    seat.member = "keel";
    seat.top = top;
    seat.underside = keelUndersideAt(keel, x);
    return seat;
}

}  // namespace

std::optional<PlankEndsInput> plankEndsInput(const Project& project, const Results& results,
                                             Length greatestGirth, const Catalogue& catalogue,
                                             bool fore) {
    const auto& frames = results.structure->frames;
    const int strakes = project.planking.strakes.value_or(0);
    if (frames.empty() || strakes <= 0 || !project.planking.thickness) return std::nullopt;
    const std::size_t i = fore ? 0 : frames.size() - 1;
    PlankEndsInput in;
    in.hull = results.hull;
    in.rule = rabbetRule(project, *results.structure);
    in.frame = frames[i].id;
    in.frameX = frames[i].x;
    in.fore = fore;
    // Strakes of a width of their own take the same part of the end as of the whole girth.
    for (int k = 0; k <= strakes; ++k)
        in.seams.push_back(static_cast<double>(k) / static_cast<double>(strakes));
    if (results.curves[i]) {
        const auto atFrame = seamsAt(project, results.curves[i]->girth(), greatestGirth);
        if (atFrame.size() == in.seams.size() && atFrame.back() > Length{}) {
            for (std::size_t k = 0; k < atFrame.size(); ++k)
                in.seams[k] = atFrame[k] / atFrame.back();
        }
    }
    if (const auto hood = groupChoice(project, "hood", catalogue)) in.inset = endInset(*hood);
    return in;
}

PlankingInput plankingInput(const Project& project, const Results& results, const HullEnds& ends,
                            Length greatestGirth, const Catalogue& catalogue, bool hardwood) {
    PlankingInput in;
    in.planking = project.planking.thickness.value_or(Length{});
    if (in.planking <= Length{}) return in;
    in.block = project.planking.buttBlock.value_or(in.planking);
    in.longest = project.planking.longest;
    in.hardwood = hardwood;
    in.butt = groupChoice(project, "butt", catalogue);
    in.hood = groupChoice(project, "hood", catalogue);
    in.garboard = groupChoice(project, "garboard", catalogue);
    const Structure& structure = *results.structure;
    for (std::size_t i = 0; i < structure.frames.size(); ++i) {
        if (!results.curves[i]) continue;
        PlankLine line;
        line.frame = structure.frames[i].id;
        line.curve = results.curves[i];
        line.seams = seamsAt(project, line.curve->girth(), greatestGirth);
        line.sided = structure.frames[i].sided.value_or(Length{});
        line.seat = garboardSeat(structure, results.rabbets[i], in.planking, structure.frames[i].x);
        in.frames.push_back(std::move(line));
    }
    in.fore = ends.fore;
    in.aft = ends.aft;
    return in;
}

BackboneInput backboneInput(const Project& project, const Results& results,
                            const Catalogue& catalogue) {
    BackboneInput in;
    for (const auto& [name, decided] : project.backbone) {
        FasteningDecisions as;
        as.kind = decided.kind;
        as.count = decided.count;
        as.diameter = decided.diameter;
        as.length = decided.length;
        as.metal = decided.metal;
        const auto choice = choiceOf(as, catalogue);
        if (!choice || !choice->length || !decided.foreX || !decided.foreHeight || !decided.aftX ||
            !decided.aftHeight)
            continue;
        BackboneJoint joint;
        joint.name = name;
        joint.foreX = *decided.foreX;
        joint.foreHeight = *decided.foreHeight;
        joint.aftX = *decided.aftX;
        joint.aftHeight = *decided.aftHeight;
        joint.choice = *choice;
        joint.upper = decided.upper.value_or("upper");
        joint.lower = decided.lower.value_or("lower");
        const Length middle = (joint.foreX + joint.aftX) / 2.0;
        const auto& frames = results.structure->frames;
        const auto nearest = std::min_element(frames.begin(), frames.end(),
                                              [&](const FramePlace& a, const FramePlace& b) {
                                                  return abs(a.x - middle) < abs(b.x - middle);
                                              });
        if (nearest != frames.end()) joint.frame = nearest->id;
        in.joints.push_back(std::move(joint));
    }
    if (!in.joints.empty()) in.others = results.ballastBolts->holes;
    return in;
}

}  // namespace fayline
