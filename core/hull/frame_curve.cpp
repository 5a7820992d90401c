#include "hull/frame_curve.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace fayline {
namespace {

/// Half the length over which a direction is taken, so that small facets of the section do not show
/// in it.
constexpr Length reach = millimetres(15);
/// Points nearer than this are one.
constexpr Length hair = millimetres(1e-6);

Length distance(const SectionPoint& a, const SectionPoint& b) {
    return metres(std::hypot((b.y - a.y).si(), (b.z - a.z).si()));
}

SectionPoint between(const SectionPoint& a, const SectionPoint& b, double t) {
    return {a.y + t * (b.y - a.y), a.z + t * (b.z - a.z)};
}

}  // namespace

std::optional<FrameCurve> FrameCurve::above(const Section& section, std::optional<Length> keelTop) {
    FrameCurve curve;
    curve.x_ = section.x;
    const auto& points = section.points;
    std::size_t first = 0;
    if (keelTop) {
        while (first < points.size() && points[first].z < *keelTop) ++first;
        if (first > 0 && first < points.size()) {
            const SectionPoint& below = points[first - 1];
            const double t = (*keelTop - below.z) / (points[first].z - below.z);
            curve.points_.push_back(between(below, points[first], t));
        }
    }
    curve.points_.insert(
        curve.points_.end(),
        points.begin() + static_cast<std::ptrdiff_t>(std::min(first, points.size())), points.end());
    return along(std::move(curve));
}

std::optional<FrameCurve> FrameCurve::from(const Section& section, const SectionPoint& foot) {
    const auto& points = section.points;
    if (points.size() < 2) return std::nullopt;
    std::size_t piece = 1;
    SectionPoint start = points.front();
    for (std::size_t i = 1; i < points.size(); ++i) {
        const SectionPoint& a = points[i - 1];
        const double dy = (points[i].y - a.y).si();
        const double dz = (points[i].z - a.z).si();
        const double squared = dy * dy + dz * dz;
        const double t =
            squared > 0
                ? std::clamp(((foot.y - a.y).si() * dy + (foot.z - a.z).si() * dz) / squared, 0.0,
                             1.0)
                : 0.0;
        const SectionPoint nearest = between(a, points[i], t);
        if (distance(nearest, foot) < distance(start, foot)) {
            start = nearest;
            piece = i;
        }
    }
    FrameCurve curve;
    curve.x_ = section.x;
    curve.points_.push_back(start);
    for (std::size_t i = piece; i < points.size(); ++i) {
        if (distance(points[i], curve.points_.back()) > hair) curve.points_.push_back(points[i]);
    }
    return along(std::move(curve));
}

std::optional<FrameCurve> FrameCurve::along(FrameCurve curve) {
    if (curve.points_.size() < 2) return std::nullopt;
    curve.along_.push_back(Length{});
    for (std::size_t i = 1; i < curve.points_.size(); ++i) {
        curve.along_.push_back(curve.along_.back() +
                               distance(curve.points_[i - 1], curve.points_[i]));
    }
    if (curve.girth() <= Length{}) return std::nullopt;
    return curve;
}

CurvePoint FrameCurve::at(Length along) const {
    const auto placeAt = [this](Length s) {
        s = max(Length{}, min(s, girth()));
        const auto above = std::upper_bound(along_.begin(), along_.end(), s);
        const auto i = static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(
            above - along_.begin(), 1, static_cast<std::ptrdiff_t>(along_.size()) - 1));
        const Length span = along_[i] - along_[i - 1];
        return between(points_[i - 1], points_[i],
                       span > Length{} ? (s - along_[i - 1]) / span : 0.0);
    };
    const SectionPoint here = placeAt(along);
    const SectionPoint before = placeAt(along - reach);
    const SectionPoint behind = placeAt(along + reach);
    const double dy = (behind.y - before.y).si();
    const double dz = (behind.z - before.z).si();
    const double size = std::hypot(dy, dz);
    // Going up the starboard side, out of the hull lies to the right of the way.
    return {here.y, here.z, size > 0 ? dz / size : 1.0, size > 0 ? -dy / size : 0.0};
}

CurvePoint FrameCurve::inside(Length along, Length depth) const {
    CurvePoint point = at(along);
    point.y -= point.outY * depth;
    point.z -= point.outZ * depth;
    return point;
}

std::optional<Length> FrameCurve::alongAtHalfBreadth(Length y) const {
    if (y <= points_.front().y) return Length{};
    for (std::size_t i = 1; i < points_.size(); ++i) {
        const SectionPoint& a = points_[i - 1];
        const SectionPoint& b = points_[i];
        if (a.y <= y && y <= b.y && b.y > a.y)
            return along_[i - 1] + ((y - a.y) / (b.y - a.y)) * (along_[i] - along_[i - 1]);
    }
    return std::nullopt;
}

}  // namespace fayline
