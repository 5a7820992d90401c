#include <algorithm>
#include <cmath>
#include <numbers>

#include "hull/keel.h"
#include "paper_leg.h"
#include "paper_sheets.h"

namespace fayline {
namespace {

using paper_text::plain;

/// The datum stands this far above the highest hole, and then at the next round height.
constexpr Length clearOfHoles = millimetres(70);

double signOf(const std::string& side) {
    return side == "port" ? -1.0 : 1.0;
}

Length roundStep(UnitSystem units) {
    return units == UnitSystem::inches ? inches(3) : millimetres(50);
}

/// The keel timber's rectangle at a frame; half of it, outboard positive.
struct KeelHere {
    Length half, top, underside;
};

std::optional<KeelHere> keelAt(const PaperContext& paper, Length x) {
    const auto& keel = paper.results.structure->keel;
    if (!keel) return std::nullopt;
    const auto top = keelTopAt(*keel, x), underside = keelUndersideAt(*keel, x);
    if (!top || !underside) return std::nullopt;
    return KeelHere{keel->sided / 2.0, *top, *underside};
}

/// Wood between a point inside the keel and the face it is driven towards; nothing when the point
/// is not in the keel.
std::optional<Length> woodBeyond(const KeelHere& keel, const Point& start, const Point& end) {
    if (abs(end.y) > keel.half || end.z > keel.top || end.z < keel.underside) return std::nullopt;
    const double dy = end.y.si() - start.y.si(), dz = end.z.si() - start.z.si();
    const double length = std::hypot(dy, dz);
    if (length <= 0.0) return std::nullopt;
    double ways = 1.0e9;
    if (std::abs(dy) > 1e-9)
        ways = (keel.half.si() - (dy > 0 ? end.y.si() : -end.y.si())) / std::abs(dy) * length;
    if (std::abs(dz) > 1e-9) {
        const double room = dz > 0 ? keel.top.si() - end.z.si() : end.z.si() - keel.underside.si();
        ways = std::min(ways, room / std::abs(dz) * length);
    }
    return metres(ways);
}

std::string beyondWords(const PaperContext& paper, const std::optional<KeelHere>& keel,
                        const Hole& hole) {
    if (hole.kind == "bolt" || hole.kind == "rivet") return "through";
    const auto left = keel ? woodBeyond(*keel, hole.start, hole.end) : std::nullopt;
    return left ? paper.unit.setOut(*left) : "see drawing";
}

/// Off square to the face it enters: the keel's side for what runs across, its top for what runs
/// down, the frame's face for what runs fore and aft.
std::string angleWords(const Hole& hole) {
    const double dx = hole.end.x.si() - hole.start.x.si();
    const double dy = hole.end.y.si() - hole.start.y.si();
    const double dz = hole.end.z.si() - hole.start.z.si();
    const double across = std::hypot(dy, dz);
    if (std::abs(dx) >= across) {
        const int off = paper_text::degrees(std::atan2(across, std::abs(dx)));
        return off == 0 ? "0°" : std::to_string(off) + "°" + (dz > 0 ? " up" : " down");
    }
    if (std::abs(dy) >= std::abs(dz)) {
        const int off = paper_text::degrees(std::atan2(std::abs(dz), std::abs(dy)));
        if (off != 0) return std::to_string(off) + "°" + (dz > 0 ? " up" : " down");
    } else {
        const int off = paper_text::degrees(std::atan2(std::abs(dy), std::abs(dz)));
        const bool out = dy * (hole.start.y.si() < 0 ? -1.0 : 1.0) > 0;
        if (off != 0) return std::to_string(off) + "°" + (out ? " out" : " in");
    }
    const int slant = paper_text::degrees(std::atan2(std::abs(dx), across));
    return slant == 0 ? "0°" : std::to_string(slant) + "°" + (dx > 0 ? " aft" : " fwd");
}

std::string faceWord(const std::string& face) {
    if (face == "fore") return "FORWARD";
    return face == "aft" ? "AFT" : face == "inner" ? "INNER" : "OUTER";
}

class Leg {
  public:
    Leg(const PaperContext& paper, const FramePlace& frame, const FrameCurve& curve,
        const std::string& side, const HolesOf& holes)
        : paper_(paper),
          frame_(frame),
          side_(side),
          holes_(holes),
          leg_(curve, paper.project.planking.thickness.value_or(Length{}),
               frame.moulded.value_or(Length{})),
          keel_(keelAt(paper, frame.x)) {
        placeDatum();
    }

