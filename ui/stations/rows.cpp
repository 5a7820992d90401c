#include "rows.h"

#include <QCoreApplication>
#include <QStringList>
#include <map>

#include "words/checks.h"
#include "words/materials.h"
#include "words/rule_texts.h"
#include "words/values.h"

namespace fayline {
namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("Stations", words);
}

struct One {
    QString shown, typed, from;
    bool decided = false;
};

One oneDecision(const Desk& desk, const std::string& what, const Field& field, UnitSystem units) {
    const auto decided = desk.journal().decided().find(what);
    if (decided == desk.journal().decided().end()) {
        const RuleText rule = ruleText(what, desk.project(), desk.journal(), *desk.results(),
                                       desk.catalogue(), UnitMark::leftOut);
        return {rule.value, {}, rule.from, false};
    }
    const bool material = field.kind == ValueKind::woodName || field.kind == ValueKind::metalName;
    const QString shown = material ? shownName(field, decided->second, desk.catalogue())
                                   : showTyped(decided->second, field, units, UnitMark::leftOut);
    return {shown, asText(decided->second), {}, true};
}

Cell decisionCell(const Desk& desk, Column column, const StationRow& row, UnitSystem units) {
    Cell cell;
    cell.whats = decisionsOf(column, row.frame, row.bolts);
    if (cell.whats.empty()) return cell;
    const Field& field = *fieldOf(column);
    QStringList different;
    for (const std::string& what : cell.whats) {
        const One one = oneDecision(desk, what, field, units);
        if (!different.contains(one.shown)) different.append(one.shown);
        cell.typed = one.typed;
        cell.from = one.from;
        cell.decided = cell.decided || one.decided;
    }
    if (different.size() > 1) cell.typed.clear();
    cell.shown = different.join(QStringLiteral(" | "));
    return cell;
}

Cell worstCell(const Results& results, const StationRow& row, Basis leading) {
    Cell cell;
    const Check* worst = worstAtFrame(results, row.frame, leading);
    if (worst == nullptr) return cell;
    cell.status = worst->status;
    const bool several = row.bolts.size() > 1;
    cell.shown = shortCheckLine(*worst) +
                 (several ? QStringLiteral(" (%1)").arg(asText(worst->id)) : QString());
    cell.from = worst->why.empty() ? checkLine(*worst) : asText(worst->why);
    return cell;
}

Cell boltCell(const StationRow& row) {
    QStringList ids;
    for (const std::string& id : row.bolts) ids.append(asText(id));
    Cell cell;
    cell.shown = ids.join(QStringLiteral(", "));
    if (ids.isEmpty()) cell.from = tr("no ballast bolt at this frame");
    return cell;
}

}  // namespace

std::vector<StationRow> stationRows(const Desk& desk) {
    const Results& results = *desk.results();
    const Speech speech = speechOf(desk.project());
    std::map<std::string, std::vector<std::string>> boltsAt;
    for (const PlacedBolt& placed : results.ballastBolts->placed)
        boltsAt[placed.frame].push_back(placed.id);

    std::vector<StationRow> rows;
    for (const std::string& frame : frameIds(desk.project())) {
        StationRow row;
        row.frame = frame;
        row.bolts = boltsAt[frame];
        for (int i = 0; i < columnCount; ++i) {
            const auto column = static_cast<Column>(i);
            Cell& cell = row.cells[static_cast<std::size_t>(i)];
            if (column == Column::worst) {
                cell = worstCell(results, row, speech.basis);
            } else if (column == Column::bolt) {
                cell = boltCell(row);
            } else {
                cell = decisionCell(desk, column, row, speech.units);
            }
        }
        row.status = row.cells[static_cast<std::size_t>(Column::worst)].status;
        rows.push_back(std::move(row));
    }
    return rows;
}

}  // namespace fayline
