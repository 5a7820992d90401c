#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "hull/keel.h"
#include "paper_sheets.h"
#include "stages.h"

namespace fayline {
namespace {

using paper_text::plain;

std::string offLine(const PaperContext& paper, Length y) {
    std::string figure = paper.unit.setOut(abs(y));
    if (figure == "0") return figure;
    return figure + (y < Length{} ? " P" : " S");
}

/// Slope of the keel's top, falling aft positive.
double keelSlope(const PaperContext& paper) {
    const auto& keel = paper.results.structure->keel;
    if (!keel) return 0.0;
    return std::atan2(keel->undersideFore.si() - keel->undersideAft.si(),
                      keel->to.si() - keel->from.si());
}

/// The spanner's size over a plain hexagon nut of this rod.
std::string socketOf(const PaperContext& paper, Length diameter) {
    const Thread* thread = threadOf(paper.catalogue, diameter);
    if (thread == nullptr) return "not known";
    for (const auto& [id, nut] : paper.catalogue.nuts) {
        if (nut.thread == thread->id && nut.kind == NutKind::hex)
            return paper.unit.size(nut.acrossFlats);
    }
    return "not known";
}

const char* letterFor(Status status) {
    switch (status) {
        case Status::isShort:
            return "SHORT ";
        case Status::unknown:
            return "UNKNOWN ";
        case Status::near:
            return "near ";
        case Status::outside:
            return "outside ";
        case Status::ok:
        case Status::unloaded:
            return "";
    }
    return "";
}

std::string shortWords(const Check& check) {
    const std::string basis = check.basis == Basis::us    ? " US"
                              : check.basis == Basis::ec5 ? " EC5"
                                                          : "";
    return std::string(letterFor(check.status)) +
           (check.margin                       ? marginText(*check.margin)
            : check.status == Status::unloaded ? "no load on"
                                               : "not known") +
           " " + plain(nameOf(check.limitState)) + basis;
}

/// The worst of one bolt by the leading basis, with its case; and by the other.
std::string marginOf(const PaperContext& paper, const std::string& id, bool& heavy) {
    const Check *lead = nullptr, *other = nullptr;
    const Basis leading = paper.project.hull.basis == "ec5" ? Basis::ec5 : Basis::us;
    for (const Check* check : checksOf(paper.results, id)) {
        const bool counts = check->basis == leading || check->basis == Basis::metal;
        const Check*& slot = counts ? lead : other;
        if (slot == nullptr) slot = check;
    }
    if (lead == nullptr && other == nullptr) {
        heavy = true;
        return "margin UNKNOWN, nothing is worked out.";
    }
    std::string words;
    for (const Check* check : {lead, other}) {
        if (check == nullptr) continue;
        heavy = heavy || check->status == Status::isShort || check->status == Status::unknown;
        words += (words.empty() ? "" : "; ") + shortWords(*check);
    }
    return words + ".";
}

std::string casesOf(const PaperContext& paper, const HolesOf& holes) {
    std::set<std::string> ours{"keel"};
    for (const Hole* hole : holes) ours.insert(hole->id);
    std::map<LoadCase, const Check*> worst;
    for (const Check* check : paper.results.worstFirst) {
        if (ours.count(check->id) > 0) worst.try_emplace(check->loadCase, check);
    }
    std::vector<const Check*> low;
    std::string notCarried;
    double rest = 0.0;
    for (const auto& loads : paper.results.cases) {
        const auto found = worst.find(loads->loadCase);
        if (!loads->settled || !loads->carried)
            notCarried += "; " + plain(nameOf(loads->loadCase)) + " NOT CARRIED";
        if (found == worst.end()) continue;
        const Check& check = *found->second;
        const bool fine = check.status == Status::ok || check.status == Status::unloaded;
        if (!fine) {
            low.push_back(&check);
        } else if (check.margin && (rest == 0.0 || *check.margin < rest)) {
            rest = *check.margin;
        }
    }
    std::stable_sort(low.begin(), low.end(),
                     [](const Check* a, const Check* b) { return worseThan(*a, *b); });
    std::string cases;
    for (const Check* check : low) {
        cases += (cases.empty() ? "" : "; ") + plain(nameOf(check->loadCase)) + " " +
                 (check->margin ? marginText(*check->margin) : "not known") + " " +
                 (check->id == "keel" ? "keel on ballast" : check->id);
    }
    cases += cases.empty() && !notCarried.empty() ? notCarried.substr(2) : notCarried;
    if (rest > 0.0)
        cases += (cases.empty() ? "all " : "; all others ") + marginText(rest) + " and more";
    return cases.empty() ? cases : cases + ".";
}

std::string anglesOf(const PaperContext& paper, const Hole& hole) {
    const double dx = hole.end.x.si() - hole.start.x.si();
    const double dy = hole.end.y.si() - hole.start.y.si();
    const double dz = hole.end.z.si() - hole.start.z.si();
    const int plumb = paper_text::degrees(std::atan2(std::hypot(dx, dy), -dz));
    const int square = paper_text::degrees(std::abs(std::atan2(dx, -dz) - keelSlope(paper)));
    return (plumb == 0 ? "plumb" : std::to_string(plumb) + "° off plumb") + ", " +
           (square == 0 ? "square to the keel's top"
                        : std::to_string(square) + "° off square to the keel's top");
}

KeelBolt boltRow(const PaperContext& paper, const Hole& hole, Length from) {
    const auto& unit = paper.unit;
    const Point entry = entryOf(hole);
    KeelBolt bolt;
    bolt.id = hole.id;
    bolt.frame =
        hole.joins.front() == hole.frame + ".floor" ? "floor " + hole.frame : "by " + hole.frame;
    bolt.along = unit.setOut(entry.x - from);
    bolt.offsetTop = offLine(paper, entry.y);
    bolt.offsetEnd = offLine(paper, hole.end.y);
    bolt.grip = unit.setOut(hole.grip);
    bolt.margin = marginOf(paper, hole.id, bolt.heavy);
    return bolt;
}

/// Rod, washer, socket, bits: what most bolts have in common.
std::vector<std::string> settingOf(const PaperContext& paper, const Hole& hole) {
    const auto& unit = paper.unit;
    std::string washer = "washer ";
    washer += hole.washerDiameter ? unit.size(*hole.washerDiameter) : "not decided";
    if (hole.washerDiameter && hole.washerThickness)
        washer += " × " + unit.size(*hole.washerThickness);
    std::string bits;
    for (const HoleStep& step : hole.steps)
        bits += (bits.empty() ? "bits " : ", ") + unit.size(step.diameter);
    return {"rod " + unit.size(hole.diameter) + " " + paper.metalName(hole.metal), washer,
            "socket " + socketOf(paper, hole.diameter), bits};
}

/// The setting most bolts have, said once, and for every other bolt what differs from it.
void saySettings(KeelSheet& sheet, const PaperContext& paper, const HolesOf& holes) {
    std::vector<std::pair<std::vector<std::string>, std::vector<std::string>>> found;
    for (const Hole* hole : holes) {
        const auto setting = settingOf(paper, *hole);
        auto same = std::find_if(found.begin(), found.end(),
                                 [&](const auto& f) { return f.first == setting; });
        if (same == found.end()) same = found.insert(found.end(), {setting, {}});
        same->second.push_back(hole->id);
    }
    if (found.empty()) return;
    std::stable_sort(found.begin(), found.end(), [](const auto& a, const auto& b) {
        return a.second.size() > b.second.size();
    });
    const auto& usual = found.front().first;
    for (const auto& [setting, bolts] : found) {
        std::string label, words;
        for (const std::string& id : bolts) label += (label.empty() ? "" : " ") + id;
        const bool first = &setting == &usual;
        for (std::size_t i = 0; i < setting.size(); ++i) {
            if (first || setting[i] != usual[i]) words += (words.empty() ? "" : ", ") + setting[i];
        }
        sheet.settings.emplace_back(first ? (found.size() > 1 ? "Bolts" : "All bolts") : label,
                                    words + ".");
    }
}

/// The angle most bolts have is said once for all.
void sayCommonAngleOnce(KeelSheet& sheet, const std::map<std::string, int>& angles) {
    const auto most =
        std::max_element(angles.begin(), angles.end(),
                         [](const auto& a, const auto& b) { return a.second < b.second; });
    if (most == angles.end() || most->second < 2) return;
    const bool slopes = most->first.find("off square") != std::string::npos;
    sheet.settings.emplace_back("Angle", most->first + (slopes ? "; bevel the washers." : ".") +
                                             (angles.size() > 1 ? " Others as listed." : ""));
    for (KeelBolt& bolt : sheet.bolts) {
        if (bolt.angles == most->first) bolt.angles.clear();
    }
}

}  // namespace

KeelSheet keelSheet(const PaperContext& paper, const SheetName& name, const HolesOf& holes) {
    KeelSheet sheet;
    sheet.head = headFor(paper, name, "KEEL SHEET");
    sheet.seen = "All that holds the ballast on, forward to aft";
    const auto& ballast = paper.results.structure->ballast;
    const auto& unit = paper.unit;
    const Length from = ballast ? ballast->shape.from : Length{};
    if (ballast) {
        sheet.notes.emplace_back(
            "Datum A",
            "fore end of the ballast's top, scribed on the keel. Off = off the string. A to the "
            "after end must read " +
                unit.setOut(ballast->shape.to - from) + ". If not, STOP and ask.");
    }
    sheet.notes.emplace_back("Before you bore",
                             "floors fast, ballast offered up, pattern's holes checked. Pilot to "
                             "the string, then ream. Lead: no dry dust, wash before eating.");
    HolesOf inOrder = holes;
    std::stable_sort(inOrder.begin(), inOrder.end(),
                     [](const Hole* a, const Hole* b) { return a->start.x < b->start.x; });
    std::map<std::string, int> angles;
    for (const Hole* hole : inOrder) {
        sheet.bolts.push_back(boltRow(paper, *hole, from));
        sheet.bolts.back().angles = anglesOf(paper, *hole);
        ++angles[sheet.bolts.back().angles];
    }
    saySettings(sheet, paper, inOrder);
    sayCommonAngleOnce(sheet, angles);
    sheet.cases = casesOf(paper, holes);
    sheet.warnings = warningsFor(paper, inOrder);
    sheet.cautions = {"Look at them after any grounding."};
    sheet.nothing = "No ballast bolt is decided. Nothing holds the ballast on.";
    return sheet;
}

}  // namespace fayline
