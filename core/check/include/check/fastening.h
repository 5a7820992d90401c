#pragma once

#include <optional>
#include <string>
#include <vector>

#include "check/check.h"
#include "joint/joint.h"
#include "joint/joint_result.h"
#include "load/fastening.h"

namespace fayline {

/// A set of like fastenings as its checks see it.
struct SetCheckInput {
    FasteningSet set;
    std::optional<Joint> joint;  ///< duration, kind of load and load are set per case
    std::string whyNoJoint;      ///< plain words when there is none
    std::string metal;           ///< catalogue name; tells joints apart that have like sizes
    ConsequenceClass consequence = ConsequenceClass::hull;
    double target = 1.25;
};

/// The joint in one case: its duration and kind of load, and the load where it both draws and
/// shears.
Joint inCase(Joint joint, const CaseSettings& settings, const SetDemand& demand);

/// What a load sets against a limit state; nothing where it does not bring it into play.
std::optional<Force> demandFor(LimitStateKind kind, const JointLoad& load);

/// Demand against every limit state it brings into play, both timber sets and the metal's. One
/// entry stands for the whole set. `result` is that of `inCase`; none: `why` says why.
std::vector<Check> checkSet(const SetCheckInput& input, const FrameLoad& load,
                            const SetDemand& demand, const JointResult* result,
                            const std::string& why);

/// A single entry for a set that nothing loads, or whose load is not worked out.
Check quietCheck(const SetCheckInput& input, const FrameLoad& load, const SetDemand& demand);

/// The working behind one check of a set: demand first, then capacity.
std::optional<Trace> explainSet(const SetCheckInput& input, const FrameLoad& load,
                                const Check& check);

}  // namespace fayline
