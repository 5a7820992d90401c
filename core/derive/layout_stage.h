#pragma once

#include "derive/memo.h"
#include "fastening_stages.h"
#include "materials.h"
#include "planking_stage.h"
#include "rabbet_stage.h"

namespace fayline {

/// What the layout of everything but the ballast bolts remembers.
struct LayoutMemory {
    Memo<std::string, CurveInput, PlankingLine> curves;
    Memo<std::string, FrameFasteningInput, FrameFastenings> frames;
    Memo<int, PlankEndsInput, std::optional<PlankEnds>> ends;
    Memo<int, PlankingInput, FrameFastenings> planking;
    Memo<int, BackboneInput, FrameFastenings> backbone;

    void nextGeneration();
};

/// Frame lines, then the fastenings of each frame, of the planking and of the backbone, into
/// `results`.
void layOutFastenings(const Project& project, const Materials& materials,
                      const Catalogue& catalogue, LayoutMemory& memory, Results& results);

}  // namespace fayline
