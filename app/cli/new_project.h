#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "catalogue/catalogue.h"
#include "hull/offsets.h"
#include "project/step.h"
#include "quantity/result.h"

namespace fayline::cli {

/// The steps a new project begins with when made from a table of offsets: one step that decides
/// every point.
ResultAll<std::vector<Step>> stepsFromOffsets(std::string_view text, const std::string& fileName,
                                              const Catalogue& catalogue);

/// The same from a file on disk, read whole (8 MB at the most).
ResultAll<std::vector<Step>> stepsFromOffsetsFile(const std::filesystem::path& path,
                                                  const Catalogue& catalogue);

/// The demo hull: its offsets, then its decisions, each group with its reason.
ResultAll<std::vector<Step>> demoSteps(const Catalogue& catalogue);

/// Adds decisions written as text to a journal's steps: lines `WHAT = VALUE`; a blank line ends a
/// step; a line starting with # is the reason of the step below it.
ResultAll<std::vector<Step>> stepsFromDecisions(std::vector<Step> steps, std::string_view text,
                                                const std::string& fileName,
                                                const Catalogue& catalogue);

/// The decisions a table of offsets stands for.
std::vector<std::pair<std::string, std::string>> offsetDecisions(const Offsets& offsets);

}  // namespace fayline::cli
