#pragma once

#include <QTreeView>

#include "margins_model.h"

namespace fayline {

/// The margins as lines that unfold: whole lines are chosen; Enter opens the frame, Right unfolds,
/// Left folds; copying takes the chosen lines.
class MarginsView : public QTreeView {
    Q_OBJECT

  public:
    explicit MarginsView(MarginsModel& model, QWidget* parent = nullptr);

    /// The chosen lines as tab and comma separated text, headings first when wanted.
    void copy(bool headings);
    void fitColumns();

  signals:
    void lineChosen(const QModelIndex& line);
    void opened(const QModelIndex& line);
    void leaving(bool forward);

  protected:
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void drawBranches(QPainter* painter, const QRect& rect,
                      const QModelIndex& index) const override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    MarginsModel& model_;
};

}  // namespace fayline
