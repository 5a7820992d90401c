#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "joint/dowel.h"
#include "joint/limit_state.h"
#include "joint/slip.h"
#include "joint/trace.h"
#include "quantity/quantity.h"

namespace fayline {

struct LateralResult {
    LimitState state;  ///< of the whole fastening, all planes, rope included
    int planes = 1;
    ModeLoads modes;           ///< as the published expressions give them: US the whole fastening,
                               ///< Eurocode 5 one plane before the rope
    Force rope;                ///< Eurocode 5: the rope's part of one plane
    std::string_view governs;  ///< name of a mode
    bool operator==(const LateralResult&) const = default;
};

struct WithdrawalResult {
    LimitState state;
    ForcePerLength referencePerLength;
    Length holds;  ///< length that holds
    bool operator==(const WithdrawalResult&) const = default;
};

/// Like fastenings under one load: capacities are sizes of the whole load.
struct GroupResult {
    LimitState state;  ///< elastic: the worst fastening reaches its own capacity
    Force plastic;     ///< design load once all of them have yielded
    int worst = 0;     ///< which place carries most, from 0
    double share = 0;  ///< of the load, on that one
    bool operator==(const GroupResult&) const = default;
};

/// A limit state that applies but cannot be worked out.
struct MissingState {
    LimitStateKind kind = LimitStateKind::lateral;
    std::string_view why;  ///< of static storage
    bool operator==(const MissingState&) const = default;
};

/// Every limit state of a fastening under one basis. One that cannot occur is absent.
struct BasisResult {
    std::optional<LateralResult> lateral;
    std::optional<WithdrawalResult> withdrawal;
    std::optional<LimitState> pullThrough, washer, punching, crushing, metal, headShear,
        threadStrip, netSection, splitting;
    std::optional<GroupResult> group;
    std::optional<LimitState> combined;  ///< size of load along the load given
    std::vector<MissingState> missing;

    /// Each of those present, in the order above.
    template <typename Visit>
    void each(Visit visit) const {
        if (lateral) visit(lateral->state);
        if (withdrawal) visit(withdrawal->state);
        for (const auto* state : {&pullThrough, &washer, &punching, &crushing, &metal, &headShear,
                                  &threadStrip, &netSection, &splitting}) {
            if (*state) visit(**state);
        }
        if (group) visit(group->state);
        if (combined) visit(*combined);
    }
    [[nodiscard]] std::vector<LimitState> states() const;
    bool operator==(const BasisResult&) const = default;
};

/// Torque that twists a screw's root: starts to yield, and off; and what driving it takes.
struct DrivingResult {
    Moment gives, apart;
    std::optional<Moment> dry, waxed;  ///< judgement; none where the wood's strength is not known
    bool operator==(const DrivingResult&) const = default;
};

/// One size against what it should be.
struct GeometryFinding {
    std::string_view what;  ///< "thread_bound", "hole_fit", …; of static storage
    Length has, needs;
    bool met = true;
    bool atMost = false;  ///< `has` should not be more than `needs`; else not less
    Standing standing = Standing::commonPractice;

    /// What it means, in plain words.
    [[nodiscard]] std::string says() const;
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
    std::vector<PlaneSlip> slip;  ///< of each plane, where the woods' densities are known
    bool operator==(const JointResult&) const = default;
};

/// Workings by basis and limit state; metal limit states stand under Basis::metal.
using JointTraces = std::map<std::pair<Basis, LimitStateKind>, Trace>;

}  // namespace fayline
