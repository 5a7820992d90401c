#include "cell_editor.h"

#include <QAction>
#include <QCompleter>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QToolTip>

#include "theme/colours.h"

namespace fayline {

CellEditor::CellEditor(const QStringList& choices, QWidget* parent)
    : QLineEdit(parent), choices_(choices) {
    setFrame(false);
    setProperty("bare", true);
    setAutoFillBackground(true);
    if (!choices_.isEmpty()) {
        auto* completer = new QCompleter(choices_, this);
        completer->setCompletionMode(QCompleter::InlineCompletion);
        completer->setCaseSensitivity(Qt::CaseInsensitive);
        setCompleter(completer);
    }
    connect(this, &QLineEdit::textEdited, this, [this] { showObjection({}); });
    connect(this, &QLineEdit::textChanged, this, &CellEditor::grow);
}

void CellEditor::seed(const QString& text) {
    if (seeded_) return;
    seeded_ = true;
    seed_ = text;
    setText(text);
    selectAll();
}

/// As wide as its text, as far as there is room; near the right edge it grows leftward.
void CellEditor::grow() {
    constexpr int pad = 18;
    if (parentWidget() == nullptr) return;
    const int room = parentWidget()->width();
    const int wanted = qMin(fontMetrics().horizontalAdvance(text()) + pad, room);
    if (wanted > width()) setGeometry(qMax(0, qMin(x(), room - wanted)), y(), wanted, height());
}

void CellEditor::showObjection(const QString& says) {
    if (says == objection_) return;
    objection_ = says;
    setAccessibleDescription(says);
    if (says.isEmpty()) {
        QToolTip::hideText();
    } else {
        QToolTip::showText(mapToGlobal(QPoint(0, height())), says, this, {}, 8000);
    }
    update();
}

void CellEditor::paintEvent(QPaintEvent* event) {
    QPainter ground(this);
    ground.fillRect(rect(), palette().color(QPalette::Base));
    ground.end();
    QLineEdit::paintEvent(event);
    QPainter painter(this);
    const QColor edge =
        objection_.isEmpty() ? palette().color(QPalette::Highlight) : coloursFor(palette()).refused;
    painter.setPen(QPen(edge, 2.0));
    painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
}

void CellEditor::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Down && event->modifiers().testFlag(Qt::AltModifier) &&
        !choices_.isEmpty()) {
        listChoices();
        return;
    }
    QLineEdit::keyPressEvent(event);
}

void CellEditor::listChoices() {
    QMenu menu(this);
    for (const QString& choice : choices_) {
        QAction* action =
            menu.addAction(QString(choice).replace(QLatin1Char('&'), QStringLiteral("&&")));
        action->setData(choice);
        if (choice.compare(text(), Qt::CaseInsensitive) == 0) menu.setActiveAction(action);
    }
    listing_ = true;
    const QAction* chosen = menu.exec(mapToGlobal(QPoint(0, height())));
    listing_ = false;
    if (chosen != nullptr) setText(chosen->data().toString());
    setFocus();
}

}  // namespace fayline
