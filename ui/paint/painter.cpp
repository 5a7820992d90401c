#include "painter.h"

#include <QPainter>
#include <cmath>

#include "dashes.h"
#include "paint/font.h"
#include "sheet/font_metrics.h"
#include "sheet/parts.h"

namespace fayline {

namespace {

bool isUprightRectangle(const QPolygonF& p) {
    if (p.size() != 4) return false;
    const auto same = [](double a, double b) { return std::abs(a - b) < 1e-9; };
    return (same(p[0].y(), p[1].y()) && same(p[1].x(), p[2].x()) && same(p[2].y(), p[3].y()) &&
            same(p[3].x(), p[0].x())) ||
           (same(p[0].x(), p[1].x()) && same(p[1].y(), p[2].y()) && same(p[2].x(), p[3].x()) &&
            same(p[3].y(), p[0].y()));
}

}  // namespace

ItemPainter::ItemPainter(QPainter& painter, const PaintMap& map, const PaintStyle& style)
    : painter_(painter),
      map_(map),
      style_(style),
      ratio_(painter.device() ? painter.device()->devicePixelRatioF() : 1.0) {}

void ItemPainter::paint(const DrawItem& item) {
    std::visit([&](const auto& shape) { paint(item.role, shape); }, item.shape);
}

QPen ItemPainter::penFor(Role role, const Stroke& stroke) const {
    double width = stroke.widthMm.value_or(0.0) * map_.perMm;
    width = std::max({width, style_.leastStrokeMm * map_.perMm, style_.leastStrokePixels});
    if (width <= 0.0) width = 1.0;
    return {style_.look(role).line, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin};
}

QPolygonF ItemPainter::mapped(const std::vector<PointMm>& points) const {
    QPolygonF polygon;
    polygon.reserve(static_cast<qsizetype>(points.size()));
    for (const PointMm& p : points) polygon << map_.map(p);
    return polygon;
}

QLineF ItemPainter::snapped(const QLineF& line, double width) const {
    if (!style_.snaps) return line;
    const auto across = [&](double at) {
        const double thick = std::max(1.0, std::round(width * ratio_));
        return (std::round(at * ratio_ - thick / 2.0) + thick / 2.0) / ratio_;
    };
    const auto end = [&](double at) { return std::round(at * ratio_) / ratio_; };
    if (line.dx() == 0.0 && line.dy() != 0.0) {
        const double x = across(line.x1());
        return {x, end(line.y1()), x, end(line.y2())};
    }
    if (line.dy() == 0.0 && line.dx() != 0.0) {
        const double y = across(line.y1());
        return {end(line.x1()), y, end(line.x2()), y};
    }
    return line;
}

QPolygonF ItemPainter::snapped(const QPolygonF& polygon) const {
    if (!style_.snaps || !isUprightRectangle(polygon)) return polygon;
    const QRectF box = polygon.boundingRect();
    const double width = std::max(1.0, std::round(box.width() * ratio_));
    const double left = std::round(box.center().x() * ratio_ - width / 2.0);
    const double top = std::round(box.top() * ratio_);
    const double bottom = std::max(top + 1.0, std::round(box.bottom() * ratio_));
    return QPolygonF(QRectF(left / ratio_, top / ratio_, width / ratio_, (bottom - top) / ratio_));
}

void ItemPainter::paint(Role role, const shape::Line& line) {
    QPen pen = penFor(role, line.stroke);
    const QLineF lay = snapped(QLineF(map_.map(line.from), map_.map(line.to)), pen.widthF());
    if (style_.snaps && (lay.dx() == 0.0 || lay.dy() == 0.0)) {
        pen.setWidthF(std::max(1.0, std::round(pen.widthF() * ratio_)) / ratio_);
    }
    stroke(QPolygonF({lay.p1(), lay.p2()}), line.stroke.style, pen);
}

void ItemPainter::stroke(const QPolygonF& line, LineStyle style, const QPen& pen) {
    painter_.setPen(pen);
    painter_.setBrush(Qt::NoBrush);
    if (style != LineStyle::solid) {
        painter_.drawLines(dashesAlong(line, style, map_.perMm));
    } else if (line.size() == 2) {
        painter_.drawLine(line[0], line[1]);
    } else if (line.isClosed()) {
        painter_.drawPolygon(line);
    } else {
        painter_.drawPolyline(line);
    }
}

void ItemPainter::paint(Role role, const shape::Polyline& line) {
    if (line.points.size() < 2) return;
    QPen pen = penFor(role, line.stroke);
    pen.setJoinStyle(Qt::RoundJoin);
    stroke(mapped(line.points), line.stroke.style, pen);
}

void ItemPainter::fillArea(Role role, const QPolygonF& area, const std::vector<PointMm>& points) {
    const RoleLook& look = style_.look(role);
    if (look.fill.isValid()) {
        painter_.setPen(Qt::NoPen);
        painter_.setBrush(look.fill);
        painter_.drawPolygon(area);
    }
    for (const HatchLook& hatch : look.hatch) {
        paint(role, shape::Hatch{points, hatch.angleDeg, hatch.spacingMm, Stroke{0.18}});
    }
}

void ItemPainter::paint(Role role, const shape::Polygon& polygon) {
    if (polygon.points.size() < 3) return;
    const QPolygonF area = snapped(mapped(polygon.points));
    const RoleLook& look = style_.look(role);
    if (polygon.filled) fillArea(role, area, polygon.points);
    std::optional<Stroke> edge = polygon.stroke;
    // A tint that is not printed needs its edge drawn; solid black has one of its own.
    const bool solid = look.fill == look.line && look.hatch.empty();
    if (!edge && style_.edgesEveryArea && look.fill.isValid() && !solid) edge = Stroke{0.25};
    if (!edge) return;
    QPen pen = penFor(role, *edge);
    pen.setJoinStyle(Qt::RoundJoin);
    QPolygonF round = area;
    if (!round.isClosed()) round << round.first();
    stroke(round, edge->style, pen);
}

const QFont& ItemPainter::fontFor(const shape::Text& text) {
    const auto [place, made] = fonts_.try_emplace({text.letterMm, text.weight});
    if (made) {
        place->second = bundledFont(text.weight);
        const double em = text.letterMm / capitalHeightInEms() * map_.perMm;
        const int dpi = painter_.device() ? painter_.device()->logicalDpiY() : 96;
        place->second.setPointSizeF(em * 72.0 / dpi);
    }
    return place->second;
}

void ItemPainter::paint(Role role, const shape::Text& text) {
    if (text.text.empty() || !(text.letterMm > 0.0)) return;
    const SizeMm size = textSize(text);
    const double width = size.width * map_.perMm;
    const double letter = text.letterMm * map_.perMm;
    double left = 0.0;
    if (text.across == shape::Across::centre) left = -width / 2.0;
    if (text.across == shape::Across::right) left = -width;
    double base = 0.0;
    if (text.upright == shape::Upright::middle) base = letter / 2.0;
    if (text.upright == shape::Upright::top) base = letter;

    QPointF anchor = map_.map(text.anchor);
    const bool turned = text.angleDeg != 0.0;
    if (turned) {
        painter_.save();
        painter_.translate(anchor);
        painter_.rotate(-text.angleDeg);
        anchor = {};
    }
    if (text.cleared) {
        const double room = 0.3 * letter;
        painter_.fillRect(QRectF(anchor.x() + left - room, anchor.y() + base - letter - room,
                                 width + 2.0 * room, letter + 2.0 * room),
                          style_.paper);
    }
    painter_.setFont(fontFor(text));
    painter_.setPen(style_.look(role).line);
    QPointF start(anchor.x() + left, anchor.y() + base);
    if (style_.snaps && !turned) start.setY(std::round(start.y() * ratio_) / ratio_);
    painter_.drawText(start, QString::fromStdString(text.text));
    if (turned) painter_.restore();
}

void ItemPainter::paint(Role role, const shape::Mark& mark) {
    const QPointF c = map_.map(mark.at);
    const double half = mark.sizeMm / 2.0 * map_.perMm;
    const bool edged = !mark.filled || !mark.stroke.widthMm || *mark.stroke.widthMm > 0.0;
    QPen pen = penFor(role, mark.stroke);
    painter_.setPen(edged ? pen : QPen(Qt::NoPen));
    painter_.setBrush(mark.filled ? QBrush(style_.look(role).line) : QBrush(Qt::NoBrush));
    switch (mark.kind) {
        case shape::MarkKind::circle:
            painter_.drawEllipse(c, half, half);
            return;
        case shape::MarkKind::cross:
            painter_.setPen(pen);
            painter_.drawLine(c + QPointF(-half, -half), c + QPointF(half, half));
            painter_.drawLine(c + QPointF(-half, half), c + QPointF(half, -half));
            return;
        case shape::MarkKind::diamond:
            painter_.drawPolygon(QPolygonF({c + QPointF(0, -half), c + QPointF(half, 0),
                                            c + QPointF(0, half), c + QPointF(-half, 0)}));
            return;
        case shape::MarkKind::triangle: {
            const double rise = half * 0.87;  // equal sides, the box's middle on the place
            painter_.drawPolygon(QPolygonF(
                {c + QPointF(0, -rise), c + QPointF(half, rise), c + QPointF(-half, rise)}));
            return;
        }
        case shape::MarkKind::square:
            painter_.drawPolygon(
                snapped(QPolygonF({c + QPointF(-half, -half), c + QPointF(half, -half),
                                   c + QPointF(half, half), c + QPointF(-half, half)})));
            return;
    }
}

void ItemPainter::paint(Role role, const shape::Hatch& hatch) {
    painter_.setPen(penFor(role, hatch.stroke));
    QList<QLineF> lines;
    for (const shape::Line& line : linesOf(hatch)) {
        lines << QLineF(map_.map(line.from), map_.map(line.to));
    }
    painter_.drawLines(lines);
}

void ItemPainter::paint(Role role, const shape::Dimension& dimension) {
    for (DrawItem part : partsOf(dimension)) {
        part.role = role;
        paint(part);
    }
}

}  // namespace fayline
