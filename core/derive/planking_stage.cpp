#include "planking_stage.h"

#include <algorithm>

#include "fastening_stages.h"

namespace fayline {
namespace {

std::optional<FasteningChoice> groupChoice(const Project& project, const char* group,
                                           const Catalogue& catalogue) {
    return choiceOf(fasteningAt(project, {group}), catalogue);
}

std::optional<PlankLine> endLine(const Project& project, const std::string& frame,
                                 const std::shared_ptr<const FrameCurve>& curve,
                                 Length greatestGirth) {
    if (!curve) return std::nullopt;
    PlankLine line;
    line.frame = frame;
    line.curve = curve;
    line.seams = seamsAt(project, curve->girth(), greatestGirth);
    if (line.seams.size() < 2) return std::nullopt;
    return line;
}

}  // namespace

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
        line.overKeel =
            structure.keel && keelTopAt(*structure.keel, structure.frames[i].x).has_value();
        in.frames.push_back(std::move(line));
    }
    if (structure.keel) in.keelSided = structure.keel->sided;
    if (!structure.frames.empty()) {
        in.fore = endLine(project, structure.frames.front().id, ends.fore, greatestGirth);
        in.aft = endLine(project, structure.frames.back().id, ends.aft, greatestGirth);
    }
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
