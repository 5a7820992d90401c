#include "sheet/bench.h"

#include <algorithm>
#include <cmath>

#include "bench_picture.h"
#include "quantity/digest.h"
#include "wrap.h"

namespace fayline {
namespace {

using shape::Across;
using shape::Weight;

constexpr double row_mm = 9.0;
constexpr double box_mm = 6.0;
constexpr double pad_mm = 1.2;

// What a sheet says, field by field, for its code.

/// To a tenth of a millimetre: finer than any sheet is read.
void say(Digest& digest, PlanePoint p) {
    digest.field(std::llround(p.across.si() * 1.0e4)).field(std::llround(p.up.si() * 1.0e4));
}

void say(Digest& digest, const BenchPicture& picture) {
    for (const BenchPart& part : picture.parts) {
        digest.field(static_cast<std::int64_t>(part.points.size()));
        for (const PlanePoint& p : part.points) say(digest, p);
    }
    for (const BenchSpot& spot : picture.spots) {
        digest.field(spot.id).field(spot.mark).field(spot.along).field(spot.across);
        say(digest, spot.at);
    }
    say(digest, picture.datum);
    for (const std::string* word : {&picture.datumMark, &picture.along, &picture.across,
                                    &picture.up, &picture.outward, &picture.away})
        digest.field(*word);
}

void say(Digest& digest, const BenchSide& side) {
    digest.field(side.side).field(side.seen).field(side.margins).field(side.nothing);
    for (const auto& [label, text] : side.notes) digest.field(label).field(text);
    say(digest, side.picture);
    for (const std::string& warning : side.warnings) digest.field(warning);
    for (const BenchGroup& group : side.groups) {
        digest.field(group.title);
        for (const std::string& line : group.setting) digest.field(line);
        for (const BenchHole& h : group.holes) {
            for (const std::string* cell :
                 {&h.id, &h.mark, &h.along, &h.across, &h.angle, &h.beyond})
                digest.field(*cell);
        }
    }
    for (const BenchGuest& g : side.guests)
        digest.field(g.mark).field(g.along).field(g.across).field(g.sheet);
}

/// Left edges of the table's columns.
struct Table {
    double mark = 0, along = 0, across = 0, angle = 0, beyond = 0, drilled = 0, driven = 0,
           found = 0, right = 0;
};

class Side {
  public:
    Side(PageFlow& flow, const BenchSide& side) : flow_(flow), in_(side) {}

    void draw() {
        flow_.startPage(in_.side, in_.seen);
        columns();
        for (const auto& [label, text] : in_.notes) flow_.paragraph(label, text);
        if (!in_.picture.parts.empty()) picture();
        warnings();
        if (in_.groups.empty() && in_.guests.empty()) {
            flow_.down(4.0);
            for (const std::string& one :
                 wrapped(in_.nothing, page::figure, Weight::bold, flow_.width())) {
                flow_.need(8.0);
                flow_.down(8.0);
                flow_.text({flow_.left(), flow_.y() - 1.5}, one, page::figure, Weight::bold);
            }
        } else {
            table();
            guests();
        }
        if (!in_.margins.empty()) {
            flow_.down(1.0);
            flow_.paragraph("Margins", in_.margins);
        }
        found();
    }

  private:
    /// The picture takes what the rest leaves free, so that a side fits one page where it can.
    void picture() {
        const double least = leastPictureHeight_mm(in_.picture);
        constexpr double most = 112.0;
        const double spare = flow_.room() - heightBelowPicture();
        double height = std::clamp(spare, least, std::max(least, most));
        if (spare < least)
            height = std::clamp(flow_.room() - warningsHeight(), least, std::max(least, most));
        flow_.need(height);
        drawPicture(flow_, in_.picture, height);
    }

    [[nodiscard]] double warningsHeight() const {
        double height = 0.0;
        for (const std::string& warning : in_.warnings)
            height += flow_.paragraphHeight("Take care", warning);
        return height;
    }

    [[nodiscard]] double heightBelowPicture() const {
        double height = warningsHeight() + heightOfFound();
        if (!in_.margins.empty()) height += 1.0 + flow_.paragraphHeight("Margins", in_.margins);
        if (in_.groups.empty() && in_.guests.empty()) return height + 24.0;
        if (!in_.groups.empty()) height += headHeight();
        for (const BenchGroup& group : in_.groups)
            height += groupHeight(group) + static_cast<double>(group.holes.size()) * row_mm;
        if (!in_.guests.empty())
            height += 2.0 + page::line + 1.5 + static_cast<double>(in_.guests.size()) * 8.0;
        return height;
    }

