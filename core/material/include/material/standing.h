#pragma once

#include <optional>
#include <string_view>

namespace fayline {

/// How far a figure may be trusted, from the best to the least.
enum class Standing {
    read,            ///< seen in the published source named beside it
    derived,         ///< worked out from figures that stand by themselves
    commonPractice,  ///< habit of the trade, no published source
    fromMemory,      ///< not seen in print; to be checked before it is relied on
    judgement,       ///< somebody's own opinion, the builder's or this program's
};

/// "read", "derived", "common_practice", "from_memory", "judgement": the words of files and JSON.
std::string_view standingText(Standing standing);

/// Nothing for any other word.
std::optional<Standing> standingFromText(std::string_view text);

/// The standing of a result worked out from a figure of this standing: never better than derived.
Standing afterWorking(Standing input);

}  // namespace fayline
