#include "sheet/font_metrics.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>

#include "font_table.h"

namespace fayline {

namespace {

/// Next character of well-formed UTF-8; a broken byte counts as one character, U+FFFD.
char32_t nextCharacter(std::string_view utf8, std::size_t& at) {
    const auto byte = [&](std::size_t i) {
        return i < utf8.size() ? static_cast<std::uint8_t>(utf8[i]) : std::uint8_t{0};
    };
    const auto first = byte(at);
    std::size_t more = 0;
    char32_t code = first;
    if (first >= 0xF0) {
        more = 3;
        code = first & 0x07U;
    } else if (first >= 0xE0) {
        more = 2;
        code = first & 0x0FU;
    } else if (first >= 0xC0) {
        more = 1;
        code = first & 0x1FU;
    } else if (first >= 0x80) {
        code = 0xFFFD;
    }
    ++at;
    for (; more > 0; --more, ++at) {
        if ((byte(at) & 0xC0U) != 0x80) return 0xFFFD;
        code = (code << 6U) | (byte(at) & 0x3FU);
    }
    return code;
}

int advanceInUnits(const font_table::Face& face, char32_t code) {
    for (const font_table::Range& range : font_table::ranges) {
        if (code < range.first || code >= range.end) continue;
        const int advance = face.advances[range.start + (code - range.first)];
        if (advance != 0xFFFF) return advance;
    }
    return face.missing;
}

/// Depth of descenders ÷ em that a line of text keeps clear below its baseline.
constexpr double descentInEms = 0.236;

}  // namespace

double advanceInEms(std::string_view utf8, shape::Weight weight) {
    const font_table::Face& face =
        weight == shape::Weight::bold ? font_table::bold : font_table::regular;
    std::int64_t units = 0;
    for (std::size_t at = 0; at < utf8.size();) {
        units += advanceInUnits(face, nextCharacter(utf8, at));
    }
    return static_cast<double>(units) / face.unitsPerEm;
}

double capitalHeightInEms() {
    return static_cast<double>(font_table::regular.capitalHeight) / font_table::regular.unitsPerEm;
}

SizeMm textSize(const shape::Text& text) {
    const double em_mm = text.letterMm / capitalHeightInEms();
    return {advanceInEms(text.text, text.weight) * em_mm, text.letterMm + descentInEms * em_mm};
}

RectMm textBounds(const shape::Text& text) {
    if (text.text.empty()) return {};
    const SizeMm size = textSize(text);
    double left_mm = 0.0;
    if (text.across == shape::Across::centre) left_mm = -size.width / 2.0;
    if (text.across == shape::Across::right) left_mm = -size.width;
    double top_mm = -text.letterMm;
    if (text.upright == shape::Upright::middle) top_mm = -text.letterMm / 2.0;
    if (text.upright == shape::Upright::top) top_mm = 0.0;
    const double angle = text.angleDeg * std::numbers::pi / 180.0;
    const double c = std::cos(angle);
    const double s = std::sin(angle);
    RectMm box;
    for (const double x : {left_mm, left_mm + size.width}) {
        for (const double y : {top_mm, top_mm + size.height}) {
            box =
                united(box, PointMm{text.anchor.x + x * c + y * s, text.anchor.y - x * s + y * c});
        }
    }
    return box;
}

std::string elided(const shape::Text& text, SizeMm room) {
    if (textSize(text).width <= room.width) return text.text;
    shape::Text shorter = text;
    std::string kept = text.text;
    while (!kept.empty()) {
        while (!kept.empty() && (static_cast<std::uint8_t>(kept.back()) & 0xC0U) == 0x80) {
            kept.pop_back();
        }
        if (!kept.empty()) kept.pop_back();
        while (!kept.empty() && kept.back() == ' ') kept.pop_back();
        if (kept.empty()) break;
        shorter.text = kept + "…";
        if (textSize(shorter).width <= room.width) return shorter.text;
    }
    return {};
}

}  // namespace fayline
