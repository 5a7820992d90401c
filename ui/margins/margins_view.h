#pragma once

#include <QTableView>

#include "margins_model.h"

namespace fayline {

/// The table of margins: whole rows are chosen; Enter opens the frame; copying takes the chosen
/// rows.
class MarginsView : public QTableView {
    Q_OBJECT

  public:
    explicit MarginsView(MarginsModel& model, QWidget* parent = nullptr);

    /// The chosen rows as tab and comma separated text, headings first when wanted.
    void copy(bool headings);
    void fitColumns();

  signals:
    void rowChosen(int row);
    void opened(int row);
    void leaving(bool forward);

  protected:
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    MarginsModel& model_;
};

}  // namespace fayline
