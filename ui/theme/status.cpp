#include "theme/status.h"

#include <QCoreApplication>
#include <QPainter>

#include "paint/style.h"
#include "theme/colours.h"

namespace fayline {
namespace {

QPen penFor(const QColor& ink, double width) {
    QPen pen(ink, width);
    pen.setCapStyle(Qt::RoundCap);
    pen.setJoinStyle(Qt::RoundJoin);
    return pen;
}

}  // namespace

StatusInk statusInk(Status status, const QPalette& palette) {
    const bool dark = isDark(palette);
    const auto fill = [&](QColor light, QColor night) { return dark ? night : light; };
    const QColor ink = statusColour(status, dark);
    switch (status) {
        case Status::isShort:
            return {ink, fill(QColor(0xF9, 0xD0, 0xCC), QColor(0x5A, 0x1A, 0x14))};
        case Status::near:
            return {ink, fill(QColor(0xFF, 0xE9, 0xBF), QColor(0x4A, 0x38, 0x00))};
        case Status::ok:
            return {ink, fill(QColor(0xDC, 0xEE, 0xFB), QColor(0x12, 0x35, 0x4A))};
        default:
            return {ink, fill(QColor(0xE6, 0xE6, 0xE6), QColor(0x3A, 0x3D, 0x40))};
    }
}

QString statusWord(Status status) {
    switch (status) {
        case Status::isShort:
            return QCoreApplication::translate("Status", "short");
        case Status::near:
            return QCoreApplication::translate("Status", "near");
        case Status::unknown:
            return QCoreApplication::translate("Status", "unknown");
        case Status::outside:
            return QCoreApplication::translate("Status", "outside");
        case Status::ok:
            return QCoreApplication::translate("Status", "ok");
        case Status::unloaded:
            return QCoreApplication::translate("Status", "not loaded");
    }
    return {};
}

void paintStatusMark(QPainter& painter, const QRectF& box, Status status, const QPalette& palette) {
    const double side = qMin(box.width(), box.height());
    QRectF square(0, 0, side, side);
    square.moveCenter(box.center());
    const QColor ink = statusInk(status, palette).ink;
    const double stroke = qMax(1.25, side / 8.0);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(penFor(ink, stroke));
    painter.setBrush(Qt::NoBrush);
    const QRectF inner = square.adjusted(side * 0.1, side * 0.1, -side * 0.1, -side * 0.1);
    switch (status) {
        case Status::isShort: {
            painter.fillRect(inner, ink);
            painter.setPen(penFor(palette.color(QPalette::Base), stroke));
            const QRectF cross = square.adjusted(side * 0.3, side * 0.3, -side * 0.3, -side * 0.3);
            painter.drawLine(cross.topLeft(), cross.bottomRight());
            painter.drawLine(cross.topRight(), cross.bottomLeft());
            break;
        }
        case Status::near:
            painter.drawPolygon(QPolygonF({QPointF(inner.center().x(), inner.top()),
                                           inner.bottomRight(), inner.bottomLeft()}));
            break;
        case Status::unknown: {
            QFont font = painter.font();
            font.setPixelSize(qMax(8, qRound(side)));
            font.setBold(true);
            painter.setFont(font);
            painter.drawText(square.adjusted(-side, -side, side, side), Qt::AlignCenter,
                             QStringLiteral("?"));
            break;
        }
        case Status::outside: {
            const QPointF c = inner.center();
            painter.drawPolygon(
                QPolygonF({QPointF(c.x(), inner.top()), QPointF(inner.right(), c.y()),
                           QPointF(c.x(), inner.bottom()), QPointF(inner.left(), c.y())}));
            break;
        }
        case Status::ok:
            painter.setPen(Qt::NoPen);
            painter.setBrush(ink);
            painter.drawEllipse(square.center(), side * 0.21, side * 0.21);
            break;
        case Status::unloaded:
            painter.drawLine(QPointF(square.left() + side * 0.25, square.center().y()),
                             QPointF(square.right() - side * 0.25, square.center().y()));
            break;
    }
    painter.restore();
}

}  // namespace fayline
