#pragma once

#include <string>
#include <vector>

#include "joint/joint_result.h"
#include "joint/moisture.h"
#include "joint_file.h"

namespace fayline::cli {

/// A joint as understood and every limit state of it (docs/contracts.md, joint).
std::string jointJson(const JointFile& file, const JointResult& result,
                      const std::vector<MoistureRow>& moisture);
/// The same for reading, lengths and loads in the file's units.
std::string jointText(const JointFile& file, const JointResult& result,
                      const std::vector<MoistureRow>& moisture);

/// Which design loads stand above what starts to give, and why; empty where none does.
std::string aboveGivingText(const JointResult& result);

}  // namespace fayline::cli
