#pragma once

#include <QHeaderView>

namespace fayline {

/// The frames down the left of the grid, always in view, each with the mark of its worst margin.
class FrameHeader : public QHeaderView {
    Q_OBJECT

  public:
    explicit FrameHeader(QWidget* parent);

    QSize sizeHint() const override;

  protected:
    void paintSection(QPainter* painter, const QRect& rect, int logicalIndex) const override;
};

/// The columns' titles, wrapped, with the unit below and the group they belong to above.
class ColumnHeader : public QHeaderView {
    Q_OBJECT

  public:
    explicit ColumnHeader(QWidget* parent);

    QSize sizeHint() const override;

  protected:
    void paintSection(QPainter* painter, const QRect& rect, int logicalIndex) const override;

  private:
    [[nodiscard]] int bandHeight() const;
    [[nodiscard]] QRect bandOf(int logicalIndex) const;
};

}  // namespace fayline
