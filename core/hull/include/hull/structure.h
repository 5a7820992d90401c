#pragma once

#include <string>
#include <vector>

#include "hull/ballast.h"
#include "hull/keel.h"
#include "hull/surface.h"
#include "quantity/quantity.h"
#include "quantity/result.h"

namespace fayline {

/// Frames set out evenly.
struct FrameSpacing {
    Length first;         ///< x of F1, middle of its siding
    Length roomAndSpace;  ///< from the middle of one frame to the middle of the next
    int count = 0;
    Length sided, moulded;
    bool operator==(const FrameSpacing&) const = default;
};

/// One frame, port and starboard leg alike.
struct FrameInput {
    std::string id;         ///< F1, F2, … F9A
    Length x;               ///< middle of its siding
    Length sided, moulded;  ///< fore and aft; in and out
    bool measured = false;  ///< x was taken from the boat, not from the even spacing
    bool operator==(const FrameInput&) const = default;
};

/// F1, F2, … from the spacing; none for a count below 1.
std::vector<FrameInput> setOutFrames(const FrameSpacing& spacing);

/// Empty when all is well. Limits: ids given and used once; frames in order from forward, each aft
/// of the one before; inside the hull; sided and moulded 5 mm to 2 m. `where` is "F9.frame.FIELD".
Problems checkFrames(const std::vector<FrameInput>& frames, const LoftedSurface& surface);

enum class FloorTopology { beside, across, plate };
enum class FloorMake { sawn, grown, laminated, cast, plate };

/// A floor timber, standing on the keel timber at its frame.
struct FloorInput {
    std::string frame;  ///< id of the frame it belongs to
    Length sided;
    Length throat;  ///< depth at the centreline, above the keel timber
    FloorTopology topology = FloorTopology::beside;
    FloorMake make = FloorMake::sawn;
    bool aftOfFrame = true;  ///< which face of the frame it lies on, where it lies beside
    bool operator==(const FloorInput&) const = default;
};

/// A floor in its place.
struct FloorPlace {
    std::string frame;
    Length x;                    ///< middle of its siding
    Length heelHeight;           ///< of its underside: the keel timber's top there
    Length throatHeight;         ///< of its top on the centreline
    Length halfBreadthAtThroat;  ///< to the hull's outside at that height
    bool operator==(const FloorPlace&) const = default;
};

/// Where a floor stands. Beside its frame the two touch, half of both sidings apart; across the
/// heels or as a plate it stands at the frame. Problems: no such frame; the frame is not over the
/// keel timber; the throat reaches above the sheer.
Result<FloorPlace> placeFloor(const FloorInput& floor, const std::vector<FrameInput>& frames,
                              const KeelTimber& keel, const LoftedSurface& surface);

}  // namespace fayline
