#include "desk/when_seen.h"

#include <QEvent>
#include <QWidget>
#include <utility>

namespace fayline {

WhenSeen::WhenSeen(const Desk& desk, QWidget* widget, std::function<void()> follow)
    : QObject(widget), desk_(desk), widget_(widget), follow_(std::move(follow)) {
    widget->installEventFilter(this);
    connect(&desk, &Desk::resultsChanged, this, &WhenSeen::resultsChanged);
}

void WhenSeen::resultsChanged() {
    if (widget_->isVisible() || !desk_.isOpen()) {
        run();
    } else {
        stale_ = true;
    }
}

void WhenSeen::catchUp() {
    if (stale_) run();
}

bool WhenSeen::eventFilter(QObject* object, QEvent* event) {
    if (object == widget_ && event->type() == QEvent::Show) catchUp();
    return QObject::eventFilter(object, event);
}

void WhenSeen::run() {
    stale_ = false;
    ++runs_;
    follow_();
}

}  // namespace fayline
