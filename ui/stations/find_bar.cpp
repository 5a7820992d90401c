#include "find_bar.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace fayline {

FindBar::FindBar(QWidget* parent) : QWidget(parent), entry_(new QLineEdit), says_(new QLabel) {
    auto* label = new QLabel(tr("Find:"));
    label->setBuddy(entry_);
    entry_->setPlaceholderText(tr("frame, size, wood …"));
    entry_->setAccessibleName(tr("Find in the grid"));
    auto* next = new QPushButton(tr("Next"));
    auto* previous = new QPushButton(tr("Previous"));
    next->setToolTip(tr("Next (F3)"));
    previous->setToolTip(tr("Previous (Shift+F3)"));
    says_->setForegroundRole(QPalette::PlaceholderText);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(label);
    layout->addWidget(entry_, 1);
    layout->addWidget(next);
    layout->addWidget(previous);
    layout->addWidget(says_);
    connect(next, &QPushButton::clicked, this, [this] { emit searched(true); });
    connect(previous, &QPushButton::clicked, this, [this] { emit searched(false); });
    hide();
}

void FindBar::open() {
    show();
    entry_->setFocus();
    entry_->selectAll();
}

QString FindBar::wanted() const {
    return entry_->text().trimmed();
}
void FindBar::say(const QString& says) {
    says_->setText(says);
}

void FindBar::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Escape:
            hide();
            emit closed();
            return;
        case Qt::Key_Enter:
        case Qt::Key_Return:
            emit searched(!event->modifiers().testFlag(Qt::ShiftModifier));
            return;
        default:
            QWidget::keyPressEvent(event);
    }
}

}  // namespace fayline
