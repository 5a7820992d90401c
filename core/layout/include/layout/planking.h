#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "hull/frame_curve.h"
#include "layout/fastening.h"
#include "layout/frame_fastenings.h"

namespace fayline {

/// What the garboard's lower edge is fastened to at one frame.
struct GarboardSeat {
    std::string member;               ///< keel, stem, sternpost, deadwood
    Length half;                      ///< half its siding in way of the rabbet
    std::optional<Length> underside;  ///< of the keel; none: more timber lies beneath
    std::optional<Length> top;        ///< of the keel; none: more timber lies on it
    bool operator==(const GarboardSeat&) const = default;
};

/// The planking's line at one frame, with its seams along it.
struct PlankLine {
    std::string frame;
    std::shared_ptr<const FrameCurve> curve;
    std::vector<Length> seams;                        ///< strakes + 1 of them
    Length sided;                                     ///< of the frame
    std::optional<GarboardSeat> seat = std::nullopt;  ///< none: nothing known to fasten it to
    bool operator==(const PlankLine&) const = default;
};

/// A place on the line of a strake's end fastenings.
struct EndSpot {
    Length end;     ///< x of the plank's end abreast of it
    Length x;       ///< a little inboard, where fastenings stand
    CurvePoint at;  ///< on the outside there
    bool operator==(const EndSpot&) const = default;
};

/// Where one strake ends, and the line across it a little inboard, along its own rabbet, where its
/// fastenings stand.
struct StrakeEnd {
    bool onPost = true;         ///< in the rabbet of stem or sternpost; else on a transom
    std::vector<EndSpot> line;  ///< from the lower edge to the upper, two at least
    [[nodiscard]] Length width() const;
    /// A place that far up from the lower edge.
    [[nodiscard]] EndSpot spotAt(Length up) const;
    [[nodiscard]] EndSpot middle() const { return spotAt(width() / 2.0); }
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
    std::string id;       ///< butt4_F12: of strake 4, in the bay aft of F12
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

/// Places the fastenings of butts, plank ends and garboard, both sides. The garboard's stand near
/// its lower edge, square to it where they then bite in the backbone, else slanted towards the
/// rabbet by as little as they need, in steps of five degrees (common practice, no published
/// source); what still lacks is a finding.
FrameFastenings layOutPlanking(const PlankingInput& input);

}  // namespace fayline
