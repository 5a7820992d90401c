#pragma once

#include <array>
#include <cstddef>
#include <cstdint>

/// Widths of the characters of the bundled fonts, in font units.
namespace fayline::font_table {

inline constexpr std::size_t characters = 2447;

/// Characters first … end-1, the first of them at `start` in Face::advances.
struct Range {
    char32_t first, end;
    std::size_t start;
};

struct Face {
    int unitsPerEm;
    int capitalHeight;
    std::uint16_t missing;                           ///< of the box drawn for an unknown character
    std::array<std::uint16_t, characters> advances;  ///< 65535: not in the font
};

extern const std::array<Range, 7> ranges;
extern const Face regular, bold;

}  // namespace fayline::font_table
