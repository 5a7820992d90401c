#include "forms/field_row.h"

#include <QEvent>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QToolTip>
#include <QVBoxLayout>

#include "choice_box.h"
#include "choice_pictures.h"
#include "picture_choice.h"
#include "theme/refusal.h"
#include "words/materials.h"
#include "words/rule_texts.h"
#include "words/values.h"

namespace fayline {
namespace {

bool isChosen(const Field& field) {
    return field.kind == ValueKind::choice || field.kind == ValueKind::woodName ||
           field.kind == ValueKind::metalName;
}

}  // namespace

FieldRow::FieldRow(Desk& desk, std::string what, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      what_(std::move(what)),
      field_(findDecision(what_)->field),
      label_(new QLabel),
      unit_(new QLabel),
      below_(new QLabel) {
    QString name = asText(field_->label);
    name[0] = name[0].toUpper();
    QWidget* field = nullptr;
    if (isChosen(*field_)) {
        choices_ = new ChoiceBox;
        entry_ = choices_->lineEdit();
        field = choices_;
        connect(choices_, &QComboBox::activated, this, &FieldRow::commit);
    } else {
        entry_ = new QLineEdit;
        entry_->setTextMargins(4, 0, 2, 0);
        field = entry_;
    }
    label_->setText(name);
    label_->setBuddy(field);
    label_->setWordWrap(true);
    const QString help = asText(field_->help);
    label_->setToolTip(help);
    field->setToolTip(help);
    field->setAccessibleName(name);
    entry_->setAccessibleName(name);
    unit_->setForegroundRole(QPalette::PlaceholderText);
    below_->setWordWrap(true);
    below_->hide();

    auto* layout = new QGridLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setVerticalSpacing(2);
    layout->addWidget(label_, 0, 0);
    layout->addWidget(field, 0, 1);
    layout->addWidget(unit_, 0, 2);
    layout->addWidget(below_, 1, 1, 1, 2);
    if (hasPictures(*field_)) {
        pictures_ = new PictureChoice(*field_);
        pictures_->setAccessibleName(name);
        layout->addWidget(pictures_, 2, 0, 1, 3);
        connect(pictures_, &PictureChoice::chosen, this, [this](const QString& word) {
            entry_->setText(shownName(*field_, word.toStdString(), desk_.catalogue()));
            commit();
        });
    }
    layout->setColumnStretch(0, 5);
    layout->setColumnStretch(1, 7);
    layout->setColumnMinimumWidth(
        2, fontMetrics().horizontalAdvance(QStringLiteral("= 16'-10-15/16\"")) + 2);

    connect(entry_, &QLineEdit::editingFinished, this, &FieldRow::commit);
    connect(entry_, &QLineEdit::textEdited, this, [this] { object({}); });
    entry_->installEventFilter(this);
    follow();
}

/// A field in focus calls its entry finished while it goes, when this is no longer a row.
FieldRow::~FieldRow() {
    entry_->removeEventFilter(this);
    entry_->disconnect(this);
    if (choices_ != nullptr) choices_->disconnect(this);
}

QString FieldRow::objection() const {
    return below_->isHidden() ? QString() : below_->text();
}

QString FieldRow::standing() const {
    const auto decided = desk_.journal().decided().find(what_);
    if (decided == desk_.journal().decided().end()) return {};
    return choices_ != nullptr ? shownName(*field_, decided->second, desk_.catalogue())
                               : asText(decided->second);
}

/// The value in the builder's units where it was typed in others; else the unit a bare number
/// takes.
QString FieldRow::beside() const {
    const UnitSystem units = speechOf(desk_.project()).units;
    QString unit = unitOf(*field_, units);
    const auto decided = desk_.journal().decided().find(what_);
    if (unit.isEmpty() || decided == desk_.journal().decided().end()) return unit;
    const auto plain = [](const QString& words) { return QString(words).remove(QLatin1Char(' ')); };
    const QString shown = showTyped(decided->second, *field_, units, UnitMark::shown);
    const bool same = plain(asText(decided->second)).endsWith(plain(unit)) ||
                      plain(shown) == plain(asText(decided->second));
    return same ? QString() : tr("= %1").arg(shown);
}

bool FieldRow::isTouched() const {
    return entry_->text() != shown_;
}

void FieldRow::follow() {
    const RuleText rule = ruleText(what_, desk_.project(), desk_.journal(), *desk_.results(),
                                   desk_.catalogue(), UnitMark::shown);
    if (rule.value.isEmpty()) {
        entry_->setPlaceholderText(field_->kind == ValueKind::text ? QString() : tr("not decided"));
    } else {
        entry_->setPlaceholderText(rule.from.isEmpty() ? rule.value
                                                       : tr("%1 · %2").arg(rule.value, rule.from));
    }
    QString unit = beside();
    unit.replace(QLatin1String("ft3"), QStringLiteral("ft³"));
    unit_->setText(unit.replace(QLatin1String("/m3"), QStringLiteral("/m³")));
    if (choices_ != nullptr)
        choices_->offer(choicesFor(*field_, desk_.catalogue(), desk_.project()));
    if (pictures_ != nullptr) {
        const auto decided = desk_.journal().decided().find(what_);
        const auto offered = choicesFor(*field_, desk_.catalogue(), desk_.project());
        pictures_->follow(decided == desk_.journal().decided().end() ? "" : decided->second,
                          idForName(offered, rule.value.toStdString()));
    }
    setEnabled(desk_.isOpen() && !desk_.isReadOnly());

    const bool typing = entry_->hasFocus() && isTouched();
    if (typing || !objection().isEmpty()) return;
    shown_ = standing();
    if (entry_->text() != shown_) entry_->setText(shown_);
    if (!entry_->hasFocus()) entry_->setCursorPosition(0);
}

void FieldRow::commit() {
    if (!isTouched()) return;
    std::string typed = entry_->text().trimmed().toStdString();
    if (choices_ != nullptr)
        typed = idForName(choicesFor(*field_, desk_.catalogue(), desk_.project()), typed);
    typed = withUnit(*field_, typed, speechOf(desk_.project()).units);
    const auto done = desk_.decide({{what_, typed}});
    if (!done) {
        const QString now = standing();
        object(
            sentence(done.error()) + QLatin1Char(' ') +
            (now.isEmpty() ? tr("Nothing is decided yet.") : tr("Still in force: %1.").arg(now)));
        return;
    }
    object({});
    shown_ = standing();
    entry_->setText(shown_);
    follow();
}

void FieldRow::object(const QString& says) {
    if (says == objection()) return;
    QWidget& field = choices_ != nullptr ? static_cast<QWidget&>(*choices_) : *entry_;
    showRefusal({*below_, field, *entry_}, *this, says);
    emit said(says);
}

void FieldRow::revert() {
    object({});
    shown_ = standing();
    entry_->setText(shown_);
}

bool FieldRow::eventFilter(QObject* object, QEvent* event) {
    if (object == entry_ && event->type() == QEvent::ShortcutOverride && !isTouched()) {
        // Nothing typed: undo and redo are the project's.
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) {
            event->ignore();
            return true;
        }
    }
    if (object == entry_ && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape && isTouched()) {
        revert();
        return true;
    }
    return QWidget::eventFilter(object, event);
}

}  // namespace fayline
