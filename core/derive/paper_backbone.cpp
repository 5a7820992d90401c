#include <cmath>
#include <map>

#include "hull/keel.h"
#include "paper_sheets.h"

namespace fayline {
namespace {

/// A joint's line in the middle line plane, from its fore end A to its after end B.
struct JointLine {
    PlanePoint a, b;  ///< across = aft
    [[nodiscard]] double length_m() const {
        return std::hypot(b.across.si() - a.across.si(), b.up.si() - a.up.si());
    }
    /// Along the line from A, and square above it.
    [[nodiscard]] std::pair<Length, Length> placeOf(PlanePoint p) const {
        const double dx = (b.across.si() - a.across.si()) / length_m();
        const double dz = (b.up.si() - a.up.si()) / length_m();
        const double px = p.across.si() - a.across.si(), pz = p.up.si() - a.up.si();
        return {metres(px * dx + pz * dz), metres(pz * dx - px * dz)};
    }
};

/// "B.forefoot.2" → "forefoot".
std::string jointOf(const Hole& hole) {
    const auto first = hole.id.find('.');
    const auto last = hole.id.rfind('.');
    return last > first ? hole.id.substr(first + 1, last - first - 1) : hole.id;
}

/// Where its line is not decided, it runs from the first hole's middle to the last's.
JointLine lineOf(const PaperContext& paper, const std::string& joint, const HolesOf& holes) {
    const auto found = paper.project.backbone.find(joint);
    if (found != paper.project.backbone.end()) {
        const BackboneDecisions& d = found->second;
        if (d.foreX && d.foreHeight && d.aftX && d.aftHeight)
            return {{*d.foreX, *d.foreHeight}, {*d.aftX, *d.aftHeight}};
    }
    const auto middle = [](const Hole& h) {
        return PlanePoint{(h.start.x + h.end.x) / 2.0, (h.start.z + h.end.z) / 2.0};
    };
    JointLine line{middle(*holes.front()), middle(*holes.back())};
    if (line.length_m() < 1.0e-6) line.b.across += millimetres(100);
    return line;
}

/// Off square to the joint's line, towards bow or stern on the way down.
std::string angleOf(const JointLine& line, const Hole& hole) {
    const auto [alongStart, upStart] = line.placeOf({hole.start.x, hole.start.z});
    const auto [alongEnd, upEnd] = line.placeOf({hole.end.x, hole.end.z});
    const Length deep = upStart - upEnd, aft = alongEnd - alongStart;
    const int off = paper_text::degrees(std::atan2(std::abs(aft.si()), std::abs(deep.si())));
    return off == 0 ? "0°" : std::to_string(off) + (aft > Length{} ? "° aft" : "° fwd");
}

BenchSide sideOf(const PaperContext& paper, const std::string& joint, const HolesOf& holes) {
    BenchSide out;
    const JointLine line = lineOf(paper, joint, holes);
    std::string joins;
    for (const std::string& member : holes.front()->joins)
        joins += (joins.empty() ? "" : " to ") + paper_text::plain(member);
    out.seen = paper_text::capital(paper_text::plain(joint)) + ", from port, bow to the left";
    out.picture.along = "along";
    out.picture.across = "above";
    out.picture.datumMark = "A";
    out.picture.up = "UP";
    out.picture.outward = "AFT";
    out.picture.datum = line.a;
    std::vector<BenchItem> items;
    for (const Hole* hole : holes) {
        BenchItem item;
        item.hole = hole;
        const auto [alongStart, upStart] = line.placeOf({hole->start.x, hole->start.z});
        const auto [alongEnd, upEnd] = line.placeOf({hole->end.x, hole->end.z});
        // Where it crosses the line, which is scribed on the timbers' side.
        const Length deep = upStart - upEnd;
        const double t = deep > Length{} ? upStart / deep : 0.5;
        const auto at = [&](Length from, Length to) { return from + t * (to - from); };
        item.row = {hole->id,
                    hole->mark,
                    paper.unit.setOut(at(alongStart, alongEnd)),
                    paper.unit.setOut(upStart),
                    angleOf(line, *hole),
                    hole->kind == "bolt" || hole->kind == "rivet" ? "through" : "blind"};
        item.what = joins;
        item.where =
            "Along = on the line from A; above = its head above the line. Angle: off "
            "square to the line.";
        out.picture.spots.push_back({hole->id,
                                     item.row.mark,
                                     item.row.along,
                                     item.row.across,
                                     {hole->start.x, hole->start.z},
                                     hole->diameter,
                                     {hole->end.x, hole->end.z}});
        items.push_back(std::move(item));
    }
    out.picture.parts.push_back({Role::timber, {line.a, line.b}, false, LineStyle::dashDot});
    out.groups = groupsOf(paper, std::move(items));
    out.notes.emplace_back("Before you drill",
                           "joint dry-fitted, clamped, fair; stopwaters marked.");
    out.notes.emplace_back("Datum A",
                           "fore end of the joint's line, scribed on the timbers' side.");
    out.notes.emplace_back("Check", "A along the line to its after end must read " +
                                        paper.unit.setOut(metres(line.length_m())) +
                                        ". If not, STOP and ask.");
    out.warnings = warningsFor(paper, holes);
    out.margins = marginsFor(paper, holes);
    return out;
}

}  // namespace

BenchSheet backboneSheet(const PaperContext& paper, const SheetName& name, const HolesOf& holes) {
    BenchSheet sheet;
    sheet.head = headFor(paper, name, "BACKBONE");
    std::map<std::string, HolesOf> joints;
    for (const Hole* hole : holes) joints[jointOf(*hole)].push_back(hole);
    for (const auto& [joint, some] : joints) sheet.sides.push_back(sideOf(paper, joint, some));
    if (sheet.sides.empty()) {
        BenchSide out;
        out.nothing = "Nothing to drill: no joint of the backbone is decided.";
        sheet.sides.push_back(std::move(out));
    }
    return sheet;
}

}  // namespace fayline
