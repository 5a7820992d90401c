#include "margins_view.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMimeData>
#include <QPainter>
#include <algorithm>
#include <string>
#include <vector>

#include "quantity/csv.h"
#include "theme/colours.h"
#include "theme/row_delegate.h"
#include "theme/status.h"

namespace fayline {
namespace {

constexpr int pad = 6;

/// Status and margin in their own ink, with the sign of the status.
class MarginDelegate : public RowDelegate {
  public:
    using RowDelegate::RowDelegate;

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const override {
        return {0, option.fontMetrics.height() + 10};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        if (index.column() == MarginsModel::thing) {
            // The row's edge is where its chevron is.
            painter->save();
            const QRect area = paintGround(*painter, option, index, Edge::none);
            painter->drawText(area, Qt::AlignLeft | Qt::AlignVCenter,
                              option.fontMetrics.elidedText(index.data().toString(), Qt::ElideRight,
                                                            area.width()));
            painter->restore();
            return;
        }
        if (index.column() != MarginsModel::status && index.column() != MarginsModel::margin) {
            RowDelegate::paint(painter, option, index);
            return;
        }
        const auto status = static_cast<Status>(index.data(MarginsModel::statusRole).toInt());
        painter->save();
        QRect area = paintGround(*painter, option, index);
        if (index.column() == MarginsModel::status) {
            const int side = option.fontMetrics.ascent();
            paintStatusMark(*painter, QRect(area.left(), area.center().y() - side / 2, side, side),
                            status, option.palette);
            area.setLeft(area.left() + side + pad);
        }
        QFont font = option.font;
        if (status != Status::ok && status != Status::unloaded) {
            font.setBold(true);
            painter->setPen(statusInk(status, option.palette).ink);
        }
        painter->setFont(font);
        painter->drawText(area, index.data(Qt::TextAlignmentRole).toInt(),
                          index.data(Qt::DisplayRole).toString());
        painter->restore();
    }
};

}  // namespace

MarginsView::MarginsView(MarginsModel& model, QWidget* parent) : QTreeView(parent), model_(model) {
    setModel(&model);
    setItemDelegate(new MarginDelegate(this));
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setUniformRowHeights(true);
    setExpandsOnDoubleClick(false);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setTabKeyNavigation(false);
    header()->setHighlightSections(false);
    header()->setStretchLastSection(false);
    header()->setSectionsMovable(false);
    header()->setMinimumSectionSize(40);
    setAccessibleName(tr("Margins, a line per joint, worst first"));
    connect(this, &QTreeView::doubleClicked, this, &MarginsView::opened);
    fitColumns();
}

void MarginsView::fitColumns() {
    QFont bold = font();
    bold.setBold(true);
    const QFontMetrics metrics(bold);
    const QFontMetrics plain(font());
    const auto wide = [&](const QString& words) {
        return plain.horizontalAdvance(words) + 2 * pad;
    };
    setIndentation(metrics.height());
    setColumnWidth(MarginsModel::status, metrics.horizontalAdvance(QStringLiteral("unknown")) +
                                             metrics.ascent() + 4 * pad);
    setColumnWidth(MarginsModel::margin, wide(QStringLiteral("×100.00")));
    setColumnWidth(MarginsModel::state, wide(QStringLiteral("rod, pull and shear")));
    setColumnWidth(MarginsModel::loadCase, wide(QStringLiteral("grounding forward")));
    setColumnWidth(MarginsModel::basis, wide(QStringLiteral("Eurocode 5")));
    setColumnWidth(MarginsModel::demand, wide(QStringLiteral("Must carry")));
    setColumnWidth(MarginsModel::working, wide(QStringLiteral("Can carry")));
    int others = 0;
    for (int column = 0; column < MarginsModel::columnCount_; ++column)
        others += column == MarginsModel::thing ? 0 : columnWidth(column);
    const int least = wide(QStringLiteral("Floor timber at F10")) + indentation();
    setColumnWidth(MarginsModel::thing, std::max(least, viewport()->width() - others));
}

/// A chevron, right while folded and down while unfolded, on the ground of its row.
void MarginsView::drawBranches(QPainter* painter, const QRect& rect,
                               const QModelIndex& index) const {
    const Colours colours = coloursFor(palette());
    painter->save();
    if (selectionModel()->isSelected(index)) {
        painter->fillRect(rect, colours.chosenRow);
        painter->fillRect(QRect(rect.left(), rect.top(), 3, rect.height()),
                          palette().color(QPalette::Highlight));
    }
    painter->setPen(colours.line);
    painter->drawLine(rect.bottomLeft(), rect.bottomRight());
    if (model()->hasChildren(index)) {
        const double reach = fontMetrics().ascent() / 3.0;
        const QPointF middle(rect.right() - indentation() / 2.0 + 2.0, rect.center().y() + 0.5);
        QPen pen(colours.muted, 1.6);
        pen.setCapStyle(Qt::RoundCap);
        pen.setJoinStyle(Qt::RoundJoin);
        painter->setPen(pen);
        painter->setRenderHint(QPainter::Antialiasing);
        painter->drawPolyline(
            isExpanded(index)
                ? QPolygonF({middle + QPointF(-reach, -reach / 2), middle + QPointF(0, reach / 2),
                             middle + QPointF(reach, -reach / 2)})
                : QPolygonF({middle + QPointF(-reach / 2, -reach), middle + QPointF(reach / 2, 0),
                             middle + QPointF(-reach / 2, reach)}));
    }
    painter->restore();
}

void MarginsView::copy(bool headings) {
    // As they stand, unfolded ones below their own.
    std::vector<QModelIndex> lines;
    for (QModelIndex line = model_.index(0, 0); line.isValid(); line = indexBelow(line)) {
        if (selectionModel()->isSelected(line)) lines.push_back(line);
    }
    QString tabbed;
    std::string csv;
    const auto add = [&](auto cell) {
        std::vector<std::string> cells;
        QStringList texts;
        for (int column = 0; column < model_.columnCount(); ++column) {
            const QString text = cell(column);
            texts.append(text);
            cells.push_back(text.toStdString());
        }
        tabbed += texts.join(QLatin1Char('\t')) + QLatin1Char('\n');
        csv += csvLine(cells);
    };
    if (headings)
        add([&](int c) {
            return model_.headerData(c, Qt::Horizontal, Qt::DisplayRole).toString();
        });
    for (const QModelIndex& line : lines)
        add([&](int c) { return line.siblingAtColumn(c).data(Qt::DisplayRole).toString(); });
    auto* mime = new QMimeData;
    mime->setText(tabbed);
    mime->setData(QStringLiteral("text/csv"), QByteArray::fromStdString(csv));
    QGuiApplication::clipboard()->setMimeData(mime);
}

void MarginsView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTreeView::currentChanged(current, previous);
    if (current.isValid() && current.siblingAtColumn(0) != previous.siblingAtColumn(0))
        emit lineChosen(current);
}

void MarginsView::keyPressEvent(QKeyEvent* event) {
    const bool back = event->modifiers().testFlag(Qt::ShiftModifier);
    if (event->key() == Qt::Key_F6) {
        emit leaving(!back);
        return;
    }
    if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) &&
        currentIndex().isValid()) {
        emit opened(currentIndex());
        return;
    }
    QTreeView::keyPressEvent(event);
}

void MarginsView::changeEvent(QEvent* event) {
    QTreeView::changeEvent(event);
    if (event->type() == QEvent::FontChange) fitColumns();
}

void MarginsView::resizeEvent(QResizeEvent* event) {
    QTreeView::resizeEvent(event);
    fitColumns();
}

}  // namespace fayline
