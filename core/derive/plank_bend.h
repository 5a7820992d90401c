#pragma once

#include <optional>
#include <vector>

#include "derive/results.h"

namespace fayline {

/// How one strake is bent on to the hull near its end, square to its face.
struct PlankBend {
    std::optional<Length>
        radius;           ///< outward at the first frame it crosses; none: straight, hollow
    bool hollow = false;  ///< bent the other way: its end is pressed on, not drawn off
    Length arm;           ///< from its end's fastenings to that frame
    bool operator==(const PlankBend&) const = default;
};

/// The bends of all strakes at a frame that is an end of the hull's framing; none at others. A
/// strake is taken by the middle of its end, and of the two nearest frames at least half a room and
/// space from it.
std::vector<PlankBend> bendsAt(const Results& results, std::size_t frame);

}  // namespace fayline
