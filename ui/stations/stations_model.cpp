#include "stations_model.h"

#include <QStringList>

#include "theme/status.h"
#include "typing.h"
#include "words/materials.h"
#include "words/values.h"

namespace fayline {

StationsModel::StationsModel(Desk& desk, QObject* parent)
    : QAbstractTableModel(parent), desk_(desk) {
    connect(&desk_, &Desk::projectChanged, this, [this] {
        refused_.clear();
        touched_.addAll();
    });
    connect(&desk_, &Desk::decisionsChanged, this,
            [this](const QStringList& whats) { touched_.add(whats); });
    rows_ = stationRows(desk_);
    touched_.settle(desk_);
    units_ = speechOf(desk_.project()).units;
}

int StationsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}
int StationsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : fayline::columnCount;
}

const Cell& StationsModel::cell(const QModelIndex& index) const {
    return rows_[static_cast<std::size_t>(index.row())]
        .cells[static_cast<std::size_t>(index.column())];
}

int StationsModel::rowOf(const QString& frame) const {
    const std::string id = frame.toStdString();
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        if (rows_[i].frame == id) return static_cast<int>(i);
    }
    return -1;
}

QVariant StationsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Cell& here = cell(index);
    const auto refused = refused_.find({row(index.row()).frame, index.column()});
    const bool isRefused = refused != refused_.end();
    switch (role) {
        case Qt::DisplayRole:
            return isRefused ? refused->second.text : here.shown;
        case Qt::EditRole:
            if (isRefused) return refused->second.text;
            return here.typed.isEmpty() ? here.shown : here.typed;
        case Qt::ToolTipRole:
            return tip(index);
        case Qt::AccessibleTextRole:
            return spoken(index);
        case Qt::AccessibleDescriptionRole:
            return isRefused ? refused->second.says : here.from;
        case decidedRole:
            return here.decided;
        case refusedRole:
            return isRefused ? QVariant(refused->second.says) : QVariant();
        case statusRole:
            return here.status ? QVariant(static_cast<int>(*here.status)) : QVariant();
        case unitRole:
            return unitOf(static_cast<Column>(index.column()), units_);
        case choicesRole: {
            const Field* field = fieldOf(static_cast<Column>(index.column()));
            QStringList names;
            if (field != nullptr) {
                for (const Choice& choice : choicesFor(*field, desk_.catalogue(), desk_.project()))
                    names.append(choice.name);
            }
            return names;
        }
        default:
            return {};
    }
}

QString StationsModel::tip(const QModelIndex& index) const {
    const Cell& here = cell(index);
    const auto refused = refused_.find({row(index.row()).frame, index.column()});
    if (refused != refused_.end()) {
        return refused->second.says + QLatin1Char('\n') +
               (here.shown.isEmpty()
                    ? tr("Nothing is decided here.")
                    : tr("Still in force: %1").arg(here.typed.isEmpty() ? here.shown : here.typed));
    }
    if (here.shown.isEmpty()) return here.from;
    if (here.decided && !here.typed.isEmpty() && here.typed != here.shown)
        return tr("typed: %1").arg(here.typed);
    if (!here.decided && !here.from.isEmpty())
        return here.status ? here.from : tr("by rule: %1").arg(here.from);
    return here.status ? here.shown : QString();
}

QString StationsModel::spoken(const QModelIndex& index) const {
    const auto column = static_cast<Column>(index.column());
    const Cell& here = cell(index);
    const QString title = fasteningOf(column).empty() || partOf(column) == ColumnPart::summary
                              ? titleOf(column)
                              : titleOf(groupOf(column)) + QLatin1Char(' ') + titleOf(column);
    QStringList parts{asText(row(index.row()).frame), title};
    const QString unit = unitOf(column, units_);
    const bool marked =
        here.shown.contains(QLatin1Char('"')) || here.shown.contains(QLatin1Char('\''));
    if (here.shown.isEmpty()) {
        parts.append(!here.editable && here.from.isEmpty() ? tr("nothing")
                     : here.from.isEmpty()                 ? tr("not decided")
                                                           : here.from);
    } else {
        parts.append(unit.isEmpty() || marked ? here.shown : here.shown + QLatin1Char(' ') + unit);
        if (!here.decided && here.editable) parts.append(tr("by rule"));
    }
    if (const auto& status = here.status) parts.append(statusWord(*status));
    const auto refused = refused_.find({row(index.row()).frame, index.column()});
    if (refused != refused_.end())
        parts.append(tr("not taken: %1. %2").arg(refused->second.text, refused->second.says));
    return parts.join(QStringLiteral(", "));
}

