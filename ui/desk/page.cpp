#include "desk/page.h"

#include <QFocusEvent>

namespace fayline {

void Page::focusInEvent(QFocusEvent* event) {
    if (first_ != nullptr) {
        first_->setFocus(event->reason());
    } else {
        QWidget::focusInEvent(event);
    }
}

}  // namespace fayline
