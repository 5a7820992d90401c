#pragma once

#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>

#include "joint/limit_state.h"
#include "quantity/quantity.h"
#include "session.h"

namespace fayline::cli {

using Json = nlohmann::ordered_json;

/// Start and end of every JSON result (format, program, project, step … cautions).
Json jsonHead(const std::string& format, const Session* session);
void addCautions(Json& json, const Results* results);
std::string jsonText(const Json& json);

/// Numbers in the contract's units; nothing = null.
Json mm(Length value);
Json mm(const std::optional<Length>& value);
Json mm(const Point& point);
Json newton(Force value);
Json newton(const std::optional<Force>& value);
Json newton(const ForceVector& force);
Json newtonMetre(Moment value);
Json newtonMetre(const MomentVector& moment);
Json band(const std::optional<Band>& value);
Json number(const std::optional<double>& value);
Json textOrNull(const std::string& text);

}  // namespace fayline::cli
