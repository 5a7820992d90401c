#include <algorithm>
#include <array>
#include <set>

#include "property.h"
#include "readers.h"

namespace fayline {
namespace {

constexpr std::array<std::string_view, 5> columns{"metal", "property", "value", "source",
                                                  "standing"};

constexpr Limits<Stress> anyStrength{megapascals(2.0), megapascals(2500.0), "2 MPa to 2500 MPa"};
constexpr Limits<Stress> anyModulus{megapascals(5000.0), megapascals(250000.0), "5 GPa to 250 GPa"};
constexpr Limits<Density> anyDensity{kilogramsPerCubicMetre(1500.0),
                                     kilogramsPerCubicMetre(12000.0), "1500 kg/m3 to 12000 kg/m3"};
constexpr Limits<double> anyElongation{0.0, 0.8, "0 % to 80 %"};

constexpr std::array<Property<Metal, Stress>, 6> stresses{
    {{"yield_min", anyStrength, [](Metal& m) -> auto& {return m.yieldMin;
}  // namespace
}  // namespace fayline
, {"yield_typical", anyStrength, [](Metal& m) -> auto& {return m.yieldTypical;
}
}
, {"ultimate_min", anyStrength, [](Metal& m) -> auto& {return m.ultimateMin;
}
}
, {"ultimate_typical", anyStrength, [](Metal& m) -> auto& {return m.ultimateTypical;
}
}
, {"shear", anyStrength, [](Metal& m) -> auto& {return m.shear;
}
}
, {"modulus", anyModulus, [](Metal& m) -> auto& {return m.modulus;
}
}
,
}
}
;
constexpr std::array<Property<Metal, Density>, 1> densities{
    {{"density", anyDensity, [](Metal& m) -> auto& {return m.density;
}
}
,
}
}
;
constexpr std::array<Property<Metal, double>, 1> ratios{
    {{"elongation", anyElongation, [](Metal& m) -> auto& {return m.elongation;
}
}
,
}
}
;

std::vector<std::string> familyNames() {
    std::vector<std::string> names;
    for (const auto family :
         {MetalFamily::bronze, MetalFamily::copper, MetalFamily::nickel, MetalFamily::steel,
          MetalFamily::stainless, MetalFamily::iron, MetalFamily::lead}) {
        names.emplace_back(metalFamilyText(family));
    }
    return names;
}

std::vector<std::string> propertyNames() {
    std::vector<std::string> names{"name", "family", "corrosion"};
    addNames(names, stresses);
    addNames(names, densities);
    addNames(names, ratios);
    return names;
}

void takeRow(RowReader& row, Metal& metal, const std::string& property) {
    if (property == "name") {
        if (auto name = row.figure(row.words("value"))) metal.name = *name;
    } else if (property == "corrosion") {
        metal.corrosion = row.figure(row.words("value"));
    } else if (property == "family") {
        const auto family = metalFamilyFromText(row.cell("value"));
        if (!family) row.refuseWord("catalogue.family", "value", familyNames());
        if (const auto figure = row.figure(family)) metal.family = figure->value;
    } else if (!take(row, metal, property, stresses) && !take(row, metal, property, densities)) {
        take(row, metal, property, ratios);
    }
}

/// Yield above ultimate, or a guarantee above what is typical, is a slip of the pen.
std::optional<std::string> contradiction(const Metal& metal) {
    const auto above = [](const auto& a, const auto& b) { return a && b && a->value > b->value; };
    if (above(metal.yieldMin, metal.ultimateMin)) return "yield_min is above ultimate_min";
    if (above(metal.yieldTypical, metal.ultimateTypical)) {
        return "yield_typical is above ultimate_typical";
    }
    if (above(metal.yieldMin, metal.yieldTypical)) return "yield_min is above yield_typical";
    if (above(metal.ultimateMin, metal.ultimateTypical)) {
        return "ultimate_min is above ultimate_typical";
    }
    return std::nullopt;
}

}  // namespace

std::map<std::string, Metal> readMetals(const CsvFile& file, Problems& problems) {
    std::map<std::string, Metal> metals;
    if (!hasColumns(file, columns, problems)) return metals;
    const auto names = propertyNames();
    SeenRows seen;
    std::set<std::string> withFamily;
    const auto before = problems.size();
    for (const auto& csv : file.rows) {
        RowReader row(file, csv, problems);
        const auto id = row.id("metal");
        const std::string property(row.cell("property"));
        if (std::find(names.begin(), names.end(), property) == names.end()) {
            row.refuseWord("catalogue.property_unknown", "property", names);
            continue;
        }
        if (!id || !seen.first(row, *id + " " + property, "property")) continue;
        auto& metal = metals[*id];
        metal.id = *id;
        if (property == "family") withFamily.insert(*id);
        takeRow(row, metal, property);
    }
    if (problems.size() != before) return metals;
    for (const auto& [id, metal] : metals) {
        const auto refuse = [&, where = file.name + ": " + id](std::string code, std::string what,
                                                               std::string allowed) {
            problems.push_back({std::move(code), where, std::move(what), std::move(allowed)});
        };
        if (metal.name.value.empty() || !withFamily.contains(id) || !metal.density) {
            refuse("catalogue.incomplete", "the metal lacks its name, family or density",
                   "all three for every metal");
        }
        if (const auto what = contradiction(metal)) {
            refuse("catalogue.contradiction", *what, "yield below ultimate, least below typical");
        }
    }
    return metals;
}

}  // namespace fayline
