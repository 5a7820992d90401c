#include <QApplication>
#include <QHelpEvent>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QScrollBar>
#include <QToolTip>
#include <QWheelEvent>
#include <cmath>

#include "sheet/hit.h"
#include "sketch/sketch_view.h"

namespace fayline {

namespace {

/// How near the pointer must come, in logical pixels.
constexpr double reach = 10.0;

}  // namespace

std::optional<QString> SketchView::idAt(QPoint place) const {
    const PaintMap map{pixelsPerMm(), contentOrigin()};
    const auto id = hit(drawing_, map.unmap(QPointF(place)), {reach / map.perMm});
    if (!id) return std::nullopt;
    return QString::fromStdString(*id);
}

bool SketchView::viewportEvent(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const auto id = idAt(help->pos());
        if (id) {
            QToolTip::showText(help->globalPos(), tipFor(*id), viewport());
        } else {
            QToolTip::hideText();
            event->ignore();
        }
        return true;
    }
    if (event->type() == QEvent::NativeGesture) {
        const auto* gesture = static_cast<QNativeGestureEvent*>(event);
        if (gesture->gestureType() == Qt::ZoomNativeGesture) {
            zoomAt(zoom_ * (1.0 + gesture->value()), gesture->position());
            return true;
        }
    }
    if (event->type() == QEvent::Leave) QToolTip::hideText();
    return QAbstractScrollArea::viewportEvent(event);
}

void SketchView::wheelEvent(QWheelEvent* event) {
    const QPoint turn = event->angleDelta();
    if (event->modifiers().testFlag(Qt::ControlModifier)) {
        // Some systems turn the wheel sideways while a key is held.
        const int by = turn.y() != 0 ? turn.y() : turn.x();
        if (by != 0) zoomAt(zoom_ * std::pow(1.2, by / 120.0), event->position());
        event->accept();
        return;
    }
    const QPoint pixels = event->pixelDelta();
    QPointF move = pixels.isNull() ? QPointF(turn) / 120.0 * 60.0 : QPointF(pixels);
    if (event->modifiers().testFlag(Qt::ShiftModifier) && move.x() == 0.0) move = {move.y(), 0.0};
    QScrollBar* bars[] = {horizontalScrollBar(), verticalScrollBar()};
    const int before[] = {bars[0]->value(), bars[1]->value()};
    bars[0]->setValue(before[0] - qRound(move.x()));
    bars[1]->setValue(before[1] - qRound(move.y()));
    // A wheel that moves nothing here belongs to whatever lies around.
    event->setAccepted(bars[0]->value() != before[0] || bars[1]->value() != before[1]);
}

bool SketchView::startsPan(const QMouseEvent& event) const {
    return event.button() == Qt::MiddleButton || (event.button() == Qt::LeftButton && spaceHeld_);
}

void SketchView::setPointer() {
    if (panFrom_) {
        viewport()->setCursor(Qt::ClosedHandCursor);
    } else if (spaceHeld_) {
        viewport()->setCursor(Qt::OpenHandCursor);
    } else {
        viewport()->unsetCursor();
    }
}

void SketchView::mousePressEvent(QMouseEvent* event) {
    if (startsPan(*event)) {
        panFrom_ = event->position().toPoint();
        setPointer();
        return;
    }
    if (event->button() != Qt::LeftButton) {
        QAbstractScrollArea::mousePressEvent(event);
        return;
    }
    if (const auto id = idAt(event->position().toPoint())) choose(*id);
}

void SketchView::mouseMoveEvent(QMouseEvent* event) {
    const QPoint now = event->position().toPoint();
    if (!panFrom_) {
        QAbstractScrollArea::mouseMoveEvent(event);
        return;
    }
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() - (now - *panFrom_).x());
    verticalScrollBar()->setValue(verticalScrollBar()->value() - (now - *panFrom_).y());
    panFrom_ = now;
}

void SketchView::mouseReleaseEvent(QMouseEvent* event) {
    if (panFrom_ && (event->button() == Qt::MiddleButton || event->button() == Qt::LeftButton)) {
        panFrom_.reset();
        setPointer();
        return;
    }
    QAbstractScrollArea::mouseReleaseEvent(event);
}

void SketchView::mouseDoubleClickEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || spaceHeld_) return;
    if (const auto id = idAt(event->position().toPoint())) emit activated(*id);
}

}  // namespace fayline
