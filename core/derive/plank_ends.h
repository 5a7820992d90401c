#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "derive/results.h"
#include "layout/planking.h"
#include "rabbet_stage.h"

namespace fayline {

struct PlankEndsInput {
    std::shared_ptr<const HullShape> hull;
    RabbetRule rule;
    std::string frame;  ///< the end's own frame
    Length frameX;
    bool fore = true;
    std::vector<double> seams;  ///< strakes + 1 of them, parts of the frame's girth, 0 to 1
    Length inset;               ///< how far inboard of a strake's end its fastenings stand
    bool operator==(const PlankEndsInput&) const = default;
};

/// Where strakes end: along the rabbet of stem (or sternpost) from the end frame on, then up the
/// end section, each strake with its own share of that line. An end whose middle stands within the
/// keel's half siding of the centreline is in stem or sternpost, not on a transom. Nothing where
/// there is no shape.
std::optional<PlankEnds> plankEndsStage(const PlankEndsInput& input);

}  // namespace fayline
