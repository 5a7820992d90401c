#include "frame_header.h"

#include <QPainter>

#include "stations_model.h"
#include "theme/colours.h"
#include "theme/status.h"

namespace fayline {
namespace {

constexpr int pad = 8;

}  // namespace

FrameHeader::FrameHeader(QWidget* parent) : QHeaderView(Qt::Vertical, parent) {
    setSectionsClickable(true);
    setHighlightSections(true);
    setSectionResizeMode(QHeaderView::Fixed);
}

QSize FrameHeader::sizeHint() const {
    QFont bold = font();
    bold.setBold(true);
    const QFontMetrics metrics(bold);
    return {metrics.horizontalAdvance(QStringLiteral("F88")) + metrics.ascent() + 3 * pad,
            QHeaderView::sizeHint().height()};
}

void FrameHeader::paintSection(QPainter* painter, const QRect& rect, int logicalIndex) const {
    const Colours colours = coloursFor(palette());
    const bool chosen =
        selectionModel() != nullptr && selectionModel()->currentIndex().row() == logicalIndex;
    painter->save();
    painter->fillRect(rect, chosen ? colours.chosenRow : palette().color(QPalette::Base));
    painter->setPen(colours.line);
    painter->drawLine(rect.bottomLeft(), rect.bottomRight());
    painter->drawLine(rect.topRight(), rect.bottomRight());
    if (chosen)
        painter->fillRect(QRect(rect.left(), rect.top(), 3, rect.height()),
                          palette().color(QPalette::Highlight));
    const int side = fontMetrics().ascent();
    const QVariant status =
        model()->headerData(logicalIndex, Qt::Vertical, StationsModel::statusRole);
    if (status.isValid()) {
        paintStatusMark(*painter,
                        QRect(rect.left() + pad, rect.center().y() - side / 2, side, side),
                        static_cast<Status>(status.toInt()), palette());
    }
    QFont bold = font();
    bold.setBold(true);
    painter->setFont(bold);
    painter->setPen(palette().color(QPalette::Text));
    const QRect label = rect.adjusted(pad + side + pad, 0, -2, 0);
    painter->drawText(label, Qt::AlignVCenter | Qt::AlignLeft,
                      model()->headerData(logicalIndex, Qt::Vertical, Qt::DisplayRole).toString());
    painter->restore();
}

ColumnHeader::ColumnHeader(QWidget* parent) : QHeaderView(Qt::Horizontal, parent) {
    setSectionsClickable(true);
    setHighlightSections(false);
    setMinimumSectionSize(40);
}

QSize ColumnHeader::sizeHint() const {
    return {QHeaderView::sizeHint().width(), 3 * fontMetrics().lineSpacing() + 10};
}

void ColumnHeader::paintSection(QPainter* painter, const QRect& rect, int logicalIndex) const {
    const Colours colours = coloursFor(palette());
    const auto column = static_cast<Column>(logicalIndex);
    painter->save();
    painter->fillRect(rect, palette().color(QPalette::AlternateBase));
    painter->setPen(colours.line);
    painter->drawLine(rect.bottomLeft(), rect.bottomRight());
    QFont bold = font();
    bold.setBold(true);
    const QString unit =
        model()->headerData(logicalIndex, Qt::Horizontal, StationsModel::unitRole).toString();
    QRect area = rect.adjusted(6, 4, -4, -4);
    if (!unit.isEmpty()) {
        painter->setPen(colours.muted);
        painter->setFont(font());
        painter->drawText(area, Qt::AlignLeft | Qt::AlignBottom, unit);
        area.setBottom(area.bottom() - fontMetrics().lineSpacing());
    }
    painter->setPen(palette().color(QPalette::Text));
    painter->setFont(bold);
    painter->drawText(
        area,
        static_cast<int>(Qt::AlignLeft | (unit.isEmpty() ? Qt::AlignVCenter : Qt::AlignBottom)) |
            Qt::TextWordWrap,
        titleOf(column));
    painter->restore();
}

}  // namespace fayline
