#include <algorithm>
#include <nlohmann/json.hpp>

#include "json.h"
#include "quantity/csv.h"
#include "quantity/printing.h"
#include "reports.h"

namespace fayline::cli {
namespace {

Json holeJson(const Hole& hole) {
    Json json;
    json["id"] = hole.id;
    json["mark"] = hole.mark;
    json["frame"] = textOrNull(hole.frame);
    json["side"] = textOrNull(hole.side);
    json["face"] = hole.face;
    json["group"] = hole.group;
    json["kind"] = hole.kind;
    json["joins"] = hole.joins;
    json["start_mm"] = mm(hole.start);
    json["end_mm"] = mm(hole.end);
    json["diameter_mm"] = mm(hole.diameter);
    json["length_mm"] = mm(hole.length);
    json["grip_mm"] = mm(hole.grip);
    json["steps"] = Json::array();
    for (const HoleStep& step : hole.steps) {
        json["steps"].push_back({{"drill", step.drill},
                                 {"diameter_mm", mm(step.diameter)},
                                 {"depth_mm", mm(step.depth)}});
    }
    json["bung_mm"] = mm(hole.bung);
    json["locked"] = hole.locked;
    json["drilled"] = hole.drilled;
    return json;
}

Json findingJson(const Finding& finding) {
    return {{"kind", finding.kind},
            {"holes", finding.holes},
            {"missing_mm", mm(finding.missing)},
            {"says", finding.says},
            {"cure", finding.cure}};
}

std::string counted(std::size_t count, const std::string& thing) {
    return std::to_string(count) + " " + thing + (count == 1 ? "" : "s");
}

std::string millimetreCell(Length length) {
    return exactText(numberIn(length, LengthUnit::mm));
}

}  // namespace

std::string holesJson(const Session& session) {
    Json json = jsonHead("fayline.holes/1", &session);
    json["holes"] = Json::array();
    for (const Hole* hole : allHoles(*session.results)) json["holes"].push_back(holeJson(*hole));
    json["findings"] = Json::array();
    for (const Finding* finding : allFindings(*session.results))
        json["findings"].push_back(findingJson(*finding));
    addCautions(json, session.results.get());
    return jsonText(json);
}

std::string holesCsv(const Session& session) {
    std::string text = csvLine({"id", "mark", "frame", "side", "face", "group", "kind",
                                "start_x_mm", "start_y_mm", "start_z_mm", "end_x_mm", "end_y_mm",
                                "end_z_mm", "diameter_mm", "length_mm", "grip_mm"});
    for (const Hole* hole : allHoles(*session.results)) {
        const Hole& h = *hole;
        text += csvLine(
            {h.id, h.mark, h.frame, h.side, h.face, h.group, h.kind, millimetreCell(h.start.x),
             millimetreCell(h.start.y), millimetreCell(h.start.z), millimetreCell(h.end.x),
             millimetreCell(h.end.y), millimetreCell(h.end.z), millimetreCell(h.diameter),
             millimetreCell(h.length), millimetreCell(h.grip)});
    }
    return text;
}

std::string holesText(const Session& session) {
    const auto holes = allHoles(*session.results);
    const auto findings = allFindings(*session.results);
    const LengthStyle style = session.project.hull.units == "millimetres"
                                  ? LengthStyle::millimetres
                                  : LengthStyle::inchFractions;
    std::string text = session.name() + ": " + counted(holes.size(), "hole") + ", " +
                       counted(findings.size(), "finding") + "\n\n";
    for (const Hole* hole : holes) {
        const Hole& h = *hole;
        std::string kind = h.kind;
        std::replace(kind.begin(), kind.end(), '_', ' ');
        text += h.id + "  " + displayLength(h.diameter, style) + " " + kind + " " +
                displayLength(h.length, style) + " long, grip " + displayLength(h.grip, style) +
                ", at " + displayLength(h.start.x, style) + " aft" +
                (h.side.empty() ? ", on the centreline"
                                : ", " + displayLength(abs(h.start.y), style) + " to " + h.side) +
                (h.frame.empty() ? "" : ", " + h.frame) + "\n";
    }
    if (!findings.empty()) text += "\n";
    for (const Finding* finding : findings) {
        text += finding->kind + ": " + finding->says;
        for (const std::string& cure : finding->cure) text += "; cure: " + cure;
        text += "\n";
    }
    text += "\n";
    for (const std::string& caution : session.results->cautions) text += caution + "\n";
    return text;
}

}  // namespace fayline::cli
