#include "fastener/thread.h"

#include <numbers>

namespace fayline {
namespace {

constexpr double unifiedStressDepth = 0.9743;
constexpr double metricStressDepth = 0.9382;
constexpr double unifiedRootDepth = 1.22687;
constexpr double metricRootDepth = 1.226869;

Area circle(Length diameter) {
    return diameter * diameter * (std::numbers::pi / 4.0);
}

bool isUnified(const Thread& thread) {
    return thread.series == ThreadSeries::unifiedCoarse;
}

}  // namespace

std::string_view threadSeriesText(ThreadSeries series) {
    return series == ThreadSeries::unifiedCoarse ? "unified_coarse" : "metric_coarse";
}

std::optional<ThreadSeries> threadSeriesFromText(std::string_view text) {
    if (text == "unified_coarse") return ThreadSeries::unifiedCoarse;
    if (text == "metric_coarse") return ThreadSeries::metricCoarse;
    return std::nullopt;
}

Length rootDiameter(const Thread& thread) {
    return thread.nominal - thread.pitch * (isUnified(thread) ? unifiedRootDepth : metricRootDepth);
}

Area rootArea(const Thread& thread) {
    return circle(rootDiameter(thread));
}

Area tensileStressArea(const Thread& thread) {
    const double depth = isUnified(thread) ? unifiedStressDepth : metricStressDepth;
    return circle(thread.nominal - thread.pitch * depth);
}

double turnsFor(const Thread& thread, Length travel) {
    return travel / thread.pitch;
}

}  // namespace fayline
