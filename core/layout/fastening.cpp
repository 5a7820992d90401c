#include "layout/fastening.h"

#include <array>
#include <utility>

#include "fastener/bolt_hole.h"

namespace fayline {
namespace {

constexpr std::array<std::pair<FasteningKind, std::string_view>, 4> kinds{{
    {FasteningKind::woodScrew, "wood_screw"},
    {FasteningKind::bolt, "bolt"},
    {FasteningKind::drift, "drift"},
    {FasteningKind::rivet, "rivet"},
}};

/// Ship practice for a drift of about 1 in: 1/16 in under (Estep 1918); less for thin ones in
/// proportion.
constexpr double driftUnder = 1.0 / 16.0;
/// The bit a little shorter than the screw, so that the point bites solid wood: common practice, no
/// published source.
constexpr double pilotShort = 0.85;
/// A bung's counterbore against the head: twice the body and a little (1920s yacht table, plug 2.0
/// to 2.3 bodies).
constexpr double bungDiameters = 2.1;

}  // namespace

std::string_view nameOf(FasteningKind kind) {
    for (const auto& [value, name] : kinds) {
        if (value == kind) return name;
    }
    return "";
}

std::optional<FasteningKind> fasteningKindNamed(std::string_view name) {
    for (const auto& [value, known] : kinds) {
        if (known == name) return value;
    }
    return std::nullopt;
}

std::vector<HoleStep> screwSteps(const FasteningChoice& screw, Length throughHeadPiece,
                                 bool hardwood) {
    std::vector<HoleStep> steps;
    const Length length = screw.length.value_or(Length{});
    if (screw.counterbore > Length{})
        steps.push_back(
            {"counterbore for the bung", bungDiameters * screw.diameter, screw.counterbore});
    const Length shank = max(Length{}, min(length / 3.0, throughHeadPiece - screw.counterbore));
    steps.push_back({"shank, through the outer piece", screw.diameter, screw.counterbore + shank});
    steps.push_back({"pilot, a little short of the point", (hardwood ? 0.9 : 0.7) * screw.root,
                     screw.counterbore + pilotShort * length});
    return steps;
}

std::vector<HoleStep> throughSteps(const FasteningChoice& fastening, Length depth) {
    switch (fastening.kind) {
        case FasteningKind::drift:
            return {{"drift hole, under size, not to the bottom",
                     (1.0 - driftUnder) * fastening.diameter, depth}};
        case FasteningKind::rivet:
            return {{"rivet hole right through", fastening.diameter, depth}};
        case FasteningKind::woodScrew:
        case FasteningKind::bolt:
            break;
    }
    const auto hole = boltHole(
        {fastening.diameter, depth, HoleFit::snug, HoleEnd::head, std::nullopt, std::nullopt});
    std::vector<HoleStep> steps;
    if (!hole) return steps;
    for (const DrillStep& step : hole->steps)
        steps.push_back({step.what, step.bit, step.depth.value_or(depth)});
    return steps;
}

void dress(Hole& hole, const FasteningChoice& choice) {
    hole.kind = nameOf(choice.kind);
    hole.diameter = choice.diameter;
    hole.metal = choice.metal;
    hole.gauge = choice.gauge;
    hole.square = choice.square;
    if (choice.kind == FasteningKind::bolt || choice.kind == FasteningKind::rivet) {
        hole.washerDiameter = choice.washerDiameter;
        hole.washerThickness = choice.washerThickness;
    }
    if (choice.counterbore > Length{}) hole.bung = choice.counterbore;
}

Length proudOf(const FasteningChoice& bolt) {
    return bolt.washerThickness + 1.3 * bolt.diameter;
}

}  // namespace fayline
