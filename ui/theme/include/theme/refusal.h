#pragma once

#include <QString>

class QLabel;
class QLineEdit;
class QWidget;

namespace fayline {

/// Where an entry is refused: the sentence below it, the field round it, the entry itself.
struct RefusalPlace {
    QLabel& below;
    QWidget& field;
    QLineEdit& entry;
};

/// Says why an entry is refused, in the colour of what is refused; with nothing to say, all is
/// well. `own`: the widget whose colours stand else.
void showRefusal(const RefusalPlace& place, const QWidget& own, const QString& says);

}  // namespace fayline
