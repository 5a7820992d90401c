#include <algorithm>
#include <array>
#include <charconv>
#include <map>
#include <nlohmann/json.hpp>

#include "json.h"
#include "quantity/csv.h"
#include "quantity/printing.h"
#include "reports.h"
#include "stations_report.h"

namespace fayline::cli {
namespace {

Json caseJson(const CaseLoads& loads) {
    Json json;
    json["case"] = nameOf(loads.loadCase);
    json["duration"] = nameOf(loads.settings.duration);
    json["kind_of_load"] = nameOf(loads.settings.kind);
    json["load_factor"] = loads.settings.factor;
    json["keel_axis_z_mm"] = mm(loads.axisHeight);
    json["total"] = {{"force_N", newton(loads.total)},
                     {"moment_Nm", newtonMetre(loads.totalMoment)},
                     {"at_mm", mm(loads.at)}};
    json["demand_factor"] = {{"us", 1.0}, {"ec5", loads.settings.ec5Factor}};
    json["residual"] = {{"force_N", newton(loads.residual.force)},
                        {"moment_Nm", newtonMetre(loads.residual.moment)},
                        {"relative", loads.residual.relative}};
    json["carried"] = loads.carried;
    json["settled"] = loads.settled;
    json["why"] = textOrNull(loads.why);
    if (loads.bed) {
        json["bed"] = {{"resultant_N", newton(loads.bed->resultant)},
                       {"at_x_mm", mm(loads.bed->along)},
                       {"at_y_mm", mm(loads.bed->at)},
                       {"contact_from_y_mm", mm(loads.bed->neutral)},
                       {"highest_MPa", inMegapascals(loads.bed->highest)}};
    } else {
        json["bed"] = nullptr;
    }
    json["source"] = loads.settings.source;
    json["standing"] = standingText(loads.settings.standing);
    return json;
}

Json checkJson(const Check& check) {
    Json json;
    json["id"] = check.id;
    json["frame"] = textOrNull(check.frame);
    json["group"] = check.group;
    json["stands"] = check.stands;
    json["case"] = nameOf(check.loadCase);
    json["basis"] = nameOf(check.basis);
    json["limit_state"] = nameOf(check.limitState);
    json["moisture"] = check.moisture;
    json["class"] = nameOf(check.consequence);
    json["demand_N"] = newton(check.demand);
    json["working_N"] = newton(check.working);
    json["gives_N"] = band(check.gives);
    json["apart_N"] = band(check.apart);
    json["margin"] = number(check.margin);
    json["status"] = nameOf(check.status);
    json["soft"] = check.soft;
    json["clause"] = textOrNull(check.clause);
    json["standing"] = standingText(check.standing);
    json["outside"] = check.outside;
    json["why"] = textOrNull(check.why);
    return json;
}

Json missingJson(const Results& results) {
    Json missing = Json::array();
    for (const Missing& m : results.missing)
        missing.push_back({{"what", m.what}, {"says", m.says}});
    return missing;
}

std::string cell(const std::optional<Force>& force) {
    return force ? exactText(inNewtons(*force)) : "";
}
std::string cell(const std::optional<double>& value) {
    return value ? exactText(*value) : "";
}

std::string padded(std::string text, std::size_t width) {
    std::size_t letters = 0;
    for (const char c : text) letters += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1 : 0;
    if (letters < width) text.append(width - letters, ' ');
    return text;
}

/// "1.5e-15", whatever the locale.
std::string twoDigits(double value) {
    std::array<char, 32> text;
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value,
                                   std::chars_format::scientific, 1);
    return {text.data(), end.ptr};
}

/// What lies outside the range of a formula, each rule once with the number of checks it touches.
std::map<std::string, int> outsideOnce(const Results& results) {
    std::map<std::string, int> rules;
    for (const Check* check : results.worstFirst) {
        for (const std::string& says : check->outside) ++rules[says];
    }
    return rules;
}

std::string countsLine(const Results& results) {
    std::map<Status, int> counts;
    for (const Check* check : results.worstFirst) ++counts[check->status];
    std::string line;
    for (const auto& [status, count] : counts) {
        line +=
            (line.empty() ? "" : " · ") + std::to_string(count) + " " + std::string(nameOf(status));
    }
    return line.empty() ? "nothing checked" : line;
}

}  // namespace

