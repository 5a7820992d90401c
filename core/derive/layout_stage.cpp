#include "layout_stage.h"

#include "stages.h"

namespace fayline {

void LayoutMemory::nextGeneration() {
    curves.nextGeneration();
    frames.nextGeneration();
}

void layOutFastenings(const Project& project, const Materials& materials,
                      const Catalogue& catalogue, LayoutMemory& memory, Results& results) {
    const Structure& structure = *results.structure;
    Length greatest;
    for (const FramePlace& frame : structure.frames) {
        const auto keelTop = structure.keel ? keelTopAt(*structure.keel, frame.x) : std::nullopt;
        const auto curve = memory.curves.get(frame.id, CurveInput{results.hull, frame.x, keelTop},
                                             curveStage, results.runs.curves);
        results.curves.push_back(*curve ? std::shared_ptr<const FrameCurve>(curve, &**curve)
                                        : nullptr);
        if (*curve) greatest = max(greatest, (*curve)->girth());
    }
    const Wood* wood = findWood(materials, project.frames.wood);
    const bool hardwood = wood == nullptr || wood->family == WoodFamily::hardwood;
    for (std::size_t i = 0; i < structure.frames.size(); ++i) {
        const FramePlace& frame = structure.frames[i];
        results.frameFastenings.push_back(
            memory.frames.get(frame.id,
                              frameFasteningInput(project, structure, frame, results.curves[i],
                                                  greatest, catalogue, hardwood),
                              layOutFrame, results.runs.frames));
    }
}

}  // namespace fayline
