#pragma once

#include <string>
#include <vector>

#include "joint/joint.h"
#include "joint/joint_result.h"
#include "joint/screw.h"
#include "joint/us_lateral.h"

namespace fayline {

/// A member with all its densities and the length that bears on the dowel.
struct PreparedMember {
    const JointMember* given = nullptr;
    std::optional<Figure<SpecificGravityOvenDry>> gravity;
    std::optional<Figure<SpecificGravityTwelve>> gravityTwelve;
    std::optional<Figure<CharacteristicDensity>> density;
    Length thickness;  ///< less the counterbore
    Length bears;      ///< US: thickness, or what the point reaches of it less half its taper
    Length reaches;    ///< Eurocode 5: thickness, or what the point reaches of it
};

/// A joint with everything worked out that several limit states use.
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
    std::optional<Figure<Stress>> bendingYield;
    std::vector<std::string> cautions;

    [[nodiscard]] const JointFastener& fastener() const { return joint->fastener; }
    [[nodiscard]] const PreparedMember& last() const { return members.back(); }
    [[nodiscard]] bool isScrew() const { return joint->fastener.kind == FastenerKind::woodScrew; }
};

Prepared prepare(const Joint& joint);

/// US bearing strength of one member under the fastening: measured, or by its gravity times this
/// factor. Nothing without either.
std::optional<Stress> bearingUsOf(const Prepared& prepared, const PreparedMember& member,
                                  double gravityFactor = 1.0);

/// What members and fastening yield at, unreduced or by the divisors given, every gravity times
/// this factor. Nothing when a member has no figure.
std::optional<UsLateral> usLateralOf(const Prepared& prepared, Stress bendingYield,
                                     const UsReduction* reduction, double gravityFactor = 1.0);

/// What the fastening physically carries; the same under both bases.
struct Bands {
    std::optional<Band> lateralGives;
    std::optional<Band> withdrawalApart;
};
Bands bandsOf(const Prepared& prepared);

/// Weaker of the two ends in crushing the wood; nothing when no end has a size or no strength.
struct EndWash {
    std::optional<LimitState> us, ec5;
    std::string why;  ///< where missing
};
EndWash endWash(const Prepared& prepared, JointTraces* traces);

/// Tension at the root and shear of a solid head.
struct MetalStates {
    std::optional<LimitState> tension, headShear;
    std::string why;
};
MetalStates metalStates(const Prepared& prepared, JointTraces* traces);

BasisResult usResult(const Prepared& prepared, const Bands& bands, JointTraces* traces);
BasisResult ec5Result(const Prepared& prepared, const Bands& bands, JointTraces* traces);

/// The least axial capacity among those of a basis, and what it is.
struct LeastAxial {
    Force working, reference;
    LimitStateKind kind = LimitStateKind::withdrawal;
    Standing standing = Standing::derived;
};
std::optional<LeastAxial> leastAxial(const BasisResult& basis);

/// Angle between the load and the wood's surface.
Angle toSurface(const JointLoad& load);

/// A place in `traces` for this working, or null when none are wanted.
Trace* traceOf(JointTraces* traces, Basis basis, LimitStateKind kind);

}  // namespace fayline
