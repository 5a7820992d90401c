#include "choice_box.h"

#include <QCompleter>
#include <QLineEdit>
#include <QWheelEvent>

namespace fayline {

ChoiceBox::ChoiceBox(QWidget* parent) : QComboBox(parent) {
    setEditable(true);
    setInsertPolicy(QComboBox::NoInsert);
    setFocusPolicy(Qt::StrongFocus);
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(12);
    completer()->setCompletionMode(QCompleter::PopupCompletion);
    completer()->setFilterMode(Qt::MatchContains);
    completer()->setCaseSensitivity(Qt::CaseInsensitive);
}

void ChoiceBox::offer(const std::vector<Choice>& choices) {
    QStringList names{QString()};
    for (const Choice& choice : choices) names.append(choice.name);
    QStringList present;
    for (int i = 0; i < count(); ++i) present.append(itemText(i));
    if (names == present) return;
    const QString typed = lineEdit()->text();
    clear();
    addItems(names);
    lineEdit()->setText(typed);
}

void ChoiceBox::wheelEvent(QWheelEvent* event) {
    event->ignore();
}

}  // namespace fayline
