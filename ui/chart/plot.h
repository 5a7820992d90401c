#pragma once

#include <QBrush>
#include <QPalette>
#include <QPen>

#include "chart/chart.h"

class QChart;
class QChartView;
class QGraphicsLineItem;

namespace fayline {

/// How the nth series looks: safe for colour-blind eyes, and told apart without colour by dash,
/// mark and hatch.
struct SeriesLook {
    QPen pen;
    QBrush bar;
    int mark = 0;  ///< a QScatterSeries::MarkerShape
};
SeriesLook seriesLook(std::size_t number, const QPalette& palette);

/// The part of a chart that the charts library paints.
class Chart::Plot {
  public:
    Plot();

    [[nodiscard]] QWidget* widget() const;
    void show(const ChartData& data, const QPalette& palette, const QFont& font);
    /// Whether other figures would stand between the same axes, gaps at the same places.
    [[nodiscard]] bool canMove(const ChartData& before, const ChartData& after) const;
    /// Moves what is shown to other figures; a small part of the work of showing them.
    void move(const ChartData& data);
    /// Puts the cursor's line at a place; -1 hides it.
    void markPlace(int place, const QPalette& palette);
    /// The place nearest a point of the widget; -1 without data.
    [[nodiscard]] int placeAt(QPointF point) const;

  private:
    void begin();
    void addLines(const ChartData& data, const QPalette& palette);
    void addBars(const ChartData& data, const QPalette& palette);
    void addLimits(const ChartData& data, const QPalette& palette);
    void addAxes(const ChartData& data, const QPalette& palette, const QFont& font);
    void attach(QObject* series);
    void placeCursor();

    QChart* chart_ = nullptr;
    QChartView* view_;
    QGraphicsLineItem* cursor_ = nullptr;
    int places_ = 0;
    int place_ = -1;
    QList<QObject*> series_;
};

}  // namespace fayline
