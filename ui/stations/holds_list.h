#pragma once

#include <QAbstractListModel>
#include <QListView>
#include <QStyledItemDelegate>

#include "holds.h"

namespace fayline {

class HoldsModel : public QAbstractListModel {
    Q_OBJECT

  public:
    using QAbstractListModel::QAbstractListModel;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

    /// `results` keeps the checks alive that the holds point into.
    bool setHolds(std::vector<Hold> holds, std::shared_ptr<const Results> results);
    [[nodiscard]] const Hold& hold(int row) const { return holds_[static_cast<std::size_t>(row)]; }
    [[nodiscard]] const std::shared_ptr<const Results>& results() const { return results_; }

  private:
    std::vector<Hold> holds_;
    std::shared_ptr<const Results> results_;
};

/// "What holds here": Enter or a click on one opens its working, or puts a finding right.
class HoldsList : public QListView {
    Q_OBJECT

  public:
    explicit HoldsList(QWidget* parent = nullptr);

    void setHolds(std::vector<Hold> holds, std::shared_ptr<const Results> results);
    /// What is said where nothing holds.
    void setEmptyText(const QString& words) { emptyText_ = words; }
    [[nodiscard]] HoldsModel& holds() { return model_; }

  signals:
    void workingWanted(const fayline::Check& check);
    void cureWanted(const fayline::Typed& typed);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

  private:
    void act(const QModelIndex& index);

    HoldsModel model_;
    QString emptyText_;
};

}  // namespace fayline
