#include "material/standing.h"

#include <algorithm>
#include <array>
#include <utility>

namespace fayline {
namespace {

constexpr std::array<std::pair<Standing, std::string_view>, 5> words{{
    {Standing::read, "read"},
    {Standing::derived, "derived"},
    {Standing::commonPractice, "common_practice"},
    {Standing::fromMemory, "from_memory"},
    {Standing::judgement, "judgement"},
}};

}  // namespace

std::string_view standingText(Standing standing) {
    for (const auto& [value, word] : words) {
        if (value == standing) return word;
    }
    return "judgement";
}

std::optional<Standing> standingFromText(std::string_view text) {
    for (const auto& [value, word] : words) {
        if (word == text) return value;
    }
    return std::nullopt;
}

Standing afterWorking(Standing input) {
    return std::max(input, Standing::derived);
}

}  // namespace fayline
