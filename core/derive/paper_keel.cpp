#include <algorithm>
#include <cmath>

#include "hull/keel.h"
#include "paper_sheets.h"
#include "stages.h"

namespace fayline {
namespace {

using paper_text::capital;
using paper_text::plain;

std::string offLine(const PaperContext& paper, Length y) {
    const std::string figure = paper.unit.setOut(abs(y));
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

std::string degreesOr(int degrees, const char* none, const std::string& behind) {
    return degrees == 0 ? none : std::to_string(degrees) + "° " + behind;
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

/// The worst of one bolt, by the leading basis and by the other.
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
        return "Margin UNKNOWN: nothing is worked out for this bolt.";
    }
    std::string words;
    for (const Check* check : {lead, other}) {
        if (check == nullptr) continue;
        heavy = heavy || check->status == Status::isShort || check->status == Status::unknown;
        words += (words.empty() ? "Margin: " : "; ") + std::string(letterFor(check->status)) +
                 paper_text::checkWords(*check);
    }
    return words + ".";
}

std::vector<std::string> casesOf(const PaperContext& paper, const HolesOf& holes) {
    std::vector<std::string> cases;
    for (const auto& loads : paper.results.cases) {
        std::string line = plain(nameOf(loads->loadCase)) + ": ";
        const Check* worst = nullptr;
        for (const Check* check : paper.results.worstFirst) {
            if (check->loadCase != loads->loadCase) continue;
            const bool bolt = check->id == "keel" ||
                              std::any_of(holes.begin(), holes.end(),
                                          [&](const Hole* h) { return h->id == check->id; });
            if (bolt) {
                worst = check;
                break;
            }
        }
        if (worst == nullptr) {
            line += loads->settled && loads->carried ? "no load on the bolts" : "NOT CARRIED";
        } else {
            line += std::string(letterFor(worst->status)) +
                    (worst->margin ? marginText(*worst->margin) : "not known") + " " +
                    (worst->id == "keel" ? "keel timber on the ballast" : worst->id) + ", " +
                    plain(nameOf(worst->limitState));
        }
        cases.push_back(line + ".");
    }
    return cases;
}

KeelBolt boltRow(const PaperContext& paper, const Hole& hole, Length from) {
    const auto& unit = paper.unit;
    const Point entry = entryOf(hole);
    KeelBolt bolt;
    bolt.id = hole.id;
    bolt.frame = hole.joins.front() == hole.frame + ".floor" ? "through floor " + hole.frame
                                                             : "by " + hole.frame;
    bolt.along = unit.setOut(entry.x - from);
    bolt.offsetTop = offLine(paper, entry.y);
    bolt.offsetEnd = offLine(paper, hole.end.y);
    bolt.grip = unit.setOut(hole.grip);
    bolt.rod = "rod " + unit.size(hole.diameter) + " " + paper.metalName(hole.metal);
    const double dx = hole.end.x.si() - hole.start.x.si();
    const double dy = hole.end.y.si() - hole.start.y.si();
    const double dz = hole.end.z.si() - hole.start.z.si();
    bolt.plumb =
        degreesOr(paper_text::degrees(std::atan2(std::hypot(dx, dy), -dz)), "plumb", "off plumb");
    const double rake = std::atan2(dx, -dz);
    bolt.keelTop = degreesOr(paper_text::degrees(std::abs(rake - keelSlope(paper))),
                             "square to the keel's top", "off square to the keel's top");
    bolt.washer = hole.washerDiameter
                      ? unit.size(*hole.washerDiameter) +
                            (hole.washerThickness ? " × " + unit.size(*hole.washerThickness) : "")
                      : "not decided";
    if (bolt.keelTop.front() != 's') bolt.washer += ", bevelled below";
    bolt.socket = socketOf(paper, hole.diameter);
    for (const HoleStep& step : hole.steps)
        bolt.bits += (bolt.bits.empty() ? "bits " : ", then ") + unit.size(step.diameter);
    bolt.margin = marginOf(paper, hole.id, bolt.heavy);
    return bolt;
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
            "fore end of the ballast's top face, scribed on the keel's side; off = from "
            "the string on the centreline, P port, S starboard. A to the ballast's "
            "after end must read " +
                unit.setOut(ballast->shape.to - from) + ". If not, stop and ask.");
    }
    sheet.notes.emplace_back("Before you bore",
                             "floors bolted and bedded, ballast offered up, its pattern's holes "
                             "checked against this list. Pilot to the string, then ream. Lead: no "
                             "dry dust, wash before eating.");
    HolesOf inOrder = holes;
    std::stable_sort(inOrder.begin(), inOrder.end(),
                     [](const Hole* a, const Hole* b) { return a->start.x < b->start.x; });
    for (const Hole* hole : inOrder) sheet.bolts.push_back(boltRow(paper, *hole, from));
    sheet.cases = casesOf(paper, holes);
    sheet.warnings = warningsFor(paper, inOrder);
    sheet.cautions = paper.results.cautions;
    sheet.nothing = "No ballast bolt is decided. Nothing holds the ballast on.";
    return sheet;
}

}  // namespace fayline
