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
    Length thickness;
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
    std::optional<JointLoad> load;
    bool operator==(const Joint&) const = default;
};

/// Planes between members that the fastening crosses.
int planesOf(const Joint& joint);

/// The first thing wrong with a joint, its place as members[1].thickness; nothing when it can be
/// worked.
std::optional<Problem> problemOf(const Joint& joint);

/// A member with the figures of a wood; sizes are still to be set.
JointMember jointMember(const Wood& wood);

/// The metal's figures for a fastening.
FastenerMetal fastenerMetal(const Metal& metal);

}  // namespace fayline
