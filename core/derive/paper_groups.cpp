#include <algorithm>
#include <set>
#include <tuple>

#include "paper_context.h"

namespace fayline {
namespace {

using paper_text::capital;
using paper_text::plain;

/// A bit this long needs an extension or a ship auger (judgement).
constexpr Length longBit = millimetres(300);
/// Closer than this many diameters between two holes' edges, a wandering bit runs into the other
/// (common practice).
constexpr double clearDiameters = 2.0;
constexpr std::size_t mostWarnings = 6;

bool isThrough(const Hole& hole) {
    return hole.kind == "bolt" || hole.kind == "rivet";
}

/// Drilling order: what goes right through two timbers first, then by setting.
auto orderKey(const BenchItem& item) {
    return std::tuple(!isThrough(*item.hole), item.hole->group);
}

bool sameSetting(const BenchItem& a, const BenchItem& b) {
    const Hole &p = *a.hole, &q = *b.hole;
    if (a.where != b.where || p.group != q.group || p.kind != q.kind || p.gauge != q.gauge ||
        p.metal != q.metal || p.square != q.square || p.bung != q.bung ||
        p.steps.size() != q.steps.size())
        return false;
    const auto same = [](Length m, Length n) { return abs(m - n) < millimetres(0.4); };
    if (!same(p.diameter, q.diameter) || !same(p.length, q.length)) return false;
    for (std::size_t i = 0; i < p.steps.size(); ++i) {
        if (p.steps[i].drill != q.steps[i].drill || !same(p.steps[i].diameter, q.steps[i].diameter))
            return false;
        if (!isThrough(p) && !same(p.steps[i].depth, q.steps[i].depth)) return false;
    }
    return true;
}

std::string howToDrive(const Hole& hole) {
    if (hole.kind == "wood_screw") return "Seat the head.";
    if (hole.kind == "bolt") return "Nut up until the washer just marks the wood.";
    if (hole.kind == "rivet") return "Rove on tight, cut off, light blows.";
    return "Bedding on; drive home.";
}

/// The first words of a step: what the bit is for.
std::string bitName(const std::string& drill) {
    // "drift hole" and "rivet hole" need their second word.
    const auto first = drill.find_first_of(" ,");
    if (drill.compare(0, 6, "drift ") == 0 || drill.compare(0, 6, "rivet ") == 0)
        return drill.substr(0, drill.find_first_of(" ,", 6));
    return drill.substr(0, first);
}

std::vector<std::string> settingOf(const PaperContext& paper, const Hole& hole) {
    std::vector<std::string> lines;
    std::string bits;
    for (const HoleStep& step : hole.steps) {
        bits += (bits.empty() ? "Bits: " : "; ") + paper.unit.size(step.diameter) + " " +
                bitName(step.drill);
        if (!isThrough(hole)) bits += ", collar " + paper.unit.setOut(step.depth);
    }
    if (!bits.empty()) lines.push_back(bits + (isThrough(hole) ? "." : " from tip."));
    std::string scrap = "Scrap first";
    if (hole.bung) scrap += ": head " + paper.unit.setOut(*hole.bung) + " under";
    if (!isThrough(hole) && !hole.steps.empty()) {
        const Length deep = hole.bung.value_or(Length{}) + hole.length;
        const Length shortBy = deep - hole.steps.back().depth;
        if (shortBy > millimetres(0.5))
            scrap += (hole.bung ? ", tip " : ": tip ") + paper.unit.setOut(shortBy) + " short";
    }
    scrap += ". " + howToDrive(hole);
    if (hole.bung && !hole.steps.empty())
        scrap += " Bung " + paper.unit.size(hole.steps.front().diameter) + ".";
    lines.push_back(scrap);
    return lines;
}

/// A finding in the sheet's unit. Its own sentence may speak another.
std::string findingWords(const Finding& finding) {
    static constexpr std::pair<const char*, const char*> known[] = {
        {"clash", "run into another hole"},
        {"near", "too little wood beyond the point"},
        {"edge", "too near an edge"},
        {"end", "too near an end"},
        {"spacing", "too close together"},
        {"grain_line", "in one line of the grain"},
        {"tip_out", "the point comes out"},
        {"grip", "does not hold: the length does not suit the timbers"},
        {"thread_bound", "thread in the outer piece; bore that slip"},
        {"counterbore", "counterbored into the joint"},
        {"bung", "the bung is too thin"},
        {"hole_in_bolt", "meets another fastening"},
        {"butt", "too near a plank's butt"},
        {"hood", "too near a plank's end"},
        {"locked_conflict", "placed by hand where it cannot be"},
        {"rule", "under the class rule"},
        {"bed", "off the ballast"},
        {"floor", "meant for a floor, stands beside it"},
    };
    std::string words = plain(finding.kind);
    for (const auto& [kind, text] : known) {
        if (finding.kind == kind) words = text;
    }
    if (finding.kind == "near" && finding.holes.size() > 1) return "too near each other";
    return words;
}

std::string marksOf(const PaperContext& paper, const std::vector<std::string>& ids) {
    std::string marks;
    for (const std::string& id : ids) marks += (marks.empty() ? "" : ", ") + paper.markOf(id);
    return marks;
}

/// What is wrong in the same way, told once.
struct Told {
    std::string words;
    std::vector<std::string> ids;
    Length missing;
};

std::string toldLine(const PaperContext& paper, const Told& told,
                     const std::set<std::string>& here) {
    constexpr std::size_t most = 4, mostHere = 9;
    std::vector<std::string> ids = told.ids;
    // Where there are many, those of this sheet stand for all.
    if (ids.size() > most)
        std::erase_if(ids, [&](const std::string& id) { return here.count(id) == 0; });
    std::string line = ids.size() <= mostHere ? marksOf(paper, ids)
                                              : std::to_string(ids.size()) + " holes, the first " +
                                                    marksOf(paper, {ids.front()});
    line += ": " + told.words;
    if (told.missing > millimetres(0.05)) {
        const std::string by = paper.unit.size(told.missing);
        const bool many = told.ids.size() > 1;
        line += by == "0" ? ", by a hair" : std::string(many ? ", by up to " : ", by ") + by;
    }
    return line + ".";
}

/// Whether a finding names both.
bool told(const PaperContext& paper, const std::string& a, const std::string& b) {
    const auto found = paper.findings.find(a);
    if (found == paper.findings.end()) return false;
    return std::any_of(found->second.begin(), found->second.end(), [&](const Finding* finding) {
        return std::find(finding->holes.begin(), finding->holes.end(), b) != finding->holes.end();
    });
}

std::vector<std::string> findingsOf(const PaperContext& paper,
                                    const std::vector<const Hole*>& holes) {
    std::vector<Told> told;
    std::set<const Finding*> seen;
    std::set<std::pair<std::string, std::string>> named;
    for (const Hole* hole : holes) {
        const auto at = paper.findings.find(hole->id);
        if (at == paper.findings.end()) continue;
        for (const Finding* finding : at->second) {
            if (!seen.insert(finding).second) continue;
            const std::string words = findingWords(*finding);
            auto same = std::find_if(told.begin(), told.end(),
                                     [&](const Told& t) { return t.words == words; });
            if (same == told.end()) same = told.insert(told.end(), {words, {}, {}});
            for (const std::string& id : finding->holes) {
                if (named.emplace(words, id).second) same->ids.push_back(id);
            }
            if (finding->kind != "thread_bound")
                same->missing = max(same->missing, finding->missing.value_or(Length{}));
        }
    }
    std::vector<std::string> lines;
    lines.reserve(told.size());
    std::set<std::string> here;
    for (const Hole* hole : holes) here.insert(hole->id);
    for (const Told& one : told) lines.push_back(toldLine(paper, one, here));
    return lines;
}

}  // namespace

std::vector<BenchGroup> groupsOf(const PaperContext& paper, std::vector<BenchItem> items) {
    std::stable_sort(items.begin(), items.end(), [](const BenchItem& a, const BenchItem& b) {
        return orderKey(a) < orderKey(b);
    });
    std::vector<BenchGroup> groups;
    std::vector<const BenchItem*> firsts;
    for (const BenchItem& item : items) {
        const auto same = std::find_if(firsts.begin(), firsts.end(), [&](const BenchItem* first) {
            return sameSetting(*first, item);
        });
        if (same != firsts.end()) {
            groups[static_cast<std::size_t>(same - firsts.begin())].holes.push_back(item.row);
            continue;
        }
        BenchGroup group;
        group.title = capital(item.what) + (item.what.empty() ? "" : ": ") +
                      paper_text::fastening(*item.hole, paper.unit) + ", " +
                      paper.metalName(item.hole->metal);
        group.setting = settingOf(paper, *item.hole);
        if (!item.where.empty() && !group.setting.empty())
            group.setting.front().insert(0, item.where + " ");
        group.holes.push_back(item.row);
        groups.push_back(std::move(group));
        firsts.push_back(&item);
    }
    return groups;
}

std::vector<std::string> warningsFor(const PaperContext& paper,
                                     const std::vector<const Hole*>& holes,
                                     const std::vector<const Hole*>& beside) {
    std::vector<std::string> found = findingsOf(paper, holes);
    std::vector<const Hole*> all = holes;
    all.insert(all.end(), beside.begin(), beside.end());
    for (std::size_t i = 0; i < holes.size(); ++i) {
        for (std::size_t j = i + 1; j < all.size(); ++j) {
            const Hole &a = *all[i], &b = *all[j];
            // Along the planking each stands in a plank of its own or apart by rule.
            if (a.group == "plank" && b.group == "plank") continue;
            const Length clear = distanceBetween(a, b) - (a.diameter + b.diameter) / 2.0;
            if (told(paper, a.id, b.id)) continue;
            if (clear <= Length{} || clear >= clearDiameters * max(a.diameter, b.diameter))
                continue;
            found.push_back(marksOf(paper, {a.id, b.id}) + ": only " + paper.unit.setOut(clear) +
                            " apart; keep the bit straight.");
        }
    }
    Length deepest;
    for (const Hole* hole : holes) {
        // The keel sheet is all long bits, and says so.
        for (const HoleStep& step : hole->steps)
            deepest = hole->group == "ballast" ? deepest : max(deepest, step.depth);
    }
    if (deepest > longBit)
        found.push_back("bores " + paper.unit.setOut(deepest) +
                        ": long auger, sighted to a string.");
    if (found.size() > mostWarnings) {
        const std::size_t more = found.size() - mostWarnings + 1;
        found.resize(mostWarnings - 1);
        found.push_back("And " + std::to_string(more) + " more; see the list of holes.");
    }
    return found;
}

std::string marginsFor(const PaperContext& paper, const std::vector<const Hole*>& holes) {
    const Check* worst = nullptr;
    for (const Hole* hole : holes) {
        const auto found = paper.worst.find(hole->id);
        if (found == paper.worst.end()) continue;
        if (worst == nullptr || worseThan(*found->second, *worst)) worst = found->second;
    }
    if (worst == nullptr) return "none worked out yet for these fastenings.";
    std::string words = paper.markOf(worst->id) + " " + paper_text::checkWords(*worst);
    switch (worst->status) {
        case Status::isShort:
            return "SHORT: " + words + ": do not fasten yet.";
        case Status::unknown:
            return "UNKNOWN: " + words + ".";
        case Status::near:
            return "near: " + words + ".";
        case Status::outside:
            return "outside the formula: " + words + ".";
        case Status::unloaded:
            return "no load on these in any case worked out.";
        case Status::ok:
            return "worst here: " + words + ".";
    }
    return words;
}

}  // namespace fayline
