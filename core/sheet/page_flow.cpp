#include "page_flow.h"

#include <algorithm>

#include "sheet/font_metrics.h"
#include "wrap.h"

namespace fayline {
namespace {

using shape::Across;
using shape::Weight;

constexpr double nameLetter_mm = 10.0;
constexpr double sideLetter_mm = 7.5;
constexpr double edgeBreadth_mm = 4.5;
constexpr double labelGap_mm = 2.2;

std::string sideWord(const std::string& side) {
    if (side == "port") return "PORT";
    if (side == "starboard") return "STARBOARD";
    return {};
}

std::vector<PointMm> rectangle(double left, double top, double right, double bottom) {
    return {{left, top}, {right, top}, {right, bottom}, {left, bottom}};
}

}  // namespace

void say(Digest& digest, const SheetHead& head) {
    digest.field("fayline.sheet/1").field(head.id).field(nameOf(head.kind)).field(head.title);
    digest.field(head.name).field(head.unit).field(head.boat).field(head.caution);
}

PageFlow::PageFlow(const SheetHead& head, std::string revision, PaperSize paper)
    : head_(head), revision_(std::move(revision)), size_(sizeOf(paper)) {}

void PageFlow::add(Role role, Shape shape, const std::string& id) {
    pages_.back().drawing.items.push_back({role, id, std::move(shape)});
}

void PageFlow::rule(double y, double width_mm, double from, double to) {
    add(Role::label, shape::Line{{from, y}, {to, y}, {width_mm, LineStyle::solid}});
}

void PageFlow::text(PointMm at, const std::string& text, double letter_mm, Weight weight,
                    Across across, const std::string& id) {
    add(Role::label, shape::Text{at, text, letter_mm, weight, across}, id);
}

void PageFlow::box(PointMm topLeft, double side_mm) {
    add(Role::label,
        shape::Polygon{rectangle(topLeft.x, topLeft.y, topLeft.x + side_mm, topLeft.y + side_mm),
                       false, Stroke{0.35, LineStyle::solid}});
}

void PageFlow::startPage(const std::string& side, const std::string& seen, bool again) {
    side_ = side;
    seen_ = seen;
    SheetPage page;
    page.number = static_cast<int>(pages_.size()) + 1;
    page.side = side;
    page.drawing.size = size_;
    pages_.push_back(std::move(page));
    edge();
    headOf(seen, again);
    const auto caution = wrapped(head_.caution, page::plain, Weight::regular, width());
    foot_ = size_.height - page::bottom - page::figure - 3.5 -
            static_cast<double>(caution.size()) * page::line - 1.5;
}

void PageFlow::continuePage() {
    // Copies: the page started takes them as its own.
    const std::string side = side_, seen = seen_;
    startPage(side, seen, true);
}

bool PageFlow::need(double room_mm) {
    // What was reckoned to fit exactly fits.
    constexpr double hair_mm = 1.0e-6;
    if (room() + hair_mm >= room_mm) return false;
    continuePage();
    return true;
}

/// Port is hatched, starboard black: told apart on any copy, without colour.
void PageFlow::edge() {
    if (side_.empty()) return;
    const bool port = side_ == "port";
    const double from = port ? 8.5 : size_.width - 5.0 - edgeBreadth_mm;
    const auto band =
        rectangle(from, page::top, from + edgeBreadth_mm, size_.height - page::bottom);
    if (port) {
        add(Role::label, shape::Hatch{band, 45.0, 2.6, Stroke{0.7, LineStyle::solid}});
        add(Role::label, shape::Polygon{band, false, Stroke{0.35, LineStyle::solid}});
    } else {
        add(Role::label, shape::Polygon{band, true, std::nullopt});
    }
}

void PageFlow::headOf(const std::string& seen, bool again) {
    double base = page::top + nameLetter_mm;
    const std::string word = sideWord(side_);
    const std::string code = revisionText(revision_);
    const double gap_mm = 5.0;
    const double room = width() - widthMm(code, page::figure, Weight::bold) - gap_mm -
                        (word.empty() ? 0.0 : widthMm(word, sideLetter_mm, Weight::bold) + gap_mm);
    const double letter = std::min(
        nameLetter_mm, nameLetter_mm * room / widthMm(head_.name, nameLetter_mm, Weight::bold));
    text({left(), base}, head_.name, letter, Weight::bold);
    if (!word.empty())
        text({left() + widthMm(head_.name, letter, Weight::bold) + gap_mm, base}, word,
             sideLetter_mm, Weight::bold);
    text({right(), base}, code, page::figure, Weight::bold, Across::right);
    base += 7.5;
    const double beside = widthMm(head_.unit, page::figure, Weight::bold) + 4.0;
    const auto seenLines =
        wrapped(again ? seen + ", continued" : seen, page::plain, Weight::bold, width() - beside);
    text({right(), base}, head_.unit, page::figure, Weight::bold, Across::right);
    for (std::size_t i = 0; i < seenLines.size(); ++i) {
        if (i > 0) base += page::line;
        text({left(), base}, seenLines[i], page::plain, Weight::bold);
    }
    std::string rule = "Drill only if the code is current.";
    if (!head_.lastChange.empty() && !again) rule += " Last: " + head_.lastChange;
    // One line: what the last change was can be looked up, what it is called stands here.
    shape::Text words;
    words.text = rule;
    words.letterMm = page::plain;
    base += page::line + 0.3;
    text({left(), base}, elided(words, {width(), page::plain}));
    y_ = base + 2.2;
    this->rule(y_, 0.7, left(), right());
    y_ += 1.2;
}

void PageFlow::footOf(std::size_t index) {
    double base = size_.height - page::bottom - 1.2;
    SheetPage& page = pages_[index];
    const auto put = [&](PointMm at, const std::string& words, double letter_mm, Weight weight,
                         Across across) {
        page.drawing.items.push_back(
            {Role::label, {}, shape::Text{at, words, letter_mm, weight, across}});
    };
    const std::string word = sideWord(page.side);
    const std::string name = head_.name + (word.empty() ? "" : " " + word);
    const std::string count =
        "page " + std::to_string(index + 1) + " of " + std::to_string(pages_.size());
    put({left(), base}, name, page::figure, Weight::bold, Across::left);
    put({right(), base}, count, page::plain, Weight::bold, Across::right);
    const double from = left() + widthMm(name, page::figure, Weight::bold) + 4.0;
    const double to = right() - widthMm(count, page::plain, Weight::bold) - 4.0;
    shape::Text middle;
    middle.text = head_.printed + (head_.printed.empty() ? "" : "  ") + head_.boat;
    middle.letterMm = page::plain;
    const std::string shown = elided(middle, {to - from, page::plain});
    put({(from + to) / 2.0, base}, shown, page::plain, Weight::regular, Across::centre);
    const auto caution = wrapped(head_.caution, page::plain, Weight::regular, width());
    base -= page::figure + 2.5 + static_cast<double>(caution.size() - 1) * page::line;
    page.drawing.items.push_back({Role::label,
                                  {},
                                  shape::Line{{left(), base - page::plain - 1.5},
                                              {right(), base - page::plain - 1.5},
                                              {0.35, LineStyle::solid}}});
    for (const std::string& one : caution) {
        put({left(), base}, one, page::plain, Weight::regular, Across::left);
        base += page::line;
    }
}

/// The first line is the one behind the label.
std::vector<std::string> PageFlow::linesBehind(const std::string& label,
                                               const std::string& words) const {
    const double taken =
        label.empty() ? 0.0 : widthMm(label, page::plain, Weight::bold) + labelGap_mm;
    auto lines = wrapped(words, page::plain, Weight::regular, width() - taken);
    if (lines.size() < 2 || taken == 0.0) return lines;
    const std::string rest = words.substr(std::min(words.size(), lines.front().size() + 1));
    const auto behind = wrapped(rest, page::plain, Weight::regular, width());
    lines.resize(1);
    lines.insert(lines.end(), behind.begin(), behind.end());
    return lines;
}

double PageFlow::paragraphHeight(const std::string& label, const std::string& words) const {
    return static_cast<double>(linesBehind(label, words).size()) * page::line;
}

void PageFlow::paragraph(const std::string& label, const std::string& words) {
    const double taken =
        label.empty() ? 0.0 : widthMm(label, page::plain, Weight::bold) + labelGap_mm;
    const auto lines = linesBehind(label, words);
    need(std::min<double>(2.0, static_cast<double>(lines.size())) * page::line);
    bool first = true;
    for (const std::string& one : lines) {
        need(page::line);
        y_ += page::line;
        if (first && !label.empty()) text({left(), y_ - 1.3}, label, page::plain, Weight::bold);
        text({left() + (first ? taken : 0.0), y_ - 1.3}, one);
        first = false;
    }
}

Sheet PageFlow::done(bool empty) {
    for (std::size_t i = 0; i < pages_.size(); ++i) footOf(i);
    Sheet sheet;
    sheet.id = head_.id;
    sheet.kind = head_.kind;
    sheet.title = head_.title;
    sheet.fileName = head_.fileName;
    sheet.revision = revision_;
    sheet.empty = empty;
    sheet.pages = std::move(pages_);
    return sheet;
}

}  // namespace fayline
