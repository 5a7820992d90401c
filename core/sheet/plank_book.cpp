#include "sheet/plank_book.h"

#include <algorithm>

#include "page_flow.h"
#include "quantity/digest.h"
#include "wrap.h"

namespace fayline {
namespace {

using shape::Across;
using shape::Weight;

constexpr double plank_mm = 11.0;     ///< the strip's picture; not to scale upright
constexpr double figure_mm = 6.8;     ///< one row of figures
constexpr double crossing_mm = 18.0;  ///< least room of one crossing
constexpr double row_mm = 8.4;
constexpr double head_mm = 22.0;  ///< words in front of each row

class Book {
  public:
    Book(PageFlow& flow, const PlankBook& book) : flow_(flow), in_(book) {}

    void draw() {
        if (in_.strips.empty() && in_.lists.empty()) {
            start("");
            flow_.down(10.0);
            for (const std::string& one :
                 wrapped(in_.nothing, page::figure, Weight::bold, flow_.width())) {
                flow_.text({flow_.left(), flow_.y()}, one, page::figure, Weight::bold);
                flow_.down(8.0);
            }
            return;
        }
        for (const char* side : {"port", "starboard"}) {
            const auto here = [&](const auto& part) { return part.side == side; };
            if (std::none_of(in_.strips.begin(), in_.strips.end(), here) &&
                std::none_of(in_.lists.begin(), in_.lists.end(), here))
                continue;
            start(side);
            for (const PlankStrip& strip : in_.strips) {
                if (here(strip)) draw(strip);
            }
            for (const PlankList& list : in_.lists) {
                if (here(list)) draw(list);
            }
        }
    }

  private:
    void start(const std::string& side) {
        flow_.startPage(side, "OUTSIDE of the planking");
        for (const auto& [label, text] : in_.notes) flow_.paragraph(label, text);
        for (const std::string& one : in_.warnings) flow_.paragraph("Take care", one);
        flow_.down(1.0);
    }

    template <typename Part>
    [[nodiscard]] std::vector<std::string> settingLines(const Part& part) const {
        std::vector<std::string> lines;
        for (const std::string& text : part.setting) {
            for (std::string& one : wrapped(text, page::plain, Weight::regular, flow_.width()))
                lines.push_back(std::move(one));
        }
        return lines;
    }

    static std::size_t mostHoles(const PlankStrip& strip) {
        std::size_t most = 0;
        for (const PlankCrossing& c : strip.crossings) most = std::max(most, c.holes.size());
        return most;
    }

    /// Frame names, the strip, a row of figures for each hole, widths, boxes.
    static double blockHeight(const PlankStrip& strip) {
        return 7.6 + plank_mm + 0.6 + figure_mm * static_cast<double>(mostHoles(strip)) +
               page::line + 6.8 + 1.2;
    }

    template <typename Part>
    void title(const Part& strip, bool again) {
        flow_.down(7.5);
        flow_.text({flow_.left(), flow_.y() - 1.2}, strip.title + (again ? ", continued" : ""),
                   page::figure, Weight::bold);
        if (again) return;
        for (const std::string& one : settingLines(strip)) {
            flow_.down(page::line);
            flow_.text({flow_.left(), flow_.y() - 1.2}, one);
        }
        flow_.down(0.8);
    }

    void draw(const PlankStrip& strip) {
        const double settings = static_cast<double>(settingLines(strip).size()) * page::line;
        flow_.need(7.5 + settings + blockHeight(strip));
        title(strip, false);
        double room = crossing_mm;
        for (const PlankCrossing& c : strip.crossings) {
            room = std::max(room, widthMm(c.frame, page::figure, Weight::regular) + 2.2);
            for (const PlankHole& hole : c.holes)
                room = std::max(room, widthMm(hole.figure, page::figure, Weight::regular) + 2.2);
            room = std::max(room, widthMm(c.flag, page::plain, Weight::bold) + 2.2);
            room = std::max(room, widthMm(c.width, page::plain, Weight::regular) + 2.2);
        }
        const double available = flow_.width() - head_mm;
        const auto perRow = std::max<std::size_t>(1, static_cast<std::size_t>(available / room));
        for (std::size_t from = 0; from < strip.crossings.size(); from += perRow) {
            if (flow_.need(blockHeight(strip))) title(strip, true);
            block(strip, from, std::min(perRow, strip.crossings.size() - from),
                  available / static_cast<double>(perRow));
        }
    }

