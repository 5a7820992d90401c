#pragma once

#include <string_view>

#include "sheet/drawing.h"

namespace fayline {

/// Width of a text in the bundled font, without kerning or ligatures, as a multiple of its em.
/// A character that the table does not hold counts as the box drawn for it.
double advanceInEms(std::string_view utf8, shape::Weight weight = shape::Weight::regular);

/// Height of the capitals ÷ em, of both weights.
double capitalHeightInEms();

/// Width of a line of text, and height from the foot of its descenders to the top of its capitals.
SizeMm textSize(const shape::Text& text);

/// The box around a text as it lies in the drawing, turned text included.
RectMm textBounds(const shape::Text& text);

/// The text, or as much of it as fits with "…" behind it; empty when not even that fits.
std::string elided(const shape::Text& text, SizeMm room);

}  // namespace fayline
