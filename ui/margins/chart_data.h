#pragma once

#include <optional>
#include <string>

#include "chart/chart.h"
#include "derive/results.h"
#include "words/values.h"

namespace fayline {

/// The worst margin at each frame under either timber basis, metal counted in both; of one case and
/// group, or of all.
ChartData worstByFrame(const Results& results, const std::optional<LoadCase>& loadCase,
                       const std::string& group);
/// The share of a case's moment about the keel that each frame takes, the ballast taken as stiff;
/// of one case, or of the first four that have one.
ChartData momentByFrame(const Results& results, const std::optional<LoadCase>& loadCase,
                        UnitSystem units);
/// How the ballast's load is shared over the frames: by nearness, and by a stiff ballast.
ChartData shareByFrame(const Results& results, const std::optional<LoadCase>& loadCase);

}  // namespace fayline
