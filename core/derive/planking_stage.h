#pragma once

#include "catalogue/catalogue.h"
#include "derive/results.h"
#include "layout/backbone.h"
#include "layout/planking.h"
#include "project/project.h"

namespace fayline {

/// The planking's lines at the hull's two ends, where it has a shape.
struct HullEnds {
    std::shared_ptr<const FrameCurve> fore, aft;
};

/// What holds butts, plank ends and garboard, from the decisions and the frames' lines.
PlankingInput plankingInput(const Project& project, const Results& results, const HullEnds& ends,
                            Length greatestGirth, const Catalogue& catalogue, bool hardwood);

/// The backbone's joints that are decided far enough to be placed.
BackboneInput backboneInput(const Project& project, const Results& results,
                            const Catalogue& catalogue);

/// Decisions still missing for groups that are begun, and groups not begun, in a builder's order.
std::vector<Missing> missingFastenings(const Project& project);

}  // namespace fayline
