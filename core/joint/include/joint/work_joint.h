#pragma once

#include "joint/joint.h"
#include "joint/joint_result.h"
#include "quantity/result.h"

namespace fayline {

/// Every limit state of one fastening in one joint, on both timber bases, with what starts to give
/// and what comes apart, and sizes checked. Refused: what problemOf refuses.
/// With `traces`, the working of each limit state is put there.
Result<JointResult> workJoint(const Joint& joint, JointTraces* traces = nullptr);

/// Sizes of the fastening and its hole against the timbers it joins and each other.
std::vector<GeometryFinding> jointGeometry(const Joint& joint);

/// Figures worked out from others where the joint does not give them itself.
std::vector<std::string> jointCautions(const Joint& joint);

/// The order in which limit states let go: by what comes apart; where no source says, by what
/// starts to give, which comes before it. Those without any figure stand last.
std::vector<FirstToGo> firstToGo(const BasisResult& basis, const std::optional<JointLoad>& load);

}  // namespace fayline
