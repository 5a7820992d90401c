#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "joint/dowel.h"
#include "joint/limit_state.h"
#include "joint/us_factors.h"
#include "material/figure.h"
#include "material/metal.h"
#include "material/wood.h"
#include "quantity/quantity.h"
#include "quantity/result.h"

namespace fayline {

/// A timber (or plate) in a joint, as the formulas see it. Any one of the three densities is
/// enough; what is missing is worked out from another and said.
struct JointMember {
    std::string name;  ///< "plank", for messages and workings
    WoodFamily family = WoodFamily::softwood;
    std::optional<Figure<SpecificGravityOvenDry>> gravity;
    std::optional<Figure<SpecificGravityTwelve>> gravityTwelve;
    std::optional<Figure<CharacteristicDensity>> density;
    /// Measured or declared, in place of the formula: bearing under this dowel at this angle.
    std::optional<Figure<Stress>> bearingUs;
    std::optional<Figure<Stress>> embedmentEc5;
    /// Compression across the grain, for heads, washers and roves.
    std::optional<Figure<Stress>> acrossUs;    ///< US allowable, dry
    std::optional<Figure<Stress>> acrossEc5;   ///< characteristic
    std::optional<Figure<Stress>> acrossMean;  ///< mean, at the proportional limit, wet
    /// Along the grain, for the wood the hole leaves and for splitting.
    std::optional<Figure<Stress>> tensionUs, shearUs;  ///< US allowable, dry, ten years
    std::optional<Figure<Stress>> tensionEc5;          ///< characteristic
    /// A member of lead: the pressure it bears, its tensile strength. Wood's figures then do not
    /// count.
    std::optional<Figure<Stress>> lead;
    Length thickness;
    std::optional<Length> width;       ///< square to the fastening and to the grain
    std::optional<double> grainSlope;  ///< 1 in this many; none: straight
    Length counterbore;     ///< depth of the hole that sinks head or nut; outer members only
    Length gap;             ///< felt, bedding or shim between this and the next member
    Angle grain;            ///< between lateral load and grain, 0 to 90°
    bool endGrain = false;  ///< the fastening runs along this member's grain
    bool operator==(const JointMember&) const = default;
};

enum class FastenerKind { woodScrew, bolt, drift, rivet };
enum class FastenerEnd {
    head,
    nut,
    formedHead,
    clenchRing,
    rove,
    peened,
    countersunk,
    thread,
    blind
};

std::string_view nameOf(FastenerKind kind);
std::string_view nameOf(FastenerEnd end);
std::optional<FastenerKind> fastenerKindNamed(std::string_view name);
std::optional<FastenerEnd> fastenerEndNamed(std::string_view name);

/// What bears on the wood at one end: a washer, a ring, a rove, or the head itself.
struct EndBearing {
    Length diameter;
    Length thickness;
    bool operator==(const EndBearing&) const = default;
};

/// How a wood screw's hole is bored; what is not known is not judged.
struct ScrewHole {
    std::optional<Length> slipFit;   ///< bore of the outer pieces
    std::optional<Length> pilot;     ///< bit where the thread begins
    std::optional<Length> pilotTip;  ///< bit at its point: a tapered one
    std::optional<Length> bit;       ///< length of the bit below the counterbore
    std::optional<Length> collar;    ///< setting of the stop collar from the bit's point
    bool operator==(const ScrewHole&) const = default;
};

/// Which root a wood screw has where nobody has measured it.
enum class ScrewRoots {
    measuredAverage,  ///< averages of screws as sold
    code              ///< the US standard's table: for reproducing its other tables
};

/// The metal of a fastening: least figures for capacity, typical ones for the bands.
struct FastenerMetal {
    std::optional<Figure<Stress>> yield, ultimate;
    std::optional<Figure<Stress>> yieldTypical, ultimateTypical;
    std::optional<Figure<Stress>> shear;         ///< ultimate
    std::optional<Figure<Stress>> bendingYield;  ///< US F_yb; else the mean of yield and ultimate
    double factor = 2.5;                         ///< on the smaller of yield and half the ultimate
    std::string factorSource = "metal factor of the program";
    bool operator==(const FastenerMetal&) const = default;
};

struct JointFastener {
    FastenerKind kind = FastenerKind::bolt;
    DowelSection section = DowelSection::round;
    Length diameter;  ///< body; side of a square one. Of a wood screw may be left to the gauge
    std::optional<Gauge> gauge;  ///< of a wood screw
    std::optional<Length> root;  ///< measured, at the thread
    ScrewRoots roots = ScrewRoots::measuredAverage;
    Length length;  ///< wood screw: over all, flat head; drift: without head. Others: not used
    std::optional<Length> threadLength;  ///< wood screw: else two thirds of the length
    std::optional<Length> tip;           ///< length of the taper: else two diameters
    bool threadBears = false;  ///< bolt: thread fills a quarter or more of a bearing length
    FastenerEnd head = FastenerEnd::head;
    FastenerEnd point = FastenerEnd::nut;
    std::optional<Length> headDiameter;  ///< wood screw: else twice the body
    std::optional<Length> headHeight;    ///< of a solid head, for shearing off
    std::optional<EndBearing> headBearing, pointBearing;
    std::optional<Length> hole;  ///< in the wood; drift: decides whether it holds
    std::optional<Length> bung;  ///< diameter of the plug over the head
    ScrewHole screwHole;
    std::optional<Figure<Moment>> yieldMoment;  ///< measured, in place of the formulas
    std::optional<Length> pitch;                ///< of a nut's thread
    std::optional<Length> nutHeight;
    std::optional<Figure<Stress>> nutShear;         ///< ultimate; else that of the bolt
    std::optional<Length> peenHeight;               ///< of a peened end beyond rove or ring
    std::optional<Angle> slant;                     ///< of a drift
    std::optional<Figure<Stress>> headStrengthEc5;  ///< f_head declared at 350 kg/m3
    Length corrosion;                               ///< allowance off the radius, for the metal
    FastenerMetal metal;
    bool operator==(const JointFastener&) const = default;
};

/// Fastenings in one row along the load, and the members' sections for the US group action.
struct JointRow {
    int count = 1;
    Length spacing;
    std::optional<GroupMember> main, side;
    bool operator==(const JointRow&) const = default;
};

/// A place in the plane the fastenings stand square to.
struct GroupPlace {
    Length along, across;
    bool operator==(const GroupPlace&) const = default;
};

/// Like fastenings that carry one load together.
struct JointGroup {
    std::vector<GroupPlace> places;
    GroupPlace loadAt;  ///< a point on the load's line
    Angle direction;    ///< of the load, from `along` towards `across`
    bool operator==(const JointGroup&) const = default;
};

/// What the fastening carries.
struct JointLoad {
    Force lateral;  ///< 0 or more
    Force axial;    ///< above 0: tension in the fastening
    bool operator==(const JointLoad&) const = default;
};

/// One fastening through two or more members, head side first.
struct Joint {
    std::vector<JointMember> members;
    JointFastener fastener;
    Service service = Service::wet;
    Fitted fitted = Fitted::dry;
    Duration duration = Duration::tenYears;
    KindOfLoad kindOfLoad = KindOfLoad::variable;
    std::optional<JointRow> row;
    std::optional<Placement> placement;
    std::optional<JointGroup> group;
    bool heel = false;  ///< a frame's heel on the keel: the trade's rule for its screw is checked
    std::optional<JointLoad> load;
    bool operator==(const Joint&) const = default;
};

/// For looking joints up by value: a few of its sizes; what tells two joints apart is their
/// equality.
struct JointHash {
    std::size_t operator()(const Joint& joint) const;
};

/// Planes between members that the fastening crosses.
int planesOf(const Joint& joint);

/// The first thing wrong with a joint, its place as members[1].thickness; nothing when it can be
/// worked.
std::optional<Problem> problemOf(const Joint& joint);

/// A member with the figures of a wood; sizes are still to be set.
JointMember jointMember(const Wood& wood);

/// A member of ballast lead.
JointMember leadMember(const Metal& lead);

/// The metal's figures for a fastening.
FastenerMetal fastenerMetal(const Metal& metal);

}  // namespace fayline
