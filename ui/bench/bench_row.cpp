#include "bench_row.h"

#include <QEvent>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>

#include "theme/refusal.h"
#include "theme/typed_box.h"
#include "words/values.h"

namespace fayline {

BenchRow::BenchRow(const BenchField& field, std::string path, const Catalogue& catalogue,
                   QWidget* parent)
    : QWidget(parent),
      field_(field),
      path_(std::move(path)),
      catalogue_(catalogue),
      label_(new QLabel(field.label)),
      unit_(new QLabel),
      below_(new QLabel) {
    QWidget* widget = nullptr;
    if (isChosen(field_.kind)) {
        box_ = new TypedBox(8);
        box_->addItem(QString());
        for (const Choice& choice : choicesFor(field_, catalogue_)) box_->addItem(choice.name);
        entry_ = box_->lineEdit();
        widget = box_;
        connect(box_, &QComboBox::activated, this, &BenchRow::settle);
    } else {
        entry_ = new QLineEdit;
        entry_->setTextMargins(4, 0, 2, 0);
        widget = entry_;
    }
    label_->setBuddy(widget);
    label_->setWordWrap(true);
    for (QWidget* each : {static_cast<QWidget*>(label_), widget}) each->setToolTip(field_.help);
    widget->setAccessibleName(field_.label);
    entry_->setAccessibleName(field_.label);
    unit_->setForegroundRole(QPalette::PlaceholderText);
    unit_->setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("kg/m3")));
    below_->setWordWrap(true);
    below_->hide();
    auto* layout = new QGridLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setVerticalSpacing(2);
    layout->addWidget(label_, 0, 0);
    layout->addWidget(widget, 0, 1);
    layout->addWidget(unit_, 0, 2);
    layout->addWidget(below_, 1, 0, 1, 3);
    layout->setColumnStretch(0, 4);
    layout->setColumnStretch(1, 6);
    connect(entry_, &QLineEdit::textEdited, this, [this] {
        object({});
        emit typed(text());
    });
    connect(entry_, &QLineEdit::editingFinished, this, &BenchRow::settle);
    entry_->installEventFilter(this);
}

/// A field in focus calls its entry finished while it goes, when this is no longer a row.
BenchRow::~BenchRow() {
    entry_->removeEventFilter(this);
    entry_->disconnect(this);
    if (box_ != nullptr) box_->disconnect(this);
}

QString BenchRow::objection() const {
    return below_->isHidden() ? QString() : below_->text();
}

std::string BenchRow::text() const {
    return fileText(field_, entry_->text(), units_, catalogue_);
}

bool BenchRow::isTouched() const {
    return entry_->text() != shown_;
}

void BenchRow::follow(const std::string& standing, UnitSystem units, const QString& rule) {
    units_ = units;
    entry_->setPlaceholderText(rule);
    const QString unit = unitOf(field_, units);
    const QString typedNow = shownText(field_, standing, catalogue_);
    unit_->setText(standing.empty() || field_.kind == BenchKind::degrees ? unit : QString());
    const bool kept = isTouched() && (entry_->hasFocus() || !objection().isEmpty());
    shown_ = typedNow;
    if (kept) return;
    if (entry_->text() != shown_) entry_->setText(shown_);
    if (!entry_->hasFocus()) entry_->setCursorPosition(0);
}

void BenchRow::revert() {
    entry_->setText(shown_);
    object({});
}

void BenchRow::settle() {
    if (isTouched()) emit finished(text());
}

void BenchRow::object(const QString& says) {
    if (says == objection()) return;
    QWidget& field = box_ != nullptr ? static_cast<QWidget&>(*box_) : *entry_;
    showRefusal({*below_, field, *entry_}, *this, says);
}

bool BenchRow::eventFilter(QObject* object, QEvent* event) {
    if (object == entry_ && event->type() == QEvent::ShortcutOverride) {
        // Undo and redo are the panel's, of whole values.
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) {
            event->ignore();
            return true;
        }
    }
    if (object == entry_ && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Escape && (isTouched() || !objection().isEmpty())) {
            this->object({});
            emit abandoned();
            return true;
        }
        // Not the entry's own undo, letter by letter, where the window has none to do.
        if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) {
            event->ignore();
            return true;
        }
    }
    return QWidget::eventFilter(object, event);
}

}  // namespace fayline
