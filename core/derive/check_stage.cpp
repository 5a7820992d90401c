#include "check_stage.h"

#include <algorithm>

#include "fastening_stages.h"
#include "plank_bend.h"
#include "stages.h"

namespace fayline {
namespace {

std::optional<Wood> woodOf(const Materials& materials, const std::optional<std::string>& name) {
    const Wood* wood = findWood(materials, name);
    return wood == nullptr ? std::nullopt : std::optional(*wood);
}

/// US wet-service factor for compression across the grain (from memory).
constexpr double wetService = 0.67;

/// Wet side grain crushes at its green proportional limit; where that was not measured, at half the
/// dry one or near the characteristic strength (judgement).
Stress wetCrushing(const Wood& wood) {
    if (wood.green.compressionPerpendicular) return wood.green.compressionPerpendicular->value;
    if (wood.twelve.compressionPerpendicular)
        return wood.twelve.compressionPerpendicular->value / 2.0;
    if (wood.ec5.compressionPerpendicular)
        return wood.ec5.compressionPerpendicular->value * wetService;
    return {};
}

Stress wetStiffness(const Wood& wood) {
    if (wood.green.modulusOfElasticity) return wood.green.modulusOfElasticity->value;
    if (wood.twelve.modulusOfElasticity) return wood.twelve.modulusOfElasticity->value;
    if (wood.ec5.modulusParallel) return wood.ec5.modulusParallel->value;
    return {};
}

TimberContext contextOf(const Project& project, const Materials& materials) {
    TimberContext context;
    context.plank = woodOf(materials, project.planking.wood);
    context.frame = woodOf(materials, project.frames.wood);
    context.keel = woodOf(materials, project.keel.wood);
    for (const auto& [key, decided] : project.fastening) {
        if (const Metal* metal = findMetal(materials, decided.metal))
            context.metals.emplace(*decided.metal, *metal);
    }
    context.metalFactor = project.metalFactor;
    context.planking = project.planking.thickness.value_or(Length{});
    if (context.plank) {
        context.seam = wetCrushing(*context.plank);
        context.stiffness = wetStiffness(*context.plank);
    }
    context.targetKeel = targetOf(project, ConsequenceClass::keel);
    context.targetHull = targetOf(project, ConsequenceClass::hull);
    return context;
}

/// Where a frame stands in the shares of every case; those that bear nothing do not.
std::unordered_map<std::string_view, std::size_t> bearingPlaces(const Results& results) {
    std::unordered_map<std::string_view, std::size_t> places;
    if (results.cases.empty()) return places;
    const auto& frames = results.cases.front()->frames;
    for (std::size_t i = 0; i < frames.size(); ++i) places.emplace(frames[i].frame, i);
    return places;
}

/// The holes of butts, plank ends and garboard by the frame they belong to.
std::unordered_map<std::string_view, std::vector<const Hole*>> plankingByFrame(
    const Results& results) {
    std::unordered_map<std::string_view, std::vector<const Hole*>> holes;
    if (!results.planking) return holes;
    for (const Hole& hole : results.planking->holes) holes[hole.frame].push_back(&hole);
    return holes;
}

/// A frame's load in every case, by its place among the shares: the larger of tributary and rigid.
std::vector<FrameLoad> loadsAt(const Results& results, std::optional<std::size_t> place,
                               const TimberContext& context, Length spacing) {
    std::vector<FrameLoad> loads;
    for (const auto& one : results.cases) {
        FrameLoad load;
        load.loadCase = one->loadCase;
        load.settings = one->settings;
        if (place && loadsTheKeel(one->loadCase) && one->carried) {
            const FrameShare& share = one->frames[*place];
            load.bears = true;
            const bool stands =
                one->loadCase == LoadCase::groundingUp || one->loadCase == LoadCase::onKeel;
            const double part =
                stands ? share.tributary : std::max(share.tributary, std::abs(share.rigid));
            load.moment = part * abs(one->totalMoment.x);
            load.sideways = part * abs(one->total.y);
            load.down = part * max(Force{}, -one->total.z);
            load.up = part * max(Force{}, one->total.z);
        }
        if (one->loadCase == LoadCase::swelling)
            load.hoop =
                one->settings.factor * swellingHoop(context.seam, context.planking, spacing);
        loads.push_back(std::move(load));
    }
    return loads;
}

Length spacingAt(const Structure& structure, std::size_t i) {
    const auto& frames = structure.frames;
    if (frames.size() < 2) return {};
    if (i == 0) return abs(frames[1].x - frames[0].x);
    if (i + 1 == frames.size()) return abs(frames[i].x - frames[i - 1].x);
    return abs(frames[i + 1].x - frames[i - 1].x) / 2.0;
}

}  // namespace

void CheckMemory::nextGeneration() {
    context.nextGeneration();
    frames.nextGeneration();
}

void checkFrames(const Project& project, const Materials& materials, CheckMemory& memory,
                 Results& results) {
    const Structure& structure = *results.structure;
    int uncounted = 0;
    const auto context = memory.context.get(
        0, contextOf(project, materials), [](const TimberContext& in) { return in; }, uncounted);
    if (memory.jointsOf != context) memory.joints.clear();
    memory.jointsOf = context;
    const Length greatest = greatestGirth(results);
    const auto bearing = bearingPlaces(results);
    const auto planking = plankingByFrame(results);
    for (std::size_t i = 0; i < structure.frames.size(); ++i) {
        const FramePlace& frame = structure.frames[i];
        FrameChecksInput in;
        in.frame = frame.id;
        in.fastenings = results.frameFastenings[i];
        in.planking = results.planking;
        if (const auto found = planking.find(frame.id); found != planking.end())
            in.plankingHere = found->second;
        in.curve = results.curves[i];
        in.context = context;
        if (in.curve) in.seams = seamsAt(project, in.curve->girth(), greatest);
        if (!in.seams.empty()) in.bends = bendsAt(results, i);
        in.sided = frame.sided.value_or(Length{});
        in.moulded = frame.moulded.value_or(Length{});
        in.spacing = spacingAt(structure, i);
        if (structure.keel) {
            in.keelSided = structure.keel->sided;
            in.keelMoulded = structure.keel->moulded;
        }
        in.heelDetail = heelDetailAt(project, frame.id);
        in.floorHere = frame.floorX && frame.floorTop;
        in.floorSided = frame.floorSided;
        in.floorThroat = frame.floorThroat;
        in.metalFloor = frame.floorKind == "cast" || frame.floorKind == "plate";
        in.straightGrain = frame.floorKind == "sawn";
        if (!in.metalFloor) in.floorWood = woodOf(materials, frame.floorWood);
        for (std::size_t b = 0; b < results.ballastBolts->placed.size(); ++b) {
            const PlacedBolt& bolt = results.ballastBolts->placed[b];
            if (!bolt.between && bolt.frame == frame.id)
                in.ballastBolt = results.ballastBolts->holes[b].diameter;
        }
        const auto place = bearing.find(frame.id);
        in.loads =
            loadsAt(results, place == bearing.end() ? std::nullopt : std::optional(place->second),
                    *context, in.spacing);
        const auto checked = memory.frames.get(
            frame.id, std::move(in),
            [&](const FrameChecksInput& key) { return checkFrame(key, memory.joints); },
            results.runs.frameChecks);
        results.frameChecks.push_back(checked);
        results.checkSets.emplace_back(checked, &checked->found);
    }
    if (results.backbone && !results.backbone->holes.empty()) {
        const auto checked =
            std::make_shared<const FrameChecks>(checkLoose(results.backbone->holes, *context));
        results.frameChecks.push_back(checked);
        results.checkSets.emplace_back(checked, &checked->found);
    }
}

std::optional<Trace> explainAtFrame(const Results& results, const Check& check) {
    for (const auto& frame : results.frameChecks) {
        const auto load =
            std::find_if(frame->loads.begin(), frame->loads.end(),
                         [&](const FrameLoad& l) { return l.loadCase == check.loadCase; });
        if (load == frame->loads.end()) continue;
        if (frame->floor && frame->floor->id == check.id &&
            (check.limitState == LimitStateKind::floorBending ||
             check.limitState == LimitStateKind::floorShear))
            return explainFloor(*frame->floor, *load, check);
        for (const SetCheckInput& set : frame->sets) {
            if (set.set.id == check.id) return explainSet(set, *load, check);
        }
    }
    return std::nullopt;
}

}  // namespace fayline