QVariant StationsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical) {
        if (section < 0 || section >= rowCount()) return {};
        const StationRow& here = row(section);
        if (role == Qt::DisplayRole) return asText(here.frame);
        if (role == statusRole && here.status) return static_cast<int>(*here.status);
        if (role == Qt::AccessibleTextRole) {
            return here.status
                       ? tr("frame %1, %2").arg(asText(here.frame), statusWord(*here.status))
                       : tr("frame %1").arg(asText(here.frame));
        }
        return {};
    }
    const auto column = static_cast<Column>(section);
    const QString unit = unitOf(column, units_);
    const bool inGroup = !fasteningOf(column).empty() && partOf(column) != ColumnPart::summary;
    if (role == headingRole && inGroup) {
        const QString title = titleOf(groupOf(column)) + QStringLiteral(": ") + titleOf(column);
        return unit.isEmpty() ? title : title + QStringLiteral(", ") + unit;
    }
    if (role == Qt::DisplayRole || role == headingRole)
        return unit.isEmpty() ? titleOf(column) : titleOf(column) + QStringLiteral(", ") + unit;
    if (role == unitRole) return unit;
    if (role == Qt::ToolTipRole) {
        if (partOf(column) == ColumnPart::summary)
            return tr(
                "Number × size × length, such as 2 × No. 14 × 2. Two of them with | between "
                "are port and starboard.");
        const Field* field = fieldOf(column);
        if (field == nullptr) return {};
        const QString help = asText(field->help);
        return unit.isEmpty() ? help
                              : help + QLatin1Char('\n') +
                                    tr("A number without a unit is taken as %1.").arg(unit);
    }
    return {};
}

Qt::ItemFlags StationsModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::NoItemFlags;
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    if (cell(index).editable) flags |= Qt::ItemIsEditable;
    return flags;
}

/// The kind of fastening a text is meant for: the one decided in the same breath, else what stands.
std::string StationsModel::kindFor(const CellText& text, const std::vector<CellText>& all) const {
    const auto column = static_cast<Column>(text.column);
    const std::string group = fasteningOf(column);
    if (group.empty()) return {};
    for (const CellText& other : all) {
        const auto otherColumn = static_cast<Column>(other.column);
        if (other.row != text.row || partOf(otherColumn) != ColumnPart::kind ||
            fasteningOf(otherColumn) != group || other.text.trimmed().isEmpty())
            continue;
        return idForName(choicesFor(*fieldOf(otherColumn), desk_.catalogue(), desk_.project()),
                         other.text.trimmed().toStdString());
    }
    return kindAt(desk_, row(text.row), column);
}

std::optional<BadCell> StationsModel::fault(const CellText& text,
                                            const std::vector<CellText>& all) const {
    const auto column = static_cast<Column>(text.column);
    const auto typed = typedInCell(desk_, row(text.row), column, text.text, kindFor(text, all));
    if (!typed) {
        return BadCell{
            text.row, text.column, text.text,
            tr("This reads as number × size × length, such as 2 × No. 14 × 2, or none.")};
    }
    if (typed->empty()) {
        if (text.text.trimmed().isEmpty()) return std::nullopt;
        const QString frame = asText(row(text.row).frame);
        const QString says =
            isBoltColumn(column) ? tr("%1 has no ballast bolt.").arg(frame)
            : partOf(column) == ColumnPart::length
                ? tr("The length of a bolt or rivet follows from what it goes through.")
                : tr("%1 is worked out, not decided.").arg(titleOf(column));
        return BadCell{text.row, text.column, text.text, says};
    }
    if (const auto taken = desk_.wouldTake(*typed); !taken)
        return BadCell{text.row, text.column, text.text, sentence(taken.error())};
    return std::nullopt;
}