    BenchSide made() {
        BenchSide out;
        out.side = side_;
        const bool fromAft = std::any_of(holes_.begin(), holes_.end(),
                                         [](const Hole* h) { return h->face == "aft"; });
        out.seen = fromAft ? "AFT face, looking forward" : "FORWARD face, looking aft";
        // Looking aft, starboard is on the left hand.
        out.picture.acrossRight = (side_ == "port") != fromAft;
        out.picture.up = "UP";
        out.picture.outward = "OUTBOARD";
        out.picture.away = fromAft ? "BOW away from you" : "BOW behind you";
        out.picture.along = "along";
        out.picture.across = "edge";
        out.picture.datumMark = "A";
        out.picture.datum = datum_;
        parts(out.picture);
        std::vector<BenchItem> items;
        for (const Hole* hole : holes_) items.push_back(item(*hole, out.picture));
        out.groups = groupsOf(paper_, std::move(items));
        notes(out);
        out.warnings = warningsFor(paper_, holes_);
        if (!holes_.empty()) out.margins = marginsFor(paper_, holes_);
        out.nothing =
            "Nothing to drill in this frame on this side: no heel and no arm fastening "
            "is decided here.";
        return out;
    }

  private:
    void placeDatum() {
        const Length base = keel_ ? keel_->top : leg_.outer().front().up;
        Length highest = frame_.floorTop.value_or(base + inches(9));
        for (const Hole* hole : holes_) highest = max(highest, entryOf(*hole).z);
        const Length step = roundStep(paper_.unit.system);
        const double steps = std::ceil((highest + clearOfHoles - base) / step);
        above_ = steps * step;
        const Length top = leg_.outer().back().up;
        if (base + above_ > top) above_ = std::floor((top - base) / step) * step;
        datum_ = leg_.edgeAtHeight(base + above_);
        datumAlong_ = leg_.alongAtHeight(base + above_);
        lowest_ = base;
    }

    BenchItem item(const Hole& hole, BenchPicture& picture) const {
        const Point entry = entryOf(hole);
        const PlanePoint at{signOf(side_) * entry.y, entry.z};
        const FrameLeg::Place place = leg_.placeOf(at);
        const bool ofFace = hole.face == "fore" || hole.face == "aft";
        BenchItem item;
        item.hole = &hole;
        item.row.id = hole.id;
        item.row.mark = paperMark(hole);
        item.row.along = paper_.unit.setOut(datumAlong_ - place.along);
        const Length fromForward = entry.x - frame_.x + frame_.sided.value_or(Length{}) / 2.0;
        item.row.across = paper_.unit.setOut(ofFace ? place.across : fromForward);
        item.row.angle = angleWords(hole);
        item.row.beyond = beyondWords(paper_, keel_, hole);
        item.what = plain(hole.group);
        item.where = "From the " + faceWord(hole.face) +
                     " face; edge = " + (ofFace ? "MOULDED (outer)." : "FORWARD.");
        picture.spots.push_back({hole.id,
                                 item.row.mark,
                                 item.row.along,
                                 item.row.across,
                                 at,
                                 hole.diameter,
                                 {signOf(side_) * hole.end.y, hole.end.z}});
        return item;
    }

