#include "frame_header.h"

#include <QPainter>
#include <algorithm>

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

int ColumnHeader::bandHeight() const {
    return fontMetrics().lineSpacing() + 6;
}

QSize ColumnHeader::sizeHint() const {
    return {QHeaderView::sizeHint().width(), 3 * fontMetrics().lineSpacing() + 10 + bandHeight()};
}

/// From the first to the last column in sight of a column's group.
QRect ColumnHeader::bandOf(int logicalIndex) const {
    const ColumnGroup group = groupOf(static_cast<Column>(logicalIndex));
    int left = sectionViewportPosition(logicalIndex);
    int right = left + sectionSize(logicalIndex);
    for (int i = 0; i < count(); ++i) {
        if (isSectionHidden(i) || groupOf(static_cast<Column>(i)) != group) continue;
        left = std::min(left, sectionViewportPosition(i));
        right = std::max(right, sectionViewportPosition(i) + sectionSize(i));
    }
    return {left, 0, right - left, bandHeight()};
}

void ColumnHeader::paintSection(QPainter* painter, const QRect& rect, int logicalIndex) const {
    const Colours colours = coloursFor(palette());
    const auto column = static_cast<Column>(logicalIndex);
    painter->save();
    painter->setClipRect(rect);
    painter->fillRect(rect, palette().color(QPalette::AlternateBase));
    painter->setPen(colours.line);
    painter->drawLine(rect.bottomLeft(), rect.bottomRight());
    const QRect band = bandOf(logicalIndex);
    painter->drawLine(band.bottomLeft(), band.bottomRight());
    if (rect.left() <= band.left() && rect.left() > 0)
        painter->drawLine(rect.topLeft(), rect.bottomLeft());
    painter->setFont(font());
    painter->setPen(colours.muted);
    const QRect words(std::max(band.left(), 0) + 6, band.top(),
                      band.right() - std::max(band.left(), 0) - 8, band.height());
    painter->drawText(
        words, Qt::AlignLeft | Qt::AlignVCenter,
        fontMetrics().elidedText(titleOf(groupOf(column)), Qt::ElideRight, words.width()));
    QFont bold = font();
    bold.setBold(true);
    const QString unit =
        model()->headerData(logicalIndex, Qt::Horizontal, StationsModel::unitRole).toString();
    QRect area = rect.adjusted(6, 4 + bandHeight(), -4, -4);
    painter->setFont(font());
    if (!unit.isEmpty()) {
        painter->drawText(area, Qt::AlignLeft | Qt::AlignBottom, unit);
        area.setBottom(area.bottom() - fontMetrics().lineSpacing());
    }
    painter->setPen(palette().color(QPalette::Text));
    painter->setFont(bold);
    painter->drawText(area, static_cast<int>(Qt::AlignLeft | Qt::AlignBottom) | Qt::TextWordWrap,
                      titleOf(column));
    painter->restore();
}

}  // namespace fayline
