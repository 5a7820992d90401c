#include <cmath>
#include <nlohmann/json.hpp>

#include "derive/paper.h"
#include "json.h"
#include "quantity/csv.h"
#include "quantity/printing.h"
#include "reports.h"

namespace fayline::cli {
namespace {

TakeOff takeOffFor(const Session& session) {
    return takeOffOf(session.project, *session.results, *session.catalogue);
}

/// To a gram: finer than any scale in a yard, coarser than the figures it comes from.
Json kilograms(const std::optional<Mass>& mass) {
    if (!mass) return nullptr;
    return std::round(inKilograms(*mass) * 1000.0) / 1000.0;
}

Json countOrNull(const std::optional<int>& count) {
    return count ? Json(*count) : Json(nullptr);
}

std::string cell(const Json& value) {
    if (value.is_null()) return {};
    return value.is_string() ? value.get<std::string>() : value.dump();
}

Json lineJson(const TakeOffLine& line) {
    Json json;
    json["stock"] = textOrNull(line.stock);
    json["kind"] = line.kind;
    json["metal"] = textOrNull(line.metal);
    json["size"] = line.size;
    json["length_mm"] = mm(line.length);
    json["count"] = line.count;
    json["spare"] = line.spare;
    json["shelf"] = countOrNull(line.shelf);
    json["order"] = line.order;
    json["mass_kg"] = kilograms(line.mass);
    json["price"] = nullptr;
    json["currency"] = nullptr;
    json["groups"] = line.groups;
    json["why"] = textOrNull(line.why);
    return json;
}

std::string padded(std::string text, std::size_t width) {
    std::size_t letters = 0;
    for (const char c : text) letters += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1U : 0U;
    if (letters < width) text.insert(0, width - letters, ' ');
    return text;
}

}  // namespace

std::string metalJson(const Session& session) {
    const TakeOff takeOff = takeOffFor(session);
    Json json = jsonHead("fayline.metal/1", &session);
    json["lines"] = Json::array();
    for (const TakeOffLine& line : takeOff.lines) json["lines"].push_back(lineJson(line));
    json["totals"] = {{"count", takeOff.count},
                      {"mass_kg", kilograms(takeOff.mass)},
                      {"price", nullptr},
                      {"currency", nullptr}};
    json["rules"] = takeOff.rules;
    addCautions(json, session.results.get());
    return jsonText(json);
}

std::string metalCsv(const Session& session) {
    const std::vector<std::string> names{"stock",     "kind",    "metal", "size",
                                         "length_mm", "count",   "spare", "shelf",
                                         "order",     "mass_kg", "price", "currency"};
    std::string text = csvLine(names);
    for (const TakeOffLine& line : takeOffFor(session).lines) {
        const Json json = lineJson(line);
        std::vector<std::string> cells;
        cells.reserve(names.size());
        for (const std::string& name : names) cells.push_back(cell(json[name]));
        text += csvLine(cells);
    }
    return text;
}

std::string metalText(const Session& session) {
    const TakeOff takeOff = takeOffFor(session);
    const UnitSystem units =
        session.project.hull.units == "millimetres" ? UnitSystem::millimetres : UnitSystem::inches;
    const LengthStyle style =
        units == UnitSystem::inches ? LengthStyle::inchFractions : LengthStyle::millimetres;
    std::string text = session.name() + ": " + std::to_string(takeOff.count) +
                       (takeOff.count == 1 ? " fastening" : " fastenings") + "\n";
    std::string metal = "\n";
    for (const TakeOffLine& line : takeOff.lines) {
        if (line.metalName != metal) text += "\n" + line.metalName + "\n";
        metal = line.metalName;
        std::string kind = line.kind;
        for (char& c : kind) c = c == '_' ? ' ' : c;
        text += padded(std::to_string(line.count), 6) + " + " +
                padded(std::to_string(line.spare), 3) + " spare, order " +
                padded(std::to_string(line.order), 5) + "  " + kind + " " + line.size;
        if (line.length) text += " × " + displayLength(*line.length, style);
        text +=
            line.mass ? ", " + displayMass(*line.mass, units) : ", weight not known: " + line.why;
        text += "\n";
    }
    text += "\n";
    text +=
        takeOff.mass
            ? "Weight in all: " + displayMass(*takeOff.mass, units) + "\n"
            : "Weight of the lines that are known: " + displayMass(takeOff.knownMass, units) + "\n";
    text += "Price: not known; no prices are kept yet.\n\n";
    for (const std::string& rule : takeOff.rules) text += rule + "\n";
    text += "\n";
    for (const std::string& caution : session.results->cautions) text += caution + "\n";
    return text;
}

}  // namespace fayline::cli