std::string marginsJson(const Session& session) {
    const Results& results = *session.results;
    Json json = jsonHead("fayline.margins/1", &session);
    json["basis"] = session.project.hull.basis.value_or("us");
    json["cases"] = Json::array();
    for (const auto& loads : results.cases) json["cases"].push_back(caseJson(*loads));
    json["stations"] = stationsJson(results);
    json["checks"] = Json::array();
    for (const Check* check : results.worstFirst) json["checks"].push_back(checkJson(*check));
    json["outside"] = Json::array();
    for (const auto& [says, checks] : outsideOnce(results))
        json["outside"].push_back({{"says", says}, {"checks", checks}});
    json["missing"] = missingJson(results);
    addCautions(json, &results);
    return jsonText(json);
}

std::string marginsCsv(const Session& session) {
    std::string text = csvLine(
        {"id",           "frame",       "group",        "stands",   "case",      "basis",
         "limit_state",  "moisture",    "class",        "demand_N", "working_N", "gives_low_N",
         "gives_high_N", "apart_low_N", "apart_high_N", "margin",   "status",    "soft",
         "clause",       "standing",    "why"});
    for (const Check* check : session.results->worstFirst) {
        const auto low = [](const std::optional<Band>& b) {
            return b ? cell(std::optional(b->low)) : "";
        };
        const auto high = [](const std::optional<Band>& b) {
            return b ? cell(std::optional(b->high)) : "";
        };
        text += csvLine({check->id,
                         check->frame,
                         check->group,
                         std::to_string(check->stands),
                         std::string(nameOf(check->loadCase)),
                         std::string(nameOf(check->basis)),
                         std::string(nameOf(check->limitState)),
                         check->moisture,
                         std::string(nameOf(check->consequence)),
                         cell(check->demand),
                         cell(check->working),
                         low(check->gives),
                         high(check->gives),
                         low(check->apart),
                         high(check->apart),
                         cell(check->margin),
                         std::string(nameOf(check->status)),
                         check->soft ? "soft" : "sudden",
                         check->clause,
                         std::string(standingText(check->standing)),
                         check->why});
    }
    return text;
}

std::string marginsText(const Session& session) {
    const Results& results = *session.results;
    const UnitSystem units =
        session.project.hull.units == "millimetres" ? UnitSystem::millimetres : UnitSystem::inches;
    std::string text = session.name() + ": margins, worst first\n" + countsLine(results) + "\n\n";
    for (const Missing& m : results.missing) text += "missing: " + m.says + " (" + m.what + ")\n";
    if (!results.missing.empty()) text += "\n";
    if (!results.worstFirst.empty()) {
        text += padded("margin", 9) + padded("status", 10) + padded("what", 18) +
                padded("frame", 7) + padded("limit state", 13) + padded("basis", 7) +
                padded("case", 22) + padded("demand", 12) + "can carry\n";
    }
    constexpr std::size_t most = 500;
    std::size_t shown = 0;
    for (const Check* check : results.worstFirst) {
        if (check->status == Status::unloaded || ++shown > most) continue;
        text += padded(check->margin ? marginText(*check->margin) : "—", 9) +
                padded(std::string(nameOf(check->status)), 10) + padded(check->id, 18) +
                padded(check->frame.empty() ? "—" : check->frame, 7) +
                padded(std::string(nameOf(check->limitState)), 13) +
                padded(std::string(nameOf(check->basis)), 7) +
                padded(std::string(nameOf(check->loadCase)), 22) +
                padded(check->demand ? displayForce(*check->demand, units) : "—", 12) +
                (check->working ? displayForce(*check->working, units) : check->why) + "\n";
    }
    if (shown > most) {
        text += "and " + std::to_string(shown - most) +
                " more that hold better; --csv and --json list every one\n";
    }
    const auto outside = outsideOnce(results);
    if (!outside.empty()) text += "\nOutside the range of a formula, each rule once:\n";
    for (const auto& [says, checks] : outside)
        text += "  " + says + " (" + std::to_string(checks) +
                (checks == 1 ? " check)\n" : " checks)\n");
    if (!results.cases.empty()) text += "\nEquilibrium, what is left over of each case:\n";
    for (const auto& loads : results.cases) {
        text += "  " + padded(std::string(nameOf(loads->loadCase)), 22) +
                twoDigits(loads->residual.relative) +
                (loads->why.empty() ? "" : "  " + loads->why) + "\n";
    }
    text += "\n";
    for (const std::string& caution : results.cautions) text += caution + "\n";
    return text;
}

}  // namespace fayline::cli
