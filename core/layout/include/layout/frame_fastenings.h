#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "hull/frame_curve.h"
#include "layout/fastening.h"

namespace fayline {

enum class HeelDetail { socketed, onTop, beside, continuous, halfFrames };
std::string_view nameOf(HeelDetail detail);
std::optional<HeelDetail> heelDetailNamed(std::string_view name);

/// The floor at a frame, as far as its own fastenings need it.
struct FloorBody {
    Length x, siding;  ///< middle of its siding
    Length underside, top;
    Length reach;  ///< from the centreline to the end of an arm
    bool wood = true;
    bool operator==(const FloorBody&) const = default;
};

/// One frame with its timbers and what is decided to hold it. Port and starboard may differ.
struct FrameFasteningInput {
    std::string frame;
    std::shared_ptr<const FrameCurve> curve;  ///< hull's outside, starboard; port is its mirror
    Length sided, moulded, planking;
    bool hardwoodFrame = true;
    std::optional<Length> keelSided, keelTop, keelUnderside;
    std::optional<Length> backboneTop = std::nullopt;  ///< of keel or the deadwood on it
    HeelDetail heelDetail = HeelDetail::beside;
    std::optional<FloorBody> floor;
    std::vector<Length> seams;  ///< along the curve, strakes + 1 of them, from the garboard's lower
                                ///< edge; none: no planking yet
    std::optional<FasteningChoice> heelPort, heelStarboard, armPort, armStarboard, floorBolt;
    std::vector<std::optional<FasteningChoice>> plank;  ///< by strake
    std::vector<Hole> ballast;                          ///< ballast bolts that stand at this frame
    bool operator==(const FrameFasteningInput&) const = default;
};

struct FrameFastenings {
    std::vector<Hole> holes;
    std::vector<Finding> findings;
    bool operator==(const FrameFastenings&) const = default;
};

/// Places heel, arm, floor-to-keel and plank fastenings of one frame and says what is wrong with
/// them. The lowest planks' fastenings give way to the heel's, arm fastenings, along the frame,
/// to plank fastenings and to the heel's; a single floor bolt to the ballast bolt in its floor.
/// Nothing while the frame's sizes are not known.
FrameFastenings layOutFrame(const FrameFasteningInput& input);

}  // namespace fayline
