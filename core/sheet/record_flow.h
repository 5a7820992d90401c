#pragma once

#include <string>
#include <vector>

#include "sheet/record.h"

namespace fayline {

/// Distances of a record's page, in millimetres. It is read at a desk: smaller letters than a
/// sheet of the bench.
namespace record_page {
inline constexpr double left = 22.0, top = 12.0, bottom = 9.0;
inline constexpr double letter = 2.1, small = 1.85;
inline constexpr double line = 3.9, smallLine = 3.4;
}  // namespace record_page

/// Fills a record's pages from top to bottom, each with head and foot.
class RecordFlow {
  public:
    /// `firstPage` is the number of the first page made here.
    RecordFlow(const Record& record, std::string revision, PaperSize paper, int firstPage);

    void startPage();
    /// Turns the page when less than this is left. Says whether it did.
    bool need(double room_mm);
    [[nodiscard]] double left() const { return record_page::left; }
    [[nodiscard]] double right() const { return record_page::left + recordWidth_mm; }
    [[nodiscard]] double y() const { return y_; }
    [[nodiscard]] double room() const { return foot_ - y_; }
    [[nodiscard]] int page() const { return firstPage_ + static_cast<int>(pages_.size()) - 1; }
    [[nodiscard]] bool fresh() const { return y_ <= start_; }
    void down(double by_mm) { y_ += by_mm; }

    void add(Role role, Shape shape);
    void rule(double y, double width_mm, double from, double to);
    void text(PointMm at, const std::string& text, double letter_mm,
              shape::Weight weight = shape::Weight::regular,
              shape::Across across = shape::Across::left);

    [[nodiscard]] std::vector<SheetPage> take() { return std::move(pages_); }

  private:
    const Record& record_;
    std::string revision_;
    SizeMm size_;
    int firstPage_;
    double y_ = 0.0, foot_ = 0.0, start_ = 0.0;
    std::vector<SheetPage> pages_;
};

/// Writes "page 2 of 9" on every page, when the count is known.
void numberPages(std::vector<SheetPage>& pages, PaperSize paper);

}  // namespace fayline