    void warnings() {
        for (const std::string& warning : in_.warnings) flow_.paragraph("Take care", warning);
    }

    void columns() {
        double mark = widthMm("mark", page::plain, Weight::bold);
        double along = widthMm(in_.picture.along, page::plain, Weight::bold);
        double across = widthMm(in_.picture.across, page::plain, Weight::bold);
        double angle = widthMm("angle", page::plain, Weight::bold);
        double beyond = widthMm("through", page::plain, Weight::regular);
        for (const BenchGroup& group : in_.groups) {
            for (const BenchHole& hole : group.holes) {
                mark = std::max(mark, widthMm(hole.mark, page::figure, Weight::bold));
                along = std::max(along, widthMm(hole.along, page::figure, Weight::regular));
                across = std::max(across, widthMm(hole.across, page::figure, Weight::regular));
                angle = std::max(angle, widthMm(hole.angle, page::plain, Weight::regular));
                beyond = std::max(beyond, widthMm(hole.beyond, page::plain, Weight::regular));
            }
        }
        for (const BenchGuest& guest : in_.guests) {
            mark = std::max(mark, widthMm(guest.mark, page::figure, Weight::bold));
            along = std::max(along, widthMm(guest.along, page::figure, Weight::regular));
            across = std::max(across, widthMm(guest.across, page::figure, Weight::regular));
        }
        const double tick = widthMm("drilled", page::plain, Weight::bold) + 2.0 * pad_mm;
        t_.mark = flow_.left();
        t_.along = t_.mark + mark + 2.0 * pad_mm;
        t_.across = t_.along + along + 2.0 * pad_mm;
        t_.angle = t_.across + across + 2.0 * pad_mm;
        t_.beyond = t_.angle + angle + 2.0 * pad_mm;
        t_.drilled = t_.beyond + beyond + 2.0 * pad_mm;
        t_.driven = t_.drilled + tick;
        t_.found = t_.driven + tick;
        t_.right = flow_.right();
    }

    static double headHeight() { return page::line + 1.5; }
    [[nodiscard]] double groupHeight(const BenchGroup& group) const {
        return 2.0 + static_cast<double>(linesOf(group, true).size()) * page::line;
    }
    [[nodiscard]] std::vector<std::pair<std::string, Weight>> linesOf(const BenchGroup& group,
                                                                      bool again) const {
        std::vector<std::pair<std::string, Weight>> lines;
        const double room = flow_.width() - 2.0 * pad_mm;
        for (const std::string& one :
             wrapped(group.title + (again ? " (continued)" : ""), page::plain, Weight::bold, room))
            lines.emplace_back(one, Weight::bold);
        for (const std::string& setting : group.setting) {
            for (const std::string& one : wrapped(setting, page::plain, Weight::regular, room))
                lines.emplace_back(one, Weight::regular);
        }
        return lines;
    }

    void tableHead() {
        const double base = flow_.y() + page::line - 0.4;
        const auto word = [&](double x, const std::string& text) {
            flow_.text({x + pad_mm, base}, text, page::plain, Weight::bold);
        };
        word(t_.mark, "mark");
        word(t_.along, in_.picture.along);
        word(t_.across, in_.picture.across);
        word(t_.angle, "angle");
        word(t_.beyond, "left");
        word(t_.drilled, "drilled");
        word(t_.driven, "driven");
        word(t_.found, foundWords());
        flow_.down(headHeight());
        flow_.rule(flow_.y(), 0.5, flow_.left(), flow_.right());
    }

    /// Initials and what was found: as much of the words as the column takes.
    [[nodiscard]] std::string foundWords() const {
        const double room = t_.right - t_.found - 2.0 * pad_mm;
        for (const char* words :
             {"initials, as found", "by, as found", "as found", "found", "by"}) {
            if (widthMm(words, page::plain, Weight::bold) <= room) return words;
        }
        return {};
    }

    void groupHead(const BenchGroup& group, bool again) {
        const double top = flow_.y();
        flow_.down(0.8);
        for (const auto& [line, weight] : linesOf(group, again)) {
            flow_.down(page::line);
            flow_.text({flow_.left() + pad_mm, flow_.y() - 1.2}, line, page::plain, weight);
        }
        flow_.down(1.2);
        // A bar in the margin of the text marks the group, in place of a tint.
        flow_.add(Role::label, shape::Line{{flow_.left() - 1.2, top + 1.0},
                                           {flow_.left() - 1.2, flow_.y() - 1.0},
                                           {1.2, LineStyle::solid}});
        flow_.rule(flow_.y(), 0.35, flow_.left(), flow_.right());
    }

