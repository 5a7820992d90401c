#pragma once

#include <QColor>
#include <QPalette>
#include <QRectF>
#include <QString>

#include "check/check.h"

class QPainter;

namespace fayline {

/// How a status looks: a shape of its own, a word, and a colour safe for colour-blind eyes. Never
/// colour alone.
struct StatusInk {
    QColor ink;   ///< marks and text on the plain grounds of the palette
    QColor fill;  ///< ground under black (light) or white (dark) text
};
StatusInk statusInk(Status status, const QPalette& palette);

/// "short", "near", "unknown", "outside", "ok", "not loaded".
QString statusWord(Status status);

/// The signs of the drawings: short a filled square with a cross, near an open triangle, unknown a
/// question mark, outside an open diamond, ok a dot, not loaded a dash.
void paintStatusMark(QPainter& painter, const QRectF& box, Status status, const QPalette& palette);

}  // namespace fayline
