#pragma once

#include <optional>

#include "hull/keel.h"
#include "quantity/quantity.h"
#include "quantity/result.h"

namespace fayline {

/// The ballast keel hung under the keel timber: its top face follows the timber's underside, and
/// square to x it is a trapezium. Top breadth and depth go in straight lines from the fore end to
/// mid-length to the after end; the lower face has one breadth throughout.
struct BallastShape {
    Length from, to;  ///< ends of the top face, x
    Length topBreadthFore, topBreadthMiddle, topBreadthAft;
    Length bottomBreadth;
    Length depthFore, depthMiddle, depthAft;  ///< below the keel timber
    bool operator==(const BallastShape&) const = default;
};

/// Empty when all is well. Limits: `from` before `to`, both on the keel timber; breadths and depths
/// 0 mm or more (an end may run out to nothing), the middle ones more than 0 mm.
Problems checkBallast(const BallastShape& ballast, const KeelTimber& keel);

/// The ballast cut square to x.
struct BallastSection {
    Length x;
    Length topHeight;  ///< of the joint with the keel timber
    Length topBreadth, bottomBreadth;
    Length depth;
    Area area;           ///< also the volume per length
    Length centreBelow;  ///< centre of the area below the top face
};
/// Nothing beyond the ballast's ends.
std::optional<BallastSection> ballastSectionAt(const BallastShape& ballast, const KeelTimber& keel,
                                               Length x);

/// The whole casting, without recesses for nuts. Exact for the shape described.
struct BallastBody {
    Volume volume;
    Point centre;
    Length centreBelow;  ///< below the top face at the centre's x
    Mass mass;
};
/// The ballast must pass checkBallast. Lead with 3 % antimony is about 11,100 kg/m3, grey iron
/// about 7,200 kg/m3 (from memory; the catalogue's figure counts).
BallastBody ballastBody(const BallastShape& ballast, const KeelTimber& keel, Density density);

}  // namespace fayline
