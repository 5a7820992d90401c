#include "sheet/keel_sheet.h"

#include <algorithm>

#include "page_flow.h"
#include "quantity/digest.h"
#include "wrap.h"

namespace fayline {
namespace {

using shape::Across;
using shape::Weight;

constexpr double gap_mm = 3.5;
constexpr double signOff_mm = 22.0, tightSignOff_mm = 13.3;
constexpr double figure_mm = 7.0;
constexpr double detail_mm = 5.2;
constexpr double indent_mm = 4.0;

class Pages {
  public:
    Pages(PageFlow& flow, const KeelSheet& sheet, const std::string& revision)
        : flow_(flow), in_(sheet), revision_(revision) {}

    void draw() {
        flow_.startPage("", in_.seen);
        for (const auto& [label, text] : in_.notes) flow_.paragraph(label, text);
        if (in_.bolts.empty()) {
            flow_.down(10.0);
            for (const std::string& one :
                 wrapped(in_.nothing, page::figure, Weight::bold, flow_.width())) {
                flow_.text({flow_.left(), flow_.y()}, one, page::figure, Weight::bold);
                flow_.down(8.0);
            }
        } else {
            for (const auto& [label, text] : in_.settings) flow_.paragraph(label, text);
            columns();
            head();
            for (const KeelBolt& bolt : in_.bolts) row(bolt);
        }
        flow_.down(1.0);
        if (!in_.cases.empty()) flow_.paragraph("Worst by case", in_.cases);
        std::string care;
        for (const auto* lines : {&in_.warnings, &in_.cautions}) {
            for (const std::string& one : *lines) care += (care.empty() ? "" : " ") + one;
        }
        if (!care.empty()) flow_.paragraph("Take care", care);
        signOff();
    }

  private:
    void columns() {
        const auto widest = [&](const char* head, std::string KeelBolt::*cell, Weight weight) {
            double width = widthMm(head, page::plain, Weight::bold);
            for (const KeelBolt& bolt : in_.bolts)
                width = std::max(width, widthMm(bolt.*cell, page::figure, weight));
            return width + gap_mm;
        };
        mark_ = flow_.left();
        along_ = mark_ + widest("bolt", &KeelBolt::id, Weight::bold);
        top_ = along_ + widest("from A", &KeelBolt::along, Weight::bold);
        end_ = top_ + widest("off, top", &KeelBolt::offsetTop, Weight::regular);
        grip_ = end_ + widest("off, foot", &KeelBolt::offsetEnd, Weight::regular);
        found_ = grip_ + widest("grip", &KeelBolt::grip, Weight::regular);
    }

    void head() {
        flow_.down(page::line + 1.0);
        const double base = flow_.y() - 1.2;
        const auto word = [&](double x, const char* text) {
            flow_.text({x, base}, text, page::plain, Weight::bold);
        };
        word(mark_, "bolt");
        word(along_, "from A");
        word(top_, "off, top");
        word(end_, "off, foot");
        word(grip_, "grip");
        word(found_, "found, cut to");
        flow_.rule(flow_.y(), 0.5, flow_.left(), flow_.right());
    }

    void row(const KeelBolt& bolt) {
        const Weight small = bolt.heavy ? Weight::bold : Weight::regular;
        const auto lines = wrapped(
            bolt.frame + (bolt.angles.empty() ? "" : ", " + bolt.angles) + ": " + bolt.margin,
            page::plain, small, flow_.width() - indent_mm);
        const double height = figure_mm + static_cast<double>(lines.size()) * detail_mm;
        if (flow_.need(height)) head();
        const double top = flow_.y();
        flow_.down(figure_mm);
        const double base = flow_.y() - 1.8;
        const auto figure = [&](double x, const std::string& text, Weight weight) {
            flow_.text({x, base}, text, page::figure, weight, Across::left, bolt.id);
        };
        figure(mark_, bolt.id, Weight::bold);
        figure(along_, bolt.along, Weight::bold);
        figure(top_, bolt.offsetTop, Weight::regular);
        figure(end_, bolt.offsetEnd, Weight::regular);
        figure(grip_, bolt.grip, Weight::regular);
        const double middle = (found_ + flow_.right()) / 2.0;
        flow_.rule(base + 0.6, 0.3, found_, middle - 1.5);
        flow_.rule(base + 0.6, 0.3, middle + 1.5, flow_.right());
        for (const std::string& one : lines) {
            flow_.down(detail_mm);
            flow_.text({flow_.left() + indent_mm, flow_.y() - 1.6}, one, page::plain, small);
        }
        if (bolt.heavy)
            flow_.add(Role::label, shape::Line{{flow_.left() - 1.5, top + 1.0},
                                               {flow_.left() - 1.5, flow_.y() - 1.0},
                                               {1.6, LineStyle::solid}});
        flow_.rule(flow_.y(), 0.25, flow_.left(), flow_.right());
        flow_.drills(bolt.id);
    }

