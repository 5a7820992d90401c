#include "joint/remark.h"

#include <algorithm>
#include <array>

#include "quantity/display.h"

namespace fayline {
namespace {

struct Words {
    Rule rule;
    std::string_view name;
    std::string_view says;
    std::string_view plainly = {};  ///< without figures, where `says` has some
};

// {has}, {needs}, {ratio} and {member} are filled in.
constexpr std::array<Words, 33> all{{
    {Rule::shorterThanTheCode, "shorter_than_the_code",
     "traditional, shorter than the code: {has} where the code wants {needs}; worked with its true "
     "length",
     "traditional, shorter than the code wants; worked with its true length"},
    {Rule::gravityOutside, "gravity_outside",
     "specific gravity {ratio} of the {member} timber lies outside the 0.31 to 0.73 the bearing "
     "strengths are published for",
     "specific gravity outside the 0.31 to 0.73 the bearing strengths are published for"},
    {Rule::rivetNotCovered, "rivet_not_covered",
     "yield theory extended: no standard covers rivets on roves; under Eurocode 5 worked as a "
     "smooth nail in a bored hole"},
    {Rule::driftNotTested, "drift_not_tested",
     "a bolt of this size is the ceiling: drifts were never tested sideways (Wood Handbook ch. 8), "
     "and the codes' dowels go right through"},
    {Rule::squareShank, "square_shank",
     "square shank: yield theory with its side as width, extended"},
    {Rule::thickerThanOneInch, "thicker_than_one_inch",
     "thicker than the 1 in the reductions are published for"},
    {Rule::manyPlanes, "many_planes", "more than two planes: each taken as the least of them"},
    {Rule::rowNotWorked, "row_not_worked",
     "action of the row not worked out: the members' sections and moduli are not given"},
    {Rule::endTooNear, "end_too_near", "nearer to the end than the code's least distance"},
    {Rule::spacingTooNear, "spacing_too_near", "spaced closer than three diameters"},
    {Rule::edgeTooNear, "edge_too_near", "nearer to the edge than the code allows"},
    {Rule::endGrainWithdrawal, "end_grain_withdrawal",
     "end grain: the code allows no withdrawal; three quarters of side grain shown, and erratic"},
    {Rule::endGrainLateral, "end_grain_lateral",
     "end grain: a third of the side grain figure is the code's nail rule for secondary parts"},
    {Rule::endGrainAxis, "end_grain_axis",
     "end grain: the code wants 30 degrees or more to the grain"},
    {Rule::driftHoleUnknown, "drift_hole_unknown",
     "hole of the drift not given: the figure is for one 1/8 in smaller"},
    {Rule::driftHoleWide, "drift_hole_wide",
     "hole wider than the 1/8 in under size the figure was found with"},
    {Rule::countersunkHead, "countersunk_head",
     "countersunk head: the code's formula is for round heads bearing flat, extrapolated"},
    {Rule::headNotDeclared, "head_not_declared",
     "no strength declared for the head: taken as a smooth nail's"},
    {Rule::combinedExtended, "combined_extended",
     "loads together: the code gives this rule for screws and nails; extended"},
    {Rule::screwDiameterOutside, "screw_diameter_outside",
     "diameter {has} outside the 6 to 12 mm the formula was made for",
     "diameter outside the 6 to 12 mm the formula was made for"},
    {Rule::screwRootOutside, "screw_root_outside",
     "root {ratio} of the diameter, outside the 0.60 to 0.75 the formula was made for",
     "root outside the 0.60 to 0.75 of the diameter the formula was made for"},
    {Rule::gapNotInTheCode, "gap_not_in_the_code",
     "Eurocode 5 knows no gap between members: reduced as the general dowel equations reduce it"},
    {Rule::washerMayDish, "washer_may_dish",
     "washer thinner than a quarter of the bolt: it may dish and bear less than worked out"},
    {Rule::otherEndUnknown, "other_end_unknown",
     "the other end's size is not given and not judged"},
    {Rule::noMetalLeft, "no_metal_left", "the corrosion allowance leaves no metal at the root"},
    {Rule::leadNotCovered, "lead_not_covered",
     "no code covers lead: its tensile strength taken as the pressure it bears, and it creeps "
     "under "
     "lasting load"},
    {Rule::punchingExtended, "punching_extended",
     "washer drawn through the timber: the code's rule for heads of fastenings, extended to a "
     "washer"},
    {Rule::clearWoodStress, "clear_wood_stress",
     "no design stress is assigned to this wood: worked out from small clear pieces"},
    {Rule::splittingForSoftwood, "splitting_for_softwood",
     "splitting: the code's formula was made for softwood"},
    {Rule::tornRowExtended, "torn_row_extended",
     "row torn out along the grain: extended to one fastening and to this kind"},
    {Rule::peenedEndExtended, "peened_end_extended",
     "peened end: no standard covers it; sheared like a head, and peening leaves it uneven"},
    {Rule::slopeOfGrain, "slope_of_grain",
     "grain slopes more than 1 in 6: the strength ratios are published up to that"},
    {Rule::slantNotCredited, "slant_not_credited",
     "driven at a slant of {ratio}°: no strength is credited for it, none is published",
     "driven at a slant: no strength is credited for it, none is published"},
}};

const Words& wordsFor(Rule rule) {
    return *std::find_if(all.begin(), all.end(), [&](const Words& w) { return w.rule == rule; });
}

std::string ordinal(int member) {
    constexpr std::array<const char*, 4> first{"first", "second", "third", "fourth"};
    const auto place = static_cast<std::size_t>(std::max(member, 0));
    return place < first.size() ? first[place] : std::to_string(place + 1) + "th";
}

void fill(std::string& text, std::string_view mark, const std::string& with) {
    const auto at = text.find(mark);
    if (at != std::string::npos) text.replace(at, mark.size(), with);
}

}  // namespace

std::string_view nameOf(Rule rule) {
    return wordsFor(rule).name;
}

std::string_view sentenceOf(Rule rule) {
    const Words& words = wordsFor(rule);
    return words.plainly.empty() ? words.says : words.plainly;
}

std::string textOf(const Remark& remark) {
    std::string text(wordsFor(remark.rule).says);
    if (text.find('{') == std::string::npos) return text;
    fill(text, "{has}", bothUnits(remark.has));
    fill(text, "{needs}", bothUnits(remark.needs));
    fill(text, "{ratio}", rounded(remark.ratio, remark.rule == Rule::slantNotCredited ? 0 : 2));
    fill(text, "{member}", ordinal(remark.member));
    return text;
}

std::vector<std::string> textsOf(const std::vector<Remark>& remarks) {
    std::vector<std::string> texts;
    texts.reserve(remarks.size());
    for (const Remark& remark : remarks) texts.push_back(textOf(remark));
    return texts;
}

std::vector<std::string> sentencesOf(const std::vector<Remark>& remarks) {
    std::vector<std::string> texts;
    texts.reserve(remarks.size());
    for (const Remark& remark : remarks) texts.emplace_back(sentenceOf(remark.rule));
    return texts;
}

void addOnce(std::vector<Remark>& remarks, const Remark& remark) {
    const bool there = std::any_of(remarks.begin(), remarks.end(),
                                   [&](const Remark& old) { return old.rule == remark.rule; });
    if (!there) remarks.push_back(remark);
}

}  // namespace fayline
