#include "theme/card.h"

#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

#include "theme/colours.h"

namespace fayline {

Card::Card(const QString& title, QWidget* parent)
    : QFrame(parent), title_(new QLabel(this)), contents_(new QVBoxLayout) {
    title_->setForegroundRole(QPalette::PlaceholderText);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 8, 12, 10);
    layout->setSpacing(6);
    layout->addWidget(title_);
    layout->addLayout(contents_, 1);
    setTitle(title);
}

void Card::setTitle(const QString& title) {
    title_->setText(title);
    title_->setVisible(!title.isEmpty());
    setAccessibleName(title);
}

void Card::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(palette().color(QPalette::Base));
    painter.setPen(coloursFor(palette()).line);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 5, 5);
}

}  // namespace fayline