    /// Reviewed to this revision and no other: two rows to write on, or one where room is short.
    void signOff() {
        const bool tight = flow_.room() < signOff_mm && flow_.room() >= tightSignOff_mm;
        const double height = tight ? tightSignOff_mm : signOff_mm;
        flow_.need(height);
        flow_.down(1.2);
        const double top = flow_.y(), bottom = top + height - 1.7;
        flow_.add(Role::label, shape::Polygon{{{flow_.left(), top},
                                               {flow_.right(), top},
                                               {flow_.right(), bottom},
                                               {flow_.left(), bottom}},
                                              false,
                                              Stroke{0.5, LineStyle::solid}});
        flow_.text({flow_.left() + 2.0, top + 5.2},
                   "Reviewed to revision " + revision_ + " and no other:", page::plain,
                   Weight::bold);
        const auto blank = [&](double x, double to, double base, const char* label) {
            flow_.text({x, base}, label);
            flow_.rule(base + 0.6, 0.3, x + widthMm(label, page::plain, Weight::regular) + 2.0, to);
        };
        const double left = flow_.left() + 2.0, right = flow_.right() - 3.0;
        const double half = (left + right) / 2.0;
        if (tight) {
            const double third = (right - left) / 3.0;
            blank(left, left + third - 3.0, bottom - 1.6, "name");
            blank(left + third, left + 2.0 * third - 3.0, bottom - 1.6, "date");
            blank(left + 2.0 * third, right, bottom - 1.6, "signature");
        } else {
            blank(left, half - 3.0, top + 11.8, "name");
            blank(half, right, top + 11.8, "capacity");
            blank(left, half - 3.0, top + 17.8, "date");
            blank(half, right, top + 17.8, "signature");
        }
        flow_.down(height - 1.3);
    }

    PageFlow& flow_;
    const KeelSheet& in_;
    const std::string& revision_;
    double mark_ = 0, along_ = 0, top_ = 0, end_ = 0, grip_ = 0, found_ = 0;
};

}  // namespace

std::string revisionOf(const KeelSheet& sheet) {
    Digest digest;
    say(digest, sheet.head);
    digest.field(sheet.seen).field(sheet.nothing).field(sheet.cases);
    for (const auto& [label, text] : sheet.settings) digest.field(label).field(text);
    for (const auto& [label, text] : sheet.notes) digest.field(label).field(text);
    for (const KeelBolt& b : sheet.bolts) {
        for (const std::string* cell :
             {&b.id, &b.frame, &b.along, &b.offsetTop, &b.offsetEnd, &b.grip, &b.angles, &b.margin})
            digest.field(*cell);
    }
    for (const auto* lines : {&sheet.warnings, &sheet.cautions}) {
        digest.field(static_cast<std::int64_t>(lines->size()));
        for (const std::string& line : *lines) digest.field(line);
    }
    return revisionCode(digest.hex());
}

Sheet layOut(const KeelSheet& sheet, PaperSize paper) {
    const std::string revision = revisionOf(sheet);
    PageFlow flow(sheet.head, revision, paper);
    Pages(flow, sheet, revision).draw();
    return flow.done(sheet.bolts.empty());
}

}  // namespace fayline
