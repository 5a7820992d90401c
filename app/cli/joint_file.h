#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "catalogue/catalogue.h"
#include "joint/joint.h"
#include "joint/moisture.h"
#include "quantity/display.h"
#include "quantity/result.h"

namespace fayline::cli {

/// One joint as a file describes it (docs/joint-file.md), with the names it used.
struct JointFile {
    Joint joint;
    std::vector<std::optional<std::string>> woods;  ///< catalogue id of each member's wood
    std::optional<std::string> metal, thread;       ///< catalogue ids
    MoistureZone zone = MoistureZone::soaked;       ///< for the four states of moisture
    Basis basis = Basis::us;                        ///< whose limit states are put in order
    UnitSystem units = UnitSystem::inches;          ///< of the readable text
};

/// Reads text; `name` is the file's for what is wrong with its JSON. Everything wrong is said.
ResultAll<JointFile> readJointText(const std::string& text, const std::string& name,
                                   const Catalogue& catalogue);

/// The same from a file of at most 1 MB.
ResultAll<JointFile> readJointFile(const std::filesystem::path& path, const Catalogue& catalogue);

}  // namespace fayline::cli
