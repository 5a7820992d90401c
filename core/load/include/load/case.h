#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "joint/limit_state.h"
#include "quantity/quantity.h"

namespace fayline {

/// The load cases worked out so far, in the order they are shown.
enum class LoadCase {
    knockdownPort,
    knockdownStarboard,
    sailingPort,
    sailingStarboard,
    groundingUp,
    groundingAft,
    groundingForward,
    groundingPort,
    groundingStarboard,
    seaBottom,
    seaSide,
    swelling,
    springback,
    slings,
    onKeel
};
inline constexpr LoadCase allCases[] = {LoadCase::knockdownPort,
                                        LoadCase::knockdownStarboard,
                                        LoadCase::sailingPort,
                                        LoadCase::sailingStarboard,
                                        LoadCase::groundingUp,
                                        LoadCase::groundingAft,
                                        LoadCase::groundingForward,
                                        LoadCase::groundingPort,
                                        LoadCase::groundingStarboard,
                                        LoadCase::seaBottom,
                                        LoadCase::seaSide,
                                        LoadCase::swelling,
                                        LoadCase::springback,
                                        LoadCase::slings,
                                        LoadCase::onKeel};

std::string_view nameOf(LoadCase loadCase);
std::optional<LoadCase> caseNamed(std::string_view name);
/// "Knocked down 90° to port": for screens and paper.
std::string_view titleOf(LoadCase loadCase);

/// The ballast, or the boat standing on it, is what loads the hull in this case.
bool loadsTheKeel(LoadCase loadCase);
/// A case that says something about a hull without ballast too.
bool needsNoBallast(LoadCase loadCase);

/// A case that takes the boat's weight.
bool weighsTheBoat(LoadCase loadCase);

/// How a case is counted: factor on the load, factor on the demand for Eurocode 5, duration, kind.
struct CaseSettings {
    double factor = 1.0;
    double ec5Factor = 1.0;
    Duration duration = Duration::tenMinutes;
    KindOfLoad kind = KindOfLoad::variable;
    std::string source;
    Standing standing = Standing::judgement;
    bool operator==(const CaseSettings&) const = default;
};

/// What stands for a case until the builder decides otherwise.
CaseSettings usualSettings(LoadCase loadCase);

}  // namespace fayline
