#include <algorithm>

#include "quantity/text.h"
#include "stages.h"

namespace fayline {
namespace {

constexpr int slicesAlong = 64;

void miss(Structure& structure, bool missing, const char* what, const char* says) {
    if (missing) structure.missing.push_back({what, says});
}

std::optional<KeelTimber> keelOf(const KeelDecisions& keel, Structure& structure) {
    miss(structure, !keel.from || !keel.to, "keel.from", "where the keel timber begins and ends");
    miss(structure, !keel.undersideFore || !keel.undersideAft, "keel.underside_fore",
         "how high the keel's underside lies at its two ends");
    miss(structure, !keel.sided || !keel.moulded, "keel.sided", "the keel's siding and moulding");
    miss(structure, !keel.wood, "keel.wood", "the keel's wood");
    if (!keel.from || !keel.to || !keel.undersideFore || !keel.undersideAft || !keel.sided ||
        !keel.moulded)
        return std::nullopt;
    KeelTimber timber{*keel.from,         *keel.to,    *keel.undersideFore,
                      *keel.undersideAft, *keel.sided, *keel.moulded};
    const Problems problems = checkKeel(timber);
    structure.problems.insert(structure.problems.end(), problems.begin(), problems.end());
    if (!problems.empty()) return std::nullopt;
    return timber;
}

void placeFrames(const StructureInput& input, Structure& structure) {
    const FrameSetDecisions& set = input.frames;
    miss(structure, set.count.value_or(0) == 0 || !set.first || !set.spacing, "frames.count",
         "how many frames, where the first stands, and their room and space");
    miss(structure, !set.all.sided || !set.all.moulded, "frames.sided",
         "the frames' siding and moulding");
    const auto add = [&](const std::string& id, std::optional<Length> byRule) {
        const auto own = input.frame.find(id);
        const FrameDecisions decided = own == input.frame.end() ? FrameDecisions{} : own->second;
        const std::optional<Length> x = decided.x ? decided.x : byRule;
        if (!x) return;
        FramePlace place;
        place.id = id;
        place.x = *x;
        place.measured = decided.x.has_value();
        place.sided = decided.sided ? decided.sided : set.all.sided;
        place.moulded = decided.moulded ? decided.moulded : set.all.moulded;
        const auto* surface = input.hull->surface.get();
        place.inHull = surface == nullptr || surface->spans(*x);
        if (!place.inHull) {
            structure.problems.push_back({"frame.outside", id + ".frame.x",
                                          id + " stands outside the hull",
                                          "a place between the hull's ends"});
        }
        structure.frames.push_back(std::move(place));
    };
    if (set.first && set.spacing) {
        for (int i = 1; i <= set.count.value_or(0); ++i)
            add("F" + std::to_string(i), *set.first + static_cast<double>(i - 1) * *set.spacing);
    }
    for (const auto& [id, decided] : input.frame) {
        if (id.back() >= 'A' && id.back() <= 'Z') add(id, std::nullopt);
    }
    std::stable_sort(
        structure.frames.begin(), structure.frames.end(),
        [](const FramePlace& a, const FramePlace& b) { return naturalOrder(a.id, b.id) < 0; });
    for (std::size_t i = 0; i + 1 < structure.frames.size(); ++i) {
        const FramePlace& a = structure.frames[i];
        const FramePlace& b = structure.frames[i + 1];
        if (b.x <= a.x) {
            structure.problems.push_back({"frame.order", b.id + ".frame.x",
                                          b.id + " does not stand aft of " + a.id,
                                          "frames in order from forward"});
        }
    }
}

/// Floors stand on the keel timber. Beside its frame a floor lies just aft of it.
void placeFloors(const StructureInput& input, Structure& structure) {
    bool any = false;
    bool sizesMissing = false;
    std::vector<FrameInput> frames;
    for (const FramePlace& f : structure.frames)
        frames.push_back(
            {f.id, f.x, f.sided.value_or(Length{}), f.moulded.value_or(Length{}), f.measured});
    for (FramePlace& frame : structure.frames) {
        const FloorDecisions floor = floorDecisions(input.floors, input.floor, frame.id);
        frame.floorKind = floor.kind;
        if (!floor.kind || *floor.kind == "none") continue;
        any = true;
        frame.floorTopology = floor.topology.value_or("beside");
        frame.floorWood = floor.wood;
        frame.floorSided = floor.sided ? floor.sided : frame.sided;
        frame.floorThroat = floor.throat;
        if (!frame.floorSided || !frame.floorThroat || !frame.sided) {
            sizesMissing = true;
            continue;
        }
        if (!structure.keel || !input.hull->surface) continue;
        const FloorTopology topology = *frame.floorTopology == "across"  ? FloorTopology::across
                                       : *frame.floorTopology == "plate" ? FloorTopology::plate
                                                                         : FloorTopology::beside;
        const FloorInput place{frame.id, *frame.floorSided, *frame.floorThroat, topology,
                               FloorMake::sawn};
        const auto placed = placeFloor(place, frames, *structure.keel, *input.hull->surface);
        if (!placed) {
            structure.problems.push_back(placed.error());
            continue;
        }
        frame.floorX = placed->x;
        frame.floorTop = placed->throatHeight;
    }
    miss(structure, !any && !structure.frames.empty(), "floors.kind",
         "which frames have floor timbers, and how these are made");
    miss(structure, sizesMissing, "floors.throat", "the floors' siding and throat");
}

std::optional<BallastShape> shapeOf(const BallastDecisions& b,
                                    const std::optional<KeelTimber>& keel, Structure& structure) {
    const bool none = b == BallastDecisions{};
    miss(structure, none, "ballast.metal", "the ballast: its metal, ends, breadths and depths");
    if (none) return std::nullopt;
    miss(structure, !b.metal, "ballast.metal", "the ballast's metal");
    miss(structure, !b.from || !b.to, "ballast.from", "where the ballast begins and ends");
    miss(structure, !b.depthMiddle, "ballast.depth_middle", "the ballast's depth");
    if (!b.from || !b.to || !b.depthMiddle || !keel) return std::nullopt;
    const Length middle = b.breadthMiddle.value_or(keel->sided);
    return BallastShape{*b.from,
                        *b.to,
                        b.breadthFore.value_or(middle),
                        middle,
                        b.breadthAft.value_or(middle),
                        b.bottomBreadth.value_or(middle),
                        b.depthFore.value_or(*b.depthMiddle),
                        *b.depthMiddle,
                        b.depthAft.value_or(*b.depthMiddle)};
}

void placeBallast(const StructureInput& input, Structure& structure) {
    const auto shape = shapeOf(input.ballast, structure.keel, structure);
    if (!shape) return;
    const KeelTimber& keel = *structure.keel;
    const Problems problems = checkBallast(*shape, keel);
    structure.problems.insert(structure.problems.end(), problems.begin(), problems.end());
    if (!problems.empty() || !input.ballastDensity) return;

    const BallastBody body = ballastBody(*shape, keel, *input.ballastDensity);
    BallastPlace place{*shape,      body.mass, input.ballast.mass.value_or(body.mass),
                       body.centre, {},        {}};
    if (input.ballast.centreX) place.centre.x = *input.ballast.centreX;
    const auto joint = keelUndersideAt(keel, place.centre.x);
    if (!joint) {
        structure.problems.push_back({"ballast.centre", "ballast.centre_x",
                                      "the ballast's centre of gravity lies off the keel timber",
                                      "a place on the keel"});
        return;
    }
    place.jointHeight = *joint;
    place.centreBelow = input.ballast.centreBelow.value_or(body.centreBelow);
    place.centre.z = *joint - place.centreBelow;

    const double scale = place.fromShape.si() > 0 ? place.mass / place.fromShape : 1.0;
    const Length step = (shape->to - shape->from) / slicesAlong;
    for (int i = 0; i <= slicesAlong; ++i) {
        const Length x = i == slicesAlong ? shape->to : shape->from + static_cast<double>(i) * step;
        const auto section = ballastSectionAt(*shape, keel, x);
        const auto top = keelTopAt(keel, x);
        if (!section || !top) continue;
        structure.joint.push_back({x, *top, section->topHeight, section->topHeight - section->depth,
                                   min(section->topBreadth, keel.sided)});
    }
    for (int i = 0; i < slicesAlong; ++i) {
        const Length x = shape->from + (static_cast<double>(i) + 0.5) * step;
        const auto section = ballastSectionAt(*shape, keel, x);
        if (!section) continue;
        structure.bed.push_back({x, step, min(section->topBreadth, keel.sided),
                                 section->area * *input.ballastDensity * scale});
    }
    structure.ballast = place;
}

}  // namespace

FloorDecisions floorDecisions(const FloorDecisions& all,
                              const std::map<std::string, FloorDecisions>& own,
                              const std::string& frame) {
    FloorDecisions floor = all;
    const auto found = own.find(frame);
    if (found == own.end()) return floor;
    const FloorDecisions& one = found->second;
    if (one.kind) floor.kind = one.kind;
    if (one.topology) floor.topology = one.topology;
    if (one.sided) floor.sided = one.sided;
    if (one.throat) floor.throat = one.throat;
    if (one.reach) floor.reach = one.reach;
    if (one.wood) floor.wood = one.wood;
    if (one.reason) floor.reason = one.reason;
    return floor;
}

Structure structureStage(const StructureInput& input) {
    Structure structure;
    miss(structure, !input.hull->surface, "offsets.…", "a table of offsets that makes a hull");
    structure.keel = keelOf(input.keel, structure);
    placeFrames(input, structure);
    placeFloors(input, structure);
    placeBallast(input, structure);
    return structure;
}

}  // namespace fayline
