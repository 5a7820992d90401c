#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "material/standing.h"
#include "quantity/quantity.h"

namespace fayline {

/// Unified coarse (UNC, ASME B1.1) or ISO metric coarse (ISO 261/262).
enum class ThreadSeries { unifiedCoarse, metricCoarse };

/// "unified_coarse", "metric_coarse".
std::string_view threadSeriesText(ThreadSeries series);
std::optional<ThreadSeries> threadSeriesFromText(std::string_view text);

struct Thread {
    std::string id;    ///< "unc_1_2", "m12"
    std::string name;  ///< "1/2-13 UNC", "M12"
    ThreadSeries series = ThreadSeries::unifiedCoarse;
    Length nominal;  ///< diameter over the crests
    Length pitch;    ///< one turn of the nut
    Standing standing = Standing::judgement;
    std::string source;

    bool operator==(const Thread&) const = default;
};

/// Diameter at the root of the external thread: D - 1.22687 / n (ASME B1.1), d - 1.226869 P
/// (ISO 724, ISO 898-1 d3). The two are one profile.
Length rootDiameter(const Thread& thread);

/// pi/4 of the root diameter squared: the section for bending, shear through the thread and a
/// strict check in tension.
Area rootArea(const Thread& thread);

/// Tensile stress area, which tests of threaded bolts agree with: pi/4 (D - 0.9743 / n)^2 (ASME
/// B1.1), pi/4 (d - 0.9382 P)^2 (ISO 898-1). Larger than the root area.
Area tensileStressArea(const Thread& thread);

/// Turns of the nut for this much travel.
double turnsFor(const Thread& thread, Length travel);

}  // namespace fayline
