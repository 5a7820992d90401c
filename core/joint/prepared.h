#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "joint/joint.h"
#include "joint/joint_result.h"
#include "joint/screw.h"
#include "joint/us_bearing.h"
#include "joint/us_lateral.h"

namespace fayline {

/// A member with all its densities and the length that bears on the dowel.
struct PreparedMember {
    const JointMember* given = nullptr;
    std::optional<SpecificGravityOvenDry> gravity;
    std::optional<SpecificGravityTwelve> gravityTwelve;
    std::optional<CharacteristicDensity> density;
    Standing gravityStanding = Standing::judgement;
    Standing densityStanding = Standing::judgement;
    Length thickness;  ///< less the counterbore
    Length bears;      ///< US: thickness, or what the point reaches of it less half its taper
    Length reaches;    ///< Eurocode 5: thickness, or what the point reaches of it
    std::optional<DowelBearing> bearing;  ///< US, by its gravity
    Direction grain;                      ///< of the load to the grain
    Direction bearsAt;                    ///< US: across where the fastening stands in end grain
};

/// A joint with everything worked out that several limit states use. Holds on to the joint.
struct Prepared {
    const Joint* joint = nullptr;
    std::vector<PreparedMember> members;
    bool pointed = false;  ///< ends inside the last member: screw, drift
    Length nominal;        ///< body, or side of a square
    Length inEquations;    ///< root of a screw or of a bolt whose thread bears; else nominal
    Length root;           ///< where tension breaks it
    bool rootKnown = false;
    ScrewShape screw;    ///< of a wood screw
    Length penetration;  ///< of the point into the last member
    Length thread;       ///< of a screw's thread inside the last member
    Angle steepest;      ///< largest angle of load to grain
    std::optional<Stress> bendingYield;
    Standing bendingStanding = Standing::judgement;
    std::optional<Moment> hinge, hingeTypical;  ///< US plastic moment, least and typical

    [[nodiscard]] const JointFastener& fastener() const { return joint->fastener; }
    [[nodiscard]] const PreparedMember& last() const { return members.back(); }
    [[nodiscard]] bool isScrew() const { return joint->fastener.kind == FastenerKind::woodScrew; }
    [[nodiscard]] bool isWet() const { return joint->service == Service::wet; }
};

Prepared prepare(const Joint& joint);

/// The densities of a member with where they come from, for workings and cautions.
struct MemberFigures {
    std::optional<Figure<SpecificGravityOvenDry>> gravity;
    std::optional<Figure<SpecificGravityTwelve>> gravityTwelve;
    std::optional<Figure<CharacteristicDensity>> density;
};
MemberFigures figuresOf(const JointMember& member);

/// Gravities all multiplied by one factor, with what that does to the bearing strengths.
struct GravityScale {
    double linear = 1.0, across = 1.0, small = 1.0;
};

/// US bearing strength of one member under the fastening: measured, of lead, or by its gravity.
/// Nothing without any.
std::optional<Stress> bearingUsOf(const PreparedMember& member, const GravityScale& scale = {});

/// Reference loads of members and fastening. Nothing when a member has no figure.
std::optional<UsLateral> usLateralOf(const Prepared& prepared, Moment hinge,
                                     const UsReduction& reduction);

/// What the fastening physically carries; the same under both bases.
struct Bands {
    std::optional<Band> lateralGives;
    std::optional<Band> withdrawalApart;
};
Bands bandsOf(const Prepared& prepared);

/// What stands the same under both bases, worked out once.
struct MetalStates {
    std::optional<LimitState> tension, headShear, threadStrip, lead;
    std::vector<MissingState> missing;
};
MetalStates metalStates(const Prepared& prepared, JointTraces* traces);
/// Wood crushed under the ends and washers drawn through, under both bases.
void addWood(const Prepared& prepared, BasisResult& us, BasisResult& ec5, JointTraces* traces);
/// Lead crushed under the weaker end; nothing where no sized end bears on lead.
std::optional<LimitState> leadUnderEnds(const Prepared& prepared, JointTraces* traces);

void usResult(const Prepared& prepared, const Bands& bands, const MetalStates& metal,
              BasisResult& result, JointTraces* traces);
void ec5Result(const Prepared& prepared, const Bands& bands, const MetalStates& metal,
               BasisResult& result, JointTraces* traces);

std::optional<PlaneSlip> slipOf(const Prepared& prepared, std::size_t plane);

/// Angle between the load and the wood's surface.
Direction toSurface(const JointLoad& load);

/// A place in `traces` for this working, or null when none are wanted.
Trace* traceOf(JointTraces* traces, Basis basis, LimitStateKind kind);

}  // namespace fayline
