#include "sketch_fixture.h"

#include <QApplication>
#include <QScrollBar>
#include <QTest>
#include <QWheelEvent>

#include "example.h"

namespace fayline {

SketchTest::SketchTest() {
    view_.resize(1000, 260);
    view_.setMaker([this](const SketchRoom& room) {
        ++made_;
        return profileDrawing(example::profile(),
                              {room.size, room.letterMm, UnitSystem::inches, {}});
    });
    QObject::connect(&view_, &SketchView::selected, &view_,
                     [this](const QString& id) { chosen_ << id; });
    QObject::connect(&view_, &SketchView::activated, &view_,
                     [this](const QString& id) { activated_ << id; });
    view_.show();
    view_.activateWindow();
    view_.setFocus();
    QCoreApplication::processEvents();
}

void SketchTest::wheel(QPointF place, QPoint turn, Qt::KeyboardModifiers keys) {
    QWheelEvent event(place, view_.viewport()->mapToGlobal(place), {}, turn, Qt::NoButton, keys,
                      Qt::NoScrollPhase, false);
    QApplication::sendEvent(view_.viewport(), &event);
}

void SketchTest::key(int key, Qt::KeyboardModifiers keys) {
    QTest::keyClick(&view_, static_cast<Qt::Key>(key), keys);
}

QPoint SketchTest::stopPlace(const std::string& id) const {
    for (const auto& row : view_.drawing().rows) {
        for (const DrawStop& stop : row) {
            if (stop.id == id) return view_.placeOf(stop.at).toPoint();
        }
    }
    return {-1, -1};
}

QPoint SketchTest::scrolled() const {
    return {view_.horizontalScrollBar()->value(), view_.verticalScrollBar()->value()};
}

}  // namespace fayline