    void block(const PlankStrip& strip, std::size_t from, std::size_t count, double pitch) {
        const std::size_t rows = mostHoles(strip);
        const double x0 = flow_.left() + head_mm;
        // From outside, bow to the left on the port side: the way the builder stands.
        const bool bowLeft = strip.side != "starboard";
        const auto middle = [&](std::size_t i) {
            const std::size_t slot = bowLeft ? i : count - 1 - i;
            return x0 + (static_cast<double>(slot) + 0.5) * pitch;
        };
        const double names = flow_.y() + 6.4, top = flow_.y() + 7.6, bottom = top + plank_mm;
        const double right = x0 + static_cast<double>(count) * pitch;
        flow_.add(Role::frame,
                  shape::Polygon{{{x0, top}, {right, top}, {right, bottom}, {x0, bottom}},
                                 true,
                                 Stroke{0.5, LineStyle::solid}});
        flow_.text({flow_.left(), top + page::plain + 1.0}, "upper");
        flow_.text({flow_.left(), bottom - 1.0}, "lower");
        const double figures = bottom + 0.6;
        static constexpr const char* letters[] = {"c", "b", "a"};
        for (std::size_t row = 0; row < rows; ++row) {
            // Uppermost first, as they lie on the plank; "a" is the lowest.
            const std::size_t which = rows - 1 - row;
            const double base = figures + figure_mm * static_cast<double>(row + 1) - 0.9;
            const std::string letter =
                which < 3 ? letters[2 - which] : "no. " + std::to_string(which + 1);
            flow_.text({flow_.left(), base}, letter + ", " + edgeOf(strip, which));
        }
        const double widths = figures + figure_mm * static_cast<double>(rows) + page::line - 1.0;
        flow_.text({flow_.left(), widths}, "width");
        const double boxes = widths + 1.5;
        flow_.text({flow_.left(), boxes + 4.8}, "boxes");
        for (std::size_t i = 0; i < count; ++i) {
            const PlankCrossing& c = strip.crossings[from + i];
            const double x = middle(i);
            flow_.text({x, names}, c.frame, page::figure, Weight::regular, Across::centre);
            flow_.add(Role::muted, shape::Line{{x, top}, {x, bottom}, {0.25, LineStyle::dashDot}});
            for (std::size_t h = 0; h < c.holes.size(); ++h) {
                const PlankHole& hole = c.holes[h];
                const double aft = (bowLeft ? 1.0 : -1.0) * hole.aft * 8.0;
                flow_.add(Role::label,
                          shape::Mark{{x + aft, bottom - hole.up * plank_mm},
                                      shape::MarkKind::circle,
                                      1.8,
                                      true,
                                      Stroke{0.0, {}}},
                          hole.id);
                const double base = figures + figure_mm * static_cast<double>(rows - h) - 0.9;
                flow_.text({x, base}, hole.figure, page::figure, Weight::regular, Across::centre,
                           hole.id);
                flow_.drills(hole.id);
            }
            flow_.text({x, widths}, c.flag.empty() ? c.width : c.flag, page::plain,
                       c.flag.empty() ? Weight::regular : Weight::bold, Across::centre);
            flow_.box({x - 6.5, boxes}, 6.0);
            flow_.box({x + 0.5, boxes}, 6.0);
        }
        flow_.down(blockHeight(strip));
    }