    void table() {
        if (in_.groups.empty()) return;
        flow_.need(headHeight() + groupHeight(in_.groups.front()) + row_mm);
        tableHead();
        for (const BenchGroup& group : in_.groups) {
            if (flow_.need(groupHeight(group) + row_mm)) tableHead();
            groupHead(group, false);
            for (const BenchHole& hole : group.holes) {
                if (flow_.need(row_mm)) {
                    tableHead();
                    groupHead(group, true);
                }
                row(hole);
            }
        }
    }

    void row(const BenchHole& hole) {
        const double figureBase = flow_.y() + (row_mm + page::figure) / 2.0;
        const double plainBase = flow_.y() + (row_mm + page::plain) / 2.0;
        const auto figure = [&](double x, const std::string& text, Weight weight) {
            flow_.text({x + pad_mm, figureBase}, text, page::figure, weight, Across::left, hole.id);
        };
        const auto plain = [&](double x, const std::string& text) {
            flow_.text({x + pad_mm, plainBase}, text, page::plain, Weight::regular, Across::left,
                       hole.id);
        };
        figure(t_.mark, hole.mark, Weight::bold);
        figure(t_.along, hole.along, Weight::regular);
        figure(t_.across, hole.across, Weight::regular);
        plain(t_.angle, hole.angle);
        plain(t_.beyond, hole.beyond);
        const double boxTop = flow_.y() + (row_mm - box_mm) / 2.0;
        flow_.box({t_.drilled + (t_.driven - t_.drilled - box_mm) / 2.0, boxTop}, box_mm);
        flow_.box({t_.driven + (t_.found - t_.driven - box_mm) / 2.0, boxTop}, box_mm);
        flow_.add(Role::label, shape::Line{{t_.found, flow_.y() + 0.8},
                                           {t_.found, flow_.y() + row_mm - 0.8},
                                           {0.2, LineStyle::solid}});
        flow_.down(row_mm);
        flow_.rule(flow_.y(), 0.2, flow_.left(), flow_.right());
        flow_.drills(hole.id);
    }

    void guests() {
        if (in_.guests.empty()) return;
        flow_.need(2.0 + page::line + 1.5 + 8.0);
        flow_.down(2.0 + page::line);
        flow_.text({flow_.left() + pad_mm, flow_.y() - 1.2},
                   "Also here, but drilled from another sheet:", page::plain, Weight::bold);
        for (const BenchGuest& guest : in_.guests) {
            flow_.need(8.0);
            flow_.down(8.0);
            const double base = flow_.y() - 1.8;
            flow_.text({t_.mark + pad_mm, base}, guest.mark, page::figure, Weight::bold);
            flow_.text({t_.along + pad_mm, base}, guest.along, page::figure, Weight::regular);
            flow_.text({t_.across + pad_mm, base}, guest.across, page::figure, Weight::regular);
            flow_.text({t_.angle + pad_mm, base}, guest.sheet);
            flow_.rule(flow_.y(), 0.2, flow_.left(), flow_.right());
        }
        flow_.down(1.5);
    }

    static double heightOfFound() { return page::line + 8.5 + 0.6; }

    /// Lines for knots, checks, and holes that had to move.
    void found() {
        flow_.need(heightOfFound());
        flow_.down(0.6 + page::line);
        flow_.text({flow_.left(), flow_.y() - 1.3},
                   "Knots, checks, holes moved (mark, how far along and across, why):");
        double y = flow_.y() + 8.0;
        while (y < flow_.y() + flow_.room() - 0.5) {
            flow_.rule(y, 0.25, flow_.left(), flow_.right());
            y += 9.0;
        }
    }

    PageFlow& flow_;
    const BenchSide& in_;
    Table t_;
};

}  // namespace

std::string revisionOf(const BenchSheet& sheet) {
    Digest digest;
    say(digest, sheet.head);
    for (const BenchSide& side : sheet.sides) say(digest, side);
    return revisionCode(digest.hex());
}

Sheet layOut(const BenchSheet& sheet, PaperSize paper) {
    PageFlow flow(sheet.head, revisionOf(sheet), paper);
    bool empty = true;
    for (const BenchSide& side : sheet.sides) {
        Side(flow, side).draw();
        for (const BenchGroup& group : side.groups) empty = empty && group.holes.empty();
    }
    return flow.done(empty);
}

}  // namespace fayline
