#pragma once

#include <compare>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace fayline {

/// The text without blanks, tabs and line ends at either end.
std::string_view trimmed(std::string_view text);

/// The parts between separators, empty ones included: "a,,b" gives three, "" gives one.
std::vector<std::string_view> splitAt(std::string_view text, char separator);

/// Letters A to Z made small; every other byte as it is, whatever the locale.
std::string lowered(std::string_view text);

/// The place of the first byte that is not UTF-8 (RFC 3629: no long forms, no surrogates, nothing
/// above U+10FFFF); nothing when the whole text is well formed.
std::optional<std::size_t> firstBadUtf8(std::string_view text);

/// The text as it may stand in one line of a message: control characters and broken bytes become
/// "?", and what is longer than `most` characters ends in "…".
std::string quotable(std::string_view text, std::size_t most = 60);

/// Order for ids: runs of digits compare as numbers, so F2 comes before F10. Texts that differ are
/// never equal: F02 and F2 stand side by side, the one with fewer zeros first.
std::strong_ordering naturalOrder(std::string_view a, std::string_view b);

/// naturalOrder as a comparison for std::sort, std::map.
struct NaturalLess {
    using is_transparent = void;
    bool operator()(std::string_view a, std::string_view b) const { return naturalOrder(a, b) < 0; }
};

/// How many letters must be put in, left out, changed or swapped with the next to turn a into b
/// (optimal string alignment), capital and small letters alike.
int editDistance(std::string_view a, std::string_view b);

/// The candidate nearest to a mistyped name, when one is near enough to be meant (at most a third
/// of its letters wrong, and at most three); the first of equals. Nothing otherwise.
std::optional<std::string> didYouMean(std::string_view name, std::span<const std::string> names);

}  // namespace fayline
