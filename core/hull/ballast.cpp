#include "hull/ballast.h"

#include <array>
#include <cmath>

#include "limits_words.h"

namespace fayline {
namespace {

using detail::requireWithin;

/// Straight from the fore value to the middle one, and from there to the after one.
Length alongThree(double share, Length fore, Length middle, Length aft) {
    return share < 0.5 ? fore + (middle - fore) * (2.0 * share)
                       : middle + (aft - middle) * (2.0 * share - 1.0);
}

BallastSection sectionAt(const BallastShape& ballast, const KeelTimber& keel, Length x) {
    const double share = (x - ballast.from) / (ballast.to - ballast.from);
    BallastSection section;
    section.x = x;
    section.topHeight = keelUndersideAt(keel, x).value_or(Length{});
    section.topBreadth =
        alongThree(share, ballast.topBreadthFore, ballast.topBreadthMiddle, ballast.topBreadthAft);
    section.bottomBreadth = ballast.bottomBreadth;
    section.depth = alongThree(share, ballast.depthFore, ballast.depthMiddle, ballast.depthAft);
    const Length both = section.topBreadth + section.bottomBreadth;
    section.area = 0.5 * both * section.depth;
    if (both > Length{}) {
        section.centreBelow =
            section.depth * ((section.topBreadth + 2.0 * section.bottomBreadth) / both) / 3.0;
    }
    return section;
}

}  // namespace

Problems checkBallast(const BallastShape& ballast, const KeelTimber& keel) {
    Problems problems = checkKeel(keel);
    if (!problems.empty()) return problems;
    requireWithin(problems, ballast.from, keel.from, keel.to, "ballast.from",
                  "the ballast's fore end");
    requireWithin(problems, ballast.to, keel.from, keel.to, "ballast.to",
                  "the ballast's after end");
    if (problems.empty() && ballast.to <= ballast.from) {
        problems.push_back({"hull.order", "ballast.to",
                            "the ballast's after end is at " + detail::inWords(ballast.to),
                            "aft of its fore end at " + detail::inWords(ballast.from)});
    }
    const auto size = [&](Length value, Length least, const char* where, const char* name) {
        requireWithin(problems, value, least, metres(5.0), where, name);
    };
    const Length some = millimetres(1.0);
    size(ballast.topBreadthFore, Length{}, "ballast.breadth_fore", "the ballast's fore breadth");
    size(ballast.topBreadthMiddle, some, "ballast.breadth_middle", "the ballast's middle breadth");
    size(ballast.topBreadthAft, Length{}, "ballast.breadth_aft", "the ballast's after breadth");
    size(ballast.bottomBreadth, Length{}, "ballast.bottom_breadth", "the ballast's bottom breadth");
    size(ballast.depthFore, Length{}, "ballast.depth_fore", "the ballast's fore depth");
    size(ballast.depthMiddle, some, "ballast.depth_middle", "the ballast's middle depth");
    size(ballast.depthAft, Length{}, "ballast.depth_aft", "the ballast's after depth");
    return problems;
}

std::optional<BallastSection> ballastSectionAt(const BallastShape& ballast, const KeelTimber& keel,
                                               Length x) {
    if (!(x >= ballast.from && x <= ballast.to)) return std::nullopt;
    return sectionAt(ballast, keel, x);
}

BallastBody ballastBody(const BallastShape& ballast, const KeelTimber& keel, Density density) {
    // In each half breadth, depth and top height are straight lines, so that area times any of the
    // arms is of third degree in x at most, which two Gauss places integrate exactly.
    const double offset = 0.5 / std::sqrt(3.0);
    const Length half = 0.5 * (ballast.to - ballast.from);
    Volume volume;
    Quantity<0, 4, 0> momentX;
    Quantity<0, 4, 0> momentZ;
    Quantity<0, 4, 0> momentBelow;
    for (const double place : {0.5 - offset, 0.5 + offset, 1.5 - offset, 1.5 + offset}) {
        const Length x = ballast.from + half * place;
        const BallastSection section = sectionAt(ballast, keel, x);
        const Volume slice = section.area * half * 0.5;
        volume += slice;
        momentX += slice * x;
        momentZ += slice * (section.topHeight - section.centreBelow);
        momentBelow += slice * section.centreBelow;
    }
    BallastBody body;
    body.volume = volume;
    body.mass = volume * density;
    if (volume.si() > 0.0) {
        body.centre = {momentX / volume, Length{}, momentZ / volume};
        body.centreBelow = momentBelow / volume;
    }
    return body;
}

}  // namespace fayline
