#pragma once

#include <vector>

#include "check/check.h"
#include "joint/rod.h"
#include "joint/washer.h"
#include "load/ballast.h"

namespace fayline {

/// A ballast bolt as its checks see it. What is not known stays out and is named.
struct BoltCheckInput {
    std::string id, frame;
    std::optional<RodInput> rod;  ///< none: metal not decided or not in the catalogue
    std::optional<WasherInput>
        washer;  ///< none: wood under it not decided; service and duration are set per case
    std::string whyNoRod, whyNoWasher;
    double target = 1.5;
    bool operator==(const BoltCheckInput&) const = default;
};

/// Rod in tension, rod with shear, washer under both timber sets, for one bolt in one case.
std::vector<Check> checkBallastBolt(const BoltCheckInput& input, const BoltForces& forces,
                                    LoadCase loadCase, const CaseSettings& settings);

/// The bed of keel timber on the ballast's top, both timber sets.
std::vector<Check> checkBallastBed(const WasherInput& wood, const CaseLoads& loads, double target);

/// The working behind one check of a bolt: demand first, then capacity.
std::optional<Trace> explainBallastBolt(const BoltCheckInput& input, const CaseLoads& loads,
                                        const Check& check);
std::optional<Trace> explainBallastBed(const WasherInput& wood, const CaseLoads& loads,
                                       const Check& check);

}  // namespace fayline
