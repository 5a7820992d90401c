#include "paper_leg.h"

#include <algorithm>
#include <cmath>

namespace fayline {
namespace {

constexpr int pieces = 240;

Length distance(PlanePoint a, PlanePoint b) {
    return metres(std::hypot(a.across.si() - b.across.si(), a.up.si() - b.up.si()));
}

PlanePoint between(PlanePoint a, PlanePoint b, double t) {
    return {a.across + t * (b.across - a.across), a.up + t * (b.up - a.up)};
}

/// A line moved inwards folds over itself where the hull turns tighter than it is moved. What lies
/// nearer to the hull than it was moved is such a fold, and so is what lies beyond the centreline.
std::vector<PlanePoint> withoutLoops(const std::vector<PlanePoint>& moved,
                                     const std::vector<PlanePoint>& line, Length by) {
    constexpr double slack = 0.98;
    std::vector<PlanePoint> kept;
    for (const PlanePoint& p : moved) {
        const bool fold = std::any_of(line.begin(), line.end(), [&](const PlanePoint& q) {
            return distance(p, q) < slack * by;
        });
        if (!fold && p.across >= Length{}) kept.push_back(p);
    }
    // A hull too narrow for its frame keeps its line as it is.
    return kept.size() < 2 ? moved : kept;
}

}  // namespace

FrameLeg::FrameLeg(const FrameCurve& curve, Length planking, Length moulded) {
    std::vector<PlanePoint> line;
    for (int i = 0; i <= pieces; ++i) {
        const CurvePoint at = curve.at((static_cast<double>(i) / pieces) * curve.girth());
        line.push_back({at.y, at.z});
    }
    for (int i = 0; i <= pieces; ++i) {
        const Length along = (static_cast<double>(i) / pieces) * curve.girth();
        const CurvePoint edge = curve.inside(along, planking);
        const CurvePoint in = curve.inside(along, planking + moulded);
        outer_.push_back({edge.y, edge.z});
        inner_.push_back({in.y, in.z});
    }
    outer_ = withoutLoops(outer_, line, planking);
    inner_ = withoutLoops(inner_, line, planking + moulded);
    if (inner_.empty()) inner_.push_back(outer_.front());
    along_.push_back(Length{});
    for (std::size_t i = 1; i < outer_.size(); ++i)
        along_.push_back(along_.back() + distance(outer_[i - 1], outer_[i]));
}

FrameLeg::Place FrameLeg::placeOf(PlanePoint p) const {
    if (p.up < outer_.front().up)
        return {p.up - outer_.front().up, outer_.front().across - p.across};
    Place best;
    std::optional<Length> nearest;
    for (std::size_t i = 1; i < outer_.size(); ++i) {
        const PlanePoint a = outer_[i - 1], b = outer_[i];
        const double dx = b.across.si() - a.across.si(), dz = b.up.si() - a.up.si();
        const double squared = dx * dx + dz * dz;
        if (squared <= 0.0) continue;
        const double px = p.across.si() - a.across.si(), pz = p.up.si() - a.up.si();
        const double t = std::clamp((px * dx + pz * dz) / squared, 0.0, 1.0);
        const Length away = distance(p, between(a, b, t));
        if (nearest && away >= *nearest) continue;
        nearest = away;
        // Inboard of the edge is to the left of its way up.
        const double side = dx * pz - dz * px;
        best = {along_[i - 1] + t * (along_[i] - along_[i - 1]), side >= 0.0 ? away : -away};
    }
    return best;
}

PlanePoint FrameLeg::edgeAtHeight(Length z) const {
    for (std::size_t i = 1; i < outer_.size(); ++i) {
        if (outer_[i].up < z) continue;
        const Length rise = outer_[i].up - outer_[i - 1].up;
        if (rise <= Length{} || z <= outer_[i - 1].up) return outer_[i - 1];
        return between(outer_[i - 1], outer_[i], (z - outer_[i - 1].up) / rise);
    }
    return outer_.back();
}

Length FrameLeg::alongAtHeight(Length z) const {
    return placeOf(edgeAtHeight(z)).along;
}

std::vector<PlanePoint> FrameLeg::outlineUpTo(Length z) const {
    std::vector<PlanePoint> outline;
    std::size_t last = 0;
    while (last + 1 < outer_.size() && outer_[last + 1].up <= z) ++last;
    for (std::size_t i = 0; i <= last; ++i) outline.push_back(outer_[i]);
    // Cut off square: the inner edge ends where it stands opposite.
    std::size_t opposite = 0;
    for (std::size_t i = 1; i < inner_.size(); ++i) {
        if (distance(inner_[i], outline.back()) < distance(inner_[opposite], outline.back()))
            opposite = i;
    }
    for (std::size_t i = opposite + 1; i-- > 0;) outline.push_back(inner_[i]);
    return outline;
}

}  // namespace fayline
