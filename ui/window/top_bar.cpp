#include "top_bar.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QWheelEvent>

#include "deed_button.h"
#include "theme/colours.h"
#include "theme/status.h"
#include "theme/still_box.h"
#include "words/checks.h"
#include "words/values.h"

namespace fayline {
TopBar::TopBar(Desk& desk, QAction* undo, QAction* redo, QWidget* parent)
    : QFrame(parent),
      desk_(desk),
      boat_(new QLabel),
      settled_(new QLabel),
      units_(new StillBox),
      basis_(new StillBox),
      counts_(new QPushButton) {
    boat_->setTextFormat(Qt::PlainText);
    settled_->setForegroundRole(QPalette::PlaceholderText);
    units_->addItem(tr("inches"), QStringLiteral("inches"));
    units_->addItem(tr("millimetres"), QStringLiteral("millimetres"));
    units_->setAccessibleName(tr("Units"));
    units_->setToolTip(
        tr("How lengths, masses and forces are shown, and what a bare number means"));
    basis_->addItem(tr("US leads"), QStringLiteral("us"));
    basis_->addItem(tr("Eurocode 5 leads"), QStringLiteral("ec5"));
    basis_->setAccessibleName(tr("Leading timber basis"));
    basis_->setToolTip(
        tr("Which timber basis leads on screen; the other is always worked out too"));
    counts_->setFlat(true);
    counts_->setToolTip(tr("Go to the worst"));

    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(16, 6, 16, 6);
    layout->setSpacing(12);
    layout->addWidget(boat_);
    layout->addWidget(settled_);
    layout->addSpacing(12);
    layout->addWidget(new DeedButton(undo, true), 0);
    layout->addWidget(new DeedButton(redo, false), 0);
    layout->addStretch(1);
    layout->addWidget(units_);
    layout->addWidget(basis_);
    layout->addWidget(counts_);

    connect(units_, &QComboBox::activated, this, [this] {
        emit decided(QStringLiteral("hull.units"), units_->currentData().toString());
    });
    connect(basis_, &QComboBox::activated, this, [this] {
        emit decided(QStringLiteral("hull.basis"), basis_->currentData().toString());
    });
    connect(counts_, &QPushButton::clicked, this, &TopBar::countsClicked);
    connect(&desk_, &Desk::resultsChanged, this, &TopBar::refresh);
    connect(&desk_, &Desk::projectChanged, this, &TopBar::refresh);
    connect(&desk_, &Desk::settledChanged, settled_, &QLabel::setText);
    refresh();
}

void TopBar::refresh() {
    const bool open = desk_.isOpen();
    setVisible(open);
    if (!open) return;
    QFont bold = font();
    bold.setBold(true);
    bold.setPointSizeF(font().pointSizeF() * 1.3);
    boat_->setFont(bold);
    boat_->setText(desk_.boatName());
    settled_->setText(desk_.settledMark());
    const Speech speech = speechOf(desk_.project());
    units_->setCurrentIndex(speech.units == UnitSystem::inches ? 0 : 1);
    basis_->setCurrentIndex(speech.basis == Basis::us ? 0 : 1);
    units_->setEnabled(!desk_.isReadOnly());
    basis_->setEnabled(!desk_.isReadOnly());
    inkCounts();
}

void TopBar::inkCounts() {
    const auto counts = statusCounts(*desk_.results(), speechOf(desk_.project()).basis);
    counts_->setText(countsLine(counts));
    counts_->setAccessibleName(tr("Fastenings: %1").arg(counts_->text()));
    counts_->setEnabled(!counts.empty());
    QPalette inked = palette();
    if (!counts.empty())
        inked.setColor(QPalette::ButtonText, statusInk(counts.begin()->first, palette()).ink);
    counts_->setPalette(inked);
    QFont bold = font();
    bold.setBold(!counts.empty() && counts.begin()->first != Status::ok);
    counts_->setFont(bold);
}

QString TopBar::settledText() const {
    return settled_->text();
}
QString TopBar::countsText() const {
    return counts_->text();
}

void TopBar::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) refresh();
}

void TopBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), palette().color(QPalette::Base));
    painter.setPen(coloursFor(palette()).line);
    painter.drawLine(rect().bottomLeft(), rect().bottomRight());
}

}  // namespace fayline
