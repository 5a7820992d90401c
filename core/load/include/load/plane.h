#pragma once

#include <vector>

#include "load/ballast.h"
#include "quantity/quantity.h"

namespace fayline {

/// A bolt and a short length of bed, seen from above: x along the keel from the place moments are
/// taken about, y to starboard.
struct PlaneBolt {
    Length x, y;
    ForcePerLength stiffness;
};
struct PlaneStrip {
    Length x, length, halfBreadth;
};

/// What the joint must hold: force upward on the ballast, its moments about the fore-and-aft and
/// the athwart line through the middle of the section.
struct PlaneLoad {
    Force up;
    Moment roll, pitch;
};

struct PlaneSection {
    std::vector<Force> tension;  ///< pulls the ballast up
    Force contact;               ///< presses it down
    Length contactX, contactY;
    Length neutral;  ///< y at which contact ends or begins, where x is nil
    Stress highest;
    bool balanced = false;
};

/// Bolts that only pull against a bed that only pushes; ballast and keel stay plane to each other.
/// The state in which the force and both moments balance (least energy; it is the only one).
/// `balanced` is false where there is none: bolts outside the bed, no bed, no stiffness.
PlaneSection planeSection(const std::vector<PlaneBolt>& bolts, const std::vector<PlaneStrip>& bed,
                          BedStiffness stiffness, const PlaneLoad& load);

}  // namespace fayline
