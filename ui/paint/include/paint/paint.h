#pragma once

#include <QPointF>
#include <vector>

#include "paint/style.h"
#include "sheet/drawing.h"

class QPainter;

namespace fayline {

/// Where a drawing's top left corner comes to lie in the painter's units, and how many of them make
/// a millimetre (on a page: its resolution ÷ 25.4).
struct PaintMap {
    double perMm = 96.0 / 25.4;
    QPointF origin;

    [[nodiscard]] QPointF map(PointMm p) const {
        return {origin.x() + p.x * perMm, origin.y() + p.y * perMm};
    }
    [[nodiscard]] PointMm unmap(QPointF p) const {
        return {(p.x() - origin.x()) / perMm, (p.y() - origin.y()) / perMm};
    }
};

/// Paints a drawing; the same for screen, picture, PDF and printer. The ground is not painted. The
/// painter comes back as it was. It must not be turned; moved it may be, on a screen by whole
/// device pixels only.
void paintDrawing(QPainter& painter, const Drawing& drawing, const PaintMap& map,
                  const PaintStyle& style);

/// The same for items that do not make a drawing, as a selection's.
void paintItems(QPainter& painter, const std::vector<DrawItem>& items, const PaintMap& map,
                const PaintStyle& style);

/// The same for some items of a list only.
void paintItems(QPainter& painter, const std::vector<const DrawItem*>& items, const PaintMap& map,
                const PaintStyle& style);

}  // namespace fayline
