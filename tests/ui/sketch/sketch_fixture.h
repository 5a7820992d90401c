#pragma once

#include <gtest/gtest.h>

#include <QStringList>

#include "sketch/sketch_view.h"

namespace fayline {

/// A shown sketch of the demo hull's profile, with what its signals said.
class SketchTest : public testing::Test {
  protected:
    SketchTest();

    void wheel(QPointF place, QPoint turn, Qt::KeyboardModifiers keys = Qt::NoModifier);
    void key(int key, Qt::KeyboardModifiers keys = Qt::NoModifier);
    /// Where a stop of the drawing lies in the viewport.
    [[nodiscard]] QPoint stopPlace(const std::string& id) const;
    [[nodiscard]] QPoint scrolled() const;

    SketchView view_;
    QStringList chosen_, activated_;
    int made_ = 0;
};

}  // namespace fayline
