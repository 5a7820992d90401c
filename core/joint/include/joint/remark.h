#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "quantity/quantity.h"

namespace fayline {

/// Why a figure lies beyond the range its formula was made for. One rule, one sentence: a list of
/// many checks says each once.
enum class Rule {
    shorterThanTheCode,
    gravityOutside,
    rivetNotCovered,
    driftNotTested,
    squareShank,
    thickerThanOneInch,
    manyPlanes,
    rowNotWorked,
    endTooNear,
    spacingTooNear,
    edgeTooNear,
    endGrainWithdrawal,
    endGrainLateral,
    endGrainAxis,
    driftHoleUnknown,
    driftHoleWide,
    countersunkHead,
    headNotDeclared,
    combinedExtended,
    screwDiameterOutside,
    screwRootOutside,
    gapNotInTheCode,
    washerMayDish,
    otherEndUnknown,
    noMetalLeft,
    leadNotCovered,
    punchingExtended,
    clearWoodStress,
    splittingForSoftwood,
    tornRowExtended,
    peenedEndExtended,
    slopeOfGrain,
    slantNotCredited,
};

/// "shorter_than_the_code": what rolls like remarks up.
std::string_view nameOf(Rule rule);

/// The rule in plain words without any figures: the same for every check it touches.
std::string_view sentenceOf(Rule rule);

/// One such reason with its figures.
struct Remark {
    Rule rule = Rule::shorterThanTheCode;
    int member = -1;     ///< from the head, 0 the first; below 0 none in particular
    Length has, needs;   ///< where the rule compares sizes
    double ratio = 0.0;  ///< where it compares ratios
    bool operator==(const Remark&) const = default;
};

/// The sentence, in plain words.
std::string textOf(const Remark& remark);
std::vector<std::string> textsOf(const std::vector<Remark>& remarks);
/// Each rule's sentence, without figures.
std::vector<std::string> sentencesOf(const std::vector<Remark>& remarks);

/// Adds a remark unless its rule stands there already.
void addOnce(std::vector<Remark>& remarks, const Remark& remark);

}  // namespace fayline
