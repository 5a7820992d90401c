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

  protected:
    /// Paints ground, edge and hairline; returns what is left for the contents.
    static QRect paintGround(QPainter& painter, const QStyleOptionViewItem& option,
                             const QModelIndex& index);
};

/// A table to read and choose rows from: no editing, no grid, Tab leaves it.
void makeReadingTable(QTableView& table);

}  // namespace fayline
