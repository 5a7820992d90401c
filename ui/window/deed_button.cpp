#include "deed_button.h"

#include <QAction>
#include <QPainter>
#include <QPainterPath>
#include <QStyleOptionToolButton>

#include "theme/colours.h"

namespace fayline {
namespace {

constexpr int sign = 16;
constexpr int pad = 8;

QString plain(const QAction& action) {
    return action.data().toString();
}

}  // namespace

DeedButton::DeedButton(QAction* action, bool back, QWidget* parent)
    : QToolButton(parent), back_(back) {
    setDefaultAction(action);
    setFocusPolicy(Qt::TabFocus);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    setAutoRaise(true);
}

QSize DeedButton::sizeHint() const {
    const QString words = plain(*defaultAction());
    const int text = words.isEmpty() ? 0 : fontMetrics().horizontalAdvance(words) + pad;
    return {qMin(sign + 2 * pad + text, fontMetrics().averageCharWidth() * 84),
            fontMetrics().height() + 12};
}

QSize DeedButton::minimumSizeHint() const {
    return {sign + 2 * pad, sizeHint().height()};
}

void DeedButton::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    QStyleOptionToolButton option;
    initStyleOption(&option);
    if (isEnabled() && (underMouse() || hasFocus() || isDown()))
        style()->drawPrimitive(QStyle::PE_PanelButtonTool, &option, &painter, this);
    QColor ink = coloursFor(palette()).link;
    if (!isEnabled()) {
        ink = palette().color(QPalette::ButtonText);
        ink.setAlphaF(0.35F);
    }
    painter.save();
    painter.translate(pad, height() / 2.0 - sign / 2.0);
    if (!back_) {
        painter.translate(sign, 0);
        painter.scale(-1, 1);
    }
    QPen pen(ink, 1.8);
    pen.setCapStyle(Qt::RoundCap);
    pen.setJoinStyle(Qt::RoundJoin);
    painter.setPen(pen);
    QPainterPath arrow(QPointF(3, 6));
    arrow.cubicTo(7, 3, 15, 4, 13.5, 13);
    painter.drawPath(arrow);
    painter.drawPolyline(QPolygonF({QPointF(6.5, 1.5), QPointF(3, 6), QPointF(7.5, 8.5)}));
    painter.restore();
    const QRect area = rect().adjusted(sign + 2 * pad, 0, -pad / 2, 0);
    painter.setPen(ink);
    painter.drawText(
        area, Qt::AlignVCenter | Qt::AlignLeft,
        fontMetrics().elidedText(plain(*defaultAction()), Qt::ElideRight, area.width()));
}

}  // namespace fayline
