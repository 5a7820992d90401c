#include "stations/pictures.h"

#include <QCoreApplication>
#include <algorithm>
#include <string_view>
#include <unordered_map>

#include "words/checks.h"
#include "words/values.h"

namespace fayline {
namespace {

std::string said(const char* words) {
    return QCoreApplication::translate("Pictures", words).toStdString();
}

const Hole* holeOf(const Results& results, const std::string& id) {
    const auto& holes = results.ballastBolts->holes;
    const auto found =
        std::find_if(holes.begin(), holes.end(), [&](const Hole& hole) { return hole.id == id; });
    return found == holes.end() ? nullptr : &*found;
}

/// The worst status of everything checked, by fastening and by frame.
class Standings {
  public:
    Standings(const Results& results, Basis leading) : byFrame_(worstByFrame(results, leading)) {
        for (const Check* check : worstOfEach(results, leading)) byId_.emplace(check->id, check);
    }
    [[nodiscard]] std::optional<Status> of(const std::string& id) const { return in(byId_, id); }
    [[nodiscard]] std::optional<Status> at(const std::string& frame) const {
        return in(byFrame_, frame);
    }

  private:
    using Map = std::unordered_map<std::string_view, const Check*>;
    static std::optional<Status> in(const Map& map, const std::string& key) {
        const auto found = map.find(key);
        return found == map.end() ? std::nullopt : std::optional(found->second->status);
    }
    Map byFrame_, byId_;
};

void addOthers(ProfileInput& input, const std::vector<Hole>& holes, const std::string& group,
               const Standings& standings) {
    for (const Hole& hole : holes) {
        if (hole.group != group) continue;
        // What is not checked has nothing to say, and looks so.
        input.others.push_back({hole.id, hole.start, hole.end,
                                standings.of(hole.id).value_or(Status::unloaded), hole.diameter});
    }
}

std::vector<Point> keelOutline(const KeelTimber& keel) {
    const auto corner = [](Length x, Length z) { return Point{x, Length{}, z}; };
    return {corner(keel.from, keel.undersideFore), corner(keel.to, keel.undersideAft),
            corner(keel.to, keel.undersideAft + keel.moulded),
            corner(keel.from, keel.undersideFore + keel.moulded)};
}

std::vector<Point> ballastOutline(const std::vector<JointSection>& joint) {
    std::vector<Point> outline;
    for (const JointSection& section : joint)
        outline.push_back({section.x, Length{}, section.joint});
    for (auto section = joint.rbegin(); section != joint.rend(); ++section)
        outline.push_back({section->x, Length{}, section->ballastBottom});
    return outline;
}

ProfileFrame profileFrame(const FramePlace& place, const Structure& structure,
                          const LoftedSurface* surface) {
    ProfileFrame frame;
    frame.id = place.id;
    frame.x = place.x;
    frame.sided = place.sided;
    const auto keelTop = structure.keel ? keelTopAt(*structure.keel, place.x) : std::nullopt;
    if (surface != nullptr && place.inHull) {
        frame.bottom = surface->lowestAt(place.x);
        if (keelTop && *keelTop > *frame.bottom) frame.bottom = keelTop;
        frame.top = surface->sheerHeightAt(place.x);
    }
    frame.hasFloor = place.floorKind && *place.floorKind != "none";
    frame.floorBottom = keelTop;
    frame.floorTop = place.floorTop;
    frame.floorSided = place.floorSided;
    return frame;
}

}  // namespace

ProfileInput profileOf(const Desk& desk) {
    const Results& results = *desk.results();
    const Structure& structure = *results.structure;
    const Standings standings(results, speechOf(desk.project()).basis);
    const LoftedSurface* surface = results.hull->surface.get();
    ProfileInput input;
    input.emptyText = said(
        "No hull yet. Bring in the offsets on the Hull page, and the side profile appears here.");
    if (surface != nullptr) {
        input.sheer = surface->sheerLine();
        input.lowest = surface->profileLine();
        input.waterline = results.afloat->waterline;
    }
    if (structure.keel) input.keel = keelOutline(*structure.keel);
    if (structure.ballast) input.ballast = ballastOutline(structure.joint);
    for (const FramePlace& place : structure.frames) {
        ProfileFrame frame = profileFrame(place, structure, surface);
        frame.worst = standings.at(place.id);
        input.frames.push_back(std::move(frame));
    }
    std::stable_sort(input.frames.begin(), input.frames.end(),
                     [](const ProfileFrame& a, const ProfileFrame& b) { return a.x < b.x; });
    for (const Hole& hole : results.ballastBolts->holes)
        input.bolts.push_back(
            {hole.id, hole.start, hole.end, standings.of(hole.id).value_or(Status::unknown), {}});
    for (const auto& at : results.frameFastenings) addOthers(input, at->holes, "floor", standings);
    if (results.backbone) addOthers(input, results.backbone->holes, "backbone", standings);
    return input;
}

SectionInput sectionOf(const Desk& desk, const std::string& id) {
    const Results& results = *desk.results();
    const Structure& structure = *results.structure;
    const Standings standings(results, speechOf(desk.project()).basis);
    SectionInput input;
    input.frame = id;
    input.emptyText = said("No section here yet.");
    const auto place = std::find_if(structure.frames.begin(), structure.frames.end(),
                                    [&](const FramePlace& f) { return f.id == id; });
    if (place == structure.frames.end()) return input;
    if (results.hull->surface && place->inHull) {
        input.side = results.hull->surface->sectionAt(place->x).points;
        input.waterline = results.afloat->waterline;
    }
    input.planking = desk.project().planking.thickness;
    input.moulded = place->moulded;
    input.floorTop = place->floorTop;
    if (structure.keel) {
        const auto under = keelUndersideAt(*structure.keel, place->x);
        const auto top = keelTopAt(*structure.keel, place->x);
        const Length half = structure.keel->sided / 2.0;
        if (under && top) {
            input.keel = {{Length{}, *under}, {half, *under}, {half, *top}, {Length{}, *top}};
            input.heel = top;
        }
        if (structure.ballast) {
            if (const auto ballast =
                    ballastSectionAt(structure.ballast->shape, *structure.keel, place->x)) {
                const Length bottom = ballast->topHeight - ballast->depth;
                input.ballast = {{Length{}, bottom},
                                 {ballast->bottomBreadth / 2.0, bottom},
                                 {ballast->topBreadth / 2.0, ballast->topHeight},
                                 {Length{}, ballast->topHeight}};
            }
        }
    }
    for (const PlacedBolt& placed : results.ballastBolts->placed) {
        if (placed.frame != id) continue;
        const Hole* hole = holeOf(results, placed.id);
        if (hole == nullptr) continue;
        SectionBolt bolt{placed.id,    hole->start,
                         hole->end,    hole->diameter,
                         std::nullopt, standings.of(placed.id).value_or(Status::unknown)};
        for (const auto& check : results.boltInputs) {
            if (check->id == placed.id && check->washer) bolt.washer = check->washer->diameter;
        }
        input.bolts.push_back(std::move(bolt));
    }
    const auto number = static_cast<std::size_t>(place - structure.frames.begin());
    if (number >= results.frameFastenings.size()) return input;
    for (const Hole& hole : results.frameFastenings[number]->holes) {
        input.holes.push_back({hole.id, hole.start, hole.end, hole.diameter, standings.of(hole.id),
                               hole.group == "plank"});
    }
    return input;
}

}  // namespace fayline
