#pragma once

#include <QComboBox>
#include <QWheelEvent>

namespace fayline {

/// A list to choose from that the wheel never turns.
class StillBox : public QComboBox {
  public:
    using QComboBox::QComboBox;

  protected:
    void wheelEvent(QWheelEvent* event) override { event->ignore(); }
};

}  // namespace fayline
