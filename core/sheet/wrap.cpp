#include "wrap.h"

#include "quantity/text.h"
#include "sheet/font_metrics.h"

namespace fayline {
namespace {

/// As many whole characters of a word as fit, at least one.
std::size_t fittingBytes(std::string_view word, double letter_mm, shape::Weight weight,
                         double room_mm) {
    std::size_t kept = 0;
    for (std::size_t at = 1; at <= word.size(); ++at) {
        const bool whole =
            at == word.size() || (static_cast<unsigned char>(word[at]) & 0xC0U) != 0x80U;
        if (!whole) continue;
        if (kept > 0 && widthMm(word.substr(0, at), letter_mm, weight) > room_mm) break;
        kept = at;
    }
    return kept;
}

}  // namespace

double widthMm(std::string_view text, double letter_mm, shape::Weight weight) {
    return advanceInEms(text, weight) * letter_mm / capitalHeightInEms();
}

std::vector<std::string> wrapped(std::string_view text, double letter_mm, shape::Weight weight,
                                 double room_mm) {
    std::vector<std::string> lines(1);
    for (std::string_view word : splitAt(text, ' ')) {
        if (word.empty()) continue;
        const std::string longer =
            lines.back().empty() ? std::string(word) : lines.back() + " " + std::string(word);
        if (widthMm(longer, letter_mm, weight) <= room_mm) {
            lines.back() = longer;
            continue;
        }
        if (!lines.back().empty()) lines.emplace_back();
        while (widthMm(word, letter_mm, weight) > room_mm) {
            const std::size_t bytes = fittingBytes(word, letter_mm, weight, room_mm);
            if (bytes == word.size()) break;
            lines.back() = std::string(word.substr(0, bytes));
            lines.emplace_back();
            word.remove_prefix(bytes);
        }
        lines.back() = std::string(word);
    }
    return lines;
}

}  // namespace fayline
