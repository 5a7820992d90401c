#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "sheet/drawing.h"

namespace fayline {

/// Paper a printer takes, upright.
enum class PaperSize { a4, letter };
std::string_view nameOf(PaperSize paper);
std::optional<PaperSize> paperNamed(std::string_view name);
/// 210 × 297 mm (ISO 216); 8 1/2 × 11 in.
SizeMm sizeOf(PaperSize paper);

enum class SheetKind { frame, floor, keel, planks, backbone, record };
std::string_view nameOf(SheetKind kind);

/// Least heights of capitals on paper: figures to set out by, and everything else. 5 and 3.5 mm of
/// the ISO 3098 steps; 3.5 mm is read at arm's length.
inline constexpr SizeMm settingOutLetter{5.0, 5.0};
inline constexpr SizeMm plainLetter{3.5, 3.5};

/// One page as it leaves the printer: a drawing of the paper's full size.
struct SheetPage {
    int number = 1;    ///< from 1, within its sheet
    std::string side;  ///< port, starboard; empty where the page is for both
    Drawing drawing;
    std::vector<std::string> holes;  ///< ids drilled from this page, in drilling order
    bool operator==(const SheetPage&) const = default;
};

/// One printed sheet: what goes to the bench under one revision code.
struct Sheet {
    std::string id;  ///< "F8", "F8.floor", "keel", "planks", "backbone"
    SheetKind kind = SheetKind::frame;
    std::string title;     ///< "Frame F8"
    std::string fileName;  ///< "F8.pdf"
    std::string revision;  ///< eight letters and digits, the same on every page
    bool empty = false;    ///< nothing is to be drilled from it; it says so
    std::vector<SheetPage> pages;
    bool operator==(const Sheet&) const = default;
};

/// Eight letters and digits for a hash of 64 hexadecimal digits; no 0 O 1 I L U, so that none is
/// taken for another when read aloud.
std::string revisionCode(std::string_view hexHash);
/// A code as paper and screens show it: without a break, so that it is found by searching.
std::string revisionText(std::string_view code);

}  // namespace fayline
