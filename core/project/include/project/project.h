#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "quantity/quantity.h"

namespace fayline {

/// Everything the builder decided, as typed values. An empty optional means "not decided: the rule
/// stands". It is the fold of the journal; nothing in it is worked out.

struct HullDecisions {
    std::optional<std::string> name;
    std::optional<Mass> displacement;  ///< as stated by the builder or the designer
    std::optional<Length> waterline;   ///< height of the load waterline above base
    std::optional<Density> waterDensity;
    std::optional<std::string> units;  ///< "inches" or "millimetres": how screens and paper speak
    std::optional<std::string> basis;  ///< "us" or "ec5": which timber basis leads on screen
    bool operator==(const HullDecisions&) const = default;
};

struct OffsetPointDecisions {
    std::optional<Length> halfBreadth, height;
    bool operator==(const OffsetPointDecisions&) const = default;
};
struct OffsetStationDecisions {
    std::optional<Length> x;
    std::map<int, OffsetPointDecisions> points;  ///< 1, 2, 3 … from the keel up
    std::optional<int> rabbet = std::nullopt;    ///< which of them lies on the rabbet line
    bool operator==(const OffsetStationDecisions&) const = default;
};

struct KeelDecisions {
    std::optional<std::string> wood;
    std::optional<Length> from, to;  ///< ends of the keel timber, x
    std::optional<Length> undersideFore,
        undersideAft;  ///< height of its lower face at the two ends
    std::optional<Length> sided, moulded;
    bool operator==(const KeelDecisions&) const = default;
};

/// For all frames (`frames.…`) or one (`F9.frame.…`).
struct FrameDecisions {
    std::optional<Length> x;  ///< one frame only: its place as measured
    std::optional<Length> sided, moulded;
    std::optional<std::string> heelDetail;  ///< socketed, on_top, beside, continuous, half_frames
    std::optional<std::string> reason;
    bool operator==(const FrameDecisions&) const = default;
};
struct FrameSetDecisions {
    std::optional<Length> first, spacing;
    std::optional<int> count;
    std::optional<std::string> wood;
    FrameDecisions all;
    bool operator==(const FrameSetDecisions&) const = default;
};

/// For all floors (`floors.…`) or the one at a frame (`F9.floor.…`).
struct FloorDecisions {
    std::optional<std::string> kind;      ///< none, sawn, grown, laminated, cast, plate
    std::optional<std::string> topology;  ///< beside, across, plate
    std::optional<Length> sided, throat;
    std::optional<Length> reach;  ///< from the centreline to the end of an arm, along the level
    std::optional<std::string> wood;
    std::optional<std::string> reason;
    bool operator==(const FloorDecisions&) const = default;
};

struct BallastDecisions {
    std::optional<std::string> metal;
    std::optional<Mass> mass;
    std::optional<Length> from, to;  ///< ends of its top face, x
    std::optional<Length> breadthFore, breadthMiddle, breadthAft, bottomBreadth;
    std::optional<Length> depthFore, depthMiddle, depthAft;
    std::optional<Length> centreX;      ///< overrides the worked-out centre of gravity
    std::optional<Length> centreBelow;  ///< centre of gravity below the ballast's top face
    bool operator==(const BallastDecisions&) const = default;
};

/// For all ballast bolts (`bolts.…`) or one (`K.5.…`).
struct BoltDecisions {
    std::optional<Length> x;       ///< one bolt only: its place
    std::optional<Length> offset;  ///< all: distance off the centreline, alternate sides; one: to
                                   ///< starboard (+) or port (−)
    std::optional<Length> diameter;
    std::optional<std::string> metal;
    std::optional<Length> washerDiameter, washerThickness;
    std::optional<std::string> through;  ///< floor, between
    std::optional<Length> corrosion;     ///< allowance off the radius
    std::optional<Length>
        recess;  ///< depth of the pocket for the lower nut, up from the ballast's bottom
    std::optional<std::string> reason;
    bool operator==(const BoltDecisions&) const = default;
};
struct BoltSetDecisions {
    std::optional<int> count;
    BoltDecisions all;
    bool operator==(const BoltSetDecisions&) const = default;
};

/// One group of fastenings: for all of the hull (`heel.…`), at one frame (`F9.heel.…`), on one side
/// of it
/// (`F9.P.heel.…`), or for one strake (`strake4.plank.…`).
struct FasteningDecisions {
    std::optional<std::string> kind;     ///< wood_screw, bolt, drift, rivet
    std::optional<std::string> section;  ///< round, square: of a rivet
    std::optional<int> count;            ///< on each side, each arm, each crossing, each end
    std::optional<int> gauge;            ///< of a screw
    std::optional<Length> diameter;      ///< of a bolt, drift or round rivet; side of a square one
    std::optional<Length> length;        ///< of a screw or drift
    std::optional<std::string> metal;
    std::optional<Length> washerDiameter, washerThickness;
    std::optional<Length> counterbore;  ///< how deep the head is sunk under its bung
    std::optional<std::string> reason;
    bool operator==(const FasteningDecisions&) const = default;
};

struct PlankingDecisions {
    std::optional<std::string> wood;
    std::optional<Length> thickness;
    std::optional<int> strakes;       ///< on each side, garboard and sheer strake included
    std::optional<Length> longest;    ///< longest plank to be had; none: no butts
    std::optional<Length> buttBlock;  ///< thickness of butt blocks; else as the planking
    bool operator==(const PlankingDecisions&) const = default;
};

/// A joint of the backbone: a straight row of fastenings in the middle line plane.
struct BackboneDecisions {
    std::optional<std::string> kind;  ///< bolt, drift
    std::optional<int> count;
    std::optional<Length> diameter, length;
    std::optional<std::string> metal;
    std::optional<Length> foreX, foreHeight, aftX, aftHeight;  ///< ends of the joint's line
    std::optional<std::string> upper, lower;                   ///< members, head side first
    std::optional<std::string> reason;
    bool operator==(const BackboneDecisions&) const = default;
};

struct CaseDecisions {
    std::optional<double> factor;     ///< on the load itself
    std::optional<double> ec5Factor;  ///< on the demand, Eurocode 5 side
    std::optional<std::string> duration;
    std::optional<std::string> kind;  ///< permanent, variable, accidental
    bool operator==(const CaseDecisions&) const = default;
};

/// The builder's own figures for a wood or a metal; they stand before the catalogue's.
struct WoodDecisions {
    std::optional<Density> density;         ///< characteristic, mass and volume at 12 %
    std::optional<double> specificGravity;  ///< oven-dry mass and volume
    std::optional<Stress> acrossGrain;      ///< US allowable compression across the grain, dry
    bool operator==(const WoodDecisions&) const = default;
};
struct MetalDecisions {
    std::optional<Stress> yield, ultimate;
    std::optional<Density> density;
    bool operator==(const MetalDecisions&) const = default;
};

struct Project {
    HullDecisions hull;
    std::map<std::string, OffsetStationDecisions> offsets;
    KeelDecisions keel;
    FrameSetDecisions frames;
    std::map<std::string, FrameDecisions> frame;
    FloorDecisions floors;
    std::map<std::string, FloorDecisions> floor;
    BallastDecisions ballast;
    BoltSetDecisions bolts;
    std::map<std::string, BoltDecisions> bolt;
    PlankingDecisions planking;
    std::map<std::string, Length> strakeWidth;  ///< "strake4": greatest width, where decided
    std::map<std::string, FasteningDecisions>
        fastening;  ///< "heel", "F9.heel", "F9.P.heel", "strake4.plank"
    std::map<std::string, BackboneDecisions> backbone;  ///< by joint name: "stem_scarph"
    std::map<std::string, CaseDecisions> cases;
    std::map<std::string, double> classTarget;  ///< keel, hull, trim
    std::optional<double> metalFactor;          ///< on the smaller of yield and half the ultimate
    std::map<std::string, WoodDecisions> wood;
    std::map<std::string, MetalDecisions> metal;
    std::map<std::string, std::string>
        kept;  ///< catalogue rows this project keeps: "woods.white_oak" → row text
    bool operator==(const Project&) const = default;
};

/// Frames that exist, forward to aft by number: F1 … Fn and those set in later (F9A).
std::vector<std::string> frameIds(const Project& project);
/// Ballast bolts that exist: K.1 … K.n.
std::vector<std::string> boltIds(const Project& project);

}  // namespace fayline
