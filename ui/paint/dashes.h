#pragma once

#include <QLineF>
#include <QList>
#include <QPolygonF>

#include "paint/paint.h"

namespace fayline {

/// The dashes of a line as lines of their own. Qt begins its dashes where a line enters the
/// picture, so that they would not meet across the pieces of one.
QList<QLineF> dashesAlong(const QPolygonF& line, LineStyle style, double perMm);

}  // namespace fayline
