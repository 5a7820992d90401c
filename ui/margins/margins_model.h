#pragma once

#include <QAbstractTableModel>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "derive/results.h"
#include "words/values.h"

namespace fayline {

/// Which checks are listed; what is empty lets everything through.
struct MarginFilter {
    std::string group;
    std::optional<LoadCase> loadCase;
    std::optional<Status> status;
    std::optional<Basis> basis;  ///< this timber basis and metal
    QString text;                ///< in the thing's name, the limit state, the case or the basis
    bool operator==(const MarginFilter&) const = default;
};

/// Checks worst first, read straight from the results: nothing is made for a row until it is shown.
class MarginsModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { status, margin, thing, state, loadCase, basis, demand, working, columnCount_ };
    enum Role { statusRole = Qt::UserRole };

    using QAbstractTableModel::QAbstractTableModel;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    void show(std::shared_ptr<const Results> results, const Speech& speech);
    void setFilter(const MarginFilter& filter);
    [[nodiscard]] const MarginFilter& filter() const { return filter_; }
    [[nodiscard]] const std::shared_ptr<const Results>& results() const { return results_; }

    [[nodiscard]] const Check& check(int row) const {
        return *rows_[static_cast<std::size_t>(row)];
    }
    /// The row of the same question: thing, case, basis, limit state. -1 when it is not listed.
    [[nodiscard]] int rowOf(const Check& check) const;
    /// The first row of a fastening or frame; -1 when there is none.
    [[nodiscard]] int firstOf(const std::string& idOrFrame) const;
    /// All there are, whatever the filter.
    [[nodiscard]] int total() const;

  private:
    void list();
    [[nodiscard]] QString text(const Check& check, int column) const;

    std::shared_ptr<const Results> results_;
    Speech speech_;
    MarginFilter filter_;
    std::vector<const Check*> rows_;
};

}  // namespace fayline
