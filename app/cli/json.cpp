#include "json.h"

#include <cmath>
#include <nlohmann/json.hpp>

#include "quantity/printing.h"

namespace fayline::cli {
namespace {

/// JSON knows no infinity: what is not a number is null.
Json finite(double value) {
    return std::isfinite(value) ? Json(value) : Json(nullptr);
}

}  // namespace

Json jsonHead(const std::string& format, const Session* session) {
    Json json;
    json["format"] = format;
    json["program"] = programName();
    if (session != nullptr) {
        json["project"] = session->name();
        json["step"] = session->journal().tip();
    }
    return json;
}

void addCautions(Json& json, const Results* results) {
    json["cautions"] = results != nullptr ? results->cautions : standingCautions();
}

std::string jsonText(const Json& json) {
    // A file's name may be any bytes; JSON is UTF-8.
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

Json mm(Length value) {
    return isFinite(value) ? Json(numberIn(value, LengthUnit::mm)) : Json(nullptr);
}
Json mm(const std::optional<Length>& value) {
    return value ? mm(*value) : Json(nullptr);
}
Json mm(const Point& point) {
    return Json::array({mm(point.x), mm(point.y), mm(point.z)});
}
Json newton(Force value) {
    return finite(inNewtons(value));
}
Json newton(const std::optional<Force>& value) {
    return value ? newton(*value) : Json(nullptr);
}
Json newton(const ForceVector& force) {
    return Json::array({newton(force.x), newton(force.y), newton(force.z)});
}
Json newtonMetre(Moment value) {
    return finite(inNewtonMetres(value));
}
Json newtonMetre(const MomentVector& moment) {
    return Json::array({newtonMetre(moment.x), newtonMetre(moment.y), newtonMetre(moment.z)});
}
Json band(const std::optional<Band>& value) {
    return value ? Json::array({newton(value->low), newton(value->high)}) : Json(nullptr);
}
Json number(const std::optional<double>& value) {
    return value ? finite(*value) : Json(nullptr);
}
Json textOrNull(const std::string& text) {
    return text.empty() ? Json(nullptr) : Json(text);
}

}  // namespace fayline::cli
