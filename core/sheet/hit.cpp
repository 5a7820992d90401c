#include "sheet/hit.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "sheet/font_metrics.h"
#include "sheet/parts.h"

namespace fayline {

namespace {

constexpr double nowhere = std::numeric_limits<double>::max();

double toSegment(PointMm p, PointMm a, PointMm b) {
    const double dx = b.x - a.x;
    const double dy = b.y - a.y;
    const double square = dx * dx + dy * dy;
    double t = square > 0.0 ? ((p.x - a.x) * dx + (p.y - a.y) * dy) / square : 0.0;
    t = std::clamp(t, 0.0, 1.0);
    return std::hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
}

double toChain(PointMm p, const std::vector<PointMm>& points, bool closed) {
    if (points.empty()) return nowhere;
    double least = std::hypot(p.x - points.front().x, p.y - points.front().y);
    for (std::size_t i = 1; i < points.size(); ++i) {
        least = std::min(least, toSegment(p, points[i - 1], points[i]));
    }
    if (closed) least = std::min(least, toSegment(p, points.back(), points.front()));
    return least;
}

bool inside(PointMm p, const std::vector<PointMm>& points) {
    bool in = false;
    for (std::size_t i = 0, j = points.size() - 1; i < points.size(); j = i++) {
        const PointMm& a = points[i];
        const PointMm& b = points[j];
        if ((a.y > p.y) != (b.y > p.y) && p.x < (b.x - a.x) * (p.y - a.y) / (b.y - a.y) + a.x) {
            in = !in;
        }
    }
    return in;
}

double lessHalf(double distance_mm, const Stroke& stroke) {
    return std::max(0.0, distance_mm - stroke.widthMm.value_or(0.0) / 2.0);
}

double toBox(PointMm p, const RectMm& box) {
    if (box.empty()) return nowhere;
    const double dx = std::max({box.left - p.x, 0.0, p.x - box.right});
    const double dy = std::max({box.top - p.y, 0.0, p.y - box.bottom});
    return std::hypot(dx, dy);
}

struct Distance {
    PointMm place;

    double operator()(const shape::Line& s) const {
        return lessHalf(toSegment(place, s.from, s.to), s.stroke);
    }
    double operator()(const shape::Polyline& s) const {
        return lessHalf(toChain(place, s.points, false), s.stroke);
    }
    double operator()(const shape::Polygon& s) const {
        if (s.filled && !s.points.empty() && inside(place, s.points)) return 0.0;
        return toChain(place, s.points, true);
    }
    double operator()(const shape::Text& s) const { return toBox(place, textBounds(s)); }
    double operator()(const shape::Mark& s) const {
        return std::max(0.0, std::hypot(place.x - s.at.x, place.y - s.at.y) - s.sizeMm / 2.0);
    }
    double operator()(const shape::Hatch& s) const {
        if (!s.points.empty() && inside(place, s.points)) return 0.0;
        return toChain(place, s.points, true);
    }
    double operator()(const shape::Dimension& s) const {
        double least = nowhere;
        for (const DrawItem& part : partsOf(s)) least = std::min(least, distanceMm(part, place));
        return least;
    }
};

bool isArea(const DrawItem& item) {
    return std::holds_alternative<shape::Polygon>(item.shape) ||
           std::holds_alternative<shape::Hatch>(item.shape);
}

/// An area no broader than the tolerance either way round it is picked like a line.
bool isBroad(const DrawItem& item, double tolerance_mm) {
    const RectMm box = boundsOf(item);
    return isArea(item) && std::min(box.width(), box.height()) > 2.0 * tolerance_mm;
}

}  // namespace

double distanceMm(const DrawItem& item, PointMm place) {
    return std::visit(Distance{place}, item.shape);
}

std::optional<std::string> hit(const Drawing& drawing, PointMm place, Tolerance tolerance) {
    const DrawItem* thin = nullptr;
    const DrawItem* broad = nullptr;
    double nearest = tolerance.mm;
    for (const DrawItem& item : drawing.items) {
        if (item.id.empty()) continue;
        const double distance = distanceMm(item, place);
        if (distance > tolerance.mm) continue;
        if (isBroad(item, tolerance.mm)) {
            if (distance == 0.0) broad = &item;
        } else if (distance <= nearest) {
            nearest = distance;
            thin = &item;
        }
    }
    if (thin) return thin->id;
    if (broad) return broad->id;
    return std::nullopt;
}

}  // namespace fayline
