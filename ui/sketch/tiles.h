#pragma once

#include <QPixmap>
#include <QPointF>
#include <QRect>
#include <QSize>
#include <map>
#include <utility>
#include <vector>

#include "paint/paint.h"

namespace fayline {

/// A drawing's picture in square pieces, each painted when it is first seen and kept. Repainting a
/// view is then copying.
class SketchTiles {
  public:
    /// Starts afresh. The drawing must live as long as this is used.
    void reset(const Drawing& drawing, const PaintStyle& style, double pixelsPerMm, double ratio);

    /// Copies what shows in a view when the drawing's corner lies at a place of it, in logical
    /// pixels.
    void paint(QPainter& painter, QPointF corner, QSize view);

    /// Paints one piece just outside the view that is not there yet; false when there is none.
    bool prepareOneAround(QPointF corner, QSize view);

    [[nodiscard]] double ratio() const { return ratio_; }

    [[nodiscard]] std::size_t kept() const { return tiles_.size(); }

  private:
    using Key = std::pair<int, int>;
    const QPixmap& tile(Key key);
    [[nodiscard]] QPixmap painted(Key key) const;
    void dropFarFrom(const QRect& keys);

    const Drawing* drawing_ = nullptr;
    std::vector<RectMm> bounds_;
    PaintStyle style_;
    double perMm_ = 1.0, ratio_ = 1.0;
    std::map<Key, QPixmap> tiles_;
};

}  // namespace fayline
