#include "theme/refusal.h"

#include <QLabel>
#include <QLineEdit>

#include "theme/colours.h"

namespace fayline {

void showRefusal(const RefusalPlace& place, const QWidget& own, const QString& says) {
    place.below.setText(says);
    place.below.setVisible(!says.isEmpty());
    QPalette inked = own.palette(), edge = own.palette();
    if (!says.isEmpty()) {
        const QColor refused = coloursFor(own.palette()).refused;
        inked.setColor(QPalette::WindowText, refused);
        edge.setColor(QPalette::Mid, refused);
        edge.setColor(QPalette::Highlight, refused);
    }
    place.below.setPalette(inked);
    place.field.setPalette(edge);
    place.entry.setAccessibleDescription(says);
}

}  // namespace fayline
