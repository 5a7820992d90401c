#include <algorithm>
#include <cmath>
#include <limits>

#include "joint/work_joint.h"
#include "prepared.h"

namespace fayline {
namespace {

/// Where on the scale of loads a limit state may come apart, in newtons.
struct Range {
    double low_N = std::numeric_limits<double>::infinity();
    double high_N = std::numeric_limits<double>::infinity();
};

Range rangeOf(const FirstToGo& entry) {
    if (entry.apart) return {entry.apart->low.si(), entry.apart->high.si()};
    // It comes apart no sooner than it gives; how much later nobody has published.
    if (entry.gives) return {entry.gives->low.si(), std::numeric_limits<double>::infinity()};
    return {};
}

double orderOf(const FirstToGo& entry) {
    const auto& band = entry.apart ? entry.apart : entry.gives;
    if (!band) return std::numeric_limits<double>::infinity();
    return (band->low.si() + band->high.si()) / 2.0;
}

bool overlap(const Range& a, const Range& b) {
    return a.low_N <= b.high_N && b.low_N <= a.high_N;
}

/// Size of the load along which this state's own part is one: its capacity is stretched by the
/// inverse of the part of the load it carries. Nothing when it carries none.
std::optional<double> stretch(LimitStateKind kind, const std::optional<JointLoad>& load) {
    if (!load) return 1.0;
    const double lateral = load->lateral.si();
    const double axial = std::max(load->axial.si(), 0.0);
    const double size = std::hypot(lateral, axial);
    const double part = isAxial(kind) ? axial : lateral;
    if (part <= 0.0) return std::nullopt;
    return size / part;
}

std::optional<Band> stretched(std::optional<Band> band, double factor) {
    if (!band) return band;
    return Band{band->low * factor, band->high * factor};
}

}  // namespace

std::vector<FirstToGo> firstToGo(const BasisResult& basis, const std::optional<JointLoad>& load) {
    std::vector<FirstToGo> order;
    basis.each([&](const LimitState& state) {
        if (state.kind == LimitStateKind::combined || state.kind == LimitStateKind::group) return;
        const auto factor = stretch(state.kind, load);
        if (!factor) return;
        order.push_back({state.kind, stretched(state.gives, *factor),
                         stretched(state.apart, *factor), state.soft, false});
    });
    std::stable_sort(order.begin(), order.end(), [](const FirstToGo& a, const FirstToGo& b) {
        return orderOf(a) < orderOf(b);
    });
    for (std::size_t i = 0; i + 1 < order.size(); ++i) {
        const bool known = order[i].apart || order[i].gives;  // those without a figure stand last
        if (!known || !overlap(rangeOf(order[i]), rangeOf(order[i + 1]))) continue;
        order[i].tooClose = true;
        order[i + 1].tooClose = true;
    }
    return order;
}

}  // namespace fayline
