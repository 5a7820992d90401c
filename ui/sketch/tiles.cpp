#include "tiles.h"

#include <QPainter>
#include <cmath>

namespace fayline {

namespace {

/// Logical pixels. A multiple of four, so that it is a whole number of device pixels at 1.25, 1.5
/// and 1.75.
constexpr int side = 256;
constexpr std::size_t most = 120;

/// The pieces, by column and row, that a view shows.
QRect keysOf(QPointF corner, QSize view) {
    const auto down = [](double v) { return static_cast<int>(std::floor(v / side)); };
    return {QPoint(down(-corner.x()), down(-corner.y())),
            QPoint(down(view.width() - 1 - corner.x()), down(view.height() - 1 - corner.y()))};
}

}  // namespace

void SketchTiles::reset(const Drawing& drawing, const PaintStyle& style, double pixelsPerMm,
                        double ratio) {
    drawing_ = &drawing;
    style_ = style;
    perMm_ = pixelsPerMm;
    ratio_ = ratio;
    tiles_.clear();
    bounds_.clear();
    bounds_.reserve(drawing.items.size());
    for (const DrawItem& item : drawing.items) bounds_.push_back(boundsOf(item));
}

QPixmap SketchTiles::painted(Key key) const {
    QPixmap pixmap(QSize(static_cast<int>(std::lround(side * ratio_)),
                         static_cast<int>(std::lround(side * ratio_))));
    pixmap.setDevicePixelRatio(ratio_);
    pixmap.fill(style_.paper);
    // Some pixels more all round: pens have a least width, text a slack.
    const double slack_mm = 6.0 / perMm_;
    const RectMm covered{
        key.first * side / perMm_ - slack_mm, key.second * side / perMm_ - slack_mm,
        (key.first + 1) * side / perMm_ + slack_mm, (key.second + 1) * side / perMm_ + slack_mm};
    std::vector<const DrawItem*> seen;
    for (std::size_t i = 0; i < bounds_.size(); ++i) {
        if (bounds_[i].overlaps(covered)) seen.push_back(&drawing_->items[i]);
    }
    QPainter painter(&pixmap);
    painter.translate(-key.first * side, -key.second * side);
    paintItems(painter, seen, PaintMap{perMm_, {}}, style_);
    return pixmap;
}

const QPixmap& SketchTiles::tile(Key key) {
    const auto found = tiles_.find(key);
    if (found != tiles_.end()) return found->second;
    return tiles_.emplace(key, painted(key)).first->second;
}

void SketchTiles::dropFarFrom(const QRect& keys) {
    if (tiles_.size() <= most) return;
    const QRect near = keys.adjusted(-1, -1, 1, 1);
    std::erase_if(tiles_, [&](const auto& tile) {
        return !near.contains(tile.first.first, tile.first.second);
    });
}

void SketchTiles::paint(QPainter& painter, QPointF corner, QSize view) {
    if (!drawing_ || view.isEmpty()) return;
    const QRect keys = keysOf(corner, view);
    for (int row = keys.top(); row <= keys.bottom(); ++row) {
        for (int column = keys.left(); column <= keys.right(); ++column) {
            painter.drawPixmap(corner + QPointF(column * side, row * side), tile({column, row}));
        }
    }
    dropFarFrom(keys);
}

bool SketchTiles::prepareOneAround(QPointF corner, QSize view) {
    if (!drawing_ || view.isEmpty()) return false;
    const QRect all =
        keysOf({}, QSize(static_cast<int>(std::ceil(drawing_->size.width * perMm_)),
                         static_cast<int>(std::ceil(drawing_->size.height * perMm_))));
    const QRect keys = keysOf(corner, view).adjusted(-1, -1, 1, 1).intersected(all);
    for (int row = keys.top(); row <= keys.bottom(); ++row) {
        for (int column = keys.left(); column <= keys.right(); ++column) {
            if (tiles_.contains({column, row})) continue;
            tile({column, row});
            return true;
        }
    }
    return false;
}

}  // namespace fayline
