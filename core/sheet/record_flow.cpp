#include "record_flow.h"

#include "sheet/font_metrics.h"
#include "wrap.h"

namespace fayline {
namespace {

using shape::Across;
using shape::Weight;

constexpr double titleLetter_mm = 2.8, codeLetter_mm = 3.5;
constexpr double footLine_mm = 3.3;

std::vector<std::string> cautionLines(const Record& record) {
    return wrapped(record.caution, record_page::small, Weight::bold, recordWidth_mm);
}

}  // namespace

RecordFlow::RecordFlow(const Record& record, std::string revision, PaperSize paper, int firstPage)
    : record_(record),
      revision_(std::move(revision)),
      size_(sizeOf(paper)),
      firstPage_(firstPage) {}

void RecordFlow::add(Role role, Shape shape) {
    pages_.back().drawing.items.push_back({role, {}, std::move(shape)});
}

void RecordFlow::rule(double y, double width_mm, double from, double to) {
    add(Role::label, shape::Line{{from, y}, {to, y}, {width_mm, LineStyle::solid}});
}

void RecordFlow::text(PointMm at, const std::string& text, double letter_mm, Weight weight,
                      Across across) {
    add(Role::label, shape::Text{at, text, letter_mm, weight, across});
}

void RecordFlow::startPage() {
    SheetPage page;
    page.drawing.size = size_;
    pages_.push_back(std::move(page));
    double base = record_page::top + codeLetter_mm;
    text({right(), base}, revisionText(revision_), codeLetter_mm, Weight::bold, Across::right);
    shape::Text title;
    title.text = record_.title;
    title.letterMm = titleLetter_mm;
    title.weight = Weight::bold;
    const double room =
        recordWidth_mm - widthMm(revisionText(revision_), codeLetter_mm, Weight::bold) - 5.0;
    text({left(), base}, elided(title, {room, titleLetter_mm}), titleLetter_mm, Weight::bold);
    base += 4.4;
    shape::Text subject;
    subject.text = record_.subject;
    subject.letterMm = record_page::letter;
    text({left(), base}, elided(subject, {recordWidth_mm, record_page::letter}),
         record_page::letter);
    y_ = base + 1.8;
    rule(y_, 0.5, left(), right());
    y_ += 1.6;
    start_ = y_;
    const auto caution = cautionLines(record_);
    double foot = size_.height - record_page::bottom;
    shape::Text words;
    words.text = record_.printed + (record_.printed.empty() ? "" : "   ") + record_.program;
    words.letterMm = record_page::small;
    text({left(), foot}, elided(words, {recordWidth_mm - 40.0, record_page::small}),
         record_page::small);
    foot -= 1.5 + footLine_mm * static_cast<double>(caution.size());
    for (std::size_t i = 0; i < caution.size(); ++i)
        text({left(), foot + footLine_mm * static_cast<double>(i)}, caution[i], record_page::small,
             Weight::bold);
    foot -= record_page::small + 1.4;
    rule(foot, 0.35, left(), right());
    foot_ = foot - 1.5;
}

bool RecordFlow::need(double room_mm) {
    constexpr double hair_mm = 1.0e-6;
    if (room() + hair_mm >= room_mm || fresh()) return false;
    startPage();
    return true;
}

void numberPages(std::vector<SheetPage>& pages, PaperSize paper) {
    for (std::size_t i = 0; i < pages.size(); ++i) {
        pages[i].number = static_cast<int>(i) + 1;
        const PointMm corner{record_page::left + recordWidth_mm,
                             sizeOf(paper).height - record_page::bottom};
        const std::string count =
            "page " + std::to_string(i + 1) + " of " + std::to_string(pages.size());
        pages[i].drawing.items.push_back(
            {Role::label,
             {},
             shape::Text{corner, count, record_page::letter, Weight::bold, Across::right}});
    }
}

}  // namespace fayline
