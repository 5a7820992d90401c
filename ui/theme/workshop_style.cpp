#include "workshop_style.h"

#include <QPainter>
#include <QStyleOption>

namespace fayline {
namespace {

void box(QPainter& painter, const QRect& rect, const QBrush& ground, const QColor& edge,
         double width) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(edge, width));
    painter.setBrush(ground);
    const double inset = width / 2.0;
    painter.drawRoundedRect(QRectF(rect).adjusted(inset, inset, -inset, -inset), 3, 3);
    painter.restore();
}

bool focused(const QStyleOption& option) {
    return option.state.testFlag(QStyle::State_HasFocus);
}

void button(const QStyleOption& option, QPainter& painter) {
    QColor ground = option.palette.color(QPalette::Button);
    if (option.state.testFlag(QStyle::State_Sunken) || option.state.testFlag(QStyle::State_On)) {
        ground = option.palette.color(QPalette::AlternateBase);
    } else if (option.state.testFlag(QStyle::State_MouseOver) &&
               option.state.testFlag(QStyle::State_Enabled)) {
        ground = option.palette.color(QPalette::Base);
    }
    const bool focus = focused(option);
    box(painter, option.rect, ground,
        option.palette.color(focus ? QPalette::Highlight : QPalette::Mid), focus ? 2.0 : 1.0);
}

}  // namespace

WorkshopStyle::WorkshopStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

void WorkshopStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option,
                                  QPainter* painter, const QWidget* widget) const {
    switch (element) {
        case PE_PanelLineEdit: {
            if (widget != nullptr && widget->property("bare").toBool()) return;
            const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
            if (frame != nullptr && frame->lineWidth == 0)
                return;  // part of something that has an edge
            const bool focus = focused(*option);
            box(*painter, option->rect, option->palette.brush(QPalette::Base),
                option->palette.color(focus ? QPalette::Highlight : QPalette::Mid),
                focus ? 2.0 : 1.0);
            return;
        }
        case PE_FrameLineEdit:
            return;
        case PE_PanelButtonCommand:
            button(*option, *painter);
            return;
        case PE_PanelButtonTool:
            if (option->state & (State_MouseOver | State_Sunken | State_On | State_HasFocus))
                button(*option, *painter);
            return;
        default:
            QProxyStyle::drawPrimitive(element, option, painter, widget);
    }
}

void WorkshopStyle::drawControl(ControlElement element, const QStyleOption* option,
                                QPainter* painter, const QWidget* widget) const {
    if (element == CE_HeaderSection) {
        painter->fillRect(option->rect, option->palette.color(QPalette::AlternateBase));
        painter->setPen(option->palette.color(QPalette::Mid));
        painter->drawLine(option->rect.bottomLeft(), option->rect.bottomRight());
        return;
    }
    QProxyStyle::drawControl(element, option, painter, widget);
}

void WorkshopStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                       QPainter* painter, const QWidget* widget) const {
    const auto* combo = qstyleoption_cast<const QStyleOptionComboBox*>(option);
    if (control != CC_ComboBox || combo == nullptr) {
        QProxyStyle::drawComplexControl(control, option, painter, widget);
        return;
    }
    const bool focus = focused(*option);
    const auto ground = combo->editable ? QPalette::Base : QPalette::Button;
    box(*painter, option->rect, option->palette.brush(ground),
        option->palette.color(focus ? QPalette::Highlight : QPalette::Mid), focus ? 2.0 : 1.0);
    const QRect arrow = subControlRect(CC_ComboBox, option, SC_ComboBoxArrow, widget);
    const QPointF middle = QRectF(arrow).center();
    QPen pen(option->palette.color(QPalette::Text), 1.5);
    pen.setCapStyle(Qt::RoundCap);
    pen.setJoinStyle(Qt::RoundJoin);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(pen);
    painter->drawPolyline(
        QPolygonF({middle + QPointF(-4, -2), middle + QPointF(0, 2), middle + QPointF(4, -2)}));
    painter->restore();
}

int WorkshopStyle::pixelMetric(PixelMetric metric, const QStyleOption* option,
                               const QWidget* widget) const {
    if (metric == PM_ScrollBarExtent) return 12;
    if (metric == PM_ToolTipLabelFrameWidth) return 6;
    return QProxyStyle::pixelMetric(metric, option, widget);
}

int WorkshopStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                             QStyleHintReturn* returned) const {
    if (hint == SH_EtchDisabledText || hint == SH_DitherDisabledText) return 0;
    return QProxyStyle::styleHint(hint, option, widget, returned);
}

}  // namespace fayline
