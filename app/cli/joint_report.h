#pragma once

#include <string>

#include "joint/joint_result.h"
#include "joint_file.h"

namespace fayline::cli {

/// A joint as understood and every limit state of it (docs/contracts.md, joint).
std::string jointJson(const JointFile& file, const JointResult& result);
/// The same for reading, lengths and loads in the file's units.
std::string jointText(const JointFile& file, const JointResult& result);

}  // namespace fayline::cli
