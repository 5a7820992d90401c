#include "forms/field_form.h"

#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include "choice_pictures.h"
#include "desk/when_seen.h"
#include "words/fastenings.h"
#include "words/values.h"

namespace fayline {

std::string decisionAt(const Field& field, const std::string& place) {
    const std::string& pattern = field.pattern;
    if (pattern.rfind("F#", 0) == 0) return place + pattern.substr(2);
    if (pattern.rfind("K.#", 0) == 0) return place + pattern.substr(3);
    if (pattern.rfind("strake#", 0) == 0) return place + pattern.substr(7);
    const auto star = pattern.find('*');
    if (star == std::string::npos) return pattern;
    return pattern.substr(0, star) + place + pattern.substr(star + 1);
}

FieldForm::FieldForm(Desk& desk, const QString& title, const std::string& section,
                     const std::string& place, const std::string& within, QWidget* parent)
    : Card(title, parent), desk_(desk), note_(new QLabel) {
    note_->setWordWrap(true);
    note_->hide();
    contents()->addWidget(note_);
    for (const Field& field : decisionTable()) {
        if (field.section != section || field.kind == ValueKind::keptRow) continue;
        if (field.pattern.rfind(within, 0) != 0) continue;
        auto* row = new FieldRow(desk, decisionAt(field, place));
        rows_.push_back(row);
        contents()->addWidget(row);
        connect(row, &FieldRow::said, this, &FieldForm::said);
    }
    new WhenSeen(desk, this, [this] { refresh(); });
}

void FieldForm::followKind(const std::string& group, const std::string& frame,
                           const std::string& side) {
    group_ = group;
    frame_ = frame;
    side_ = side;
    refresh();
}

void FieldForm::setNote(const QString& note) {
    note_->setText(note);
    note_->setVisible(!note.isEmpty());
}

void FieldForm::refresh() {
    for (FieldRow* row : rows_) row->follow();
    if (group_.empty()) return;
    const FasteningDecisions standing = standingAt(desk_.project(), group_, frame_, side_);
    for (FieldRow* row : rows_) {
        const std::string name = row->what().substr(row->what().rfind('.') + 1);
        const bool shown = matters(name, standing.kind.value_or("")) ||
                           desk_.journal().decided().count(row->what()) > 0 ||
                           row->entry()->hasFocus();
        row->setVisible(shown);
    }
    QStringList missing;
    for (const std::string& name : undecidedOf(standing)) {
        for (const FieldRow* row : rows_) {
            const auto target = findDecision(row->what());
            if (row->what().substr(row->what().rfind('.') + 1) == name && target)
                missing.append(asText(target->field->label));
        }
    }
    const Speech speech = speechOf(desk_.project());
    const QString sum = summaryWords(standing, speech.units);
    setNote(missing.isEmpty() ? (standing.count == 0 ? tr("There are none of these.") : sum)
                              : tr("Still to decide: %1.").arg(missing.join(QStringLiteral(", "))));
}

FieldRow* FieldForm::row(const std::string& what) const {
    for (FieldRow* row : rows_) {
        if (row->what() == what) return row;
    }
    return nullptr;
}

void FieldForm::commit() {
    for (FieldRow* row : rows_) row->commit();
}

}  // namespace fayline
