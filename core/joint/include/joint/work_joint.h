#pragma once

#include "joint/joint.h"
#include "joint/joint_result.h"
#include "quantity/result.h"

namespace fayline {

/// Every limit state of one fastening in one joint, on both timber bases, with what starts to give
/// and what comes apart, sizes checked, and what lets go first. Refused: what problemOf refuses.
/// With `traces`, the working of each limit state is put there.
Result<JointResult> workJoint(const Joint& joint, JointTraces* traces = nullptr);

/// Sizes of a wood screw against the timbers it joins; nothing for other fastenings.
std::vector<GeometryFinding> screwGeometry(const Joint& joint);

/// The order in which limit states let go: by what comes apart; where no source says, by what
/// starts to give, which comes before it. Those without any figure stand last.
std::vector<FirstToGo> firstToGo(const BasisResult& basis, const std::optional<JointLoad>& load);

}  // namespace fayline
