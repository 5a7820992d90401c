#pragma once

#include <QStyledItemDelegate>

class QTableView;

namespace fayline {

/// Rows of a table as they look everywhere in the window: a quiet ground and an edge for what is
/// chosen, hairlines between.
class RowDelegate : public QStyledItemDelegate {
  public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    /// What does not fit its cell stands in the tip, before what the model has to say.
    bool helpEvent(QHelpEvent* event, QAbstractItemView* view, const QStyleOptionViewItem& option,
                   const QModelIndex& index) override;

  protected:
    enum class Edge { atFirstColumn, none };
    /// Paints ground, edge and hairline; returns what is left for the contents.
    static QRect paintGround(QPainter& painter, const QStyleOptionViewItem& option,
                             const QModelIndex& index, Edge edge = Edge::atFirstColumn);
};

/// The tip of a cell with so much room for its words: what is cut off there in full, then what the
/// model has to say.
QString tipOf(const QModelIndex& index, const QFontMetrics& metrics, int room);

/// A table to read and choose rows from: no editing, no grid, Tab leaves it.
void makeReadingTable(QTableView& table);

}  // namespace fayline
