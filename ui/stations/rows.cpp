#include "rows.h"

#include <QCoreApplication>
#include <QStringList>
#include <map>

#include "words/checks.h"
#include "words/fastenings.h"
#include "words/materials.h"
#include "words/rule_texts.h"
#include "words/things.h"
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
    const bool named = field.kind == ValueKind::woodName || field.kind == ValueKind::metalName ||
                       field.kind == ValueKind::choice;
    const QString shown = named ? shownName(field, decided->second, desk.catalogue())
                                : showTyped(decided->second, field, units, UnitMark::leftOut);
    return {shown, asText(decided->second), {}, true};
}

Cell decisionCell(const Desk& desk, Column column, const Field& field, const StationRow& row,
                  UnitSystem units) {
    Cell cell;
    const auto whats = decisionsOf(column, row.frame, row.bolts);
    cell.editable = !whats.empty();
    if (whats.empty()) return cell;
    QStringList different;
    for (const std::string& what : whats) {
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

/// The fields a fastening's column shows, in one text.
QString partWords(const Desk& desk, ColumnPart part, const FasteningDecisions& at,
                  UnitSystem units) {
    const auto name = [&](const char* sample, const std::optional<std::string>& id) {
        if (!id) return QString();
        const auto target = findDecision(sample);
        return target ? shownName(*target->field, *id, desk.catalogue()) : asText(*id);
    };
    const auto bare = [&](Length length) {
        QString words = showSize(length, units);
        words.remove(QLatin1Char('"')).remove(QLatin1String(" mm"));
        return words;
    };
    switch (part) {
        case ColumnPart::summary:
            return summaryWords(at, units);
        case ColumnPart::kind:
            return at.kind ? kindWords(*at.kind) : QString();
        case ColumnPart::count:
            return at.count ? QString::number(*at.count) : QString();
        case ColumnPart::size:
            return sizeWords(at, units);
        case ColumnPart::length:
            return at.length ? bare(*at.length) : QString();
        case ColumnPart::metal:
            return name("heel.metal", at.metal);
        default:
            return {};
    }
}

/// Whether this entry decides what a column shows.
bool decides(const FasteningDecisions& own, ColumnPart part) {
    switch (part) {
        case ColumnPart::summary:
            return own.count || own.gauge || own.diameter || own.length;
        case ColumnPart::kind:
            return own.kind.has_value();
        case ColumnPart::count:
            return own.count.has_value();
        case ColumnPart::size:
            return own.gauge || own.diameter;
        case ColumnPart::length:
            return own.length.has_value();
        case ColumnPart::metal:
            return own.metal.has_value();
        default:
            return false;
    }
}

bool ownDecides(const Project& project, const std::string& key, ColumnPart part) {
    const auto found = project.fastening.find(key);
    return found != project.fastening.end() && decides(found->second, part);
}

/// What stands for one group at one frame, on both sides.
struct AtFrame {
    FasteningDecisions both, port, starboard;
};

Cell fasteningCell(const Desk& desk, Column column, const StationRow& row, const AtFrame& at,
                   UnitSystem units) {
    const Project& project = desk.project();
    const ColumnPart part = partOf(column);
    const std::string group = fasteningOf(column);
    Cell cell;
    cell.editable = true;
    if (part == ColumnPart::length && (at.both.kind == "bolt" || at.both.kind == "rivet")) {
        cell.editable = false;
        cell.from = tr("its length follows from what it goes through");
        return cell;
    }
    cell.decided = ownDecides(project, row.frame + "." + group, part);
    if (hasSides(column)) {
        const QString port = partWords(desk, part, at.port, units);
        const QString starboard = partWords(desk, part, at.starboard, units);
        cell.shown = port == starboard ? port : port + QStringLiteral(" | ") + starboard;
        const bool sided = ownDecides(project, row.frame + ".P." + group, part) ||
                           ownDecides(project, row.frame + ".S." + group, part);
        cell.decided = cell.decided || sided;
        if (port != starboard) cell.from = tr("port | starboard");
        if (sided) return cell;
    } else {
        cell.shown = partWords(desk, part, at.both, units);
    }
    if (!cell.decided) {
        if (!cell.shown.isEmpty()) cell.from = tr("as for the whole hull");
        return cell;
    }
    if (part == ColumnPart::summary) {
        cell.typed = cell.shown;
        return cell;
    }
    const auto whats = decisionsOf(column, row.frame, {}, at.both.kind.value_or(""));
    const auto decided = desk.journal().decided().find(whats.front());
    if (decided != desk.journal().decided().end()) cell.typed = asText(decided->second);
    return cell;
}

Cell worstCell(const Check* worst) {
    Cell cell;
    if (worst == nullptr) return cell;
    cell.status = worst->status;
    const QString thing = thingShort(worst->id);
    cell.shown = worst->margin ? QStringLiteral("%1 %2 %3, %4")
                                     .arg(marginWords(*worst), thing,
                                          worst->limitState == LimitStateKind::combined &&
                                                  worst->group == "ballast"
                                              ? tr("rod + shear")
                                              : stateWords(*worst),
                                          caseShort(worst->loadCase))
                               : QStringLiteral("%1 %2").arg(marginWords(*worst), thing);
    cell.from = thingTitle(worst->id) + QStringLiteral(": ") +
                (worst->why.empty() ? checkLine(*worst) : asText(worst->why));
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

RowMaker::RowMaker(const Desk& desk)
    : desk_(desk),
      speech_(speechOf(desk.project())),
      worst_(worstByFrame(*desk.results(), speech_.basis)) {
    for (const PlacedBolt& placed : desk.results()->ballastBolts->placed)
        boltsAt_[placed.frame].push_back(placed.id);
    for (int i = 0; i < columnCount; ++i)
        fields_[static_cast<std::size_t>(i)] = fieldOf(static_cast<Column>(i));
}

const Check* RowMaker::worst(const std::string& frame) const {
    const auto found = worst_.find(frame);
    return found == worst_.end() ? nullptr : found->second;
}

void RowMaker::putWorst(StationRow& row) const {
    Cell& cell = row.cells[static_cast<std::size_t>(Column::worst)];
    cell = worstCell(worst(row.frame));
    row.status = cell.status;
}

StationRow RowMaker::row(const std::string& frame) const {
    StationRow row;
    row.frame = frame;
    if (const auto bolts = boltsAt_.find(frame); bolts != boltsAt_.end()) row.bolts = bolts->second;
    std::map<std::string, AtFrame> fastenings;
    for (const char* group : {"heel", "arm", "floor_bolt", "plank"}) {
        const auto at = [&](const char* side) {
            return standingAt(desk_.project(), group, frame, side);
        };
        fastenings[group] = {at(""), at("P"), at("S")};
    }
    for (int i = 0; i < columnCount; ++i) {
        const auto column = static_cast<Column>(i);
        Cell& cell = row.cells[static_cast<std::size_t>(i)];
        const std::string group = fasteningOf(column);
        if (column == Column::worst) {
            putWorst(row);
        } else if (column == Column::bolt) {
            cell = boltCell(row);
        } else if (!group.empty()) {
            cell = fasteningCell(desk_, column, row, fastenings[group], speech_.units);
        } else {
            cell = decisionCell(desk_, column, *fields_[static_cast<std::size_t>(i)], row,
                                speech_.units);
        }
    }
    return row;
}

std::vector<StationRow> stationRows(const Desk& desk) {
    const RowMaker maker(desk);
    std::vector<StationRow> rows;
    for (const std::string& frame : frameIds(desk.project())) rows.push_back(maker.row(frame));
    return rows;
}

}  // namespace fayline
