#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "sheet/drawing.h"

namespace fayline {

/// Width of a text in the bundled font at this height of capitals, in millimetres.
double widthMm(std::string_view text, double letter_mm, shape::Weight weight);

/// The text in lines no wider than the room, broken at blanks; a word that is wider alone is broken
/// where it must be. At least one line.
std::vector<std::string> wrapped(std::string_view text, double letter_mm, shape::Weight weight,
                                 double room_mm);

}  // namespace fayline
