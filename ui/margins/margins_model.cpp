#include "margins_model.h"

#include <QStringList>
#include <algorithm>
#include <unordered_set>
#include <utility>

#include "theme/status.h"
#include "words/checks.h"
#include "words/things.h"

namespace fayline {
namespace {

/// With more lines than this out of order it is quicker to begin anew.
constexpr std::size_t mostMoves = 100;

}  // namespace

struct MarginsModel::Line {
    Line* parent = nullptr;
    std::size_t row = 0;
    MarginEntry entry;
    std::vector<std::unique_ptr<Line>> below;
    bool filled = false;

    [[nodiscard]] int depth() const { return parent == nullptr ? 0 : parent->depth() + 1; }
    void add(std::size_t at, MarginEntry made) {
        auto line = std::make_unique<Line>();
        line->parent = this;
        line->entry = std::move(made);
        below.insert(below.begin() + static_cast<std::ptrdiff_t>(at), std::move(line));
    }
    void number(std::size_t from = 0) {
        for (std::size_t i = from; i < below.size(); ++i) below[i]->row = i;
    }
};

MarginsModel::MarginsModel(QObject* parent)
    : QAbstractItemModel(parent), root_(std::make_unique<Line>()) {
    root_->filled = true;
}
MarginsModel::~MarginsModel() = default;

MarginsModel::Line* MarginsModel::lineOf(const QModelIndex& index) const {
    return index.isValid() ? static_cast<Line*>(index.internalPointer()) : root_.get();
}

QModelIndex MarginsModel::indexOf(const Line& line) const {
    return &line == root_.get()
               ? QModelIndex()
               : createIndex(static_cast<int>(line.row), 0, const_cast<Line*>(&line));
}

void MarginsModel::fill(Line& line) {
    if (line.filled) return;
    line.filled = true;
    for (MarginEntry& entry : within(line.entry)) line.add(line.below.size(), std::move(entry));
    line.number();
}

QModelIndex MarginsModel::index(int row, int column, const QModelIndex& parent) const {
    if (!hasIndex(row, column, parent)) return {};
    return createIndex(row, column, lineOf(parent)->below[static_cast<std::size_t>(row)].get());
}

QModelIndex MarginsModel::parent(const QModelIndex& index) const {
    if (!index.isValid()) return {};
    const Line* above = lineOf(index)->parent;
    return above == nullptr ? QModelIndex() : indexOf(*above);
}

int MarginsModel::rowCount(const QModelIndex& parent) const {
    if (parent.column() > 0) return 0;
    Line* line = lineOf(parent);
    fill(*line);
    return static_cast<int>(line->below.size());
}

int MarginsModel::columnCount(const QModelIndex&) const {
    return columnCount_;
}

bool MarginsModel::hasChildren(const QModelIndex& parent) const {
    if (parent.column() > 0) return false;
    const Line* line = lineOf(parent);
    return line == root_.get() ? !line->below.empty() : line->entry.checks->size() > 1;
}

int MarginsModel::total() const {
    return results_ ? static_cast<int>(results_->worstFirst.size()) : 0;
}

const Check& MarginsModel::check(const QModelIndex& index) const {
    return lineOf(index)->entry.governing();
}
const CheckList& MarginsModel::checks(const QModelIndex& index) const {
    return *lineOf(index)->entry.checks;
}

QString MarginsModel::text(const Line& line, int column) const {
    const Check& check = line.entry.governing();
    const auto force = [&](const std::optional<Force>& value) {
        return value ? asText(displayForce(*value, speech_.units)) : QString();
    };
    switch (column) {
        case thing:
            if (line.depth() == 1) return jointTitle(check);
            return line.entry.key == check.id ? thingWithin(check.id)
                                              : asText(titleOf(check.loadCase));
        case status:
            return statusWord(check.status);
        case margin:
            return check.margin ? marginWords(check) : QString();
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
    const Line& line = *lineOf(index);
    const Check& here = line.entry.governing();
    const bool number = index.column() == demand || index.column() == working;
    switch (role) {
        case Qt::DisplayRole:
            return text(line, index.column());
        case Qt::TextAlignmentRole:
            return QVariant((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
        case Qt::ToolTipRole:
            if (index.column() == thing) {
                const QString governs = thingTitle(here.id);
                return line.entry.checks->size() > 1 ? tr("%1 governs, of %2 checks.")
                                                           .arg(governs)
                                                           .arg(line.entry.checks->size())
                                                     : governs;
            }
            if (!here.why.empty()) return asText(here.why);
            if (index.column() == loadCase) return asText(titleOf(here.loadCase));
            if (index.column() == state) return stateWords(here);
            return plainSentence(here, speech_.units);
        case Qt::AccessibleTextRole: {
            QStringList parts;
            for (const int column : {thing, state, loadCase, basis, margin, status}) {
                if (const QString words = text(line, column); !words.isEmpty()) parts.append(words);
            }
            return index.column() == status || index.column() == thing
                       ? parts.join(QStringLiteral(", "))
                       : headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString() +
                             QLatin1Char(' ') + text(line, index.column());
        }
        case statusRole:
            return static_cast<int>(here.status);
        default:
            return {};
    }
}

QVariant MarginsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical) return {};
    if (role == Qt::TextAlignmentRole) {
        const bool number = section == demand || section == working;
        return QVariant((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    }
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case thing:
            return tr("Joint");
        case status:
            return tr("Status");
        case margin:
            return tr("Margin");
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
    std::vector<MarginEntry> joints;
    if (results_) joints = lister_.list(*results_, filter_);
    listed_ = 0;
    for (const MarginEntry& joint : joints) listed_ += static_cast<int>(joint.checks->size());
    follow(*root_, std::move(joints));
}

/// Takes away the lines that are not among the entries.
void MarginsModel::drop(Line& line, const std::vector<MarginEntry>& entries) {
    std::unordered_set<std::string> wanted;
    for (const MarginEntry& entry : entries) wanted.insert(entry.key);
    for (std::size_t i = line.below.size(); i > 0;) {
        const std::size_t last = --i;
        if (wanted.count(line.below[last]->entry.key) > 0) continue;
        while (i > 0 && wanted.count(line.below[i - 1]->entry.key) == 0) --i;
        beginRemoveRows(indexOf(line), static_cast<int>(i), static_cast<int>(last));
        line.below.erase(line.below.begin() + static_cast<std::ptrdiff_t>(i),
                         line.below.begin() + static_cast<std::ptrdiff_t>(last) + 1);
        line.number(i);
        endRemoveRows();
    }
}

/// Brings the lines below one to what the entries say, telling of each difference.
void MarginsModel::follow(Line& line, std::vector<MarginEntry> entries) {
    drop(line, entries);
    std::size_t inOrder = 0;
    for (std::size_t i = 0; i < entries.size() && inOrder < line.below.size(); ++i)
        inOrder += line.below[inOrder]->entry.key == entries[i].key ? 1U : 0U;
    if (line.parent == nullptr && entries.size() - inOrder > mostMoves) {
        beginResetModel();
        line.below.clear();
        for (MarginEntry& entry : entries) line.add(line.below.size(), std::move(entry));
        line.number();
        endResetModel();
        return;
    }
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const auto place = std::find_if(
            line.below.begin() + static_cast<std::ptrdiff_t>(std::min(i, line.below.size())),
            line.below.end(), [&](const auto& each) { return each->entry.key == entries[i].key; });
        const auto from = static_cast<int>(place - line.below.begin());
        const auto to = static_cast<int>(i);
        if (place == line.below.end()) {
            beginInsertRows(indexOf(line), to, to);
            line.add(i, std::move(entries[i]));
            line.number(i);
            endInsertRows();
            continue;
        }
        if (from != to) {
            beginMoveRows(indexOf(line), from, from, indexOf(line), to);
            std::rotate(line.below.begin() + to, place, place + 1);
            line.number(i);
            endMoveRows();
        }
        followOne(*line.below[i], std::move(entries[i]));
    }
}

void MarginsModel::followOne(Line& line, MarginEntry entry) {
    if (line.entry.checks == entry.checks) return;
    const bool had = line.entry.checks->size() > 1;
    const bool same = line.entry.governing() == entry.governing();
    line.entry = std::move(entry);
    const bool has = line.entry.checks->size() > 1;
    if (line.filled) follow(line, within(line.entry));
    if (!same || had != has) {
        const QModelIndex first = indexOf(line);
        emit dataChanged(first, first.siblingAtColumn(columnCount_ - 1));
    }
}

void MarginsModel::show(std::shared_ptr<const Results> results, const Speech& speech) {
    // The old results stay until nothing looks into them any more.
    const auto before = std::exchange(results_, std::move(results));
    const bool otherwise = !(speech == speech_);
    speech_ = speech;
    list();
    if (otherwise && !root_->below.empty())
        emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount_ - 1));
}

void MarginsModel::setFilter(const MarginFilter& filter) {
    if (filter == filter_) return;
    filter_ = filter;
    list();
}

QModelIndex MarginsModel::firstOf(const std::string& idOrFrame) const {
    for (const auto& line : root_->below) {
        const CheckList& checks = *line->entry.checks;
        const bool here = checks.front()->frame == idOrFrame ||
                          std::any_of(checks.begin(), checks.end(),
                                      [&](const Check* check) { return check->id == idOrFrame; });
        if (here) return indexOf(*line);
    }
    return {};
}

}  // namespace fayline
