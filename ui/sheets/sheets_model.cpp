#include "sheets_model.h"

#include <QPalette>

#include "words/values.h"

namespace fayline {

int SheetsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(names_.size());
}
int SheetsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columnCount_;
}

QVariant SheetsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const SheetName& here = name(index.row());
    const auto known = known_.find(here.id);
    const bool isKnown = known != known_.end();
    if (role == Qt::DisplayRole) {
        switch (index.column()) {
            case title:
                return here.empty ? tr("%1, nothing to drill").arg(asText(here.title))
                                  : asText(here.title);
            case revision:
                return isKnown ? known->second.revision : QStringLiteral("…");
            case pages:
                return isKnown ? QString::number(known->second.pages) : QString();
            default:
                return {};
        }
    }
    if (role == Qt::AccessibleTextRole) {
        const QString words = asText(here.title);
        return isKnown ? tr("%1, revision %2").arg(words, known->second.revision) : words;
    }
    if (role == Qt::TextAlignmentRole && index.column() == pages)
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    return {};
}

QVariant SheetsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant((section == pages ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    return section == title ? tr("Sheet") : section == revision ? tr("Revision") : tr("Pages");
}

void SheetsModel::show(std::vector<SheetName> names) {
    if (names == names_) {
        known_.clear();
        if (!names_.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount_ - 1));
        return;
    }
    beginResetModel();
    names_ = std::move(names);
    known_.clear();
    endResetModel();
}

void SheetsModel::tell(int row, const Sheet& sheet) {
    known_[sheet.id] = {asText(sheet.revision), static_cast<int>(sheet.pages.size())};
    emit dataChanged(index(row, 0), index(row, columnCount_ - 1));
}

int SheetsModel::rowOf(const std::string& id) const {
    for (std::size_t i = 0; i < names_.size(); ++i) {
        if (names_[i].id == id) return static_cast<int>(i);
    }
    return -1;
}

int SheetsModel::firstUnknown() const {
    for (std::size_t i = 0; i < names_.size(); ++i) {
        if (known_.count(names_[i].id) == 0) return static_cast<int>(i);
    }
    return -1;
}

}  // namespace fayline
