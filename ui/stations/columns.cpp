#include "columns.h"

#include <QCoreApplication>
#include <array>

#include "words/things.h"
#include "words/values.h"

namespace fayline {
namespace {

struct Spec {
    ColumnGroup group;
    ColumnPart part;
    const char* decision;  ///< with a sample place; empty: none, or by its part
    const char* title;
    bool inOverview;
};
using G = ColumnGroup;
using P = ColumnPart;

constexpr std::array<Spec, columnCount> specs = {{
    {G::frame, P::single, "F1.frame.x", QT_TRANSLATE_NOOP("Column", "From FP"), true},
    {G::frame, P::single, "F1.frame.sided", QT_TRANSLATE_NOOP("Column", "Frame siding"), false},
    {G::frame, P::single, "F1.frame.moulded", QT_TRANSLATE_NOOP("Column", "Frame moulding"), false},
    {G::frame, P::single, "F1.frame.heel_detail", QT_TRANSLATE_NOOP("Column", "Heel detail"), true},
    {G::floor, P::single, "F1.floor.kind", QT_TRANSLATE_NOOP("Column", "Floor"), true},
    {G::floor, P::single, "F1.floor.topology", QT_TRANSLATE_NOOP("Column", "Floor sits"), false},
    {G::floor, P::single, "F1.floor.sided", QT_TRANSLATE_NOOP("Column", "Floor siding"), false},
    {G::floor, P::single, "F1.floor.throat", QT_TRANSLATE_NOOP("Column", "Floor throat"), false},
    {G::floor, P::single, "F1.floor.wood", QT_TRANSLATE_NOOP("Column", "Floor wood"), false},
    {G::heel, P::summary, "", QT_TRANSLATE_NOOP("Column", "Each side"), true},
    {G::heel, P::kind, "", QT_TRANSLATE_NOOP("Column", "Kind"), false},
    {G::heel, P::count, "", QT_TRANSLATE_NOOP("Column", "Number each side"), false},
    {G::heel, P::size, "", QT_TRANSLATE_NOOP("Column", "Gauge or ⌀"), false},
    {G::heel, P::length, "", QT_TRANSLATE_NOOP("Column", "Length"), false},
    {G::heel, P::metal, "", QT_TRANSLATE_NOOP("Column", "Metal"), false},
    {G::arm, P::summary, "", QT_TRANSLATE_NOOP("Column", "Each arm"), true},
    {G::arm, P::kind, "", QT_TRANSLATE_NOOP("Column", "Kind"), false},
    {G::arm, P::count, "", QT_TRANSLATE_NOOP("Column", "Number each arm"), false},
    {G::arm, P::size, "", QT_TRANSLATE_NOOP("Column", "Gauge or ⌀"), false},
    {G::arm, P::length, "", QT_TRANSLATE_NOOP("Column", "Length"), false},
    {G::arm, P::metal, "", QT_TRANSLATE_NOOP("Column", "Metal"), false},
    {G::keelBolt, P::summary, "", QT_TRANSLATE_NOOP("Column", "Bolts or drifts"), true},
    {G::keelBolt, P::kind, "", QT_TRANSLATE_NOOP("Column", "Kind"), false},
    {G::keelBolt, P::count, "", QT_TRANSLATE_NOOP("Column", "Number"), false},
    {G::keelBolt, P::size, "", QT_TRANSLATE_NOOP("Column", "Gauge or ⌀"), false},
    {G::keelBolt, P::length, "", QT_TRANSLATE_NOOP("Column", "Length"), false},
    {G::keelBolt, P::metal, "", QT_TRANSLATE_NOOP("Column", "Metal"), false},
    {G::plank, P::summary, "", QT_TRANSLATE_NOOP("Column", "Each crossing"), true},
    {G::plank, P::kind, "", QT_TRANSLATE_NOOP("Column", "Kind"), false},
    {G::plank, P::count, "", QT_TRANSLATE_NOOP("Column", "Number each crossing"), false},
    {G::plank, P::size, "", QT_TRANSLATE_NOOP("Column", "Gauge or ⌀"), false},
    {G::plank, P::length, "", QT_TRANSLATE_NOOP("Column", "Length"), false},
    {G::plank, P::metal, "", QT_TRANSLATE_NOOP("Column", "Metal"), false},
    {G::ballast, P::bolts, "", QT_TRANSLATE_NOOP("Column", "Ballast bolt"), true},
    {G::ballast, P::single, "K.1.diameter", QT_TRANSLATE_NOOP("Column", "Bolt ⌀"), true},
    {G::ballast, P::single, "K.1.metal", QT_TRANSLATE_NOOP("Column", "Bolt metal"), false},
    {G::ballast, P::single, "K.1.washer_diameter", QT_TRANSLATE_NOOP("Column", "Washer ⌀"), false},
    {G::ballast, P::single, "K.1.washer_thickness", QT_TRANSLATE_NOOP("Column", "Washer thick"),
     false},
    {G::worst, P::worst, "", QT_TRANSLATE_NOOP("Column", "Worst"), true},
}};

constexpr std::array<const char*, columnSetCount> setTitles = {
    QT_TRANSLATE_NOOP("Column", "Overview"),   QT_TRANSLATE_NOOP("Column", "Frame"),
    QT_TRANSLATE_NOOP("Column", "Floor"),      QT_TRANSLATE_NOOP("Column", "Heel"),
    QT_TRANSLATE_NOOP("Column", "Arm"),        QT_TRANSLATE_NOOP("Column", "Floor to keel"),
    QT_TRANSLATE_NOOP("Column", "Plank"),      QT_TRANSLATE_NOOP("Column", "Ballast"),
    QT_TRANSLATE_NOOP("Column", "All columns")};

const Spec& specOf(Column column) {
    return specs[static_cast<std::size_t>(column)];
}

/// The last part of a decision's name.
const char* fieldName(ColumnPart part, const std::string& kind) {
    switch (part) {
        case P::kind:
            return "kind";
        case P::count:
            return "count";
        case P::size:
            return kind == "wood_screw" ? "gauge" : "diameter";
        case P::length:
            return "length";
        case P::metal:
            return "metal";
        default:
            return nullptr;
    }
}

const Field* found(const std::string& decision) {
    const auto target = findDecision(decision);
    return target ? target->field : nullptr;
}

}  // namespace

ColumnGroup groupOf(Column column) {
    return specOf(column).group;
}
ColumnPart partOf(Column column) {
    return specOf(column).part;
}

bool isShown(Column column, ColumnSet set) {
    const Spec& spec = specOf(column);
    if (spec.part == P::worst) return true;
    if (set == ColumnSet::overview) return spec.inOverview;
    if (spec.part == P::summary) return false;
    if (set == ColumnSet::all) return true;
    return static_cast<int>(spec.group) == static_cast<int>(set) - 1;
}

std::string fasteningOf(Column column) {
    switch (specOf(column).group) {
        case G::heel:
            return "heel";
        case G::arm:
            return "arm";
        case G::keelBolt:
            return "floor_bolt";
        case G::plank:
            return "plank";
        default:
            return {};
    }
}

bool hasSides(Column column) {
    return specOf(column).group == G::heel || specOf(column).group == G::arm;
}
bool isBoltColumn(Column column) {
    return specOf(column).group == G::ballast && specOf(column).part == P::single;
}

const Field* fieldOf(Column column, const std::string& kind) {
    const Spec& spec = specOf(column);
    if (spec.decision[0] != '\0') return found(spec.decision);
    const char* name = fieldName(spec.part, kind);
    return name == nullptr ? nullptr : found("F1." + fasteningOf(column) + "." + name);
}

std::vector<std::string> decisionsOf(Column column, const std::string& frame,
                                     const std::vector<std::string>& bolts, const std::string& kind,
                                     const std::string& side) {
    const Spec& spec = specOf(column);
    const std::string decision = spec.decision;
    if (isBoltColumn(column)) {
        std::vector<std::string> whats;
        for (const std::string& bolt : bolts) whats.push_back(bolt + decision.substr(3));
        return whats;
    }
    if (!decision.empty()) return {frame + decision.substr(2)};
    const std::string group = fasteningOf(column);
    if (group.empty()) return {};
    const std::string front = frame + (side.empty() ? "" : "." + side) + "." + group + ".";
    if (spec.part == P::summary)
        return {front + "count", front + "gauge", front + "diameter", front + "length"};
    const char* name = fieldName(spec.part, kind);
    return name == nullptr ? std::vector<std::string>{} : std::vector<std::string>{front + name};
}

QString titleOf(Column column) {
    return QCoreApplication::translate("Column", specOf(column).title);
}

QString titleOf(ColumnGroup group) {
    switch (group) {
        case G::frame:
            return QCoreApplication::translate("Column", "Frame");
        case G::floor:
            return QCoreApplication::translate("Column", "Floor");
        case G::heel:
            return groupWords("heel");
        case G::arm:
            return groupWords("arm");
        case G::keelBolt:
            return groupWords("floor");
        case G::plank:
            return groupWords("plank");
        case G::ballast:
            return groupWords("ballast");
        case G::worst:
            return QCoreApplication::translate("Column", "Margin");
    }
    return {};
}

QString titleOf(ColumnSet set) {
    return QCoreApplication::translate("Column", setTitles[static_cast<std::size_t>(set)]);
}

QString unitOf(Column column, UnitSystem units) {
    if (partOf(column) == ColumnPart::size) return {};  // a gauge or a length; the cell says which
    const Field* field = fieldOf(column);
    return field == nullptr ? QString() : unitOf(*field, units);
}

}  // namespace fayline
