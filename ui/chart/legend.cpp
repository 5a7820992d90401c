#include "legend.h"

#include <QPainter>
#include <QScatterSeries>

#include "plot.h"

namespace fayline {
namespace {

constexpr int sample = 34, gap = 6, between = 18, side = 8;

void paintMark(QPainter& painter, QPointF at, int shape) {
    constexpr double half = 4.0;
    switch (shape) {
        case QScatterSeries::MarkerShapeRectangle:
            painter.drawRect(QRectF(at.x() - half, at.y() - half, 2 * half, 2 * half));
            return;
        case QScatterSeries::MarkerShapeTriangle:
            painter.drawPolygon(QPolygonF(
                {at + QPointF(0, -half), at + QPointF(half, half), at + QPointF(-half, half)}));
            return;
        case QScatterSeries::MarkerShapeRotatedRectangle:
            painter.drawPolygon(QPolygonF({at + QPointF(0, -half - 1), at + QPointF(half + 1, 0),
                                           at + QPointF(0, half + 1), at + QPointF(-half - 1, 0)}));
            return;
        default:
            painter.drawEllipse(at, half, half);
    }
}

}  // namespace

ChartLegend::ChartLegend(QWidget* parent) : QWidget(parent) {
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void ChartLegend::describe(const ChartData& chart) {
    data_ = chart;
    updateGeometry();
    update();
}

QSize ChartLegend::sizeHint() const {
    return {200, lay(nullptr, width())};
}
int ChartLegend::heightForWidth(int width) const {
    return lay(nullptr, width);
}

/// Lays the entries from left to right; paints them when there is a painter. Returns the height.
int ChartLegend::lay(QPainter* painter, int width) const {
    const int line = fontMetrics().height() + 4;
    int x = side;
    int y = 0;
    const auto entry = [&](const QString& name, auto paintSample) {
        const int wide = sample + gap + fontMetrics().horizontalAdvance(name);
        if (x > side && x + wide > width - side) {
            x = side;
            y += line;
        }
        if (painter != nullptr) {
            paintSample(QRectF(x, y, sample, line));
            painter->setPen(palette().color(QPalette::Text));
            painter->drawText(QRect(x + sample + gap, y, wide, line), Qt::AlignVCenter, name);
        }
        x += wide + between;
    };
    for (std::size_t i = 0; i < data_.series.size(); ++i) {
        const SeriesLook look = seriesLook(i, palette());
        entry(data_.series[i].name, [&](const QRectF& box) {
            painter->setPen(look.pen);
            if (data_.kind == ChartData::Kind::bars) {
                painter->setPen(QPen(look.pen.color(), 1.0));
                painter->setBrush(look.bar);
                painter->drawRect(box.adjusted(8, 4, -8, -4));
            } else {
                painter->drawLine(QPointF(box.left(), box.center().y()),
                                  QPointF(box.right(), box.center().y()));
                painter->setPen(palette().color(QPalette::Base));
                painter->setBrush(look.pen.color());
                paintMark(*painter, box.center(), look.mark);
            }
            painter->setBrush(Qt::NoBrush);
        });
    }
    for (const ChartLimit& limit : data_.limits) {
        entry(limit.name, [&](const QRectF& box) {
            painter->setPen(QPen(palette().color(QPalette::Text), 1.4, Qt::DashLine));
            painter->drawLine(QPointF(box.left(), box.center().y()),
                              QPointF(box.right(), box.center().y()));
        });
    }
    return y + line;
}

void ChartLegend::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    lay(&painter, width());
}

}  // namespace fayline
