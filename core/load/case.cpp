#include "load/case.h"

#include <algorithm>
#include <array>

namespace fayline {
namespace {

struct CaseRow {
    LoadCase loadCase;
    std::string_view name, title;
    bool keel;       ///< loads the keel
    bool noBallast;  ///< stands without ballast
    double factor, ec5Factor;
    Duration duration;
    KindOfLoad kind;
    std::string_view source;
    Standing standing;
};

constexpr std::string_view knockdownSource =
    "weight of the ballast sideways, as ISO 12215-9:2012 load case 1; Eurocode 5 demand factor 1.5 "
    "for a variable load";
constexpr std::string_view sailingSource =
    "weight of the ballast at 30 degrees of heel, repeated; Eurocode 5 demand factor 1.5 for a "
    "variable load";
constexpr std::string_view sidewaysSource =
    "a sideways blow at the ballast's foot of a quarter of the weight of the boat less her "
    "ballast; no published source; accidental in Eurocode terms";

// clang-format off
constexpr std::array<CaseRow, 15> rows{{
    {LoadCase::knockdownPort, "knockdown_port", "knocked down to port", true, false, 1.0, 1.5,
     Duration::tenMinutes, KindOfLoad::variable, knockdownSource, Standing::fromMemory},
    {LoadCase::knockdownStarboard, "knockdown_starboard", "knocked down to starboard", true, false, 1.0, 1.5,
     Duration::tenMinutes, KindOfLoad::variable, knockdownSource, Standing::fromMemory},
    {LoadCase::sailingPort, "sailing_port", "sailing, heeled to port", true, false, 1.0, 1.5,
     Duration::sevenDays, KindOfLoad::variable, sailingSource, Standing::judgement},
    {LoadCase::sailingStarboard, "sailing_starboard", "sailing, heeled to starboard", true, false, 1.0, 1.5,
     Duration::sevenDays, KindOfLoad::variable, sailingSource, Standing::judgement},
    {LoadCase::groundingUp, "grounding_up", "grounding, upward", true, true, 1.0, 1.0,
     Duration::tenMinutes, KindOfLoad::accidental,
     "weight of the boat less her ballast, upward, as ISO 12215-9:2012 load case 3; accidental in Eurocode terms",
     Standing::fromMemory},
    {LoadCase::groundingAft, "grounding_aft", "grounding, a blow on the fore end", true, false, 1.0, 1.0,
     Duration::tenMinutes, KindOfLoad::accidental,
     "1.2 times the weight of the boat less her ballast up to 10 m of waterline, 3 times from 20 m, as ISO "
     "12215-9:2012 load case 4; accidental in Eurocode terms",
     Standing::fromMemory},
    {LoadCase::groundingForward, "grounding_forward", "grounding, a blow on the after end", true, false, 1.0, 1.0,
     Duration::tenMinutes, KindOfLoad::accidental,
     "half the blow on the fore end, a boat going astern being slower; no published source; accidental in Eurocode "
     "terms",
     Standing::judgement},
    {LoadCase::groundingPort, "grounding_port", "grounding, pushed to port", true, false, 1.0, 1.0,
     Duration::tenMinutes, KindOfLoad::accidental, sidewaysSource, Standing::judgement},
    {LoadCase::groundingStarboard, "grounding_starboard", "grounding, pushed to starboard", true, false, 1.0, 1.0,
     Duration::tenMinutes, KindOfLoad::accidental, sidewaysSource, Standing::judgement},
    {LoadCase::seaBottom, "sea_bottom", "sea pressure on the bottom", false, true, 1.0, 1.5,
     Duration::tenMinutes, KindOfLoad::variable,
     "sea pressure presses planks on to the frames", Standing::derived},
    {LoadCase::seaSide, "sea_side", "sea pressure on the topsides", false, true, 1.0, 1.5,
     Duration::tenMinutes, KindOfLoad::variable,
     "sea pressure presses planks on to the frames", Standing::derived},
    {LoadCase::swelling, "swelling", "planking swollen and caulked", false, true, 0.5, 1.0,
     Duration::permanent, KindOfLoad::permanent,
     "seams pressed until the wet wood's side grain crushes, over a third of the planking's thickness, of which "
     "half stays as the wood gives; what crushes cannot press harder, so the Eurocode 5 demand factor is 1",
     Standing::judgement},
    {LoadCase::springback, "springback", "bent planks springing back", false, true, 1.0, 1.35,
     Duration::twoMonths, KindOfLoad::permanent,
     "stiffness of a plank bent cold to the hull's own curve, before it has relaxed: in wet wood a bend that is held "
     "falls to a third in time (EN 1995-1-1 2.3.2.2, k_def 2.0, from memory), so the first two months ask most; "
     "Eurocode 5 demand factor 1.35 for a permanent load",
     Standing::judgement},
    {LoadCase::slings, "slings", "lifted, the ballast hanging", true, false, 1.4, 1.5,
     Duration::tenMinutes, KindOfLoad::variable,
     "weight of the ballast with 1.4 for a jerk of the crane; Eurocode 5 demand factor 1.5 for a variable load",
     Standing::fromMemory},
    {LoadCase::onKeel, "on_keel", "standing on her keel ashore", true, true, 1.0, 1.35,
     Duration::permanent, KindOfLoad::permanent,
     "weight of the boat less her ballast; Eurocode 5 demand factor 1.35 for a permanent load",
     Standing::derived},
}};
// clang-format on

const CaseRow& rowOf(LoadCase loadCase) {
    return *std::find_if(rows.begin(), rows.end(),
                         [&](const CaseRow& row) { return row.loadCase == loadCase; });
}

}  // namespace

std::string_view nameOf(LoadCase loadCase) {
    return rowOf(loadCase).name;
}

std::optional<LoadCase> caseNamed(std::string_view name) {
    for (const CaseRow& row : rows) {
        if (row.name == name) return row.loadCase;
    }
    return std::nullopt;
}

std::string_view titleOf(LoadCase loadCase) {
    return rowOf(loadCase).title;
}

bool loadsTheKeel(LoadCase loadCase) {
    return rowOf(loadCase).keel;
}

bool needsNoBallast(LoadCase loadCase) {
    return rowOf(loadCase).noBallast;
}

bool weighsTheBoat(LoadCase loadCase) {
    return loadCase == LoadCase::groundingUp || loadCase == LoadCase::groundingAft ||
           loadCase == LoadCase::groundingForward || loadCase == LoadCase::groundingPort ||
           loadCase == LoadCase::groundingStarboard || loadCase == LoadCase::onKeel;
}

CaseSettings usualSettings(LoadCase loadCase) {
    const CaseRow& row = rowOf(loadCase);
    return {row.factor, row.ec5Factor,           row.duration,
            row.kind,   std::string(row.source), row.standing};
}

}  // namespace fayline
