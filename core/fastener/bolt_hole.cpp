#include "fastener/bolt_hole.h"

#include <algorithm>
#include <array>

namespace fayline {
namespace {

struct FitRow {
    HoleFit fit;
    std::string_view text;
    Length allowance;
    Standing standing;
    std::string_view source;
};

constexpr std::array<FitRow, 4> fits{{
    {HoleFit::driven, "driven", millimetres(-0.4), Standing::read,
     "boat-design handbook BDB-401-02: 0.4 mm under for watertight or strength-critical bolts"},
    {HoleFit::snug, "snug", millimetres(0.0), Standing::read,
     "Wood Handbook FPL-GTR-190 ch. 8: hole of the bolt's own diameter"},
    {HoleFit::easy, "easy", inches(1.0 / 32.0), Standing::read,
     "US design standard for wood: 1/32 to 1/16 in over, the least taken"},
    {HoleFit::plate, "plate", millimetres(1.0), Standing::commonPractice,
     "common practice: 1 mm over through steel plate"},
}};

constexpr double pilotPart = 0.5;
constexpr Length leastPilot = millimetres(6.0);

const FitRow& row(HoleFit fit) {
    return *std::find_if(fits.begin(), fits.end(), [&](const FitRow& r) { return r.fit == fit; });
}

Problem wrong(std::string where, std::string what, std::string allowed) {
    return {"bolt_hole.input", std::move(where), std::move(what), std::move(allowed)};
}

std::optional<Problem> problemOf(const BoltHoleWish& wish, Length hole) {
    if (!(wish.rod > Length{}) || !isFinite(wish.rod)) {
        return wrong("rod", "the rod has no diameter", "a diameter above nil");
    }
    if (!(hole > Length{})) {
        return wrong("fit", "a driven fit leaves no hole for so thin a rod", "a snug or easy fit");
    }
    if (!(wish.grip > Length{}) || !isFinite(wish.grip)) {
        return wrong("grip", "there is nothing between the washers", "a grip above nil");
    }
    for (const auto& [recess, where] :
         {std::pair{wish.headRecess, "head recess"}, std::pair{wish.pointRecess, "point recess"}}) {
        if (!recess) continue;
        if (recess->diameter <= hole) {
            return wrong(where, "the recess is no wider than the hole", "wider than the hole");
        }
        if (!(recess->depth > Length{})) {
            return wrong(where, "the recess has no depth", "a depth above nil");
        }
    }
    return std::nullopt;
}

}  // namespace

std::string_view holeFitText(HoleFit fit) {
    return row(fit).text;
}

std::optional<HoleFit> holeFitFromText(std::string_view text) {
    for (const auto& one : fits) {
        if (one.text == text) return one.fit;
    }
    return std::nullopt;
}

Length holeAllowance(HoleFit fit) {
    return row(fit).allowance;
}
std::string_view holeAllowanceSource(HoleFit fit) {
    return row(fit).source;
}
Standing holeAllowanceStanding(HoleFit fit) {
    return row(fit).standing;
}

Result<BoltHole> boltHole(const BoltHoleWish& wish) {
    BoltHole hole;
    hole.diameter = wish.rod + holeAllowance(wish.fit);
    if (const auto problem = problemOf(wish, hole.diameter)) return tl::unexpected(*problem);
    hole.standing = holeAllowanceStanding(wish.fit);
    hole.source = std::string(holeAllowanceSource(wish.fit));

    const bool fromHead = wish.boredFrom == HoleEnd::head;
    const HoleEnd farEnd = fromHead ? HoleEnd::point : HoleEnd::head;
    const auto& nearRecess = fromHead ? wish.headRecess : wish.pointRecess;
    const auto& farRecess = fromHead ? wish.pointRecess : wish.headRecess;
    const Length pilot = min(hole.diameter, max(hole.diameter * pilotPart, leastPilot));

    if (nearRecess) {
        hole.steps.push_back(
            {nearRecess->diameter, nearRecess->depth, wish.boredFrom, "recess for washer and nut"});
    }
    if (pilot < hole.diameter) {
        hole.steps.push_back({pilot, std::nullopt, wish.boredFrom,
                              "pilot right through, to the string; check where it comes out"});
        hole.steps.push_back(
            {hole.diameter, std::nullopt, wish.boredFrom, "ream to size, following the pilot"});
    } else {
        hole.steps.push_back(
            {hole.diameter, std::nullopt, wish.boredFrom, "bore right through, to the string"});
    }
    if (farRecess) {
        hole.steps.push_back(
            {farRecess->diameter, farRecess->depth, farEnd,
             "recess for washer and nut, guided by the hole (plug or piloted cutter)"});
    }
    return hole;
}

}  // namespace fayline
