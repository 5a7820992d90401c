#include <QKeyEvent>
#include <QScrollBar>
#include <algorithm>
#include <cmath>

#include "sketch/sketch_view.h"

namespace fayline {

namespace {

bool isZoomKey(const QKeyEvent& event) {
    if (!event.modifiers().testFlag(Qt::ControlModifier)) return false;
    const int key = event.key();
    return key == Qt::Key_Plus || key == Qt::Key_Equal || key == Qt::Key_Minus || key == Qt::Key_0;
}

struct Place {
    std::size_t row = 0, stop = 0;
};

std::optional<Place> placeIn(const Drawing& drawing, const std::string& id) {
    for (std::size_t row = 0; row < drawing.rows.size(); ++row) {
        for (std::size_t stop = 0; stop < drawing.rows[row].size(); ++stop) {
            if (drawing.rows[row][stop].id == id) return Place{row, stop};
        }
    }
    return std::nullopt;
}

std::size_t nearest(const std::vector<DrawStop>& row, double x_mm) {
    const auto best =
        std::min_element(row.begin(), row.end(), [&](const DrawStop& a, const DrawStop& b) {
            return std::abs(a.at.x - x_mm) < std::abs(b.at.x - x_mm);
        });
    return static_cast<std::size_t>(best - row.begin());
}

}  // namespace

bool SketchView::step(int key) {
    const auto& rows = drawing_.rows;
    if (rows.empty() ||
        std::any_of(rows.begin(), rows.end(), [](const auto& row) { return row.empty(); })) {
        return false;
    }
    const std::optional<Place> here = placeIn(drawing_, selected_.toStdString());
    Place to = here.value_or(Place{});
    const std::size_t last = rows[to.row].size() - 1;
    switch (key) {
        case Qt::Key_Left:
            to.stop = here && to.stop > 0 ? to.stop - 1 : to.stop;
            break;
        case Qt::Key_Right:
            to.stop = here ? std::min(to.stop + 1, last) : to.stop;
            break;
        case Qt::Key_Home:
            to.stop = 0;
            break;
        case Qt::Key_End:
            to.stop = last;
            break;
        case Qt::Key_Up:
        case Qt::Key_Down: {
            if (rows.size() < 2) return false;
            const std::size_t by = key == Qt::Key_Down ? 1 : rows.size() - 1;
            const double x_mm = rows[to.row][to.stop].at.x;
            to.row = here ? (to.row + by) % rows.size() : to.row;
            to.stop = nearest(rows[to.row], x_mm);
            break;
        }
        default:
            return false;
    }
    const QString id = QString::fromStdString(rows[to.row][to.stop].id);
    if (id == selected_) {
        reveal(id);
    } else {
        choose(id);
    }
    return true;
}

bool SketchView::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride) {
        // While the sketch has the focus, its zoom keys come before the window's.
        if (isZoomKey(*static_cast<QKeyEvent*>(event))) {
            event->accept();
            return true;
        }
    }
    return QAbstractScrollArea::event(event);
}

void SketchView::keyPressEvent(QKeyEvent* event) {
    if (isZoomKey(*event)) {
        if (event->key() == Qt::Key_0) {
            zoomToFit();
        } else if (event->key() == Qt::Key_Minus) {
            zoomOut();
        } else {
            zoomIn();
        }
        return;
    }
    if (event->modifiers() != Qt::NoModifier && event->modifiers() != Qt::KeypadModifier) {
        QAbstractScrollArea::keyPressEvent(event);
        return;
    }
    switch (event->key()) {
        case Qt::Key_Space:
            if (!event->isAutoRepeat()) spaceHeld_ = true;
            setPointer();
            return;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (!selected_.isEmpty()) {
                emit activated(selected_);
                return;
            }
            break;
        default:
            if (step(event->key())) return;
    }
    QAbstractScrollArea::keyPressEvent(event);
}

void SketchView::keyReleaseEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
        spaceHeld_ = false;
        setPointer();
        return;
    }
    QAbstractScrollArea::keyReleaseEvent(event);
}

void SketchView::focusInEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusInEvent(event);
    viewport()->update();
}

void SketchView::focusOutEvent(QFocusEvent* event) {
    spaceHeld_ = false;
    panFrom_.reset();
    setPointer();
    QAbstractScrollArea::focusOutEvent(event);
    viewport()->update();
}

}  // namespace fayline
