#include "sheet/keel_sheet.h"

#include <algorithm>

#include "page_flow.h"
#include "quantity/digest.h"
#include "wrap.h"

namespace fayline {
namespace {

using shape::Across;
using shape::Weight;

constexpr double labelIndent_mm = 33.0;
constexpr double gap_mm = 3.5;
constexpr double signOff_mm = 34.0;

class Pages {
  public:
    Pages(PageFlow& flow, const KeelSheet& sheet, const std::string& revision)
        : flow_(flow), in_(sheet), revision_(revision) {}

    void draw() {
        flow_.startPage("", in_.seen);
        for (const auto& [label, text] : in_.notes) flow_.paragraph(label, text, labelIndent_mm);
        if (in_.bolts.empty()) {
            flow_.down(10.0);
            for (const std::string& one :
                 wrapped(in_.nothing, page::figure, Weight::bold, flow_.width())) {
                flow_.text({flow_.left(), flow_.y()}, one, page::figure, Weight::bold);
                flow_.down(8.0);
            }
        } else {
            columns();
            head();
            for (const KeelBolt& bolt : in_.bolts) row(bolt);
        }
        flow_.down(1.0);
        for (const std::string& one : in_.cases) flow_.paragraph("Case", one, labelIndent_mm);
        for (const std::string& one : in_.warnings)
            flow_.paragraph("Take care", one, labelIndent_mm);
        for (const std::string& one : in_.cautions) flow_.paragraph("", one, 0.0);
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
        word(found_, "measured, cut to");
        flow_.rule(flow_.y(), 0.5, flow_.left(), flow_.right());
    }

    [[nodiscard]] std::vector<std::string> detail(const KeelBolt& bolt) const {
        std::string words = bolt.rod + ", " + bolt.frame + ", " + bolt.plumb + ", " + bolt.keelTop +
                            "; washer " + bolt.washer + ", socket " + bolt.socket + "; " +
                            bolt.bits;
        return wrapped(words, page::plain, Weight::regular, flow_.width() - 4.0);
    }

    void row(const KeelBolt& bolt) {
        const auto lines = detail(bolt);
        const auto margin =
            wrapped(bolt.margin, page::plain, bolt.heavy ? Weight::bold : Weight::regular,
                    flow_.width() - 4.0);
        const double height =
            8.2 + static_cast<double>(lines.size() + margin.size()) * page::line + 1.0;
        if (flow_.need(height)) head();
        const double top = flow_.y();
        flow_.down(8.2);
        const double base = flow_.y() - 1.7;
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
            flow_.down(page::line);
            flow_.text({flow_.left() + 4.0, flow_.y() - 1.4}, one);
        }
        for (const std::string& one : margin) {
            flow_.down(page::line);
            flow_.text({flow_.left() + 4.0, flow_.y() - 1.4}, one, page::plain,
                       bolt.heavy ? Weight::bold : Weight::regular);
        }
        flow_.down(1.0);
        if (bolt.heavy)
            flow_.add(Role::label, shape::Line{{flow_.left() - 1.5, top + 1.0},
                                               {flow_.left() - 1.5, flow_.y() - 1.0},
                                               {1.6, LineStyle::solid}});
        flow_.rule(flow_.y(), 0.25, flow_.left(), flow_.right());
        flow_.drills(bolt.id);
    }

    /// Reviewed to this revision and no other.
    void signOff() {
        flow_.need(signOff_mm);
        flow_.down(2.5);
        const double top = flow_.y(), bottom = top + signOff_mm - 4.0;
        flow_.add(Role::label, shape::Polygon{{{flow_.left(), top},
                                               {flow_.right(), top},
                                               {flow_.right(), bottom},
                                               {flow_.left(), bottom}},
                                              false,
                                              Stroke{0.5, LineStyle::solid}});
        flow_.text({flow_.left() + 2.0, top + 6.0},
                   "Reviewed to revision " + revision_ + " and no other:", page::plain,
                   Weight::bold);
        const double half = (flow_.left() + flow_.right()) / 2.0;
        const auto blank = [&](double x, double to, double base, const char* label) {
            flow_.text({x, base}, label);
            flow_.rule(base + 0.6, 0.3, x + widthMm(label, page::plain, Weight::regular) + 2.0, to);
        };
        blank(flow_.left() + 2.0, half - 3.0, top + 16.0, "name");
        blank(half, flow_.right() - 3.0, top + 16.0, "capacity");
        blank(flow_.left() + 2.0, half - 3.0, top + 26.0, "date");
        blank(half, flow_.right() - 3.0, top + 26.0, "signature");
        flow_.down(signOff_mm - 3.0);
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
    digest.field(sheet.seen).field(sheet.nothing);
    for (const auto& [label, text] : sheet.notes) digest.field(label).field(text);
    for (const KeelBolt& b : sheet.bolts) {
        for (const std::string* cell :
             {&b.id, &b.frame, &b.along, &b.offsetTop, &b.offsetEnd, &b.grip, &b.rod, &b.plumb,
              &b.keelTop, &b.washer, &b.socket, &b.bits, &b.margin})
            digest.field(*cell);
    }
    for (const auto* lines : {&sheet.cases, &sheet.warnings, &sheet.cautions}) {
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
