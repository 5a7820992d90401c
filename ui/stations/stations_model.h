#pragma once

#include <QAbstractTableModel>
#include <map>
#include <vector>

#include "rows.h"
#include "touched.h"

namespace fayline {

/// A text meant for one cell.
struct CellText {
    int row = 0, column = 0;
    QString text;  ///< empty: back to the rule
};

/// A text that was not taken, and why in one sentence.
struct BadCell {
    int row = 0, column = 0;
    QString text, says;
    bool operator==(const BadCell&) const = default;
};

/// The grid's cells over the desk. A text that is not taken stays beside its cell, to be seen,
/// while the old value stands; it is dropped once something is decided there.
class StationsModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    /// headingRole: a column's heading with its group and unit, to stand alone.
    enum Role {
        decidedRole = Qt::UserRole,
        refusedRole,
        statusRole,
        choicesRole,
        unitRole,
        headingRole
    };

    explicit StationsModel(Desk& desk, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    /// Decides one cell. False when the text was not taken; then it stays beside the cell.
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

    /// Decides many cells as one step, all or none. Returns the cells that stand in the way.
    std::vector<BadCell> decideAll(const std::vector<CellText>& texts);
    /// What would be said of a text for a cell; empty when it would be taken.
    [[nodiscard]] QString objection(const QModelIndex& index, const QString& text) const;

    /// Keeps a text that was not taken beside its cell; an empty one drops it.
    void refuse(const QModelIndex& index, const QString& text, const QString& says);
    [[nodiscard]] std::size_t refusedCount() const { return refused_.size(); }
    [[nodiscard]] QModelIndex firstRefused() const;

    [[nodiscard]] const StationRow& row(int row) const {
        return rows_[static_cast<std::size_t>(row)];
    }
    [[nodiscard]] const Cell& cell(const QModelIndex& index) const;
    /// -1 when there is no such frame.
    [[nodiscard]] int rowOf(const QString& frame) const;
    [[nodiscard]] UnitSystem units() const { return units_; }

    /// Follows the results; tells of the cells that are others than before.
    void refresh();
    /// How many rows the last refresh made anew.
    [[nodiscard]] int madeRows() const { return made_; }

  private:
    void replaceRows(std::vector<StationRow> rows);
    [[nodiscard]] std::string kindFor(const CellText& text, const std::vector<CellText>& all) const;
    /// What stands in the way of a text, decided together with all the others.
    [[nodiscard]] std::optional<BadCell> fault(const CellText& text,
                                               const std::vector<CellText>& all) const;
    [[nodiscard]] QString spoken(const QModelIndex& index) const;
    [[nodiscard]] QString tip(const QModelIndex& index) const;

    Desk& desk_;
    std::vector<StationRow> rows_;
    Touched touched_;
    int made_ = 0;
    UnitSystem units_ = UnitSystem::inches;
    std::map<std::pair<std::string, int>, BadCell> refused_;  ///< by frame and column
};

}  // namespace fayline
