#include "plot.h"

#include <QBarSeries>
#include <QBarSet>
#include <QCategoryAxis>
#include <QChart>
#include <QChartView>
#include <QGraphicsLayout>
#include <QGraphicsLineItem>
#include <QLegendMarker>
#include <QLineSeries>
#include <QScatterSeries>
#include <QValueAxis>
#include <algorithm>
#include <cmath>

#include "theme/colours.h"

namespace fayline {
namespace {

constexpr int mostLabels = 24;

struct Range {
    double low = 0.0, high = 0.0;
    void add(double value) {
        low = std::min(low, value);
        high = std::max(high, value);
    }
};

Range rangeOf(const ChartData& data) {
    Range range;
    for (const ChartSeries& series : data.series) {
        for (const auto& value : series.values) {
            if (value) range.add(*value);
        }
    }
    for (const ChartLimit& limit : data.limits) range.add(1.1 * limit.at);
    if (range.low == range.high) range.high = range.low + 1.0;
    return range;
}

}  // namespace

Chart::Plot::Plot()
    : chart_(new QChart), view_(new QChartView(chart_)), cursor_(new QGraphicsLineItem(chart_)) {
    chart_->setBackgroundVisible(false);
    chart_->setPlotAreaBackgroundVisible(true);
    chart_->setMargins({4, 2, 8, 2});
    chart_->layout()->setContentsMargins(0, 0, 0, 0);
    chart_->legend()->setAlignment(Qt::AlignBottom);
    chart_->legend()->setMarkerShape(QLegend::MarkerShapeFromSeries);
    view_->setFrameShape(QFrame::NoFrame);
    view_->setRenderHint(QPainter::Antialiasing);
    view_->setBackgroundBrush(Qt::NoBrush);
    view_->viewport()->setAutoFillBackground(false);
    view_->setFocusPolicy(Qt::NoFocus);
    view_->setMouseTracking(true);
    view_->viewport()->setMouseTracking(true);
    cursor_->setZValue(50);
    cursor_->hide();
}

QWidget* Chart::Plot::widget() const {
    return view_;
}

void Chart::Plot::show(const ChartData& data, const QPalette& palette, const QFont& font) {
    chart_->removeAllSeries();
    for (QAbstractAxis* axis : chart_->axes()) {
        chart_->removeAxis(axis);
        axis->deleteLater();
    }
    series_.clear();
    places_ = static_cast<int>(data.places.size());
    QFont bold = font;
    bold.setBold(true);
    chart_->setTitle(data.title.toHtmlEscaped());
    chart_->setTitleFont(bold);
    chart_->setTitleBrush(palette.brush(QPalette::Text));
    chart_->setPlotAreaBackgroundBrush(palette.brush(QPalette::Base));
    chart_->setPlotAreaBackgroundPen(QPen(coloursFor(palette).line, 1.0));
    chart_->legend()->setLabelColor(palette.color(QPalette::Text));
    chart_->legend()->setFont(font);
    if (data.kind == ChartData::Kind::bars) {
        addBars(data, palette);
    } else {
        addLines(data, palette);
    }
    addLimits(data, palette);
    addAxes(data, palette, font);
    chart_->legend()->setVisible(data.series.size() + data.limits.size() > 1);
}

void Chart::Plot::attach(QObject* series) {
    series_.append(series);
    chart_->addSeries(static_cast<QAbstractSeries*>(series));
}

/// A line for every stretch without a gap, and marks on the figures.
void Chart::Plot::addLines(const ChartData& data, const QPalette& palette) {
    for (std::size_t n = 0; n < data.series.size(); ++n) {
        const ChartSeries& series = data.series[n];
        const SeriesLook look = seriesLook(n, palette);
        auto* marks = new QScatterSeries;
        QLineSeries* line = nullptr;
        bool named = false;
        for (std::size_t i = 0; i < series.values.size(); ++i) {
            if (!series.values[i]) {
                line = nullptr;
                continue;
            }
            if (line == nullptr) {
                line = new QLineSeries;
                line->setPen(look.pen);
                line->setName(series.name.toHtmlEscaped());
                attach(line);
                if (named) {
                    for (QLegendMarker* marker : chart_->legend()->markers(line))
                        marker->setVisible(false);
                }
                named = true;
            }
            line->append(static_cast<double>(i), *series.values[i]);
            marks->append(static_cast<double>(i), *series.values[i]);
        }
        marks->setMarkerShape(static_cast<QScatterSeries::MarkerShape>(look.mark));
        marks->setMarkerSize(places_ > 60 ? 4.0 : 8.0);
        marks->setColor(look.pen.color());
        marks->setBorderColor(palette.color(QPalette::Base));
        attach(marks);
        for (QLegendMarker* marker : chart_->legend()->markers(marks)) marker->setVisible(false);
    }
}

void Chart::Plot::addBars(const ChartData& data, const QPalette& palette) {
    auto* bars = new QBarSeries;
    for (std::size_t n = 0; n < data.series.size(); ++n) {
        const SeriesLook look = seriesLook(n, palette);
        auto* set = new QBarSet(data.series[n].name.toHtmlEscaped());
        for (const auto& value : data.series[n].values) set->append(value.value_or(0.0));
        set->setBrush(look.bar);
        set->setPen(QPen(look.pen.color(), 1.0));
        bars->append(set);
    }
    bars->setBarWidth(0.8);
    attach(bars);
}

void Chart::Plot::addLimits(const ChartData& data, const QPalette& palette) {
    for (const ChartLimit& limit : data.limits) {
        auto* line = new QLineSeries;
        line->append(-0.5, limit.at);
        line->append(places_ - 0.5, limit.at);
        line->setPen(QPen(palette.color(QPalette::Text), 1.4, Qt::DashLine));
        line->setName(limit.name.toHtmlEscaped());
        attach(line);
    }
}

void Chart::Plot::addAxes(const ChartData& data, const QPalette& palette, const QFont& font) {
    auto* across = new QCategoryAxis;
    across->setLabelsPosition(QCategoryAxis::AxisLabelsPositionOnValue);
    across->setRange(-0.5, places_ - 0.5);
    const int step = std::max(1, (places_ + mostLabels - 1) / mostLabels);
    for (int i = 0; i < places_; i += step) across->append(data.places[i].toHtmlEscaped(), i);
    across->setTitleText(data.across.toHtmlEscaped());
    const Range range = rangeOf(data);
    auto* up = new QValueAxis;
    up->setRange(range.low, range.high);
    up->setTickCount(5);
    up->applyNiceNumbers();
    up->setLabelFormat(QStringLiteral("%g"));
    up->setTitleText((data.unit.isEmpty() ? data.up : data.up + QStringLiteral(", ") + data.unit)
                         .toHtmlEscaped());
    for (QAbstractAxis* axis :
         {static_cast<QAbstractAxis*>(across), static_cast<QAbstractAxis*>(up)}) {
        axis->setLabelsFont(font);
        axis->setTitleFont(font);
        axis->setLabelsColor(palette.color(QPalette::Text));
        axis->setTitleBrush(palette.brush(QPalette::Text));
        axis->setLinePen(QPen(coloursFor(palette).muted, 1.0));
        axis->setGridLinePen(QPen(coloursFor(palette).line, 1.0));
    }
    across->setGridLineVisible(false);
    chart_->addAxis(across, Qt::AlignBottom);
    chart_->addAxis(up, Qt::AlignLeft);
    for (QObject* each : std::as_const(series_)) {
        auto* series = static_cast<QAbstractSeries*>(each);
        series->attachAxis(across);
        series->attachAxis(up);
    }
}

void Chart::Plot::markPlace(int place, const QPalette& palette) {
    if (place < 0 || series_.isEmpty()) {
        cursor_->hide();
        return;
    }
    const QRectF area = chart_->plotArea();
    const double x = area.left() + area.width() * (place + 0.5) / places_;
    cursor_->setLine(x, area.top(), x, area.bottom());
    cursor_->setPen(QPen(palette.color(QPalette::Highlight), 2.0));
    cursor_->show();
}

int Chart::Plot::placeAt(QPointF point) const {
    if (places_ == 0) return -1;
    const QRectF area = chart_->plotArea();
    if (area.width() <= 0.0) return -1;
    const double part = (view_->mapToScene(point.toPoint()).x() - area.left()) / area.width();
    return std::clamp(static_cast<int>(std::floor(part * places_)), 0, places_ - 1);
}

}  // namespace fayline
