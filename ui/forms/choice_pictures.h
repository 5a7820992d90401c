#pragma once

#include <QPalette>
#include <QRectF>
#include <string>

#include "project/fields.h"

class QPainter;

namespace fayline {

/// Whether what a field offers can be shown as small pictures.
bool hasPictures(const Field& field);

/// One choice as a small picture of our own: timbers cut where they meet. `name` is the last part
/// of the field's pattern, `choice` the word of the decision.
void paintChoice(QPainter& painter, const QRectF& box, const std::string& name,
                 const std::string& choice, const QPalette& palette);

/// The last part of a field's pattern: "heel_detail".
std::string lastName(const Field& field);

}  // namespace fayline
