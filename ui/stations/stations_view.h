#pragma once

#include <QTableView>

#include "cell_delegate.h"
#include "stations_model.h"

class QLabel;

namespace fayline {

/// The grid itself: moving, typing, copying and filling as in a spreadsheet.
class StationsView : public QTableView {
    Q_OBJECT

  public:
    explicit StationsView(StationsModel& model, QWidget* parent = nullptr);
    ~StationsView() override;

    /// Ends an open entry before anything else is done.
    void settleEditor() { delegate_->settleEditor(); }
    [[nodiscard]] CellEditor* openEditor() const { return delegate_->editor(); }

    void copy(bool headings = false);
    void paste();
    void fillDown();
    void backToRule();
    /// The text for every selected cell that can be edited, in one step.
    void decideSelected(const QString& text);

    /// Which columns are shown; moving, copying and pasting pass over the others.
    void showSet(ColumnSet set);
    [[nodiscard]] ColumnSet shownSet() const { return set_; }
    /// The columns in sight, from left to right.
    [[nodiscard]] std::vector<int> shownColumns() const;

    [[nodiscard]] QString frame() const;
    void setFrame(const QString& frame);
    void resetWidths();
    /// The columns as the user drew them, and with which text size; others are not restored.
    [[nodiscard]] QByteArray widths() const;
    void setWidths(const QByteArray& state);

    struct Found {
        bool found = false;
        QString says;  ///< "from the top again", "not found"; may be empty
    };
    /// Goes to the next cell, or frame, that holds the text.
    Found find(const QString& text, bool forward);

  signals:
    void frameChosen(const QString& frame);
    /// A sentence for the line below the grid; empty clears it.
    void said(const QString& says);
    /// Cells that kept a paste or a fill from being done.
    void stopped(const QString& says, const QStringList& details);
    void leaving(bool forward);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void dataChanged(const QModelIndex& from, const QModelIndex& to,
                     const QList<int>& roles = {}) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void move(CellDelegate::Move move);
    void jump(Qt::Key key, bool extend);
    void keepCurrent();
    void decideAll(const std::vector<CellText>& texts, const QString& refusal);
    [[nodiscard]] QModelIndexList selectedCells() const;
    void placeCorner();
    void fitLast();

    StationsModel& model_;
    CellDelegate* delegate_;
    QString frame_;
    ColumnSet set_ = ColumnSet::all;
    bool ownWidths_ = false;  ///< the user drew the columns
    QLabel* corner_;
};

}  // namespace fayline
