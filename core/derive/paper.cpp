#include "derive/paper.h"

#include <algorithm>
#include <unordered_map>

#include "paper_sheets.h"
#include "project/decide.h"

namespace fayline {
namespace {

using HolesBySheet = std::unordered_map<std::string, HolesOf>;

HolesBySheet holesBySheet(const Results& results) {
    HolesBySheet sheets;
    for (const Hole* hole : allHoles(results)) sheets[sheetOf(*hole)].push_back(hole);
    return sheets;
}

std::vector<SheetName> namesFor(const Results& results, const HolesBySheet& holes) {
    std::vector<SheetName> names;
    const auto add = [&](SheetName name) {
        const auto found = holes.find(name.id);
        name.empty = found == holes.end() || found->second.empty();
        name.fileName = name.id + ".pdf";
        names.push_back(std::move(name));
    };
    for (const FramePlace& frame : results.structure->frames) {
        add({frame.id, SheetKind::frame, "Frame " + frame.id, {}, frame.id});
        const std::string floor = frame.id + ".floor";
        if (frame.floorTop || holes.count(floor) > 0)
            add({floor, SheetKind::floor, "Floor at " + frame.id, {}, frame.id});
    }
    add({"keel", SheetKind::keel, "Keel sheet", {}, {}});
    add({"planks", SheetKind::planks, "Plank book", {}, {}});
    if (holes.count("backbone") > 0) add({"backbone", SheetKind::backbone, "Backbone", {}, {}});
    return names;
}

Sheet made(const PaperContext& paper, const SheetName& name, const HolesOf& holes) {
    const PaperSize size = paper.options.paper;
    switch (name.kind) {
        case SheetKind::frame:
            return layOut(frameSheet(paper, name, holes), size);
        case SheetKind::floor:
            return layOut(floorSheet(paper, name, holes), size);
        case SheetKind::keel:
            return layOut(keelSheet(paper, name, holes), size);
        case SheetKind::planks:
            return layOut(plankBook(paper, name, holes), size);
        case SheetKind::backbone:
        case SheetKind::record:
            break;
    }
    return layOut(backboneSheet(paper, name, holes), size);
}

const HolesOf& holesFor(const HolesBySheet& holes, const std::string& id) {
    static const HolesOf none;
    const auto found = holes.find(id);
    return found == holes.end() ? none : found->second;
}

}  // namespace

std::vector<SheetName> sheetNames(const Project&, const Results& results) {
    return namesFor(results, holesBySheet(results));
}

struct SheetMaker::Parts {
    Parts(const Project& project, const Results& results, const Catalogue& catalogue,
          const PaperOptions& asked)
        : options(asked),
          paper(project, results, catalogue, options),
          holes(holesBySheet(results)),
          names(namesFor(results, holes)) {}

    PaperOptions options;
    PaperContext paper;
    HolesBySheet holes;
    std::vector<SheetName> names;
};

SheetMaker::SheetMaker(const Project& project, const Results& results, const Catalogue& catalogue,
                       const PaperOptions& options)
    : parts_(std::make_unique<const Parts>(project, results, catalogue, options)) {}
SheetMaker::~SheetMaker() = default;

const std::vector<SheetName>& SheetMaker::names() const {
    return parts_->names;
}

std::optional<Sheet> SheetMaker::sheet(const std::string& id) const {
    for (const SheetName& name : parts_->names) {
        if (name.id == id) return made(parts_->paper, name, holesFor(parts_->holes, id));
    }
    return std::nullopt;
}

std::optional<Sheet> sheetNamed(const std::string& id, const Project& project,
                                const Results& results, const Catalogue& catalogue,
                                const PaperOptions& options) {
    return SheetMaker(project, results, catalogue, options).sheet(id);
}

std::vector<Sheet> sheetsOf(const Project& project, const Results& results,
                            const Catalogue& catalogue, const PaperOptions& options) {
    const SheetMaker maker(project, results, catalogue, options);
    std::vector<Sheet> sheets;
    for (const SheetName& name : maker.names()) sheets.push_back(*maker.sheet(name.id));
    return sheets;
}

TakeOff takeOffOf(const Project& project, const Results& results, const Catalogue& catalogue) {
    const Materials materials =
        resolveMaterials({project.kept, project.wood, project.metal}, catalogue);
    const auto holes = allHoles(results);
    // By the name each hole's metal was decided under, however it was typed.
    std::map<std::string, Metal> metals;
    for (const Hole* hole : holes) {
        if (const Metal* metal = findMetal(materials, hole->metal); metal != nullptr)
            metals.try_emplace(hole->metal, *metal);
    }
    return takeOff(
        holes, {&metals, &catalogue.rods, &catalogue.nuts, &catalogue.washers, &catalogue.threads},
        paperUnits(project, {}));
}

}  // namespace fayline
