#include "working/working_panel.h"

#include <QApplication>
#include <QClipboard>
#include <QEvent>
#include <QFocusEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollBar>
#include <QTextBrowser>
#include <QTextDocument>
#include <QUrl>
#include <QVBoxLayout>
#include <algorithm>

namespace fayline {
namespace {

bool sameQuestion(const Check& a, const Check& b) {
    return a.id == b.id && a.loadCase == b.loadCase && a.basis == b.basis &&
           a.limitState == b.limitState && a.moisture == b.moisture;
}

}  // namespace

WorkingPanel::WorkingPanel(QWidget* parent)
    : QWidget(parent),
      back_(new QPushButton(tr("‹ &Back"))),
      title_(new QLabel),
      text_(new QTextBrowser),
      copy_(new QPushButton(tr("&Copy as text"))) {
    back_->setToolTip(tr("Back to what holds here (Esc)"));
    title_->setWordWrap(true);
    QFont bold = title_->font();
    bold.setBold(true);
    title_->setFont(bold);
    text_->setOpenLinks(false);
    text_->setFrameShape(QFrame::NoFrame);
    text_->setAccessibleName(tr("Working"));
    text_->viewport()->setAutoFillBackground(false);

    auto* head = new QHBoxLayout;
    head->addWidget(back_);
    head->addWidget(title_, 1);
    head->addWidget(copy_);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(head);
    layout->addWidget(text_, 1);

    connect(back_, &QPushButton::clicked, this, &WorkingPanel::left);
    connect(copy_, &QPushButton::clicked, this,
            [this] { QApplication::clipboard()->setText(plainText()); });
    connect(text_, &QTextBrowser::anchorClicked, this, [this](const QUrl& link) {
        bool number = false;
        const auto which = static_cast<std::size_t>(link.path().toUInt(&number));
        if (!number || !working_ || which >= working_->others.size()) return;
        showCheck(results_, *working_->others[which], speech_);
    });
}

void WorkingPanel::showCheck(std::shared_ptr<const Results> results, const Check& check,
                             const Speech& speech) {
    const bool same = working_ && sameQuestion(working_->check, check);
    working_ = workingOf(*results, check);
    results_ = std::move(results);
    speech_ = speech;
    render(!same);
}

void WorkingPanel::follow(std::shared_ptr<const Results> results, const Speech& speech) {
    if (!working_) return;
    const auto found =
        std::find_if(results->worstFirst.begin(), results->worstFirst.end(),
                     [&](const Check* check) { return sameQuestion(*check, working_->check); });
    if (found == results->worstFirst.end()) {
        working_.reset();
        results_.reset();
        emit left();
        return;
    }
    working_ = workingOf(*results, **found);
    results_ = std::move(results);
    speech_ = speech;
    render(false);
}

void WorkingPanel::setBackVisible(bool visible) {
    back_->setVisible(visible);
}

QString WorkingPanel::plainText() const {
    return working_ ? workingText(*working_, speech_) : QString();
}

void WorkingPanel::render(bool toTop) {
    if (!working_) return;
    title_->setText(workingTitle(working_->check));
    const QString html = workingHtml(*working_, speech_, palette());
    if (html != html_ || font() != font_) {
        html_ = html;
        font_ = font();
        const int at = text_->verticalScrollBar()->value();
        // A new document, laid out once for the width there is: filling the old one again lays it
        // out empty, without a scroll bar and with one.
        auto* document = new QTextDocument(text_);
        document->setDefaultFont(text_->font());
        document->setTextWidth(text_->viewport()->width());
        document->setHtml(html);
        QTextDocument* before = text_->document();
        const bool ours = before->parent() == text_;  // the first is the text control's own
        text_->setDocument(document);
        if (ours) delete before;
        text_->verticalScrollBar()->setValue(toTop ? 0 : at);
    } else if (toTop) {
        text_->verticalScrollBar()->setValue(0);
    }
}

void WorkingPanel::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) render(false);
    if (event->type() == QEvent::FontChange) {
        QFont bold = font();
        bold.setBold(true);
        title_->setFont(bold);
        render(false);
    }
}

void WorkingPanel::focusInEvent(QFocusEvent* event) {
    text_->setFocus(event->reason());
}

void WorkingPanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        emit left();
        return;
    }
    QWidget::keyPressEvent(event);
}

}  // namespace fayline
