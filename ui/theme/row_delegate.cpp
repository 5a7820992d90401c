#include "theme/row_delegate.h"

#include <QAbstractItemView>
#include <QHeaderView>
#include <QHelpEvent>
#include <QPainter>
#include <QTableView>
#include <QToolTip>

#include "theme/colours.h"

namespace fayline {
namespace {

constexpr int pad = 4;

}  // namespace

QRect RowDelegate::paintGround(QPainter& painter, const QStyleOptionViewItem& option,
                               const QModelIndex& index, Edge edge) {
    const Colours colours = coloursFor(option.palette);
    const bool chosen = option.state.testFlag(QStyle::State_Selected);
    if (chosen) painter.fillRect(option.rect, colours.chosenRow);
    painter.setPen(colours.line);
    painter.drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    const bool first = edge == Edge::atFirstColumn && index.column() == 0;
    if (chosen && first)
        painter.fillRect(QRect(option.rect.left(), option.rect.top(), 3, option.rect.height()),
                         option.palette.color(QPalette::Highlight));
    painter.setPen(option.palette.color(QPalette::Text));
    painter.setFont(option.font);
    return option.rect.adjusted(first ? pad + 2 : pad, 0, -pad, 0);
}

void RowDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const {
    painter->save();
    const QRect area = paintGround(*painter, option, index);
    if (!index.flags().testFlag(Qt::ItemIsEnabled))
        painter->setPen(coloursFor(option.palette).muted);
    const QVariant align = index.data(Qt::TextAlignmentRole);
    painter->drawText(
        area, align.isValid() ? align.toInt() : static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter),
        option.fontMetrics.elidedText(index.data(Qt::DisplayRole).toString(), Qt::ElideRight,
                                      area.width()));
    painter->restore();
}

bool RowDelegate::helpEvent(QHelpEvent* event, QAbstractItemView* view,
                            const QStyleOptionViewItem& option, const QModelIndex& index) {
    if (event->type() != QEvent::ToolTip) return false;
    const QString words = tipOf(index, option.fontMetrics, option.rect.width() - 2 * pad - 2);
    QToolTip::showText(event->globalPos(), words, view, view->visualRect(index));
    return true;
}

QString tipOf(const QModelIndex& index, const QFontMetrics& metrics, int room) {
    const QString shown = index.data(Qt::DisplayRole).toString();
    const QString says = index.data(Qt::ToolTipRole).toString();
    if (metrics.horizontalAdvance(shown) <= room || says.startsWith(shown)) return says;
    return says.isEmpty() ? shown : shown + QLatin1Char('\n') + says;
}

void makeReadingTable(QTableView& table) {
    table.setSelectionBehavior(QAbstractItemView::SelectRows);
    table.setSelectionMode(QAbstractItemView::ExtendedSelection);
    table.setEditTriggers(QAbstractItemView::NoEditTriggers);
    table.setTabKeyNavigation(false);
    table.setShowGrid(false);
    table.setWordWrap(false);
    table.setCornerButtonEnabled(false);
    table.setFrameShape(QFrame::NoFrame);
    table.setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    table.horizontalHeader()->setHighlightSections(false);
    table.horizontalHeader()->setMinimumSectionSize(40);
    table.verticalHeader()->hide();
    table.verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
}

}  // namespace fayline
