#include "forms/field_form.h"

#include <QVBoxLayout>

namespace fayline {

std::string decisionAt(const Field& field, const std::string& place) {
    const std::string& pattern = field.pattern;
    if (pattern.rfind("F#", 0) == 0) return place + pattern.substr(2);
    if (pattern.rfind("K.#", 0) == 0) return place + pattern.substr(3);
    const auto star = pattern.find('*');
    if (star == std::string::npos) return pattern;
    return pattern.substr(0, star) + place + pattern.substr(star + 1);
}

FieldForm::FieldForm(Desk& desk, const QString& title, const std::string& section,
                     const std::string& place, QWidget* parent)
    : Card(title, parent) {
    for (const Field& field : decisionTable()) {
        if (field.section != section || field.kind == ValueKind::keptRow) continue;
        auto* row = new FieldRow(desk, decisionAt(field, place));
        rows_.push_back(row);
        contents()->addWidget(row);
        connect(row, &FieldRow::said, this, &FieldForm::said);
    }
    connect(&desk, &Desk::resultsChanged, this, [this] {
        for (FieldRow* row : rows_) row->follow();
    });
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
