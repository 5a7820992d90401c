#pragma once

#include <optional>
#include <string>
#include <vector>

#include "layout/hole.h"
#include "quantity/quantity.h"

namespace fayline {

/// A floor timber a ballast bolt may go through.
struct FloorSeat {
    std::string frame;
    Length x, siding;
    Length top;  ///< height of the floor's upper face at the centreline
    bool operator==(const FloorSeat&) const = default;
};

/// The keel timber and ballast at one place along the joint.
struct JointSection {
    Length x;
    Length keelTop, joint, ballastBottom;  ///< heights
    Length breadth;                        ///< of the joint: the narrower of keel and ballast
    bool operator==(const JointSection&) const = default;
};

/// What is decided for one bolt; everything not decided by hand comes from the rule for all.
struct BoltChoice {
    std::string id;
    std::optional<Length> x;
    std::optional<Length> offset;  ///< signed, this bolt's own
    bool between = false;
    std::string metal;  ///< catalogue name; empty while not decided
    Length diameter;
    Length pitch;  ///< of its thread
    Length washerDiameter, washerThickness, recess;
    bool operator==(const BoltChoice&) const = default;
};

/// Least sizes a class rule asks of ballast bolts; those not known are not checked.
struct BoltRules {
    std::optional<Length> leastDiameter;
    std::optional<double> washerDiameters;     ///< washer diameter ÷ bolt diameter
    std::optional<double> washerThickness;     ///< washer thickness ÷ bolt diameter
    std::optional<Length> washerThicknessCap;  ///< need not exceed
    std::string diameterSource, washerSource;
    bool operator==(const BoltRules&) const = default;
};

struct BallastBoltInput {
    std::vector<FloorSeat> floors;
    std::vector<JointSection> sections;  ///< forward to aft, over the ballast's length
    Length alternateOffset;              ///< off the centreline, alternate sides
    std::vector<BoltChoice> bolts;
    BoltRules rules;
    bool operator==(const BallastBoltInput&) const = default;
};

/// A bolt in its place, with what load and checks need to know of it.
struct PlacedBolt {
    std::string id;
    std::string frame;                ///< floor it goes through, or the nearest one
    std::vector<std::string> floors;  ///< floors that take its load: one, or the two beside it
    bool between = false;
    Point joint;  ///< where it crosses the joint of keel timber and ballast
    Length grip;
    std::optional<Length> seatWidth;  ///< width of timber under the upper washer
    bool operator==(const PlacedBolt&) const = default;
};

struct BallastBoltLayout {
    std::vector<PlacedBolt> placed;
    std::vector<Hole> holes;
    std::vector<Finding> findings;
    bool operator==(const BallastBoltLayout&) const = default;
};

/// Places the bolts: by hand where decided, else spread over the floors (or the spaces between
/// floors) above the ballast, alternate sides of the centreline (Lloyd's Register Special Service
/// Craft, July 2022, Pt 4 Ch 3 6.3.4).
BallastBoltLayout layOutBallastBolts(const BallastBoltInput& input);

/// The section at a place, straight between the given ones; nothing beyond their ends.
std::optional<JointSection> sectionAt(const std::vector<JointSection>& sections, Length x);

/// What is wrong with bolts already placed: class-rule sizes, edge, end, spacing, clash, off the
/// ballast.
std::vector<Finding> ballastBoltFindings(const BallastBoltInput& input,
                                         const BallastBoltLayout& layout);

}  // namespace fayline
