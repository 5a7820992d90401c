#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "fastening_stages.h"
#include "paper_plank_place.h"
#include "paper_sheets.h"

namespace fayline {
namespace {

using paper_text::capital;

class Strips {
  public:
    Strips(const PaperContext& paper, const HolesOf& holes)
        : paper_(paper), greatest_(greatestGirth(paper.results)) {
        for (const Hole* hole : holes) {
            if (hole->group != "plank") {
                flagged_[{hole->side == "port" ? 0 : 1, strakeOf(*hole), hole->frame}] =
                    hole->group;
                continue;
            }
            byStrake_[{hole->side == "port" ? 0 : 1, strakeOf(*hole)}].push_back(hole);
        }
    }

    std::vector<PlankStrip> made() {
        std::vector<PlankStrip> strips;
        for (const auto& [key, holes] : byStrake_) {
            // One strip for each setting, so that the setting is said once and holds for all.
            std::vector<HolesOf> bySetting;
            for (const Hole* hole : holes) {
                const auto same =
                    std::find_if(bySetting.begin(), bySetting.end(),
                                 [&](const HolesOf& some) { return alike(*some.front(), *hole); });
                if (same == bySetting.end()) {
                    bySetting.push_back({hole});
                } else {
                    same->push_back(hole);
                }
            }
            for (const HolesOf& some : bySetting) strips.push_back(strip(key.second, some));
        }
        return strips;
    }

  private:
    static bool alike(const Hole& a, const Hole& b) {
        if (a.kind != b.kind || a.gauge != b.gauge || a.metal != b.metal || a.bung != b.bung ||
            a.group != b.group || a.steps.size() != b.steps.size() ||
            abs(a.diameter - b.diameter) > millimetres(0.01) ||
            abs(a.length - b.length) > millimetres(0.4))
            return false;
        for (std::size_t i = 0; i < a.steps.size(); ++i) {
            if (a.steps[i].drill != b.steps[i].drill ||
                abs(a.steps[i].diameter - b.steps[i].diameter) > millimetres(0.01))
                return false;
        }
        return true;
    }

    PlankStrip strip(int strake, const HolesOf& holes) const {
        PlankStrip out;
        const Hole& first = *holes.front();
        out.side = first.side == "port" ? "port" : "starboard";
        out.title = strake > 0 ? "Strake " + std::to_string(strake) : "Planking";
        if (strake == 1) out.title += ", garboard";
        if (strake > 1 && strake == paper_.project.planking.strakes) out.title += ", sheer strake";
        BenchItem item;
        item.hole = &first;
        const auto groups = groupsOf(paper_, {item});
        out.setting = groups.front().setting;
        out.setting.insert(out.setting.begin(), capital(paper_text::fastening(first, paper_.unit)) +
                                                    ", " + paper_.metalName(first.metal) +
                                                    staggerWords(holes));
        std::vector<std::string> frames;
        std::map<std::string, HolesOf> byFrame;
        for (const Hole* hole : holes) {
            if (byFrame.count(hole->frame) == 0) frames.push_back(hole->frame);
            byFrame[hole->frame].push_back(hole);
        }
        for (const std::string& frame : frames)
            out.crossings.push_back(crossing(frame, strake, byFrame[frame]));
        return out;
    }

    /// How the holes stand off the struck centreline, said once: they do so at every frame.
    std::string staggerWords(const HolesOf& holes) const {
        const FramePlace* frame = paper_.frame(holes.front()->frame);
        if (frame == nullptr) return ".";
        Length fore, aft;
        for (const Hole* hole : holes) {
            if (hole->frame != frame->id) continue;
            fore = max(fore, frame->x - hole->start.x);
            aft = max(aft, hole->start.x - frame->x);
        }
        if (fore < millimetres(0.5) && aft < millimetres(0.5)) return ", on the struck line.";
        return ", " + paper_.unit.setOut(max(fore, aft)) +
               " forward and aft of the struck line in turn, as drawn.";
    }

