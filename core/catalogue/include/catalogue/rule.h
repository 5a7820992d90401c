#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "material/standing.h"
#include "quantity/quantity.h"

namespace fayline {

enum class RuleBound { atLeast, atMost };

/// "at_least", "at_most".
std::string_view ruleBoundText(RuleBound bound);
std::optional<RuleBound> ruleBoundFromText(std::string_view text);

/// One limit of a published rule, as data: either a length of its own or a number of times
/// something ("bolt_diameter").
struct RuleLimit {
    std::string id;         ///< "lr_keel_washer_diameter"
    std::string appliesTo;  ///< "keel bolt washer"
    std::string quantity;   ///< "diameter"
    RuleBound bound = RuleBound::atLeast;
    std::optional<Length> length;
    std::optional<double> factor;
    std::string times;                    ///< what the factor multiplies; empty for a length
    std::optional<Length> needNotExceed;  ///< no more than this is ever asked
    std::string words;                    ///< the rule in words of our own
    Standing standing = Standing::judgement;
    std::string source;  ///< document and clause

    bool operator==(const RuleLimit&) const = default;
};

/// The limit as a length; `reference` is what the factor multiplies and is not used by a rule that
/// is a length itself.
Length limitLength(const RuleLimit& rule, Length reference);

}  // namespace fayline