    void draw(const PlankList& list) {
        const double settings = static_cast<double>(settingLines(list).size()) * page::line;
        flow_.need(7.5 + settings + 0.8 + page::line + 2.0 * row_mm);
        title(list, false);
        double where = widthMm("where", page::plain, Weight::bold);
        double mark = widthMm("mark", page::plain, Weight::bold);
        double off = widthMm("off line", page::plain, Weight::bold);
        double edge = widthMm("edge", page::plain, Weight::bold);
        for (const PlankRow& row : list.rows) {
            where = std::max(where, widthMm(row.where, page::plain, Weight::regular));
            mark = std::max(mark, widthMm(row.mark, page::figure, Weight::bold));
            off = std::max(off, widthMm(row.offLine, page::figure, Weight::regular));
            edge = std::max(edge, widthMm(row.edge, page::figure, Weight::regular));
        }
        constexpr double gap_mm = 3.0;
        const double markAt = flow_.left() + where + gap_mm, offAt = markAt + mark + gap_mm;
        const double edgeAt = offAt + off + gap_mm, boxAt = edgeAt + edge + gap_mm;
        const auto head = [&] {
            flow_.down(page::line);
            const double base = flow_.y() - 1.2;
            flow_.text({flow_.left(), base}, "where", page::plain, Weight::bold);
            flow_.text({markAt, base}, "mark", page::plain, Weight::bold);
            flow_.text({offAt, base}, "off line", page::plain, Weight::bold);
            flow_.text({edgeAt, base}, "edge", page::plain, Weight::bold);
            flow_.rule(flow_.y(), 0.35, flow_.left(), flow_.right());
        };
        head();
        for (const PlankRow& row : list.rows) {
            if (flow_.need(row_mm)) {
                title(list, true);
                head();
            }
            const double base = flow_.y() + (row_mm + page::figure) / 2.0;
            flow_.text({flow_.left(), base}, row.where, page::plain, Weight::regular, Across::left,
                       row.id);
            flow_.text({markAt, base}, row.mark, page::figure, Weight::bold, Across::left, row.id);
            flow_.text({offAt, base}, row.offLine, page::figure, Weight::regular, Across::left,
                       row.id);
            flow_.text({edgeAt, base}, row.edge, page::figure, Weight::regular, Across::left,
                       row.id);
            flow_.box({boxAt, flow_.y() + 1.2}, 6.0);
            flow_.box({boxAt + 8.0, flow_.y() + 1.2}, 6.0);
            flow_.down(row_mm);
            flow_.rule(flow_.y(), 0.2, flow_.left(), flow_.right());
            flow_.drills(row.id);
        }
    }

    /// The edge the holes of one row are measured from, when it is the same all along.
    static std::string edgeOf(const PlankStrip& strip, std::size_t which) {
        for (const PlankCrossing& c : strip.crossings) {
            if (which < c.holes.size()) return c.holes[which].fromUpper ? "upper" : "lower";
        }
        return "lower";
    }

    PageFlow& flow_;
    const PlankBook& in_;
};

}  // namespace

std::string revisionOf(const PlankBook& book) {
    Digest digest;
    say(digest, book.head);
    digest.field(book.nothing);
    for (const auto& [label, text] : book.notes) digest.field(label).field(text);
    for (const std::string& warning : book.warnings) digest.field(warning);
    for (const PlankStrip& strip : book.strips) {
        digest.field(strip.side).field(strip.title);
        for (const std::string& line : strip.setting) digest.field(line);
        for (const PlankCrossing& c : strip.crossings) {
            digest.field(c.frame).field(c.width).field(c.flag);
            for (const PlankHole& hole : c.holes)
                digest.field(hole.id)
                    .field(hole.figure)
                    .field(hole.offLine)
                    .field(hole.fromUpper ? "upper" : "lower");
        }
    }
    for (const PlankList& list : book.lists) {
        digest.field(list.side).field(list.title);
        for (const std::string& line : list.setting) digest.field(line);
        for (const PlankRow& row : list.rows) {
            for (const std::string* cell :
                 {&row.id, &row.mark, &row.where, &row.offLine, &row.edge})
                digest.field(*cell);
        }
    }
    return revisionCode(digest.hex());
}

Sheet layOut(const PlankBook& book, PaperSize paper) {
    PageFlow flow(book.head, revisionOf(book), paper);
    Book(flow, book).draw();
    return flow.done(book.strips.empty() && book.lists.empty());
}

}  // namespace fayline
