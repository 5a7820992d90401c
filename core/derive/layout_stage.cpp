#include "layout_stage.h"

#include <utility>

#include "stages.h"

namespace fayline {

void LayoutMemory::nextGeneration() {
    curves.nextGeneration();
    frames.nextGeneration();
    ends.nextGeneration();
    planking.nextGeneration();
    backbone.nextGeneration();
}

void layOutFastenings(const Project& project, const Materials& materials,
                      const Catalogue& catalogue, LayoutMemory& memory, Results& results) {
    const Structure& structure = *results.structure;
    const RabbetRule rule = rabbetRule(project, structure);
    for (const FramePlace& frame : structure.frames) {
        const auto line = memory.curves.get(frame.id, curveInput(results.hull, frame.x, rule),
                                            curveStage, results.runs.curves);
        results.rabbets.push_back(line->rabbet);
        results.curves.push_back(
            line->curve ? std::shared_ptr<const FrameCurve>(line, &*line->curve) : nullptr);
    }
    const Length greatest = greatestGirth(results);
    const Wood* wood = findWood(materials, project.frames.wood);
    const bool hardwood = wood == nullptr || wood->family == WoodFamily::hardwood;
    for (std::size_t i = 0; i < structure.frames.size(); ++i) {
        const FramePlace& frame = structure.frames[i];
        results.frameFastenings.push_back(memory.frames.get(
            frame.id,
            frameFasteningInput(project, structure, frame, results.curves[i], results.rabbets[i],
                                greatest, catalogue, hardwood, results.ballastBolts->holes),
            layOutFrame, results.runs.frames));
    }
    int uncounted = 0;
    const auto endsAt = [&](bool fore) -> std::shared_ptr<const PlankEnds> {
        auto input = plankEndsInput(project, results, greatest, catalogue, fore);
        if (!input) return nullptr;
        const auto ends =
            memory.ends.get(fore ? 0 : 1, std::move(*input), plankEndsStage, uncounted);
        return *ends ? std::shared_ptr<const PlankEnds>(ends, &**ends) : nullptr;
    };
    results.foreEnds = endsAt(true);
    results.aftEnds = endsAt(false);
    const HullEnds ends{results.foreEnds, results.aftEnds};
    results.planking =
        memory.planking.get(0, plankingInput(project, results, ends, greatest, catalogue, hardwood),
                            layOutPlanking, uncounted);
    results.backbone = memory.backbone.get(0, backboneInput(project, results, catalogue),
                                           layOutBackbone, uncounted);
    const auto missing = missingFastenings(project);
    results.missing.insert(results.missing.end(), missing.begin(), missing.end());
}

}  // namespace fayline
