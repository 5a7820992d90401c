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
            case paper:
                return paperWords(here.id);
            default:
                return {};
        }
    }
    if (role == oldRole) return isOld(here.id);
    if (role == Qt::ToolTipRole && index.column() == paper && isOld(here.id))
        return tr("The paper says %1, the sheet now %2. Do not drill from it.")
            .arg(asText(codeOnPaper(recorded_, here.id)), known->second.revision);
    if (role == Qt::AccessibleTextRole) {
        QStringList parts{asText(here.title)};
        if (isKnown) parts.append(tr("revision %1").arg(known->second.revision));
        if (const QString words = paperWords(here.id); !words.isEmpty())
            parts.append(tr("on paper: %1").arg(words));
        return parts.join(QStringLiteral(", "));
    }
    if (role == Qt::TextAlignmentRole && index.column() == pages)
        return QVariant(Qt::AlignHCenter | Qt::AlignVCenter);
    return {};
}

QVariant SheetsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant((section == pages ? Qt::AlignHCenter : Qt::AlignLeft) | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case title:
            return tr("Sheet");
        case revision:
            return tr("Revision");
        case pages:
            return tr("Pages");
        default:
            return tr("On paper");
    }
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

QString SheetsModel::paperWords(const std::string& id) const {
    const std::string code = codeOnPaper(recorded_, id);
    if (code.empty() || known_.count(id) == 0) return {};
    return isOld(id) ? tr("out of date") : tr("as it is");
}

bool SheetsModel::isOld(const std::string& id) const {
    const auto known = known_.find(id);
    const std::string code = codeOnPaper(recorded_, id);
    return known != known_.end() && !code.empty() && asText(code) != known->second.revision;
}

void SheetsModel::setRecorded(const std::map<std::string, std::string>& recorded) {
    if (recorded == recorded_) return;
    recorded_ = recorded;
    if (rowCount() > 0) emit dataChanged(index(0, paper), index(rowCount() - 1, paper));
}

std::vector<OldPaper> SheetsModel::old() const {
    std::map<std::string, std::string> codes;
    for (const SheetName& each : names_) {
        const auto known = known_.find(each.id);
        // Of a sheet not made yet nothing is said: it has the code it had.
        codes[each.id] = known == known_.end() ? codeOnPaper(recorded_, each.id)
                                               : known->second.revision.toStdString();
    }
    return oldPaper(recorded_, codes);
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
