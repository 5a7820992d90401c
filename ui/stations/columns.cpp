#include "columns.h"

#include <QCoreApplication>
#include <array>

#include "words/values.h"

namespace fayline {
namespace {

struct Spec {
    const char* decision;  ///< with a sample place; empty: worked out
    const char* title;
};

constexpr std::array<Spec, columnCount> specs = {{
    {"F1.frame.x", QT_TRANSLATE_NOOP("Column", "From FP")},
    {"F1.floor.kind", QT_TRANSLATE_NOOP("Column", "Floor")},
    {"F1.floor.sided", QT_TRANSLATE_NOOP("Column", "Floor siding")},
    {"F1.floor.throat", QT_TRANSLATE_NOOP("Column", "Floor throat")},
    {"F1.floor.wood", QT_TRANSLATE_NOOP("Column", "Floor wood")},
    {"", QT_TRANSLATE_NOOP("Column", "Ballast bolt")},
    {"K.1.diameter", QT_TRANSLATE_NOOP("Column", "Bolt ⌀")},
    {"K.1.metal", QT_TRANSLATE_NOOP("Column", "Bolt metal")},
    {"K.1.washer_diameter", QT_TRANSLATE_NOOP("Column", "Washer ⌀")},
    {"K.1.washer_thickness", QT_TRANSLATE_NOOP("Column", "Washer thick")},
    {"", QT_TRANSLATE_NOOP("Column", "Worst")},
}};

const Spec& specOf(Column column) {
    return specs[static_cast<std::size_t>(column)];
}

}  // namespace

const Field* fieldOf(Column column) {
    const std::string decision = specOf(column).decision;
    if (decision.empty()) return nullptr;
    const auto target = findDecision(decision);
    return target ? target->field : nullptr;
}

bool isBoltColumn(Column column) {
    return specOf(column).decision[0] == 'K';
}

std::vector<std::string> decisionsOf(Column column, const std::string& frame,
                                     const std::vector<std::string>& bolts) {
    const std::string decision = specOf(column).decision;
    if (decision.empty()) return {};
    if (!isBoltColumn(column)) return {frame + decision.substr(2)};
    std::vector<std::string> whats;
    for (const std::string& bolt : bolts) whats.push_back(bolt + decision.substr(3));
    return whats;
}

QString titleOf(Column column) {
    return QCoreApplication::translate("Column", specOf(column).title);
}

QString unitOf(Column column, UnitSystem units) {
    const Field* field = fieldOf(column);
    return field == nullptr ? QString() : unitOf(*field, units);
}

}  // namespace fayline
