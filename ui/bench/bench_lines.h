#pragma once

#include <QAbstractTableModel>
#include <optional>
#include <vector>

#include "bench_work.h"
#include "check/check.h"

namespace fayline {

/// One limit state under both timber bases; metal stands under either alike.
struct BenchLine {
    LimitStateKind kind = LimitStateKind::lateral;
    std::optional<Check> us, ec5;  ///< against the load given; margin none without one
    std::string whyUs, whyEc5;     ///< why there is no figure
    [[nodiscard]] const Check& any() const { return us ? *us : *ec5; }
};

/// Every limit state a result holds, in the result's order; what cannot be worked out last.
std::vector<BenchLine> linesOf(const BenchResult& worked);
/// The line that governs under a basis: the least margin, or without a load the least that can be
/// carried; -1 when there is none.
int governing(const std::vector<BenchLine>& lines, Basis basis);

/// The lines as a table.
class BenchModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { state, us, usMargin, ec5, ec5Margin, gives, apart, goes, columnCount_ };

    using QAbstractTableModel::QAbstractTableModel;

    void show(std::vector<BenchLine> lines, UnitSystem units, Basis leading);
    [[nodiscard]] const std::vector<BenchLine>& lines() const { return lines_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

  private:
    std::vector<BenchLine> lines_;
    UnitSystem units_ = UnitSystem::inches;
    Basis leading_ = Basis::us;
};

/// "113 lb to 146 lb"; "no figure".
QString bandWords(const std::optional<Band>& band, UnitSystem units);

}  // namespace fayline
