#include "planking_findings.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>

#include "practice.h"
#include "quantity/display.h"

namespace fayline {
namespace {

struct Group {
    const char* name;
    const char* says;    ///< "the butts' fastenings"
    const char* timber;  ///< what they bite in
    const std::optional<FasteningChoice>* choice;
    std::vector<std::string> ids;
};

bool isThrough(const FasteningChoice& choice) {
    return choice.kind == FasteningKind::bolt || choice.kind == FasteningKind::rivet;
}

/// Lengths and depths, the same for every hole of a group.
void checkGroup(const PlankingInput& in, const Group& group, std::vector<Finding>& findings) {
    const FasteningChoice& choice = **group.choice;
    const std::string name = group.name;
    if (choice.counterbore >= in.planking) {
        findings.push_back({"counterbore",
                            group.ids,
                            choice.counterbore - in.planking,
                            std::string(group.says) + " are counterbored through the plank",
                            {name + ".counterbore=" + wholeUp(in.planking / 3.0)}});
        return;
    }
    if (isThrough(choice)) return;
    const Length outer = in.planking - choice.counterbore;
    const Length length = choice.length.value_or(Length{});
    const Length bite = length - outer;
    if (bite <= Length{}) {
        findings.push_back({"grip",
                            group.ids,
                            -bite,
                            std::string(group.says) + " do not reach the " + group.timber,
                            {name + ".length=" + wholeUp(3.0 * outer)}});
        return;
    }
    if (name == "butt" && bite > in.block) {
        const Length out = bite - in.block;
        findings.push_back({"tip_out",
                            group.ids,
                            out,
                            std::string(group.says) + " show their points by " + shown(out) +
                                " inside the butt block",
                            {"planking.butt_block=" + wholeUp(bite)}});
    }
    if (choice.kind != FasteningKind::woodScrew) return;
    // A screw's plain shank is a third of its length.
    const Length lacks = outer - length / 3.0;
    if (lacks > millimetres(0.05)) {
        std::vector<std::string> cure;
        if (name != "butt" || 3.0 * outer - outer <= in.block)
            cure.push_back(name + ".length=" + wholeUp(3.0 * outer));
        findings.push_back({"thread_bound", group.ids, lacks,
                            std::string(group.says) +
                                " have thread in the plank; bore that a slip fit or take a longer "
                                "shank",
                            cure});
    }
}

/// How many fastenings a strake of this width takes, and what as many as decided would want.
Length widthFor(const FasteningChoice& choice) {
    return (2.0 * edgeDiameters + pitchDiameters * (choice.count - 1)) * choice.diameter;
}
std::vector<std::string> fewer(const char* group, const FasteningChoice& choice, Length width) {
    const int fit =
        1 + static_cast<int>(std::floor(
                (width / choice.diameter - 2.0 * edgeDiameters) / pitchDiameters + 1e-9));
    if (fit < 1) return {};
    return {std::string(group) + ".count=" + std::to_string(std::min(fit, choice.count - 1))};
}

struct Narrow {
    int strakes = 0;
    int worst = 0;
    Length width;
    std::vector<std::string> ids;
};

void tellNarrow(const char* group, const std::string& where, const FasteningChoice& choice,
                const Narrow& narrow, std::vector<Finding>& findings) {
    if (narrow.strakes == 0) return;
    const Length wants = widthFor(choice);
    const std::string says =
        "strake" + std::to_string(narrow.worst) + " is " + shown(narrow.width) + " wide " + where +
        "; " + std::to_string(choice.count) + " fastenings want " + shown(wants) +
        (narrow.strakes > 1 ? "; so do " + std::to_string(narrow.strakes - 1) + " more strakes"
                            : "");
    findings.push_back(
        {"edge", narrow.ids, wants - narrow.width, says, fewer(group, choice, narrow.width)});
}

void addNarrow(Narrow& narrow, Length width, int strake, const FasteningChoice& choice) {
    if (width >= widthFor(choice)) return;
    if (narrow.strakes == 0 || width < narrow.width) {
        narrow.width = width;
        narrow.worst = strake;
    }
    ++narrow.strakes;
}

void checkWidths(const PlankingInput& in, const std::vector<Butt>& butts,
                 std::vector<Finding>& findings) {
    for (const auto& [ends, where] : {std::pair(in.fore.get(), "at its fore end"),
                                      std::pair(in.aft.get(), "at its after end")}) {
        if (ends == nullptr || !in.hood || in.hood->count <= 0) continue;
        Narrow narrow;
        for (std::size_t k = 0; k < ends->strakes.size(); ++k) {
            const int strake = static_cast<int>(k) + 1;
            const int before = narrow.strakes;
            addNarrow(narrow, ends->strakes[k].width(), strake, *in.hood);
            if (narrow.strakes == before) continue;
            for (const char* side : {".P.hood.", ".S.hood."})
                narrow.ids.push_back(ends->frame + side + std::to_string(strake) + ".1");
        }
        tellNarrow("hood", where, *in.hood, narrow, findings);
    }
    if (!in.butt || in.butt->count <= 0) return;
    for (const Butt& butt : butts) {
        Narrow narrow;
        for (const std::size_t i : {butt.bay, butt.bay + 1}) {
            const auto k = static_cast<std::size_t>(butt.strake);
            const std::vector<Length>& seams = in.frames[i].seams;
            addNarrow(narrow, seams[k] - seams[k - 1], butt.strake, *in.butt);
        }
        narrow.strakes = std::min(narrow.strakes, 1);
        narrow.ids = {butt.id + ".P.1", butt.id + ".S.1"};
        tellNarrow("butt", "at " + butt.id, *in.butt, narrow, findings);
    }
}

/// Room along the hull: butt blocks between the frames, garboard fastenings in a bay.
void checkBays(const PlankingInput& in, const std::vector<Butt>& butts,
               std::vector<Finding>& findings) {
    const auto bayLength = [&](std::size_t bay) {
        return in.frames[bay + 1].curve->x() - in.frames[bay].curve->x();
    };
    if (in.butt && in.butt->count > 0) {
        for (const Butt& butt : butts) {
            const PlankLine& fore = in.frames[butt.bay];
            const PlankLine& aft = in.frames[butt.bay + 1];
            const Length room = (bayLength(butt.bay) - max(fore.sided, aft.sided)) / 2.0;
            const Length wants =
                ((in.butt->count > 1 ? 9.0 : 7.0) + pitchDiameters) * in.butt->diameter;
            if (room >= wants) continue;
            std::vector<std::string> cure;
            if (in.butt->gauge && *in.butt->gauge > 2)
                cure.push_back("butt.gauge=No. " + std::to_string(*in.butt->gauge - 2));
            findings.push_back({"butt",
                                {butt.id + ".P.1", butt.id + ".S.1"},
                                wants - room,
                                butt.id + " has " + shown(room) + " from its butt to the frame " +
                                    "beside it; its fastenings want " + shown(wants),
                                cure});
        }
    }
    if (!in.garboard || in.garboard->count <= 0) return;
    for (std::size_t bay = 0; bay + 1 < in.frames.size(); ++bay) {
        if (!garboardBay(in, bay)) continue;
        const Length has = bayLength(bay) / (in.garboard->count + 1.0);
        const Length wants = pitchDiameters * in.garboard->diameter;
        if (has >= wants) continue;
        const int fit = static_cast<int>(bayLength(bay) / wants) - 1;
        const std::string& frame = in.frames[bay].frame;
        findings.push_back({"spacing",
                            {frame + ".P.garboard.1", frame + ".S.garboard.1"},
                            wants - has,
                            "garboard fastenings aft of " + frame + " stand " + shown(has) +
                                " apart; 4 diameters are " + shown(wants),
                            fit > 0 ? std::vector{"garboard.count=" + std::to_string(fit)}
                                    : std::vector<std::string>{}});
    }
}

/// Every hole lies in one cross section, so only neighbours along the hull can meet.
void checkMeetings(std::vector<Hole>& holes, std::vector<Finding>& findings) {
    std::vector<const Hole*> along;
    Length widest;
    for (const Hole& hole : holes) {
        along.push_back(&hole);
        widest = max(widest, hole.diameter);
    }
    std::stable_sort(along.begin(), along.end(),
                     [](const Hole* a, const Hole* b) { return a->start.x < b->start.x; });
    std::map<std::string, Finding> told;
    for (std::size_t i = 0; i < along.size(); ++i) {
        for (std::size_t j = i + 1; j < along.size(); ++j) {
            const Hole& a = *along[i];
            const Hole& b = *along[j];
            if (b.start.x - a.start.x >= widest) break;
            const Length lacks = (a.diameter + b.diameter) / 2.0 - distanceBetween(a, b);
            if (lacks <= Length{}) continue;
            Finding& finding = told[a.group + " " + b.group + " " + a.joins.back()];
            if (finding.holes.empty()) {
                finding.kind = "clash";
                finding.says = a.id + " and " + b.id + " run into each other";
                finding.missing = lacks;
                // From both sides into one timber: shorter ones stop short of its middle.
                const double inward = std::abs(a.start.y.si() - a.end.y.si()) / a.length.si();
                const Length over = a.diameter / 2.0 - (a.side == "port" ? -1.0 : 1.0) * a.end.y;
                if (a.group == b.group && a.side != b.side && inward > 0.1) {
                    const Length shorter = a.length - over / inward;
                    const auto mm = static_cast<long>(std::floor(inMillimetres(shorter)));
                    if (mm > 0) finding.cure = {a.group + ".length=" + std::to_string(mm) + " mm"};
                }
            }
            finding.missing = max(*finding.missing, lacks);
            for (const Hole* hole : {&a, &b}) {
                if (std::find(finding.holes.begin(), finding.holes.end(), hole->id) ==
                    finding.holes.end())
                    finding.holes.push_back(hole->id);
            }
        }
    }
    for (auto& [key, finding] : told) {
        if (finding.holes.size() > 2)
            finding.says += "; " + std::to_string(finding.holes.size() - 2) + " more do so too";
        findings.push_back(std::move(finding));
    }
}

}  // namespace

void plankingFindings(const PlankingInput& in, const std::vector<Butt>& butts,
                      FrameFastenings& out) {
    Group groups[] = {{"butt", "the butts' fastenings", "butt block", &in.butt, {}},
                      {"hood", "the plank ends' fastenings", "stem or sternpost", &in.hood, {}},
                      {"garboard", "the garboard's fastenings", "keel", &in.garboard, {}}};
    for (Group& group : groups) {
        for (const Hole& hole : out.holes) {
            if (hole.group == group.name) group.ids.push_back(hole.id);
        }
        if (!group.ids.empty()) checkGroup(in, group, out.findings);
    }
    checkWidths(in, butts, out.findings);
    checkBays(in, butts, out.findings);
    checkMeetings(out.holes, out.findings);
}

}  // namespace fayline
