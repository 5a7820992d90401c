#include "margins_model.h"

#include <QStringList>
#include <map>
#include <utility>

#include "theme/status.h"
#include "words/checks.h"
#include "words/things.h"

namespace fayline {
namespace {

bool sameQuestion(const Check& a, const Check& b) {
    return a.id == b.id && a.loadCase == b.loadCase && a.basis == b.basis &&
           a.limitState == b.limitState && a.moisture == b.moisture;
}

/// Finds texts in checks; words that many checks share are looked through once.
class Sought {
  public:
    explicit Sought(const QString& text) : text_(text.simplified()) {}

    bool in(const Check& check) {
        if (text_.isEmpty()) return true;
        return shared({0, check.group}, [&] { return groupWords(check.group); }) ||
               shared({1 + static_cast<int>(check.limitState), check.group},
                      [&] { return stateWords(check); }) ||
               shared({100 + static_cast<int>(check.loadCase), {}},
                      [&] { return asText(titleOf(check.loadCase)); }) ||
               shared({200 + static_cast<int>(check.basis), {}},
                      [&] { return basisWords(check.basis); }) ||
               asText(check.frame).compare(text_, Qt::CaseInsensitive) == 0 ||
               has(thingTitle(check.id)) || asText(check.id).contains(text_, Qt::CaseInsensitive);
    }

  private:
    [[nodiscard]] bool has(const QString& words) const {
        return words.contains(text_, Qt::CaseInsensitive);
    }
    template <typename Words>
    bool shared(const std::pair<int, std::string>& key, Words words) {
        const auto known = known_.find(key);
        if (known != known_.end()) return known->second;
        const bool found = has(words());
        known_.emplace(key, found);
        return found;
    }

    QString text_;
    std::map<std::pair<int, std::string>, bool> known_;
};

}  // namespace

int MarginsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}
int MarginsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columnCount_;
}
int MarginsModel::total() const {
    return results_ ? static_cast<int>(results_->worstFirst.size()) : 0;
}

QString MarginsModel::text(const Check& check, int column) const {
    const auto force = [&](const std::optional<Force>& value) {
        return value ? asText(displayForce(*value, speech_.units)) : QString();
    };
    switch (column) {
        case status:
            return statusWord(check.status);
        case margin:
            return check.margin ? marginWords(check) : QString();
        case thing:
            return thingTitle(check.id);
        case state:
            return stateWords(check);
        case loadCase:
            return caseShort(check.loadCase);
        case basis:
            return basisWords(check.basis);
        case demand:
            return force(check.demand);
        case working:
            return force(check.working);
        default:
            return {};
    }
}

QVariant MarginsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Check& here = check(index.row());
    switch (role) {
        case Qt::DisplayRole:
            return text(here, index.column());
        case Qt::TextAlignmentRole:
            return QVariant(
                (index.column() == margin || index.column() == demand || index.column() == working
                     ? Qt::AlignRight
                     : Qt::AlignLeft) |
                Qt::AlignVCenter);
        case Qt::ToolTipRole:
            if (!here.why.empty()) return asText(here.why);
            if (index.column() == loadCase) return asText(titleOf(here.loadCase));
            return plainSentence(here, speech_.units);
        case Qt::AccessibleTextRole: {
            QStringList parts;
            for (const int column : {thing, state, loadCase, basis, margin, status}) {
                if (const QString words = text(here, column); !words.isEmpty()) parts.append(words);
            }
            return index.column() == status || index.column() == thing
                       ? parts.join(QStringLiteral(", "))
                       : headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString() +
                             QLatin1Char(' ') + text(here, index.column());
        }
        case statusRole:
            return static_cast<int>(here.status);
        default:
            return {};
    }
}

QVariant MarginsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical)
        return role == Qt::DisplayRole ? QVariant(section + 1) : QVariant();
    if (role == Qt::TextAlignmentRole) {
        const bool number = section == margin || section == demand || section == working;
        return QVariant((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    }
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case status:
            return tr("Status");
        case margin:
            return tr("Margin");
        case thing:
            return tr("What");
        case state:
            return tr("How it would fail");
        case loadCase:
            return tr("Load case");
        case basis:
            return tr("Basis");
        case demand:
            return tr("Must carry");
        case working:
            return tr("Can carry");
        default:
            return {};
    }
}

void MarginsModel::list() {
    rows_.clear();
    if (!results_) return;
    Sought sought(filter_.text);
    for (const Check* check : results_->worstFirst) {
        if (!filter_.group.empty() && check->group != filter_.group) continue;
        if (filter_.loadCase && check->loadCase != *filter_.loadCase) continue;
        if (filter_.status && check->status != *filter_.status) continue;
        if (filter_.basis && !counts(*check, *filter_.basis)) continue;
        if (!sought.in(*check)) continue;
        rows_.push_back(check);
    }
}

void MarginsModel::show(std::shared_ptr<const Results> results, const Speech& speech) {
    beginResetModel();
    results_ = std::move(results);
    speech_ = speech;
    list();
    endResetModel();
}

void MarginsModel::setFilter(const MarginFilter& filter) {
    if (filter == filter_) return;
    beginResetModel();
    filter_ = filter;
    list();
    endResetModel();
}

int MarginsModel::rowOf(const Check& check) const {
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        if (sameQuestion(*rows_[i], check)) return static_cast<int>(i);
    }
    return -1;
}

int MarginsModel::firstOf(const std::string& idOrFrame) const {
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        if (rows_[i]->id == idOrFrame || rows_[i]->frame == idOrFrame) return static_cast<int>(i);
    }
    return -1;
}

}  // namespace fayline
