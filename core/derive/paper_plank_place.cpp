#include "paper_plank_place.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "fastening_stages.h"
#include "rabbet_stage.h"

namespace fayline {

double outwardSign(const std::string& side) {
    return side == "port" ? -1.0 : 1.0;
}

Length alongOf(const FrameCurve& curve, PlanePoint p) {
    const auto away = [&](double part) {
        const CurvePoint at = curve.at(part * curve.girth());
        return std::hypot(at.y.si() - p.across.si(), at.z.si() - p.up.si());
    };
    constexpr int tries = 64;
    int best = 0;
    for (int i = 1; i <= tries; ++i) {
        if (away(static_cast<double>(i) / tries) < away(static_cast<double>(best) / tries))
            best = i;
    }
    double low = std::max(0.0, (best - 1.0) / tries), high = std::min(1.0, (best + 1.0) / tries);
    while (high - low > 1.0e-6) {
        const double third = (high - low) / 3.0;
        if (away(low + third) < away(high - third)) {
            high -= third;
        } else {
            low += third;
        }
    }
    return (low + high) / 2.0 * curve.girth();
}

namespace {

/// The hull's line at any x, as the frames have theirs.
std::optional<FrameCurve> curveAt(const PaperContext& paper, Length x) {
    const auto& surface = paper.results.hull->surface;
    if (!surface || !surface->spans(x)) return std::nullopt;
    const RabbetRule rule = rabbetRule(paper.project, *paper.results.structure);
    return curveStage(curveInput(paper.results.hull, x, rule)).curve;
}

/// The end of the plank that a hood fastening holds; null when there is none.
const StrakeEnd* endOf(const Results& results, const Hole& hole) {
    const StrakeEnd* nearest = nullptr;
    const int strake = strakeOf(hole);
    for (const auto* ends : {&results.foreEnds, &results.aftEnds}) {
        if (!*ends || strake < 1 || strake > static_cast<int>((*ends)->strakes.size())) continue;
        const StrakeEnd& end = (*ends)->strakes[static_cast<std::size_t>(strake - 1)];
        if (nearest == nullptr ||
            abs(end.middle().x - hole.start.x) < abs(nearest->middle().x - hole.start.x))
            nearest = &end;
    }
    return nearest;
}

/// How far up the plank's end its fastening stands.
Length upOf(const StrakeEnd& end, const Hole& hole) {
    constexpr int steps = 200;
    const double y_m = outwardSign(hole.side) * hole.start.y.si(), z_m = hole.start.z.si();
    const Length width = end.width();
    Length best;
    double nearest = 1e9;
    for (int i = 0; i <= steps; ++i) {
        const Length up = width * (static_cast<double>(i) / steps);
        const EndSpot spot = end.spotAt(up);
        const double away = std::hypot(spot.at.y.si() - y_m, spot.at.z.si() - z_m);
        if (away < nearest) best = up;
        nearest = std::min(nearest, away);
    }
    return best;
}
EndSpot spotOf(const StrakeEnd& end, const Hole& hole) {
    return end.spotAt(upOf(end, hole));
}

/// How far a garboard's fastening is slanted off square to its plank, " 20°"; nothing when it is
/// not.
std::string slantOf(const PaperContext& paper, const Hole& hole) {
    if (hole.group != "garboard") return "";
    const auto curve = curveAt(paper, hole.start.x);
    if (!curve) return "";
    const double sign = outwardSign(hole.side);
    const CurvePoint at = curve->at(alongOf(*curve, {sign * hole.start.y, hole.start.z}));
    const double y = sign * (hole.start.y - hole.end.y).si(), z = (hole.start.z - hole.end.z).si();
    const double length = std::hypot(y, z);
    if (length <= 0) return "";
    const int off =
        paper_text::degrees(std::acos(std::clamp((y * at.outY + z * at.outZ) / length, -1.0, 1.0)));
    return off < 3 ? "" : " " + std::to_string(off) + "°";
}

/// Off a frame's struck line; a plank's end from that end itself.
std::string offLine(const PaperContext& paper, const Hole& hole) {
    if (hole.group == "hood") {
        const StrakeEnd* end = endOf(paper.results, hole);
        return end != nullptr ? paper.unit.setOut(abs(hole.start.x - spotOf(*end, hole).end)) : "–";
    }
    const FramePlace* frame = paper.frame(hole.frame);
    if (frame == nullptr) return "–";
    const Length off = hole.start.x - frame->x;
    const std::string figure = paper.unit.setOut(abs(off));
    if (figure == "0") return "on " + hole.frame;
    return figure + (off < Length{} ? " F " : " A ") + hole.frame;
}

std::string nearerEdge(const PaperContext& paper, Length up, Length width) {
    const Length down = width - up;
    return down < up ? paper.unit.coarse(down) + " U" : paper.unit.coarse(up) + " L";
}

/// From the nearer edge of its plank, "1-1/2 L".
std::string fromEdge(const PaperContext& paper, const Hole& hole, Length greatest) {
    const PlanePoint at{outwardSign(hole.side) * hole.start.y, hole.start.z};
    if (hole.group == "hood") {
        const StrakeEnd* end = endOf(paper.results, hole);
        if (end == nullptr) return "–";
        return nearerEdge(paper, upOf(*end, hole), end->width());
    }
    const auto curve = curveAt(paper, hole.start.x);
    const int strake = strakeOf(hole);
    if (!curve || strake == 0) return "–";
    const auto seams = seamsAt(paper.project, curve->girth(), greatest);
    const auto after = static_cast<std::size_t>(strake);
    if (after >= seams.size()) return "–";
    return nearerEdge(paper, alongOf(*curve, at) - seams[after - 1],
                      seams[after] - seams[after - 1]);
}

struct Heading {
    const char* group;
    const char* title;
    const char* figures;
};
constexpr std::array headings{
    Heading{"butt", "Butts",
            "F, A: forward or aft of the frame's struck line. L, U: from the "
            "plank's lower or upper edge."},
    Heading{"hood", "Plank ends",
            "Off line: from the plank's own end, along the boat. L, U: from its "
            "lower or upper edge there."},
    Heading{"garboard", "Garboard to keel",
            "F, A: forward or aft of the frame's struck line. L: from the "
            "plank's lower edge. Degrees: off square to the plank, towards the rabbet."},
};

}  // namespace

std::vector<PlankList> plankLists(const PaperContext& paper, const HolesOf& holes) {
    const Length greatest = greatestGirth(paper.results);
    std::vector<PlankList> lists;
    for (const char* side : {"port", "starboard"}) {
        for (const Heading& heading : headings) {
            std::vector<BenchItem> items;
            std::map<std::string, PlankRow> rows;
            for (const Hole* hole : holes) {
                if (hole->group != heading.group || (hole->side == "port") != (side[0] == 'p'))
                    continue;
                BenchItem item;
                item.hole = hole;
                item.row.id = hole->id;
                items.push_back(item);
                const int strake = strakeOf(*hole);
                rows[hole->id] = {hole->id, paperMark(*hole),
                                  strake > 0 ? "strake " + std::to_string(strake) : "",
                                  offLine(paper, *hole),
                                  fromEdge(paper, *hole, greatest) + slantOf(paper, *hole)};
            }
            for (const BenchGroup& group : groupsOf(paper, items)) {
                PlankList list;
                list.side = side;
                list.title = heading.title;
                list.setting = group.setting;
                list.setting.insert(
                    list.setting.begin(),
                    paper_text::capital(group.title.substr(group.title.find_first_not_of(": "))) +
                        ". " + heading.figures);
                for (const BenchHole& hole : group.holes) list.rows.push_back(rows[hole.id]);
                lists.push_back(std::move(list));
            }
        }
    }
    return lists;
}

}  // namespace fayline
