#include "sheet/drawing.h"

#include <algorithm>
#include <cmath>

#include "sheet/font_metrics.h"
#include "sheet/parts.h"

namespace fayline {

namespace {

RectMm around(const std::vector<PointMm>& points) {
    RectMm box;
    for (const PointMm& p : points) box = united(box, p);
    return box;
}

RectMm grown(RectMm box, double by_mm) {
    if (box.empty()) return box;
    return {box.left - by_mm, box.top - by_mm, box.right + by_mm, box.bottom + by_mm};
}

double half(const Stroke& stroke) {
    return stroke.widthMm.value_or(0.0) / 2.0;
}

struct Bounds {
    RectMm operator()(const shape::Line& s) const {
        return grown(around({s.from, s.to}), half(s.stroke));
    }
    RectMm operator()(const shape::Polyline& s) const {
        return grown(around(s.points), half(s.stroke));
    }
    RectMm operator()(const shape::Polygon& s) const {
        return grown(around(s.points), s.stroke ? half(*s.stroke) : 0.0);
    }
    RectMm operator()(const shape::Text& s) const { return textBounds(s); }
    RectMm operator()(const shape::Mark& s) const {
        return grown(around({s.at}), s.sizeMm / 2.0 + half(s.stroke));
    }
    RectMm operator()(const shape::Hatch& s) const {
        return grown(around(s.points), half(s.stroke));
    }
    RectMm operator()(const shape::Dimension& s) const {
        RectMm box;
        for (const DrawItem& part : partsOf(s)) box = united(box, boundsOf(part));
        return box;
    }
};

}  // namespace

RectMm united(const RectMm& a, const RectMm& b) {
    if (a.empty()) return b;
    if (b.empty()) return a;
    return {std::min(a.left, b.left), std::min(a.top, b.top), std::max(a.right, b.right),
            std::max(a.bottom, b.bottom)};
}

RectMm united(const RectMm& a, PointMm p) {
    return united(a, RectMm{p.x, p.y, p.x, p.y});
}

PointMm DrawScale::toDrawing(PlanePoint p) const {
    const double across_mm = p.across.si() * mmPerMetre;
    return {mirrored ? origin.x - across_mm : origin.x + across_mm,
            origin.y - p.up.si() * mmPerMetre};
}

PlanePoint DrawScale::toPlane(PointMm p) const {
    const double across_mm = mirrored ? origin.x - p.x : p.x - origin.x;
    return {metres(across_mm / mmPerMetre), metres((origin.y - p.y) / mmPerMetre)};
}

RectMm boundsOf(const DrawItem& item) {
    return std::visit(Bounds{}, item.shape);
}

RectMm boundsOf(const Drawing& drawing) {
    RectMm box;
    for (const DrawItem& item : drawing.items) box = united(box, boundsOf(item));
    return box;
}

RectMm boundsOf(const Drawing& drawing, const std::string& id) {
    RectMm box;
    if (id.empty()) return box;
    for (const DrawItem& item : drawing.items) {
        if (item.id == id) box = united(box, boundsOf(item));
    }
    return box;
}

}  // namespace fayline
