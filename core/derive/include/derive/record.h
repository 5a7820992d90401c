#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "derive/results.h"
#include "joint/joint.h"
#include "joint/joint_result.h"
#include "joint/moisture.h"
#include "project/project.h"
#include "quantity/display.h"
#include "sheet/record.h"

namespace fayline {

struct Catalogue;

/// One joint with the catalogue's names for what it is made of.
struct NamedJoint {
    Joint joint;
    std::vector<std::optional<std::string>> woods;  ///< of each member, as the catalogue calls it
    std::optional<std::string> metal, thread;
    MoistureZone zone = MoistureZone::soaked;  ///< for the four states of moisture
    Basis basis = Basis::us;                   ///< whose limit states are put in order
    UnitSystem units = UnitSystem::inches;     ///< of texts
    bool operator==(const NamedJoint&) const = default;
};

/// What stands on a record besides the calculation; none of it changes its revision code but the
/// subject.
struct RecordOptions {
    std::string subject;  ///< boat or file
    std::string printed, program;
};

/// A joint of the hull with the catalogue's names: a wood or metal whose figures are the
/// catalogue's own bears its id, one with figures of its own has none. `metal` is the name it was
/// decided by.
NamedJoint namedJoint(const Joint& joint, const std::string& metal, const Catalogue& catalogue,
                      Basis basis, UnitSystem units);

/// The record of one joint by itself. `result` and `traces` are of that joint.
Record jointRecord(const NamedJoint& named, const JointResult& result, const JointTraces& traces,
                   const RecordOptions& options);

/// The record of a whole hull: what was put in, factor sets, loads and shares, then every distinct
/// joint once with the worst of all fastenings it stands for. `decided` are the decisions in force.
Record hullRecord(const Project& project, const Results& results, const Catalogue& catalogue,
                  const std::vector<std::pair<std::string, std::string>>& decided,
                  const RecordOptions& options);

/// The same of one frame and what stands at it; nothing when there is no such frame.
std::optional<Record> stationRecord(const std::string& frame, const Project& project,
                                    const Results& results, const Catalogue& catalogue,
                                    const RecordOptions& options);

}  // namespace fayline
