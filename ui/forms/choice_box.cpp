#include "choice_box.h"

#include <QLineEdit>

namespace fayline {

ChoiceBox::ChoiceBox(QWidget* parent) : TypedBox(12, parent) {}

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

}  // namespace fayline
