#pragma once

#include "catalogue/catalogue.h"
#include "derive/results.h"
#include "layout/backbone.h"
#include "layout/planking.h"
#include "plank_ends.h"
#include "project/project.h"

namespace fayline {

/// The strakes' ends, where the hull has a shape there.
struct HullEnds {
    std::shared_ptr<const PlankEnds> fore, aft;
};

/// What the ends are worked out from; nothing without planking or frames.
std::optional<PlankEndsInput> plankEndsInput(const Project& project, const Results& results,
                                             Length greatestGirth, const Catalogue& catalogue,
                                             bool fore);

/// What holds butts, plank ends and garboard, from the decisions and the frames' lines.
PlankingInput plankingInput(const Project& project, const Results& results, const HullEnds& ends,
                            Length greatestGirth, const Catalogue& catalogue, bool hardwood);

/// The backbone's joints that are decided far enough to be placed.
BackboneInput backboneInput(const Project& project, const Results& results,
                            const Catalogue& catalogue);

/// Decisions still missing for groups that are begun, and groups not begun, in a builder's order.
std::vector<Missing> missingFastenings(const Project& project);

}  // namespace fayline
