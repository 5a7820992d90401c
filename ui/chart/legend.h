#pragma once

#include <QWidget>

#include "chart/chart.h"

namespace fayline {

/// What each series of a chart looks like, beside its name, over as many lines as it needs.
class ChartLegend : public QWidget {
    Q_OBJECT

  public:
    explicit ChartLegend(QWidget* parent = nullptr);

    void describe(const ChartData& chart);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    int lay(QPainter* painter, int width) const;

    ChartData data_;
};

}  // namespace fayline
