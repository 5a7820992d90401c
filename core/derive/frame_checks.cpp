#include "frame_checks.h"

#include <algorithm>

#include "fastening_sets.h"
#include "joint/work_joint.h"

namespace fayline {
namespace {

/// What cannot be worked out is said once for a set, not for every case.
void addOnce(std::vector<Check> found, std::size_t from, std::vector<Check>& checks) {
    for (Check& check : found) {
        const bool said = check.status == Status::unknown &&
                          std::any_of(checks.begin() + static_cast<std::ptrdiff_t>(from),
                                      checks.end(), [&](const Check& old) {
                                          return old.status == Status::unknown &&
                                                 old.basis == check.basis &&
                                                 old.limitState == check.limitState;
                                      });
        if (!said) checks.push_back(std::move(check));
    }
}

/// Cases that load one group's fastenings are checked; a group nothing loads has one line that says
/// so.
void checkOne(const SetCheckInput& input, const std::vector<FrameLoad>& loads, JointStore& store,
              std::vector<Check>& checks) {
    const std::size_t before = checks.size();
    std::optional<std::pair<const FrameLoad*, SetDemand>> quiet;
    for (const FrameLoad& load : loads) {
        const SetDemand demand = demandOn(input.set, load);
        if (demand.lateral <= Force{} && demand.axial <= Force{}) {
            if (!quiet || (!demand.known && quiet->second.known)) quiet.emplace(&load, demand);
            continue;
        }
        std::string why = input.whyNoJoint;
        const JointResult* result = nullptr;
        std::optional<JointResult> own;
        if (input.joint) {
            const Joint joint = inCase(*input.joint, load.settings, demand);
            if (joint.load) {
                auto worked = workJoint(joint);
                if (worked) {
                    own = std::move(*worked);
                    result = &*own;
                } else {
                    why = worked.error().line();
                }
            } else {
                result = store.find(joint, why);
            }
        }
        addOnce(checkSet(input, load, demand, result, why), before, checks);
    }
    // What is not worked out is said even where other cases are.
    if (quiet && (checks.size() == before || !quiet->second.known))
        checks.push_back(quietCheck(input, *quiet->first, quiet->second));
}

}  // namespace

const JointResult* JointStore::find(const Joint& joint, std::string& why) {
    auto found = known_.find(joint);
    if (found == known_.end()) {
        Entry entry;
        if (auto worked = workJoint(joint)) {
            entry.result = std::make_shared<const JointResult>(std::move(*worked));
        } else {
            entry.why = worked.error().line();
        }
        found = known_.emplace(joint, std::move(entry)).first;
    }
    if (!found->second.result) why = found->second.why;
    return found->second.result.get();
}

FrameChecks checkFrame(const FrameChecksInput& input, JointStore& store) {
    FrameChecks result;
    result.loads = input.loads;
    result.sets = setsOf(input);
    std::vector<Check> checks;
    for (const SetCheckInput& set : result.sets) checkOne(set, input.loads, store, checks);
    const auto arms = std::find_if(result.sets.begin(), result.sets.end(),
                                   [](const SetCheckInput& s) { return s.set.group == "arm"; });
    if (input.floorHere && !input.metalFloor && arms != result.sets.end() && arms->set.spread) {
        FloorCheckInput floor;
        floor.id = input.frame + ".floor";
        floor.frame = input.frame;
        floor.sided = input.floorSided.value_or(Length{});
        floor.throat = input.floorThroat.value_or(Length{});
        floor.bored = input.ballastBolt.value_or(Length{});
        floor.spread = *arms->set.spread;
        floor.keelSided = input.keelSided.value_or(Length{});
        floor.rise = input.keelMoulded.value_or(Length{}) + floor.throat / 2.0;
        floor.wood = input.floorWood;
        floor.target = input.context->targetKeel;
        const std::size_t before = checks.size();
        for (const FrameLoad& load : input.loads) {
            if (!load.bears) continue;
            addOnce(checkFloor(floor, load), before, checks);
        }
        result.floor = std::move(floor);
    }
    result.found = CheckSet(std::move(checks));
    return result;
}

FrameChecks checkLoose(const std::vector<Hole>& holes, const TimberContext& context) {
    FrameChecks result;
    FrameLoad load;
    load.loadCase = LoadCase::knockdownPort;
    result.loads = {load};
    std::vector<Check> checks;
    for (std::size_t i = 0; i < holes.size();) {
        const std::string_view name = setName(holes[i].id);
        SetCheckInput entry;
        entry.set.id = holes[i].id;
        entry.set.frame = holes[i].frame;
        entry.set.group = holes[i].group;
        entry.target = context.targetHull;
        for (; i < holes.size() && setName(holes[i].id) == name; ++i) ++entry.set.count;
        const SetDemand demand = demandOn(entry.set, load);
        checks.push_back(quietCheck(entry, load, demand));
        result.sets.push_back(std::move(entry));
    }
    result.found = CheckSet(std::move(checks));
    return result;
}

}  // namespace fayline
