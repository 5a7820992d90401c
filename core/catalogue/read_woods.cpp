#include <algorithm>
#include <array>
#include <set>

#include "property.h"
#include "readers.h"

namespace fayline {
namespace {

constexpr std::array<std::string_view, 6> columns{"wood",     "property", "value",
                                                  "moisture", "source",   "standing"};

constexpr Limits<Stress> anyStrength{megapascals(0.1), megapascals(400.0), "0.1 MPa to 400 MPa"};
constexpr Limits<Stress> acrossStrength{megapascals(0.1), megapascals(80.0), "0.1 MPa to 80 MPa"};
constexpr Limits<Stress> anyModulus{megapascals(1000.0), megapascals(40000.0),
                                    "1000 MPa to 40000 MPa"};
constexpr Limits<Stress> acrossModulus{megapascals(50.0), megapascals(6000.0),
                                       "50 MPa to 6000 MPa"};
constexpr Limits<double> anyGravity{0.08, 1.40, "0.08 to 1.40"};
constexpr Limits<double> anyRatio{0.005, 0.5, "0.005 to 0.5"};
constexpr Limits<double> anyShrinkage{0.0, 0.25, "0 % to 25 %"};
constexpr Limits<Density> anyDensity{kilogramsPerCubicMetre(80.0), kilogramsPerCubicMetre(1400.0),
                                     "80 kg/m3 to 1400 kg/m3"};

/// Properties measured at one of the two moistures.
constexpr std::array<Property<ClearWood, Stress>, 5> clearStresses{
    {{"modulus_of_rupture", anyStrength, [](ClearWood& w) -> auto& {return w.modulusOfRupture;
}  // namespace
}  // namespace fayline
, {"modulus_of_elasticity", anyModulus, [](ClearWood& w) -> auto& {return w.modulusOfElasticity;
}
}
, {"compression_parallel", anyStrength, [](ClearWood& w) -> auto& {return w.compressionParallel;
}
}
, {"compression_perpendicular", acrossStrength,
   [](ClearWood& w) -> auto& {return w.compressionPerpendicular;
}
}
, {"shear", acrossStrength, [](ClearWood& w) -> auto& {return w.shear;
}
}
,
}
}
;

constexpr std::array<Property<Wood, Stress>, 8> designStresses{
    {{"us_compression_perpendicular", acrossStrength,
      [](Wood& w) -> auto& {return w.us.compressionPerpendicular;
}
}
, {"us_shear", acrossStrength, [](Wood& w) -> auto& {return w.us.shear;
}
}
, {"ec5_bending", anyStrength, [](Wood& w) -> auto& {return w.ec5.bending;
}
}
, {"ec5_compression_parallel", anyStrength, [](Wood& w) -> auto& {return w.ec5.compressionParallel;
}
}
, {"ec5_compression_perpendicular", acrossStrength,
   [](Wood& w) -> auto& {return w.ec5.compressionPerpendicular;
}
}
, {"ec5_shear", acrossStrength, [](Wood& w) -> auto& {return w.ec5.shear;
}
}
, {"ec5_modulus_parallel", anyModulus, [](Wood& w) -> auto& {return w.ec5.modulusParallel;
}
}
, {"ec5_modulus_perpendicular", acrossModulus,
   [](Wood& w) -> auto& {return w.ec5.modulusPerpendicular;
}
}
,
}
}
;

constexpr std::array<Property<Wood, double>, 4> ratios{
    {{"modulus_ratio_tangential", anyRatio, [](Wood& w) -> auto& {return w.modulusRatioTangential;
}
}
, {"modulus_ratio_radial", anyRatio, [](Wood& w) -> auto& {return w.modulusRatioRadial;
}
}
, {"shrinkage_radial", anyShrinkage, [](Wood& w) -> auto& {return w.shrinkageRadial;
}
}
, {"shrinkage_tangential", anyShrinkage, [](Wood& w) -> auto& {return w.shrinkageTangential;
}
}
,
}
}
;

std::vector<std::string> propertyNames() {
    std::vector<std::string> names{"name",
                                   "family",
                                   "specific_gravity",
                                   "us_specific_gravity",
                                   "ec5_density",
                                   "ec5_strength_class"};
    addNames(names, clearStresses);
    addNames(names, designStresses);
    addNames(names, ratios);
    return names;
}

bool hasMoisture(std::string_view property) {
    if (property == "specific_gravity") return true;
    for (const auto& one : clearStresses) {
        if (one.name == property) return true;
    }
    return false;
}

/// The moisture of a property that has one; refuses a moisture missing or where none belongs.
std::optional<WoodMoisture> moistureOf(RowReader& row, std::string_view property) {
    if (!hasMoisture(property)) {
        if (!row.isEmpty("moisture")) {
            row.refuse("catalogue.moisture", "moisture",
                       std::string(property) + " has no moisture of its own", "leave it empty");
        }
        return std::nullopt;
    }
    const auto moisture = woodMoistureFromText(row.cell("moisture"));
    if (!moisture) row.refuseWord("catalogue.moisture", "moisture", {"green", "12 %"});
    return moisture;
}

template <typename Kind>
std::optional<Figure<Kind>> gravity(RowReader& row) {
    const auto value = row.ratio("value", anyGravity);
    return row.figure(value ? std::optional<Kind>(Kind{*value}) : std::nullopt);
}

bool takeNamed(RowReader& row, Wood& wood, std::string_view property) {
    if (property == "name") {
        if (auto name = row.figure(row.words("value"))) wood.name = *name;
    } else if (property == "family") {
        const auto family = woodFamilyFromText(row.cell("value"));
        if (!family) row.refuseWord("catalogue.family", "value", {"softwood", "hardwood"});
        if (const auto figure = row.figure(family)) wood.family = figure->value;
    } else if (property == "us_specific_gravity") {
        wood.us.specificGravity = gravity<SpecificGravityOvenDry>(row);
    } else if (property == "ec5_density") {
        const auto value = row.density("value", anyDensity);
        wood.ec5.density =
            row.figure(value ? std::optional(CharacteristicDensity{*value}) : std::nullopt);
    } else if (property == "ec5_strength_class") {
        wood.ec5.strengthClass = row.figure(row.words("value"));
    } else {
        return false;
    }
    return true;
}

void takeRow(RowReader& row, Wood& wood, const std::string& property,
             std::optional<WoodMoisture> moisture) {
    if (moisture) {
        const bool isGreen = *moisture == WoodMoisture::green;
        if (property != "specific_gravity") {
            take(row, isGreen ? wood.green : wood.twelve, property, clearStresses);
        } else if (isGreen) {
            wood.specificGravityGreen = gravity<SpecificGravityGreen>(row);
        } else {
            wood.specificGravityTwelve = gravity<SpecificGravityTwelve>(row);
        }
        return;
    }
    if (takeNamed(row, wood, property) || take(row, wood, property, designStresses)) return;
    take(row, wood, property, ratios);
}

bool hasDensity(const Wood& wood) {
    return wood.specificGravityGreen || wood.specificGravityTwelve || wood.us.specificGravity ||
           wood.ec5.density;
}

}  // namespace

std::map<std::string, Wood> readWoods(const CsvFile& file, Problems& problems) {
    std::map<std::string, Wood> woods;
    if (!hasColumns(file, columns, problems)) return woods;
    const auto names = propertyNames();
    SeenRows seen;
    std::set<std::string> withFamily;
    const auto before = problems.size();
    for (const auto& csv : file.rows) {
        RowReader row(file, csv, problems);
        const auto id = row.id("wood");
        const std::string property(row.cell("property"));
        if (std::find(names.begin(), names.end(), property) == names.end()) {
            row.refuseWord("catalogue.property_unknown", "property", names);
            continue;
        }
        const auto moisture = moistureOf(row, property);
        if (!id || (hasMoisture(property) && !moisture)) continue;
        const std::string at(moisture ? woodMoistureText(*moisture) : "");
        if (!seen.first(row, *id + " " + property + (at.empty() ? "" : " " + at), "property")) {
            continue;
        }
        auto& wood = woods[*id];
        wood.id = *id;
        if (property == "family") withFamily.insert(*id);
        takeRow(row, wood, property, moisture);
    }
    if (problems.size() != before) return woods;
    for (const auto& [id, wood] : woods) {
        const auto refuse = [&, where = file.name + ": " + id](std::string_view what) {
            problems.push_back({"catalogue.incomplete", where,
                                "the wood has no " + std::string(what),
                                "name, family and at least one density or specific gravity"});
        };
        if (wood.name.value.empty()) refuse("name");
        if (!withFamily.contains(id)) refuse("family");
        if (!hasDensity(wood)) refuse("density");
    }
    return woods;
}

}  // namespace fayline