    void parts(BenchPicture& picture) const {
        const Length top = datum_.up;
        if (keel_) {
            picture.parts.push_back({Role::timber,
                                     {{Length{}, keel_->top},
                                      {keel_->half, keel_->top},
                                      {keel_->half, keel_->underside},
                                      {Length{}, keel_->underside}}});
            picture.parts.push_back({Role::muted,
                                     {{Length{}, keel_->underside}, {Length{}, datum_.up}},
                                     false,
                                     LineStyle::dashDot});
        }
        if (frame_.floorTop && keel_) {
            Length reach = keel_->half;
            for (const Hole* hole : holes_) {
                if (hole->group == "arm")
                    reach = max(reach, abs(hole->start.y) + 4.0 * hole->diameter);
            }
            const auto decided = paper_.project.floor.find(frame_.id);
            if (decided != paper_.project.floor.end() && decided->second.reach)
                reach = *decided->second.reach;
            else if (paper_.project.floors.reach)
                reach = *paper_.project.floors.reach;
            std::vector<PlanePoint> floor{{Length{}, *frame_.floorTop}};
            PlanePoint end;
            std::vector<PlanePoint> under;
            for (const PlanePoint& p : leg_.outer()) {
                if (p.across > reach) break;
                under.push_back(p);
                end = p;
            }
            if (under.size() > 1) {
                floor.push_back({end.across, max(*frame_.floorTop, end.up + millimetres(40))});
                floor.insert(floor.end(), under.rbegin(), under.rend());
                floor.push_back({Length{}, keel_->top});
                picture.parts.push_back({Role::muted, floor, true, LineStyle::dashed});
            }
        }
        picture.parts.push_back({Role::frame, leg_.outlineUpTo(top)});
    }

    void notes(BenchSide& out) const {
        const auto& unit = paper_.unit;
        const bool arms = std::any_of(holes_.begin(), holes_.end(),
                                      [](const Hole* h) { return h->group == "arm"; });
        std::string before =
            arms ? "frame and floor clamped, dry on the keel; " : "frame plumb and shored; ";
        out.notes.emplace_back(
            "Before you drill",
            before + "limber and stopwater cut. The garboard hides the heel later.");
        out.notes.emplace_back(
            "Datum A", "level line scribed on the MOULDED (outer) edge, " + unit.setOut(above_) +
                           (keel_ ? " above the keel's top" : " above the frame's foot") +
                           ". Along = down that edge from A.");
        out.notes.emplace_back("Check", "A port to A starboard must read " +
                                            unit.setOut(2.0 * datum_.across) +
                                            "; A down to the frame's " + "foot at the rabbet " +
                                            unit.setOut(datumAlong_) + ". If not, STOP and ask.");
    }

    const PaperContext& paper_;
    const FramePlace& frame_;
    const std::string& side_;
    const HolesOf& holes_;
    FrameLeg leg_;
    std::optional<KeelHere> keel_;
    PlanePoint datum_;
    Length datumAlong_, above_, lowest_;
};

}  // namespace

BenchSheet frameSheet(const PaperContext& paper, const SheetName& name, const HolesOf& holes) {
    BenchSheet sheet;
    sheet.head = headFor(paper, name, name.frame);
    const FramePlace* frame = paper.frame(name.frame);
    const FrameCurve* curve = paper.curve(name.frame);
    for (const std::string& side : {std::string("port"), std::string("starboard")}) {
        HolesOf here;
        for (const Hole* hole : holes) {
            // What stands on the centreline is drilled from the port page.
            if (hole->side == side || (hole->side.empty() && side == "port")) here.push_back(hole);
        }
        if (frame != nullptr && curve != nullptr) {
            sheet.sides.push_back(Leg(paper, *frame, *curve, side, here).made());
            continue;
        }
        BenchSide out;
        out.side = side;
        out.seen = "no drawing";
        out.nothing = "Nothing to drill: this frame is outside the lofted hull.";
        sheet.sides.push_back(std::move(out));
    }
    return sheet;
}

}  // namespace fayline
