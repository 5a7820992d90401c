#pragma once

#include <optional>
#include <string>
#include <vector>

#include "load/case.h"
#include "quantity/quantity.h"

namespace fayline {

/// A ballast bolt as the load sees it.
struct LoadedBolt {
    std::string id;
    std::string frame;  ///< the frame it belongs to (nearest floor)
    Point joint;        ///< where it crosses the joint between keel timber and ballast
    Area area;          ///< of the rod, for stiffness
    Length grip;        ///< between the nuts, for stiffness
    Stress modulus;
    bool operator==(const LoadedBolt&) const = default;
};

/// A short length of the joint between keel timber and ballast.
struct BedSlice {
    Length x, length, breadth;
    LineMass ballast;  ///< mass of ballast per length here
    bool operator==(const BedSlice&) const = default;
};

/// A frame whose floor takes load from the ballast bolts.
struct BearingFrame {
    std::string frame;
    Length x;
    bool operator==(const BearingFrame&) const = default;
};

struct BallastLoadInput {
    Mass ballast;
    Point centre;       ///< centre of gravity of the ballast
    Length axisHeight;  ///< height of the joint at that place: the line all keel moments are about
    Length foot;        ///< height of the ballast's lowest part
    Length waterline;   ///< length of the boat's waterline
    Mass boat;          ///< afloat, ballast included
    std::vector<LoadedBolt> bolts;
    std::vector<BedSlice> bed;
    std::vector<BearingFrame> frames;
    Stress acrossGrain;  ///< stiffness of the wet keel timber across the grain
    Length timberDepth;  ///< of the keel timber
    bool operator==(const BallastLoadInput&) const = default;
};

/// Tension in one bolt by four ways of sharing a tipping moment; what governs in timber is the
/// cracked section.
struct BoltForces {
    std::string id, frame;
    Point point;
    Force
        equalForce;  ///< all bolts alike about the lee edge; far too kind in timber, for comparison
    Force windwardOnly;                         ///< the same with windward bolts alone
    Force elastic;                              ///< in proportion to distance from the lee edge
    Force cracked;                              ///< bolts against a timber bed in compression
    Force lateral;                              ///< size of its share of the sideways force
    ForceVector force;                          ///< what the bolt puts on the ballast
    double shareTributary = 0, shareRigid = 0;  ///< of the whole ballast load, along the keel
    double envelope =
        1;  ///< larger share ÷ equal share: how much more than an even share this bolt may see
    Force demandAxial, demandLateral;  ///< what it is checked for
    bool operator==(const BoltForces&) const = default;
};

struct FrameShare {
    std::string frame;
    Length x;
    double tributary = 0, rigid = 0;
    Moment keelMoment;  ///< rigid share of the case's moment about the keel axis; frames add up to
                        ///< the total
    Force lateral, vertical;  ///< rigid share of the case's force, to starboard and up
    bool operator==(const FrameShare&) const = default;
};

/// The bed of keel timber on the ballast's top.
struct BedForces {
    Force resultant;  ///< compression
    Length at;        ///< its place athwart, to starboard
    Length neutral;   ///< where contact ends, to starboard
    Stress highest;
    std::optional<Length> along;  ///< its place along the keel, where that is worked out
    bool operator==(const BedForces&) const = default;
};

struct Residual {
    Force force;
    Moment moment;
    double relative = 0;  ///< larger of force and moment residual over the case's own
    bool operator==(const Residual&) const = default;
};

struct CaseLoads {
    LoadCase loadCase = LoadCase::knockdownPort;
    CaseSettings settings;
    Length axisHeight;
    ForceVector total;
    MomentVector totalMoment;  ///< about the keel axis
    Point at;                  ///< where the total acts
    std::vector<BoltForces> bolts;
    std::vector<FrameShare> frames;
    std::optional<BedForces> bed;
    Residual residual;
    bool carried = true;  ///< false: nothing carries this
    bool settled = true;  ///< false: the cracked section found no balance
    std::string why;      ///< plain words when not carried or not settled
    bool operator==(const CaseLoads&) const = default;
};

/// Loads of one case on the ballast bolts, the bed and the floors. Port and starboard are mirror
/// images by construction of the input, not assumed.
CaseLoads ballastLoads(const BallastLoadInput& input, LoadCase loadCase,
                       const CaseSettings& settings);

/// Shares of a load along the keel. Tributary: mass of ballast nearest each support, ends with
/// their overhang. Rigid: a stiff ballast on equal springs with the mass's own centre. Both add up
/// to one.
struct Shares {
    std::vector<double> tributary, rigid;
};
Shares sharesAlong(const std::vector<BedSlice>& bed, Length massCentre,
                   const std::vector<Length>& supports);

/// Pressure for each length of sinking: stiffness of the timber across the grain over its depth.
using BedStiffness = Quantity<1, -2, -2>;

}  // namespace fayline
