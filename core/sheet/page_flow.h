#pragma once

#include <string>
#include <vector>

#include "quantity/digest.h"
#include "sheet/sheet_head.h"

namespace fayline {

/// Distances on a page, in millimetres: room for filing holes on the left, the coloured edge
/// outside the text on the right.
namespace page {
inline constexpr double left = 19.0, right = 11.0, top = 8.0, bottom = 8.0;
inline constexpr double plain = plainLetter.height;
inline constexpr double figure = settingOutLetter.height;
inline constexpr double line = 5.4;  ///< from one line of plain text to the next
}  // namespace page

/// What every sheet says at its head, for its code: not when it was printed, nor by which program.
void say(Digest& digest, const SheetHead& head);

/// Fills pages from top to bottom. Each page has the sheet's head and foot; "page 1 of 2" is
/// written at the end, when it is known.
class PageFlow {
  public:
    PageFlow(const SheetHead& head, std::string revision, PaperSize paper);

    /// Starts a page for a side ("port", "starboard", "") with what is seen.
    void startPage(const std::string& side, const std::string& seen, bool again = false);
    /// Another page of the same side.
    void continuePage();
    /// Turns the page when less than this is left. Says whether it did.
    bool need(double room_mm);

    [[nodiscard]] double left() const { return page::left; }
    [[nodiscard]] double right() const { return size_.width - page::right; }
    [[nodiscard]] double width() const { return right() - left(); }
    [[nodiscard]] double y() const { return y_; }
    [[nodiscard]] double room() const { return foot_ - y_; }
    void down(double by_mm) { y_ += by_mm; }

    void add(Role role, Shape shape, const std::string& id = {});
    void rule(double y, double width_mm, double from, double to);
    /// One line of text; `at` is the foot of its capitals.
    void text(PointMm at, const std::string& text, double letter_mm = page::plain,
              shape::Weight weight = shape::Weight::regular,
              shape::Across across = shape::Across::left, const std::string& id = {});
    /// A bold label and text behind it, running on in lines of the full width.
    void paragraph(const std::string& label, const std::string& text);
    void box(PointMm topLeft, double side_mm);
    void drills(const std::string& holeId) { pages_.back().holes.push_back(holeId); }

    /// Height that paragraph() takes.
    [[nodiscard]] double paragraphHeight(const std::string& label, const std::string& text) const;

    Sheet done(bool empty);

  private:
    [[nodiscard]] std::vector<std::string> linesBehind(const std::string& label,
                                                       const std::string& text) const;
    void headOf(const std::string& seen, bool again);
    void edge();
    void footOf(std::size_t index);

    const SheetHead& head_;
    std::string revision_;
    SizeMm size_;
    std::string side_, seen_;
    double y_ = 0.0, foot_ = 0.0;
    std::vector<SheetPage> pages_;
};

}  // namespace fayline
