#include "offsets_model.h"

#include <algorithm>
#include <array>
#include <optional>

#include "quantity/text.h"
#include "words/values.h"

namespace fayline {

OffsetsModel::OffsetsModel(Desk& desk, QObject* parent) : QAbstractTableModel(parent), desk_(desk) {
    refresh();
}

void OffsetsModel::refresh() {
    const UnitSystem units = speechOf(desk_.project()).units;
    const auto shown = [&](const std::optional<Length>& length) {
        return length ? showPlace(*length, units) : QStringLiteral("–");
    };
    std::vector<std::pair<std::string, const OffsetStationDecisions*>> stations;
    for (const auto& [id, station] : desk_.project().offsets) stations.emplace_back(id, &station);
    std::stable_sort(stations.begin(), stations.end(), [](const auto& a, const auto& b) {
        return a.second->x != b.second->x ? a.second->x < b.second->x
                                          : naturalOrder(a.first, b.first) < 0;
    });
    std::vector<std::array<QString, 5>> rows;
    int points = 0;
    for (const auto& [id, station] : stations) {
        std::optional<Length> keel, widest, sheer;
        for (const auto& [number, point] : station->points) {
            if (!keel) keel = point.height;
            sheer = point.height;
            if (point.halfBreadth)
                widest = widest ? max(*widest, *point.halfBreadth) : *point.halfBreadth;
            ++points;
        }
        rows.push_back({asText(id), shown(station->x), shown(keel), shown(sheer), shown(widest)});
    }
    if (rows == rows_) return;
    beginResetModel();
    rows_ = std::move(rows);
    points_ = points;
    endResetModel();
}

int OffsetsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}
int OffsetsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : 5;
}
int OffsetsModel::pointCount() const {
    return points_;
}

QVariant OffsetsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const QString shown =
        rows_[static_cast<std::size_t>(index.row())][static_cast<std::size_t>(index.column())];
    if (role == Qt::DisplayRole) return shown;
    if (role == Qt::TextAlignmentRole && index.column() > 0)
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (role == Qt::AccessibleTextRole)
        return tr("station %1, %2, %3")
            .arg(rows_[static_cast<std::size_t>(index.row())][0],
                 headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(), shown);
    return {};
}

QVariant OffsetsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role == Qt::TextAlignmentRole && orientation == Qt::Horizontal) {
        return QVariant((section > 0 ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    }
    if (role != Qt::DisplayRole || orientation == Qt::Vertical) return {};
    switch (section) {
        case 0:
            return tr("Station");
        case 1:
            return tr("From FP");
        case 2:
            return tr("Lowest point");
        case 3:
            return tr("Sheer");
        case 4:
            return tr("Half-breadth");
        default:
            return {};
    }
}

}  // namespace fayline