QString StationsModel::objection(const QModelIndex& index, const QString& text) const {
    const CellText cellText{index.row(), index.column(), text};
    const auto bad = fault(cellText, {cellText});
    return bad ? bad->says : QString();
}

bool StationsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !index.isValid()) return false;
    const CellText text{index.row(), index.column(), value.toString()};
    const auto bad = decideAll({text});
    if (bad.empty()) return true;
    refuse(index, text.text, bad.front().says);
    return false;
}

std::vector<BadCell> StationsModel::decideAll(const std::vector<CellText>& texts) {
    std::vector<BadCell> bad;
    Typed typed;
    for (const CellText& text : texts) {
        if (auto here = fault(text, texts)) {
            bad.push_back(std::move(*here));
            continue;
        }
        const auto column = static_cast<Column>(text.column);
        auto here = typedInCell(desk_, row(text.row), column, text.text, kindFor(text, texts));
        for (auto& decision : *here) typed.push_back(std::move(decision));
    }
    if (!bad.empty() || typed.empty()) return bad;
    for (const CellText& text : texts) refuse(index(text.row, text.column), {}, {});
    // After this the rows may be others.
    if (const auto done = desk_.decide(typed); !done) {
        const CellText& first = texts.front();
        bad.push_back({first.row, first.column, first.text, sentence(done.error())});
    }
    return bad;
}

void StationsModel::refuse(const QModelIndex& index, const QString& text, const QString& says) {
    if (!index.isValid()) return;
    const std::pair<std::string, int> key{row(index.row()).frame, index.column()};
    if (text.isEmpty() ? refused_.erase(key) == 0 : false) return;
    if (!text.isEmpty()) refused_[key] = {index.row(), index.column(), text, says};
    emit dataChanged(index, index);
}

QModelIndex StationsModel::firstRefused() const {
    QModelIndex first;
    for (const auto& [key, bad] : refused_) {
        const QModelIndex here = index(rowOf(asText(key.first)), key.second);
        if (here.isValid() && (!first.isValid() || here < first)) first = here;
    }
    return first;
}

void StationsModel::refresh() {
    const UnitSystem units = speechOf(desk_.project()).units;
    const bool otherUnits = units != units_;
    units_ = units;
    const std::vector<std::string> frames = frameIds(desk_.project());
    const bool sameFrames =
        std::equal(frames.begin(), frames.end(), rows_.begin(), rows_.end(),
                   [](const std::string& id, const StationRow& row) { return id == row.frame; });
    if (!sameFrames) {
        beginResetModel();
        rows_ = stationRows(desk_);
        made_ = static_cast<int>(rows_.size());
        touched_.settle(desk_);
        endResetModel();
        return;
    }
    std::vector<StationRow> rows = rows_;
    made_ = touched_.bring(rows, desk_);
    replaceRows(std::move(rows));
    if (otherUnits) emit headerDataChanged(Qt::Horizontal, 0, fayline::columnCount - 1);
}

/// Tells of the cells that are others than before, one by one, so that nothing else is painted
/// anew.
void StationsModel::replaceRows(std::vector<StationRow> rows) {
    std::swap(rows, rows_);
    const std::vector<StationRow>& old = rows;
    for (int r = 0; r < rowCount(); ++r) {
        const StationRow& before = old[static_cast<std::size_t>(r)];
        const StationRow& after = row(r);
        if (before == after) continue;
        for (int c = 0; c < fayline::columnCount; ++c) {
            const auto i = static_cast<std::size_t>(c);
            if (!(before.cells[i] == after.cells[i])) emit dataChanged(index(r, c), index(r, c));
        }
        if (before.status != after.status) emit headerDataChanged(Qt::Vertical, r, r);
    }
}

}  // namespace fayline
