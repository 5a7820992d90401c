#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "hull/frame_curve.h"
#include "layout/fastening.h"
#include "layout/frame_fastenings.h"

namespace fayline {

/// The planking's line at one frame, with its seams along it.
struct PlankLine {
    std::string frame;
    std::shared_ptr<const FrameCurve> curve;
    std::vector<Length> seams;  ///< strakes + 1 of them
    bool overKeel = false;      ///< the keel timber runs under it
    Length sided;               ///< of the frame
    bool operator==(const PlankLine&) const = default;
};

/// Where one strake ends, and the line across it a little inboard where its fastenings stand.
struct StrakeEnd {
    Length x;
    bool onPost = true;  ///< in the rabbet of stem or sternpost; else on a transom
    std::shared_ptr<const FrameCurve> curve;
    Length from, to;  ///< its edges along that line
    bool operator==(const StrakeEnd&) const = default;
};

/// The strakes' ends at one end of the hull.
struct PlankEnds {
    std::string frame;  ///< nearest
    std::vector<StrakeEnd> strakes;
    bool operator==(const PlankEnds&) const = default;
};

/// What holds plank ends, butts and the garboard's edge, and how long planks come.
struct PlankingInput {
    std::vector<PlankLine> frames;               ///< forward to aft
    std::shared_ptr<const PlankEnds> fore, aft;  ///< the hull's ends; null where it has no shape
    std::optional<Length> keelSided;             ///< the garboard's fastenings must reach it
    Length planking;
    Length block;                   ///< thickness of butt blocks
    std::optional<Length> longest;  ///< longest plank; none: no butts
    bool hardwood = true;           ///< of stem, keel and blocks
    std::optional<FasteningChoice> butt, hood, garboard;
    bool operator==(const PlankingInput&) const = default;
};

/// A butt: where two lengths of one strake meet, on a block midway between two frames, on both
/// sides alike.
struct Butt {
    std::string id;       ///< butt1, butt2 …
    int strake = 1;       ///< 1 is the garboard
    std::size_t bay = 0;  ///< between this frame and the next, counted from forward
    bool operator==(const Butt&) const = default;
};

/// Spreads the butts: no plank longer than the longest, butts of neighbouring strakes at least
/// three frame spaces apart, and at least three whole strakes between butts in one bay (US Army TB
/// 55-1900-201-45; Great Lakes rules of 1866). A strake that cannot keep to this gives a finding.
std::vector<Butt> setOutButts(const PlankingInput& input, std::vector<Finding>& findings);

/// How far inboard of a strake's end its line of fastenings stands.
Length endInset(const FasteningChoice& hood);

/// Places the fastenings of butts, plank ends and garboard, both sides.
FrameFastenings layOutPlanking(const PlankingInput& input);

}  // namespace fayline
