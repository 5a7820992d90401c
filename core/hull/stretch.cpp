#include "stretch.h"

#include <algorithm>

namespace fayline::detail {
namespace {

constexpr double levelStretch = 1e-9;  ///< of the whole girth: below this a stretch has no height

/// Straight between the values that stand beside `at` in a rising row.
template <typename X, typename Y>
Y interpolated(const std::vector<X>& xs, const std::vector<Y>& ys, X at) {
    const auto above = std::upper_bound(xs.begin(), xs.end(), at);
    if (above == xs.end()) return ys.back();
    if (above == xs.begin()) return ys.front();
    const auto i = static_cast<std::size_t>(above - xs.begin());
    return ys[i - 1] + (ys[i] - ys[i - 1]) * ((at - xs[i - 1]) / (xs[i] - xs[i - 1]));
}

}  // namespace

SectionPoint pointAt(const Contour& contour, Length girth) {
    const auto& g = contour.girth;
    const auto above = std::upper_bound(g.begin(), g.end(), girth);
    if (above == g.end()) return contour.points.back();
    const auto i = static_cast<std::size_t>(above - g.begin());
    const double share = (girth - g[i - 1]) / (g[i] - g[i - 1]);
    const SectionPoint a = contour.points[i - 1];
    const SectionPoint b = contour.points[i];
    return {a.y + (b.y - a.y) * share, a.z + (b.z - a.z) * share};
}

Stretch::Stretch(const Contour& contour, Length from, Length to) {
    girth_ = {from};
    std::copy_if(contour.girth.begin(), contour.girth.end(), std::back_inserter(girth_),
                 [&](Length g) { return g > from && g < to; });
    if (to > from) girth_.push_back(to);
    std::vector<Length> rise;
    for (const Length g : girth_) rise.push_back(interpolated(contour.girth, contour.rise, g));
    const Length whole = rise.back() - rise.front();
    const bool byHeight = whole > levelStretch * contour.girth.back();
    for (std::size_t i = 0; i < girth_.size(); ++i) {
        const double along = to > from ? (girth_[i] - from) / (to - from) : 0.0;
        share_.push_back(byHeight ? 0.5 * (along + (rise[i] - rise.front()) / whole) : along);
    }
    share_.back() = to > from ? 1.0 : 0.0;
}

double Stretch::shareAt(Length girth) const {
    return interpolated(girth_, share_, girth);
}

Length Stretch::girthAt(double share) const {
    return interpolated(share_, girth_, share);
}

}  // namespace fayline::detail
