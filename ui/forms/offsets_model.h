#pragma once

#include <QAbstractTableModel>

#include "desk/desk.h"

namespace fayline {

/// The lofting stations as decided, for reading.
class OffsetsModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    explicit OffsetsModel(Desk& desk, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    [[nodiscard]] int pointCount() const;
    /// Reads the project anew.
    void refresh();

  private:
    Desk& desk_;
    std::vector<std::array<QString, 5>> rows_;
    int points_ = 0;
};

}  // namespace fayline
