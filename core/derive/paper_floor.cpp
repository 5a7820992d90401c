#include <algorithm>
#include <cmath>

#include "hull/keel.h"
#include "paper_sheets.h"

namespace fayline {
namespace {

/// "1-1/4 P", "1-1/4 S", "0": athwartships from the centreline nick.
std::string athwart(const PaperContext& paper, Length y) {
    std::string figure = paper.unit.setOut(abs(y));
    if (figure == "0") return figure;
    return figure + (y < Length{} ? " P" : " S");
}

std::string plumbWords(const Hole& hole) {
    const double dx = hole.end.x.si() - hole.start.x.si();
    const double dy = hole.end.y.si() - hole.start.y.si();
    const double dz = hole.end.z.si() - hole.start.z.si();
    const int off = paper_text::degrees(std::atan2(std::hypot(dx, dy), std::abs(dz)));
    if (off == 0) return "plumb";
    const char* way =
        std::abs(dx) >= std::abs(dy) ? (dx > 0 ? " aft" : " fwd") : (dy > 0 ? " stbd" : " port");
    return std::to_string(off) + "°" + way;
}

std::string beyond(const PaperContext& paper, const Hole& hole) {
    if (hole.kind == "bolt" || hole.kind == "rivet") return "through";
    const auto& keel = paper.results.structure->keel;
    const auto underside = keel ? keelUndersideAt(*keel, hole.end.x) : std::nullopt;
    if (!underside || hole.end.z < *underside) return "through";
    return paper.unit.setOut(hole.end.z - *underside);
}

class Floor {
  public:
    Floor(const PaperContext& paper, const FramePlace& frame, const HolesOf& holes)
        : paper_(paper),
          frame_(frame),
          holes_(holes),
          sided_(frame.floorSided.value_or(Length{})),
          middle_(frame.floorX.value_or(frame.x)) {}

    BenchSide made() {
        BenchSide out;
        out.seen = "TOP of the floor, seen from above";
        out.picture.up = "BOW";
        out.picture.outward = "STARBOARD";
        out.picture.along = "along";
        out.picture.across = "edge";
        out.picture.datumMark = "A";
        out.picture.datum = {Length{}, -(middle_ - sided_ / 2.0)};
        std::vector<BenchItem> items;
        for (const Hole* hole : holes_) {
            BenchItem item;
            item.hole = hole;
            item.row = row(*hole, out.picture);
            item.what = "floor to keel";
            item.where = "Down from the TOP; edge = FORWARD.";
            items.push_back(std::move(item));
        }
        out.groups = groupsOf(paper_, std::move(items));
        notes(out);
        guests(out);
        parts(out.picture);
        out.warnings = warningsFor(paper_, holes_, beside_);
        if (!holes_.empty()) out.margins = marginsFor(paper_, holes_);
        out.nothing =
            "Nothing to drill from this sheet: no floor-to-keel fastening is decided "
            "for this floor.";
        return out;
    }

  private:
    BenchHole row(const Hole& hole, BenchPicture& picture) const {
        const Point entry = entryOf(hole);
        BenchHole row;
        row.id = hole.id;
        row.mark = paperMark(hole);
        row.along = athwart(paper_, entry.y);
        row.across = paper_.unit.setOut(entry.x - middle_ + sided_ / 2.0);
        row.angle = plumbWords(hole);
        row.beyond = beyond(paper_, hole);
        picture.spots.push_back({hole.id,
                                 row.mark,
                                 row.along,
                                 row.across,
                                 {entry.y, -entry.x},
                                 hole.diameter,
                                 {hole.end.y, -hole.end.x}});
        return row;
    }

    /// Ballast bolts and arm fastenings of this floor, which other sheets drill.
    void guests(BenchSide& out) {
        std::string arms;
        for (const Hole* hole : allHoles(paper_.results)) {
            const bool joins = std::find(hole->joins.begin(), hole->joins.end(),
                                         frame_.id + ".floor") != hole->joins.end();
            if (!joins || hole->group == "floor") continue;
            beside_.push_back(hole);
            if (hole->group == "ballast") {
                const BenchHole here = row(*hole, out.picture);
                out.guests.push_back({here.mark, here.along, here.across, "keel sheet"});
            } else {
                arms += (arms.empty() ? "" : ", ") + paperMark(*hole) + " " +
                        athwart(paper_, hole->start.y);
            }
        }
        if (!arms.empty())
            out.notes.emplace_back("Arms", "fore and aft through this floor, drilled from sheet " +
                                               frame_.id + ": " + arms + ".");
    }

    void parts(BenchPicture& picture) const {
        const auto& keel = paper_.results.structure->keel;
        const Length half = keel ? keel->sided / 2.0 : millimetres(100);
        Length wide = half * 1.25;
        for (const BenchSpot& spot : picture.spots)
            wide = max(wide, abs(spot.at.across) + millimetres(40));
        const Length fore = -(middle_ - sided_ / 2.0), aft = -(middle_ + sided_ / 2.0);
        picture.parts.push_back(
            {Role::frame, {{-wide, fore}, {wide, fore}, {wide, aft}, {-wide, aft}}});
        for (const double side : {-1.0, 1.0}) {
            picture.parts.push_back(
                {Role::muted,
                 {{side * half, fore + millimetres(25)}, {side * half, aft - millimetres(25)}},
                 false,
                 LineStyle::dashed});
        }
        picture.parts.push_back(
            {Role::muted,
             {{Length{}, fore + millimetres(35)}, {Length{}, aft - millimetres(35)}},
             false,
             LineStyle::dashDot});
    }

    void notes(BenchSide& out) const {
        const auto& unit = paper_.unit;
        out.notes.emplace_back("Before you drill",
                               "floor fast to its frame and bedded on the keel; limber holes and "
                               "stopwaters cut.");
        out.notes.emplace_back("Datum A",
                               "nick on the floor's top FORWARD edge, on the centreline. Along = "
                               "from A to port (P) or starboard (S).");
        const auto& keel = paper_.results.structure->keel;
        std::string check = "floor's top, forward to aft edge, must read " + unit.setOut(sided_);
        if (frame_.floorTop && keel) {
            if (const auto top = keelTopAt(*keel, middle_))
                check += "; A down to the keel's top " + unit.setOut(*frame_.floorTop - *top);
        }
        out.notes.emplace_back("Check", check + ". If not, STOP and ask.");
    }

    const PaperContext& paper_;
    const FramePlace& frame_;
    const HolesOf& holes_;
    Length sided_, middle_;
    HolesOf beside_;
};

}  // namespace

BenchSheet floorSheet(const PaperContext& paper, const SheetName& name, const HolesOf& holes) {
    BenchSheet sheet;
    sheet.head = headFor(paper, name, name.frame + " FLOOR");
    const FramePlace* frame = paper.frame(name.frame);
    if (frame != nullptr) sheet.sides.push_back(Floor(paper, *frame, holes).made());
    return sheet;
}

}  // namespace fayline
