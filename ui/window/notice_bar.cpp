#include "notice_bar.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

#include "theme/colours.h"

namespace fayline {

NoticeBar::NoticeBar(QWidget* parent)
    : QFrame(parent),
      text_(new QLabel),
      list_(new QPlainTextEdit),
      more_(new QToolButton),
      close_(new QToolButton),
      deeds_(new QHBoxLayout) {
    text_->setWordWrap(true);
    text_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    text_->setTextFormat(Qt::PlainText);
    list_->setReadOnly(true);
    list_->setAccessibleName(tr("Details"));
    list_->setMaximumHeight(7 * fontMetrics().lineSpacing());
    list_->hide();
    more_->setText(tr("Details"));
    more_->setCheckable(true);
    close_->setText(QStringLiteral("×"));
    close_->setToolTip(tr("Put this notice away (Esc)"));
    close_->setAccessibleName(tr("Put this notice away"));
    auto* line = new QHBoxLayout;
    line->addWidget(text_, 1);
    line->addLayout(deeds_);
    line->addWidget(more_);
    line->addWidget(close_);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 8, 12, 8);
    layout->addLayout(line);
    layout->addWidget(list_);
    connect(more_, &QToolButton::toggled, list_, &QWidget::setVisible);
    connect(close_, &QToolButton::clicked, this, &NoticeBar::clear);
    hide();
}

void NoticeBar::showNotice(const QString& says, const QStringList& details,
                           const std::vector<Deed>& deeds, bool closable) {
    clear();
    text_->setText(says);
    details_ = details;
    list_->setPlainText(details.join(QLatin1Char('\n')));
    more_->setVisible(details.size() > 1);
    more_->setChecked(details.size() == 1);
    list_->setVisible(details.size() == 1);
    close_->setVisible(closable);
    for (const auto& [words, deed] : deeds) {
        auto* button = new QPushButton(words);
        connect(button, &QPushButton::clicked, this, [run = deed] { run(); });
        deeds_->addWidget(button);
    }
    setAccessibleName(says);
    show();
}

void NoticeBar::showRefusal(const QString& says, const QStringList& details) {
    showNotice(says, details);
    refusal_ = true;
}

void NoticeBar::clearRefusal() {
    if (refusal_) clear();
}

void NoticeBar::clear() {
    refusal_ = false;
    while (QLayoutItem* item = deeds_->takeAt(0)) {
        if (item->widget() != nullptr) {
            item->widget()->hide();
            item->widget()->deleteLater();
        }
        delete item;
    }
    text_->clear();
    details_.clear();
    hide();
}

QString NoticeBar::says() const {
    return isHidden() ? QString() : text_->text();
}

void NoticeBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Colours colours = coloursFor(palette());
    painter.fillRect(rect(), colours.notice);
    painter.fillRect(QRect(0, 0, 4, height()), colours.noticeEdge);
}

void NoticeBar::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && !close_->isHidden()) {
        clear();
        return;
    }
    QFrame::keyPressEvent(event);
}

}  // namespace fayline
