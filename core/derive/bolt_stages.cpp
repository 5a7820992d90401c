#include <algorithm>
#include <numbers>

#include "stages.h"

namespace fayline {
namespace {

template <typename T>
void over(std::optional<T>& slot, const std::optional<T>& own) {
    if (own) slot = own;
}

const RuleLimit* rule(const Catalogue& catalogue, const char* id) {
    const auto found = catalogue.rules.find(id);
    return found == catalogue.rules.end() ? nullptr : &found->second;
}

BoltRules boltRules(const Catalogue& catalogue) {
    BoltRules rules;
    if (const auto* least = rule(catalogue, "lr_keel_bolt_least")) {
        rules.leastDiameter = least->length;
        rules.diameterSource = least->source;
    }
    if (const auto* washer = rule(catalogue, "lr_keel_washer_diameter")) {
        rules.washerDiameters = washer->factor;
        rules.washerSource = washer->source;
    }
    if (const auto* washer = rule(catalogue, "lr_keel_washer_thickness")) {
        rules.washerThickness = washer->factor;
        rules.washerThicknessCap = washer->needNotExceed;
    }
    return rules;
}

const FramePlace* frameOf(const Structure& structure, const std::string& id) {
    const auto found = std::find_if(structure.frames.begin(), structure.frames.end(),
                                    [&](const FramePlace& f) { return f.id == id; });
    return found == structure.frames.end() ? nullptr : &*found;
}

/// Sizes by class rule where the builder has decided none.
Length washerDiameterOf(const BoltDecisions& bolt, const BoltRules& rules) {
    return bolt.washerDiameter.value_or(rules.washerDiameters.value_or(4.0) * *bolt.diameter);
}
Length washerThicknessOf(const BoltDecisions& bolt, const BoltRules& rules) {
    return bolt.washerThickness.value_or(min(rules.washerThickness.value_or(0.25) * *bolt.diameter,
                                             rules.washerThicknessCap.value_or(millimetres(8))));
}

}  // namespace

BoltDecisions boltDecisions(const Project& project, const std::string& id) {
    BoltDecisions bolt = project.bolts.all;
    bolt.offset.reset();
    const auto found = project.bolt.find(id);
    if (found == project.bolt.end()) return bolt;
    const BoltDecisions& own = found->second;
    over(bolt.x, own.x);
    over(bolt.offset, own.offset);
    over(bolt.diameter, own.diameter);
    over(bolt.metal, own.metal);
    over(bolt.washerDiameter, own.washerDiameter);
    over(bolt.washerThickness, own.washerThickness);
    over(bolt.through, own.through);
    over(bolt.corrosion, own.corrosion);
    over(bolt.recess, own.recess);
    over(bolt.reason, own.reason);
    return bolt;
}

const Thread* threadOf(const Catalogue& catalogue, Length diameter) {
    for (const auto& [id, thread] : catalogue.threads) {
        if (abs(thread.nominal - diameter) < millimetres(0.001)) return &thread;
    }
    return nullptr;
}

BoltPlan planBolts(const Project& project, const Structure& structure, const Catalogue& catalogue) {
    BoltPlan plan;
    plan.layout.rules = boltRules(catalogue);
    plan.layout.sections = structure.joint;
    plan.layout.alternateOffset = project.bolts.all.offset.value_or(Length{});
    for (const FramePlace& frame : structure.frames) {
        if (frame.floorX && frame.floorTop)
            plan.layout.floors.push_back(
                {frame.id, *frame.floorX, *frame.floorSided, *frame.floorTop});
    }
    std::stable_sort(plan.layout.floors.begin(), plan.layout.floors.end(),
                     [](const FloorSeat& a, const FloorSeat& b) { return a.x < b.x; });
    if (!structure.ballast) return plan;
    if (project.bolts.count.value_or(0) == 0) {
        plan.missing.push_back({"bolts.count", "how many bolts hold the ballast"});
        return plan;
    }
    bool noDiameter = false;
    for (const std::string& id : boltIds(project)) {
        const BoltDecisions bolt = boltDecisions(project, id);
        if (!bolt.diameter) {
            noDiameter = true;
            continue;
        }
        const Thread* thread = threadOf(catalogue, *bolt.diameter);
        plan.layout.bolts.push_back(
            {id, bolt.x, bolt.offset, bolt.through == "between", bolt.metal.value_or(""),
             *bolt.diameter, thread != nullptr ? thread->pitch : *bolt.diameter / 8.0,
             washerDiameterOf(bolt, plan.layout.rules), washerThicknessOf(bolt, plan.layout.rules),
             bolt.recess.value_or(2.5 * *bolt.diameter)});
    }
    if (noDiameter) plan.missing.push_back({"bolts.diameter", "the bolts' diameter"});
    if (!project.bolts.all.metal && project.bolt.empty())
        plan.missing.push_back({"bolts.metal", "the bolts' metal"});
    return plan;
}

CaseSettings caseSettings(const Project& project, LoadCase loadCase) {
    CaseSettings settings = usualSettings(loadCase);
    const auto found = project.cases.find(std::string(nameOf(loadCase)));
    if (found == project.cases.end()) return settings;
    const CaseDecisions& own = found->second;
    settings.factor = own.factor.value_or(settings.factor);
    settings.ec5Factor = own.ec5Factor.value_or(settings.ec5Factor);
    if (own.duration) settings.duration = durationNamed(*own.duration).value_or(settings.duration);
    if (own.kind) settings.kind = kindOfLoadNamed(*own.kind).value_or(settings.kind);
    settings.source = "the builder's decision; else " + settings.source;
    settings.standing = Standing::judgement;
    return settings;
}

double targetOf(const Project& project, ConsequenceClass consequence) {
    const auto found = project.classTarget.find(std::string(nameOf(consequence)));
    return found == project.classTarget.end() ? usualTarget(consequence) : found->second;
}

namespace {

/// Without ballast the boat stands on her keel alone, evenly along it.
void standOnKeel(const Structure& structure, BallastLoadInput& input) {
    constexpr int slices = 100;
    const Length from = structure.keel->from;
    const Length step = (structure.keel->to - from) / static_cast<double>(slices);
    for (int i = 0; i < slices; ++i) {
        input.bed.push_back(
            {from + (static_cast<double>(i) + 0.5) * step, step, Length{}, LineMass::fromSi(1.0)});
    }
    input.centre = {from + (slices / 2.0) * step, Length{}, Length{}};
    if (const auto under = keelUndersideAt(*structure.keel, input.centre.x)) {
        input.centre.z = *under;
        input.axisHeight = *under;
    }
    for (const FramePlace& frame : structure.frames) {
        if (frame.floorX && keelTopAt(*structure.keel, frame.x))
            input.frames.push_back({frame.id, *frame.floorX});
    }
}

/// Without a floor anywhere the heels of all frames over the keel bear what it carries.
void bearOnHeels(const Structure& structure, BallastLoadInput& input) {
    for (const FramePlace& frame : structure.frames) {
        if (frame.inHull && keelTopAt(*structure.keel, frame.x))
            input.frames.push_back({frame.id, frame.x});
    }
}

}  // namespace

BallastLoadInput ballastLoadInput(const Project& project, const Structure& structure,
                                  const BallastBoltLayout& layout, const Materials& materials,
                                  Mass boat) {
    BallastLoadInput input;
    input.boat = boat;
    if (!structure.keel) return input;
    input.timberDepth = structure.keel->moulded;
    if (const Wood* wood = findWood(materials, project.keel.wood))
        input.acrossGrain = wetAcrossGrain(*wood).value_or(Stress{});
    if (!structure.ballast) {
        standOnKeel(structure, input);
        if (input.frames.empty()) bearOnHeels(structure, input);
        return input;
    }
    const BallastPlace& ballast = *structure.ballast;
    input.ballast = ballast.mass;
    input.centre = ballast.centre;
    input.axisHeight = ballast.jointHeight;
    input.bed = structure.bed;
    input.foot = ballast.centre.z;
    for (const JointSection& section : structure.joint)
        input.foot = min(input.foot, section.ballastBottom);
    for (const FramePlace& frame : structure.frames) {
        const bool bears =
            std::any_of(layout.placed.begin(), layout.placed.end(), [&](const PlacedBolt& bolt) {
                return std::find(bolt.floors.begin(), bolt.floors.end(), frame.id) !=
                       bolt.floors.end();
            });
        if (bears) input.frames.push_back({frame.id, frame.floorX.value_or(frame.x)});
    }
    if (input.frames.empty()) bearOnHeels(structure, input);
    for (const PlacedBolt& placed : layout.placed) {
        const BoltDecisions bolt = boltDecisions(project, placed.id);
        const Metal* metal = findMetal(materials, bolt.metal);
        LoadedBolt loaded{placed.id,
                          placed.frame,
                          placed.joint,
                          std::numbers::pi / 4.0 * (*bolt.diameter * *bolt.diameter),
                          max(placed.grip, millimetres(1)),
                          megapascals(100000)};
        if (metal != nullptr && metal->modulus) loaded.modulus = metal->modulus->value;
        input.bolts.push_back(std::move(loaded));
    }
    return input;
}

BoltCheckInput boltCheckInput(const Project& project, const Structure& structure,
                              const PlacedBolt& placed, const Materials& materials,
                              const Catalogue& catalogue) {
    BoltCheckInput input;
    input.id = placed.id;
    input.frame = placed.frame;
    input.target = targetOf(project, ConsequenceClass::keel);
    const BoltDecisions bolt = boltDecisions(project, placed.id);
    const BoltRules rules = boltRules(catalogue);

    const Metal* metal = findMetal(materials, bolt.metal);
    const Thread* thread = threadOf(catalogue, *bolt.diameter);
    if (metal == nullptr) {
        input.whyNoRod = bolt.metal ? "the catalogue has no metal " + *bolt.metal
                                    : "the bolt's metal is not decided";
    } else if (thread == nullptr) {
        input.whyNoRod = "the catalogue has no thread for a rod of this diameter";
    } else {
        input.rod = rodOf(*metal, rootDiameter(*thread), bolt.corrosion.value_or(millimetres(0.25)),
                          project.metalFactor);
        if (!input.rod) input.whyNoRod = "the metal has no yield and ultimate in the catalogue";
    }

    const FramePlace* frame = placed.between ? nullptr : frameOf(structure, placed.frame);
    const bool metalFloor =
        frame != nullptr && (frame->floorKind == "cast" || frame->floorKind == "plate");
    const auto& woodName = frame != nullptr ? frame->floorWood : project.keel.wood;
    const Wood* wood = findWood(materials, woodName);
    if (metalFloor) {
        input.whyNoWasher = "the washer bears on a metal floor; no wood is crushed";
    } else if (wood == nullptr) {
        input.whyNoWasher =
            frame != nullptr ? "the floor's wood is not decided" : "the keel's wood is not decided";
    } else {
        WasherInput washer = bearingWood(*wood);
        washer.bolt = *bolt.diameter;
        washer.hole = *bolt.diameter;
        washer.diameter = washerDiameterOf(bolt, rules);
        washer.thickness = washerThicknessOf(bolt, rules);
        washer.timberWidth = placed.seatWidth;
        input.washer = washer;
    }
    return input;
}

}  // namespace fayline
