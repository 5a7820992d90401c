#pragma once

#include <QAbstractTableModel>
#include <string>

#include "shop/takeoff.h"
#include "words/values.h"

namespace fayline {

/// What to order, a row for each kind, metal, size and length.
class MetalModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { kind, metal, size, use, length, needed, spare, order, mass, columnCount_ };

    using QAbstractTableModel::QAbstractTableModel;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    void show(TakeOff takeOff, UnitSystem units);
    [[nodiscard]] const TakeOff& takeOff() const { return takeOff_; }
    [[nodiscard]] UnitSystem units() const { return units_; }

  private:
    [[nodiscard]] QString text(const TakeOffLine& line, int column) const;

    TakeOff takeOff_;
    UnitSystem units_ = UnitSystem::inches;
};

/// The take-off as comma separated text, the names of the columns as in the program's other files.
std::string metalCsv(const TakeOff& takeOff);

}  // namespace fayline
