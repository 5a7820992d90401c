#include "paper_context.h"

#include <algorithm>

#include "project/decide.h"

namespace fayline {
namespace {

bool isFrameId(std::string_view place) {
    return place.size() > 1 && place[0] == 'F' && place[1] >= '0' && place[1] <= '9';
}

/// Whether a decision can alter what a sheet says. When in doubt it can.
bool concerns(const std::string& what, const SheetName& sheet) {
    const std::string place = what.substr(0, what.find('.'));
    const auto is = [&](std::initializer_list<const char*> names) {
        return std::any_of(names.begin(), names.end(), [&](const char* n) { return place == n; });
    };
    if (what == "note" || place == "catalogue") return false;
    if (isFrameId(place)) return sheet.frame.empty() || sheet.frame == place;
    const bool keelGoes = sheet.kind == SheetKind::keel || sheet.kind == SheetKind::floor;
    if (is({"K", "bolts", "ballast"})) return keelGoes;
    if (place.rfind("strake", 0) == 0 || is({"plank", "butt", "hood"}))
        return sheet.kind == SheetKind::planks;
    if (is({"B", "backbone"})) return sheet.kind == SheetKind::backbone;
    if (is({"heel", "arm"})) return sheet.kind == SheetKind::frame;
    if (is({"floor_bolt"})) return sheet.kind == SheetKind::floor;
    return true;
}

std::string lastChange(const PaperOptions& options, const SheetName& sheet) {
    if (options.steps == nullptr) return {};
    for (auto step = options.steps->rbegin(); step != options.steps->rend(); ++step) {
        const bool here =
            std::any_of(step->changes.begin(), step->changes.end(),
                        [&](const Change& change) { return concerns(change.what, sheet); });
        if (here && step->kind != StepKind::note && step->kind != StepKind::record)
            return step->title + ", " + step->at.substr(0, 10);
    }
    return {};
}

}  // namespace

UnitSystem paperUnits(const Project& project, const PaperOptions& options) {
    if (options.units) return *options.units;
    return project.hull.units == "millimetres" ? UnitSystem::millimetres : UnitSystem::inches;
}

PaperContext::PaperContext(const Project& from, const Results& worked, const Catalogue& known,
                           const PaperOptions& asked)
    : project(from),
      results(worked),
      catalogue(known),
      options(asked),
      unit{paperUnits(from, asked)},
      materials(resolveMaterials({from.kept, from.wood, from.metal}, known)) {
    for (const Finding* finding : allFindings(results)) {
        for (const std::string& hole : finding->holes) findings[hole].push_back(finding);
    }
    const Basis leading = project.hull.basis == "ec5" ? Basis::ec5 : Basis::us;
    for (const Check* check : worstOfEach(results, leading)) worst.emplace(check->id, check);
    const auto all = allHoles(results);
    holes.reserve(all.size());
    for (const Hole* hole : all) holes.emplace(hole->id, hole);
}

std::string PaperContext::markOf(const std::string& id) const {
    const auto found = holes.find(id);
    return found == holes.end() ? id : paperMark(*found->second);
}

std::string PaperContext::metalName(const std::string& metal) const {
    if (metal.empty()) return "METAL NOT DECIDED";
    const Metal* found = findMetal(materials, metal);
    if (found == nullptr) return metal;
    std::string name = found->name.value.substr(0, found->name.value.find(','));
    if (const auto at = name.find("half hard"); at != std::string::npos)
        name.replace(at, 9, "½ hard");
    return name;
}

const FramePlace* PaperContext::frame(const std::string& id) const {
    const auto& frames = results.structure->frames;
    const auto found =
        std::find_if(frames.begin(), frames.end(), [&](const FramePlace& f) { return f.id == id; });
    return found == frames.end() ? nullptr : &*found;
}

const FrameCurve* PaperContext::curve(const std::string& frameId) const {
    const auto& frames = results.structure->frames;
    for (std::size_t i = 0; i < frames.size() && i < results.curves.size(); ++i) {
        if (frames[i].id == frameId) return results.curves[i].get();
    }
    return nullptr;
}

std::string sheetOf(const Hole& hole) {
    const std::string& g = hole.group;
    if (g == "ballast") return "keel";
    if (g == "plank" || g == "butt" || g == "hood" || g == "garboard") return "planks";
    if (g == "backbone" || hole.frame.empty()) return "backbone";
    return g == "floor" ? hole.frame + ".floor" : hole.frame;
}

std::string paperMark(const Hole& hole) {
    if (hole.group == "ballast" || hole.group == "backbone") return hole.mark;
    const std::string number = isFrameId(hole.frame) ? hole.frame.substr(1) : hole.frame;
    const char* side = hole.side == "port" ? "P" : hole.side == "starboard" ? "S" : "F";
    return side + number + "-" + hole.mark;
}

Point entryOf(const Hole& hole) {
    if (hole.kind != "bolt" || hole.length <= hole.grip) return hole.start;
    // A floor bolt's lower end is measured to the keel's underside; the others stand proud at both.
    const double part = hole.group == "floor" ? 1.0 : 0.5;
    const double t = part * ((hole.length - hole.grip) / hole.length);
    const auto between = [&](Length a, Length b) { return a + t * (b - a); };
    return {between(hole.start.x, hole.end.x), between(hole.start.y, hole.end.y),
            between(hole.start.z, hole.end.z)};
}

SheetHead headFor(const PaperContext& paper, const SheetName& name, const std::string& large) {
    SheetHead head;
    head.id = name.id;
    head.kind = name.kind;
    head.title = name.title;
    head.fileName = name.fileName;
    head.name = large;
    head.unit = paper.unit.name();
    head.boat = paper.project.hull.name.value_or("unnamed hull");
    head.caution =
        "A guide, not a certificate. A naval architect, a surveyor or the class rules in force "
        "decide what holds a ballast keel; local codes prevail.";
    head.printed = paper.options.printed;
    head.program = paper.options.program;
    head.lastChange = lastChange(paper.options, name);
    return head;
}

}  // namespace fayline
