#include "load/case.h"

namespace fayline {

std::string_view nameOf(LoadCase loadCase) {
    switch (loadCase) {
        case LoadCase::knockdownPort:
            return "knockdown_port";
        case LoadCase::knockdownStarboard:
            return "knockdown_starboard";
        case LoadCase::groundingUp:
            return "grounding_up";
    }
    return "";
}

std::optional<LoadCase> caseNamed(std::string_view name) {
    for (const LoadCase loadCase : allCases) {
        if (nameOf(loadCase) == name) return loadCase;
    }
    return std::nullopt;
}

std::string_view titleOf(LoadCase loadCase) {
    switch (loadCase) {
        case LoadCase::knockdownPort:
            return "knocked down to port";
        case LoadCase::knockdownStarboard:
            return "knocked down to starboard";
        case LoadCase::groundingUp:
            return "grounding, upward";
    }
    return "";
}

CaseSettings usualSettings(LoadCase loadCase) {
    if (loadCase == LoadCase::groundingUp) {
        return {1.0,
                1.0,
                Duration::tenMinutes,
                KindOfLoad::accidental,
                "weight of the boat less her ballast, upward, as ISO 12215-9:2012 load case 3; "
                "accidental in Eurocode terms",
                Standing::fromMemory};
    }
    return {1.0,
            1.5,
            Duration::tenMinutes,
            KindOfLoad::variable,
            "weight of the ballast sideways, as ISO 12215-9:2012 load case 1; Eurocode 5 demand "
            "factor 1.5 for a variable load",
            Standing::fromMemory};
}

}  // namespace fayline
