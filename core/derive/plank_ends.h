#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "derive/results.h"
#include "hull/keel.h"
#include "layout/planking.h"

namespace fayline {

struct PlankEndsInput {
    std::shared_ptr<const HullShape> hull;
    std::optional<KeelTimber> keel;
    std::string frame;  ///< the end's own frame
    Length frameX;
    bool fore = true;
    std::vector<double> seams;  ///< strakes + 1 of them, parts of the frame's girth, 0 to 1
    Length inset;               ///< how far inboard of a strake's end its fastenings stand
    bool operator==(const PlankEndsInput&) const = default;
};

/// Where strakes end: along the stem (or sternpost) from the end frame's lowest point, then up the
/// end section, each strake with its own share of that line. Nothing where there is no shape.
std::optional<PlankEnds> plankEndsStage(const PlankEndsInput& input);

}  // namespace fayline
