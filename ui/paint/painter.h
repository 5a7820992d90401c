#pragma once

#include <QFont>
#include <QPen>
#include <QPolygonF>
#include <map>
#include <optional>
#include <utility>

#include "paint/paint.h"

namespace fayline {

/// Paints items one by one; lives as long as one call.
class ItemPainter {
  public:
    ItemPainter(QPainter& painter, const PaintMap& map, const PaintStyle& style);
    void paint(const DrawItem& item);

  private:
    void paint(Role role, const shape::Line& line);
    void paint(Role role, const shape::Polyline& line);
    void paint(Role role, const shape::Polygon& polygon);
    void paint(Role role, const shape::Text& text);
    void paint(Role role, const shape::Mark& mark);
    void paint(Role role, const shape::Hatch& hatch);
    void paint(Role role, const shape::Dimension& dimension);

    void stroke(const QPolygonF& line, LineStyle style, const QPen& pen);
    [[nodiscard]] QPen penFor(Role role, const Stroke& stroke) const;
    [[nodiscard]] QPolygonF mapped(const std::vector<PointMm>& points) const;
    [[nodiscard]] const QFont& fontFor(const shape::Text& text);
    [[nodiscard]] QPolygonF snapped(const QPolygonF& polygon) const;
    [[nodiscard]] QLineF snapped(const QLineF& line, double width) const;
    void fillArea(Role role, const QPolygonF& area, const std::vector<PointMm>& points);

    QPainter& painter_;
    const PaintMap& map_;
    const PaintStyle& style_;
    double ratio_;  ///< device pixels per painter unit
    std::map<std::pair<double, shape::Weight>, QFont> fonts_;
};

}  // namespace fayline
