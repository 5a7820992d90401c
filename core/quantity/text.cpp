#include "quantity/text.h"

#include <algorithm>
#include <cstdint>

namespace fayline {
namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}
char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

/// The bytes of the well-formed character at the start of the text, or 0.
std::size_t utf8Size(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<std::uint8_t>(text[i]); };
    const std::uint8_t first = byte(0);
    if (first < 0x80) return 1;
    const std::size_t size = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
    if (first < 0xC2 || first > 0xF4 || text.size() < size) return 0;
    for (std::size_t i = 1; i < size; ++i) {
        if ((byte(i) & 0xC0) != 0x80) return 0;
    }
    const std::uint8_t second = byte(1);
    if (first == 0xE0 && second < 0xA0) return 0;
    if (first == 0xED && second > 0x9F) return 0;
    if (first == 0xF0 && second < 0x90) return 0;
    if (first == 0xF4 && second > 0x8F) return 0;
    return size;
}

}  // namespace

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view blanks = " \t\r\n";
    const auto first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

std::vector<std::string_view> splitAt(std::string_view text, char separator) {
    std::vector<std::string_view> parts;
    while (true) {
        const auto end = text.find(separator);
        parts.push_back(text.substr(0, end));
        if (end == std::string_view::npos) return parts;
        text.remove_prefix(end + 1);
    }
}

std::string lowered(std::string_view text) {
    std::string out(text);
    std::transform(out.begin(), out.end(), out.begin(), lower);
    return out;
}

std::optional<std::size_t> firstBadUtf8(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t size = utf8Size(text.substr(at));
        if (size == 0) return at;
        at += size;
    }
    return std::nullopt;
}

std::string quotable(std::string_view text, std::size_t most) {
    std::string out;
    std::size_t characters = 0;
    for (std::size_t at = 0; at < text.size(); ++characters) {
        if (characters == most) return out + "…";
        const std::size_t size = utf8Size(text.substr(at));
        const auto first = static_cast<std::uint8_t>(text[at]);
        if (size == 0 || first < 0x20 || first == 0x7F) {
            out += '?';
        } else {
            out += text.substr(at, size);
        }
        at += size == 0 ? 1 : size;
    }
    return out;
}

std::strong_ordering naturalOrder(std::string_view a, std::string_view b) {
    std::size_t i = 0;
    std::size_t j = 0;
    while (i < a.size() && j < b.size()) {
        if (!isDigit(a[i]) || !isDigit(b[j])) {
            if (a[i] != b[j]) {
                return static_cast<unsigned char>(a[i]) <=> static_cast<unsigned char>(b[j]);
            }
            ++i;
            ++j;
            continue;
        }
        const auto digits = [](std::string_view text, std::size_t& at) {
            while (at < text.size() && text[at] == '0') ++at;
            const std::size_t start = at;
            while (at < text.size() && isDigit(text[at])) ++at;
            return text.substr(start, at - start);
        };
        const auto left = digits(a, i);
        const auto right = digits(b, j);
        if (left.size() != right.size()) return left.size() <=> right.size();
        if (const int order = left.compare(right); order != 0) return order <=> 0;
    }
    if (const auto rest = (a.size() - i) <=> (b.size() - j); rest != 0) return rest;
    if (const auto zeros = a.size() <=> b.size(); zeros != 0) return zeros;
    return a.compare(b) <=> 0;
}

int editDistance(std::string_view a, std::string_view b) {
    const std::size_t width = b.size() + 1;
    std::vector<int> beforeLast(width);
    std::vector<int> last(width);
    std::vector<int> row(width);
    for (std::size_t j = 0; j < width; ++j) row[j] = static_cast<int>(j);
    for (std::size_t i = 1; i <= a.size(); ++i) {
        beforeLast.swap(last);
        last.swap(row);
        row[0] = static_cast<int>(i);
        for (std::size_t j = 1; j < width; ++j) {
            const bool same = lower(a[i - 1]) == lower(b[j - 1]);
            row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + (same ? 0 : 1)});
            if (i > 1 && j > 1 && lower(a[i - 1]) == lower(b[j - 2]) &&
                lower(a[i - 2]) == lower(b[j - 1])) {
                row[j] = std::min(row[j], beforeLast[j - 2] + 1);
            }
        }
    }
    return row[b.size()];
}

std::optional<std::string> didYouMean(std::string_view name, std::span<const std::string> names) {
    constexpr std::size_t longestName = 200;
    if (name.size() > longestName) return std::nullopt;
    std::optional<std::string> nearest;
    int least = 4;
    for (const auto& candidate : names) {
        if (candidate.size() > longestName) continue;
        const int distance = editDistance(name, candidate);
        const auto letters = static_cast<int>(std::max(name.size(), candidate.size()));
        if (distance < least && distance * 3 <= letters) {
            least = distance;
            nearest = candidate;
        }
    }
    return nearest;
}

}  // namespace fayline
