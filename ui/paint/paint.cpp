#include "paint/paint.h"

#include <QPainter>

#include "painter.h"

namespace fayline {

void paintItems(QPainter& painter, const std::vector<const DrawItem*>& items, const PaintMap& map,
                const PaintStyle& style) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setRenderHint(QPainter::TextAntialiasing);
    ItemPainter one(painter, map, style);
    for (const DrawItem* item : items) one.paint(*item);
    painter.restore();
}

void paintItems(QPainter& painter, const std::vector<DrawItem>& items, const PaintMap& map,
                const PaintStyle& style) {
    std::vector<const DrawItem*> all;
    all.reserve(items.size());
    for (const DrawItem& item : items) all.push_back(&item);
    paintItems(painter, all, map, style);
}

void paintDrawing(QPainter& painter, const Drawing& drawing, const PaintMap& map,
                  const PaintStyle& style) {
    paintItems(painter, drawing.items, map, style);
}

}  // namespace fayline
