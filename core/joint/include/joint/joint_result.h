#pragma once

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "joint/dowel.h"
#include "joint/limit_state.h"
#include "joint/trace.h"
#include "quantity/quantity.h"

namespace fayline {

struct LateralResult {
    LimitState state;  ///< of the whole fastening, all planes, rope included
    int planes = 1;
    std::vector<ModeLoad> modes;  ///< as the published expressions give them: US the whole
                                  ///< fastening, Eurocode 5 one plane before the rope
    Force rope;                   ///< Eurocode 5: the rope's part of one plane
    std::string governs;          ///< name of a mode
    bool operator==(const LateralResult&) const = default;
};

struct WithdrawalResult {
    LimitState state;
    ForcePerLength referencePerLength;
    Length holds;  ///< length that holds
    bool operator==(const WithdrawalResult&) const = default;
};

/// A limit state that applies but cannot be worked out.
struct MissingState {
    LimitStateKind kind = LimitStateKind::lateral;
    std::string why;
    bool operator==(const MissingState&) const = default;
};

/// Every limit state of a fastening under one basis. One that cannot occur is absent.
struct BasisResult {
    std::optional<LateralResult> lateral;
    std::optional<WithdrawalResult> withdrawal;
    std::optional<LimitState> pullThrough, washer, metal, headShear;
    std::optional<LimitState> combined;  ///< size of load along the load given
    std::vector<MissingState> missing;

    /// Those present, in the order above.
    [[nodiscard]] std::vector<LimitState> states() const;
    bool operator==(const BasisResult&) const = default;
};

/// Torque that twists a screw's root: starts to yield, and off.
struct DrivingResult {
    Moment gives, apart;
    bool operator==(const DrivingResult&) const = default;
};

/// One size against what it should be.
struct GeometryFinding {
    std::string what;  ///< thread_bound, penetration, tip_out, counterbore, bung
    Length has, needs;
    bool met = true;
    std::string says;
    bool operator==(const GeometryFinding&) const = default;
};

/// One entry of "what lets go first".
struct FirstToGo {
    LimitStateKind kind = LimitStateKind::lateral;
    std::optional<Band> gives, apart;  ///< sizes of the load given along it; without one, as in the
                                       ///< limit state
    bool soft = true;
    bool tooClose = false;  ///< its place against a neighbour's is within what is known
    bool operator==(const FirstToGo&) const = default;
};

struct JointResult {
    BasisResult us, ec5;
    std::optional<DrivingResult> driving;
    std::vector<GeometryFinding> geometry;
    std::vector<FirstToGo> firstToGo;
    std::vector<std::string> cautions;
    bool operator==(const JointResult&) const = default;
};

/// Workings by basis and limit state; metal limit states stand under Basis::metal.
using JointTraces = std::map<std::pair<Basis, LimitStateKind>, Trace>;

}  // namespace fayline
