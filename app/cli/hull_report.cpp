#include <nlohmann/json.hpp>

#include "json.h"
#include "quantity/printing.h"
#include "reports.h"

namespace fayline::cli {
namespace {

/// The afloat figures, or why there are none, as a problem.
Result<Hydrostatics> bodyOf(const Session& session) {
    const Results& results = *session.results;
    if (results.afloat->body) return *results.afloat->body;
    if (!results.hull->problems.empty()) return tl::unexpected(results.hull->problems.front());
    return tl::unexpected(Problem{"hull.none", session.opened.file->path().string(),
                                  results.afloat->why,
                                  "offsets: fayline import OFFSETS.csv --to FILE"});
}

Json figuresJson(const char* idKey, const SectionFigures& figures) {
    Json json;
    json[idKey] = figures.id;
    json["x_mm"] = mm(figures.x);
    json["area_m2"] = inSquareMetres(figures.area);
    json["girth_mm"] = mm(figures.girth);
    json["wetted_girth_mm"] = mm(figures.wettedGirth);
    return json;
}

/// "rabbet           derived at 12 frames of 30 …"; empty while no frame has one.
std::string rabbetLine(const Results& results) {
    std::size_t derived = 0, given = 0;
    for (const auto& rabbet : results.rabbets) {
        if (rabbet) ++(rabbet->derived ? derived : given);
    }
    if (derived + given == 0) return "";
    if (derived == 0) return "rabbet           as the table of offsets gives it\n";
    return "rabbet           derived at " + std::to_string(derived) + " of " +
           std::to_string(derived + given) +
           " frames, from the keel's siding, the sections and the planking's thickness\n";
}

}  // namespace

Result<std::string> hullJson(const Session& session) {
    const auto body = bodyOf(session);
    if (!body) return tl::unexpected(body.error());
    const Results& results = *session.results;
    Json json = jsonHead("fayline.hull/1", &session);
    json["water_density_kg_per_m3"] = inKilogramsPerCubicMetre(body->water);
    json["waterline_mm"] = mm(body->waterline);
    json["volume_m3"] = inCubicMetres(body->volume);
    json["displacement_kg"] = inKilograms(body->displacement);
    json["centre_mm"] = mm(body->centre);
    json["waterplane_area_m2"] = inSquareMetres(body->waterplaneArea);
    json["waterplane_centre_mm"] = mm(body->waterplaneCentre);
    json["wetted_area_m2"] = inSquareMetres(body->wettedArea);
    json["wetted_length_mm"] = mm(body->wettedLength);
    const auto& stated = session.project.hull.displacement;
    json["stated_displacement_kg"] = stated ? Json(inKilograms(*stated)) : Json(nullptr);
    if (const auto& ballast = results.structure->ballast) {
        json["ballast"] = {{"mass_kg", inKilograms(ballast->mass)},
                           {"mass_from_shape_kg", inKilograms(ballast->fromShape)},
                           {"centre_mm", mm(ballast->centre)},
                           {"centre_below_top_mm", mm(ballast->centreBelow)},
                           {"ratio", ballast->mass / body->displacement}};
    } else {
        json["ballast"] = nullptr;
    }
    json["stations"] = Json::array();
    for (const auto& figures : stationFigures(*results.hull->surface, body->waterline))
        json["stations"].push_back(figuresJson("station", figures));
    json["frames"] = Json::array();
    const auto& frames = results.structure->frames;
    for (std::size_t i = 0; i < frames.size(); ++i) {
        if (!frames[i].inHull) continue;
        Json figures = figuresJson("frame", sectionFigures(*results.hull->surface, frames[i].id,
                                                           frames[i].x, body->waterline));
        const auto& rabbet = results.rabbets[i];
        figures["rabbet_mm"] =
            rabbet ? Json({inMillimetres(rabbet->at.y), inMillimetres(rabbet->at.z)})
                   : Json(nullptr);
        figures["rabbet"] = rabbet ? Json(rabbet->derived ? "derived" : "given") : Json(nullptr);
        json["frames"].push_back(std::move(figures));
    }
    addCautions(json, &results);
    return jsonText(json);
}

Result<std::string> hullText(const Session& session) {
    const auto body = bodyOf(session);
    if (!body) return tl::unexpected(body.error());
    const bool metric = session.project.hull.units == "millimetres";
    const UnitSystem units = metric ? UnitSystem::millimetres : UnitSystem::inches;
    const LengthStyle style = metric ? LengthStyle::millimetres : LengthStyle::feetInches;
    const auto length = [&](Length value) { return displayLength(value, style); };
    std::string text = session.name() + "\n";
    text += "waterline        " + length(body->waterline) + " above base\n";
    text += "displacement     " + displayMass(body->displacement, units, 4);
    if (const auto& stated = session.project.hull.displacement)
        text += " (stated " + displayMass(*stated, units, 4) + ")";
    text += "\ncentre           " + length(body->centre.x) + " aft, " + length(body->centre.z) +
            " above base\n";
    text += "wetted length    " + length(body->wettedLength) + "\n";
    if (const auto& ballast = session.results->structure->ballast) {
        text += "ballast          " + displayMass(ballast->mass, units, 4) + " (its shape gives " +
                displayMass(ballast->fromShape, units, 4) + "), centre " +
                length(ballast->centreBelow) + " below its top\n";
    }
    text += rabbetLine(*session.results);
    return text;
}

}  // namespace fayline::cli
