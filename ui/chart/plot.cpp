#include "plot.h"

#include <QBarSeries>
#include <QBarSet>
#include <QCategoryAxis>
#include <QChart>
#include <QChartView>
#include <QGraphicsLayout>
#include <QGraphicsLineItem>
#include <QLegend>
#include <QLineSeries>
#include <QScatterSeries>
#include <QValueAxis>
#include <algorithm>
#include <cmath>
#include <tuple>

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
    if (data.top) range.high = std::min(range.high, *data.top);
    if (range.low == range.high) range.high = range.low + 1.0;
    return range;
}

/// The points of one series: a list for every stretch without a gap, then all of them.
QList<QList<QPointF>> stretchesOf(const ChartSeries& series) {
    QList<QList<QPointF>> stretches;
    QList<QPointF> all;
    bool open = false;
    for (std::size_t i = 0; i < series.values.size(); ++i) {
        if (!series.values[i]) {
            open = false;
            continue;
        }
        if (!open) stretches.append(QList<QPointF>());
        open = true;
        const QPointF point(static_cast<double>(i), *series.values[i]);
        stretches.back().append(point);
        all.append(point);
    }
    stretches.append(all);
    return stretches;
}

bool sameGaps(const ChartSeries& a, const ChartSeries& b) {
    return a.name == b.name &&
           std::equal(a.values.begin(), a.values.end(), b.values.begin(), b.values.end(),
                      [](const auto& x, const auto& y) { return x.has_value() == y.has_value(); });
}

}  // namespace

Chart::Plot::Plot() : view_(new QChartView) {
    view_->setFrameShape(QFrame::NoFrame);
    view_->setRenderHint(QPainter::Antialiasing);
    view_->setBackgroundBrush(Qt::NoBrush);
    view_->viewport()->setAutoFillBackground(false);
    view_->setFocusPolicy(Qt::NoFocus);
    view_->setMouseTracking(true);
    view_->viewport()->setMouseTracking(true);
    begin();
}

/// A fresh chart: one that is filled again keeps parts of its old axes in sight.
void Chart::Plot::begin() {
    QChart* before = chart_;
    chart_ = new QChart;
    chart_->setBackgroundVisible(false);
    chart_->setPlotAreaBackgroundVisible(true);
    chart_->setMargins({4, 2, 8, 2});
    chart_->layout()->setContentsMargins(0, 0, 0, 0);
    chart_->legend()->hide();
    cursor_ = new QGraphicsLineItem(chart_);
    cursor_->setZValue(50);
    cursor_->hide();
    view_->setChart(chart_);
    delete before;
    QObject::connect(chart_, &QChart::plotAreaChanged, chart_, [this] { placeCursor(); });
    series_.clear();
}

QWidget* Chart::Plot::widget() const {
    return view_;
}

void Chart::Plot::show(const ChartData& data, const QPalette& palette, const QFont& font) {
    begin();
    places_ = static_cast<int>(data.places.size());
    chart_->setPlotAreaBackgroundBrush(palette.brush(QPalette::Base));
    chart_->setPlotAreaBackgroundPen(QPen(coloursFor(palette).line, 1.0));
    if (data.kind == ChartData::Kind::bars) {
        addBars(data, palette);
    } else {
        addLines(data, palette);
    }
    addLimits(data, palette);
    addAxes(data, palette, font);
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
        QList<QList<QPointF>> stretches = stretchesOf(series);
        auto* marks = new QScatterSeries;
        marks->replace(stretches.takeLast());
        for (const QList<QPointF>& stretch : std::as_const(stretches)) {
            auto* line = new QLineSeries;
            line->setPen(look.pen);
            line->replace(stretch);
            attach(line);
        }
        marks->setMarkerShape(static_cast<QScatterSeries::MarkerShape>(look.mark));
        marks->setMarkerSize(places_ > 60 ? 4.0 : 8.0);
        marks->setColor(look.pen.color());
        marks->setBorderColor(palette.color(QPalette::Base));
        attach(marks);
    }
}

bool Chart::Plot::canMove(const ChartData& before, const ChartData& after) const {
    const auto frameOf = [](const ChartData& d) {
        return std::tie(d.title, d.across, d.up, d.unit, d.kind, d.figures, d.places, d.limits,
                        d.top);
    };
    const Range old = rangeOf(before);
    const Range now = rangeOf(after);
    return !series_.isEmpty() && after.kind == ChartData::Kind::lines &&
           frameOf(before) == frameOf(after) && old.low == now.low && old.high == now.high &&
           std::equal(before.series.begin(), before.series.end(), after.series.begin(),
                      after.series.end(), sameGaps);
}

void Chart::Plot::move(const ChartData& data) {
    qsizetype at = 0;
    for (const ChartSeries& series : data.series) {
        const QList<QList<QPointF>> stretches = stretchesOf(series);
        for (const QList<QPointF>& points : stretches) {
            auto* shown = static_cast<QXYSeries*>(series_[at++]);
            if (shown->points() != points) shown->replace(points);
        }
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
    up->setTitleText((data.unit.isEmpty() ? data.up : data.unit).toHtmlEscaped());
    for (QAbstractAxis* axis :
         {static_cast<QAbstractAxis*>(across), static_cast<QAbstractAxis*>(up)}) {
        axis->setLabelsFont(font);
        axis->setTitleFont(font);
        axis->setLabelsColor(palette.color(QPalette::Text));
        axis->setTitleBrush(palette.brush(QPalette::Text));
        axis->setLinePen(QPen(coloursFor(palette).muted, 1.0));
        axis->setGridLinePen(QPen(coloursFor(palette).line, 1.0));
    }
    across->setTruncateLabels(false);
    up->setTruncateLabels(false);
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
    place_ = place;
    cursor_->setPen(QPen(palette.color(QPalette::Highlight), 2.0));
    placeCursor();
}

void Chart::Plot::placeCursor() {
    cursor_->setVisible(place_ >= 0 && !series_.isEmpty());
    if (!cursor_->isVisible()) return;
    const QRectF area = chart_->plotArea();
    const double x = area.left() + area.width() * (place_ + 0.5) / places_;
    cursor_->setLine(x, area.top(), x, area.bottom());
}

int Chart::Plot::placeAt(QPointF point) const {
    if (places_ == 0) return -1;
    const QRectF area = chart_->plotArea();
    if (area.width() <= 0.0) return -1;
    const double part = (view_->mapToScene(point.toPoint()).x() - area.left()) / area.width();
    return std::clamp(static_cast<int>(std::floor(part * places_)), 0, places_ - 1);
}

}  // namespace fayline
