#pragma once

#include <optional>
#include <string>
#include <vector>

#include "joint/trace.h"
#include "load/case.h"
#include "quantity/quantity.h"

namespace fayline {

enum class HeelPull {
    shear,  ///< the heel stands in or beside the keel: its fastenings are sheared
    pull    ///< it stands on the keel: its fastenings are drawn
};

/// Like fastenings that hold one meeting of two timbers: an arm, a heel, a plank on a frame.
struct FasteningSet {
    std::string id;  ///< of the fastening its figures are given for, the set's first
    std::string frame, side, group;
    std::string strake;  ///< of planking: "strake4"
    int count = 0;
    // Arms, heels, floor to keel
    std::optional<Length> spread;  ///< between the middles of the two arms' fastenings
    Length keelSided;
    Length rise;  ///< of the place where it passes the moment on, above the keel axis
    HeelPull heel = HeelPull::shear;
    bool floorHere = false;        ///< a floor stands at this frame
    bool ballastBoltHere = false;  ///< a ballast bolt goes through that floor
    // Planking
    Length thickness, width;           ///< of the plank
    Length spacing;                    ///< of frames
    std::optional<Length> radius;      ///< of the hull's girth there; none: flat or hollow
    std::optional<Length> bendRadius;  ///< of the plank near its end, outward; none: straight
    bool hollowBend = false;           ///< bent the other way there
    Length bendArm;                    ///< from the plank's end to its next frame
    Stress seam;                       ///< at which wet side grain of the plank crushes
    Stress stiffness;                  ///< of the wet plank, along the grain
    bool operator==(const FasteningSet&) const = default;
};

/// What a case puts on one frame.
struct FrameLoad {
    LoadCase loadCase = LoadCase::knockdownPort;
    CaseSettings settings;
    bool bears = false;    ///< the frame's floor takes a share of the keel's load
    Moment moment;         ///< size; the larger of its tributary and rigid share
    Force sideways, down;  ///< the same; `down` is what the keel pulls down with
    Force up;              ///< what it pushes up with
    Force hoop;            ///< pull in the frame from swollen planking
    bool operator==(const FrameLoad&) const = default;
};

/// The same load with its moment taken higher up: a sideways force turns more the higher its place.
FrameLoad raisedBy(FrameLoad load, Length rise, Trace* trace = nullptr);

/// What the worst fastening of a set carries in one case.
struct SetDemand {
    Force lateral, axial;
    bool known = true;  ///< false: the load on it is not worked out
    std::string why;    ///< plain words when nil or not known
    /// A share known only within a band: the demand is that at its unfavourable end, and this the
    /// part of it that is left at the favourable one. 1: no band.
    double lowest = 1.0;
    std::string band;  ///< plain words for the band
};

/// Shares the frame's load among the set's fastenings. With `trace`, the working is put there.
SetDemand demandOn(const FasteningSet& set, const FrameLoad& load, Trace* trace = nullptr);

/// Pull in a frame from swollen planking: a seam's force over the frame's spacing.
Force swellingHoop(Stress seam, Length planking, Length spacing);

/// A floor between its arms: bending at the throat and shear, from the frame's share of the keel's
/// load. Each arm is a support at the middle of its fastenings, the keel a couple over its width.
struct FloorLoad {
    Moment bending;
    Force shear;
};
FloorLoad floorLoad(Length spread, Length keelSided, const FrameLoad& load, Trace* trace = nullptr);

}  // namespace fayline