    PlankCrossing crossing(const std::string& frameId, int strake, const HolesOf& holes) const {
        PlankCrossing out;
        out.frame = frameId.empty() ? "end" : frameId;
        const FramePlace* frame = paper_.frame(frameId);
        const FrameCurve* curve = paper_.curve(frameId);
        Length lower, width;
        if (curve != nullptr && strake > 0) {
            const auto seams = seamsAt(paper_.project, curve->girth(), greatest_);
            const auto at = static_cast<std::size_t>(strake - 1);
            if (at + 1 < seams.size()) {
                lower = seams[at];
                width = seams[at + 1] - seams[at];
            }
        }
        out.width = width > Length{} ? paper_.unit.coarse(width) : "";
        // A butt or a plank's end lies next to this frame: see its own list.
        const auto flag = flagged_.find({holes.front()->side == "port" ? 0 : 1, strake, frameId});
        if (flag != flagged_.end() && flag->second == "butt") out.flag = "BUTT";
        if (flag != flagged_.end() && flag->second == "hood") out.flag = "END";
        for (const Hole* hole : holes)
            out.holes.push_back(plankHole(*hole, frame, curve, lower, width));
        std::stable_sort(out.holes.begin(), out.holes.end(),
                         [](const PlankHole& a, const PlankHole& b) { return a.up < b.up; });
        return out;
    }

    PlankHole plankHole(const Hole& hole, const FramePlace* frame, const FrameCurve* curve,
                        Length lower, Length width) const {
        PlankHole out;
        out.id = hole.id;
        const double sign = outwardSign(hole.side);
        if (curve != nullptr && width > Length{}) {
            const Length up = alongOf(*curve, {sign * hole.start.y, hole.start.z}) - lower;
            out.up = std::clamp(up / width, 0.0, 1.0);
            out.fromUpper = up > width * 0.55;
            out.figure = paper_.unit.coarse(out.fromUpper ? width - up : up);
        } else {
            out.figure = "–";
        }
        if (frame != nullptr) {
            const Length off = hole.start.x - frame->x;
            const Length sided = frame->sided.value_or(millimetres(40));
            out.aft = off / sided;
            out.offLine = paper_.unit.setOut(abs(off));
            if (out.offLine != "0") out.offLine += off < Length{} ? " F" : " A";
        }
        return out;
    }

    const PaperContext& paper_;
    Length greatest_;
    std::map<std::pair<int, int>, HolesOf> byStrake_;
    std::map<std::tuple<int, int, std::string>, std::string> flagged_;
};

/// What holds for every strake is said at the head of the book.
void sayOnce(PlankBook& book) {
    if (book.strips.empty()) return;
    const std::vector<std::string> first = book.strips.front().setting;
    const bool all = std::all_of(book.strips.begin(), book.strips.end(),
                                 [&](const PlankStrip& s) { return s.setting == first; });
    if (!all) return;
    std::string words;
    for (const std::string& line : first) words += (words.empty() ? "" : " ") + line;
    book.notes.emplace_back("Every strake", words);
    for (PlankStrip& strip : book.strips) strip.setting.clear();
}

}  // namespace

PlankBook plankBook(const PaperContext& paper, const SheetName& name, const HolesOf& holes) {
    PlankBook book;
    book.head = headFor(paper, name, "PLANKS");
    book.notes.emplace_back(
        "Before you drill",
        "each frame's centreline struck outside, from marks left before planking. a, b from below; "
        "each figure from the plank's edge named. Boxes: drilled, driven.");
    book.warnings = warningsFor(paper, holes);
    book.strips = Strips(paper, holes).made();
    sayOnce(book);
    book.lists = plankLists(paper, holes);
    book.nothing = "Nothing to drill: no plank fastening is decided.";
    return book;
}

}  // namespace fayline
