#include "fastening_stages.h"

#include <algorithm>

#include "joint/screw.h"
#include "stages.h"

namespace fayline {
namespace {

template <typename T>
void over(std::optional<T>& slot, const std::optional<T>& own) {
    if (own) slot = own;
}

void stack(FasteningDecisions& decided, const FasteningDecisions& own) {
    over(decided.kind, own.kind);
    over(decided.section, own.section);
    over(decided.count, own.count);
    over(decided.gauge, own.gauge);
    over(decided.diameter, own.diameter);
    over(decided.length, own.length);
    over(decided.metal, own.metal);
    over(decided.washerDiameter, own.washerDiameter);
    over(decided.washerThickness, own.washerThickness);
    over(decided.counterbore, own.counterbore);
}

/// An arm ends a little inside the planking's bilge unless decided: a quarter of the girth (from
/// memory, to be confirmed).
constexpr double armGirthPart = 0.25;
/// How far the backbone stands up beside a heel above the rabbet, in mouldings of the keel
/// (judgement).
constexpr double heelAboveRabbet = 0.75;

}  // namespace

FasteningDecisions fasteningAt(const Project& project,
                               const std::vector<std::string>& keysFromWidest) {
    FasteningDecisions decided;
    for (const std::string& key : keysFromWidest) {
        const auto found = project.fastening.find(key);
        if (found != project.fastening.end()) stack(decided, found->second);
    }
    return decided;
}

std::optional<FasteningChoice> choiceOf(const FasteningDecisions& decided,
                                        const Catalogue& catalogue) {
    if (!decided.kind || decided.count.value_or(0) <= 0) return std::nullopt;
    FasteningChoice choice;
    choice.kind = fasteningKindNamed(*decided.kind).value_or(FasteningKind::woodScrew);
    choice.count = *decided.count;
    choice.length = decided.length;
    choice.counterbore = decided.counterbore.value_or(Length{});
    choice.metal = decided.metal.value_or("");
    choice.washerDiameter = decided.washerDiameter;
    if (choice.kind == FasteningKind::woodScrew) {
        if (!decided.gauge || !decided.length) return std::nullopt;
        choice.gauge = *decided.gauge;
        choice.diameter = screwBody(Gauge(*decided.gauge));
        const auto root = screwRootMeasured(Gauge(*decided.gauge));
        choice.root = root ? root->value : choice.diameter * (2.0 / 3.0);
        return choice;
    }
    if (!decided.diameter || (choice.kind == FasteningKind::drift && !decided.length))
        return std::nullopt;
    choice.square = choice.kind == FasteningKind::rivet && decided.section == "square";
    choice.diameter = choice.square ? 1.4142135623730951 * *decided.diameter : *decided.diameter;
    choice.root = *decided.diameter;
    if (const Thread* thread = threadOf(catalogue, *decided.diameter);
        thread != nullptr && choice.kind == FasteningKind::bolt) {
        choice.root = rootDiameter(*thread);
    }
    choice.washerThickness = decided.washerThickness.value_or(0.25 * *decided.diameter);
    return choice;
}

std::vector<Length> seamsAt(const Project& project, Length girth, Length greatestGirth) {
    const int strakes = project.planking.strakes.value_or(0);
    if (strakes <= 0 || greatestGirth <= Length{}) return {};
    std::vector<std::optional<Length>> own(static_cast<std::size_t>(strakes));
    Length taken;
    int free = strakes;
    for (int k = 0; k < strakes; ++k) {
        const auto found = project.strakeWidth.find("strake" + std::to_string(k + 1));
        if (found == project.strakeWidth.end()) continue;
        own[static_cast<std::size_t>(k)] = found->second * (girth / greatestGirth);
        taken += *own[static_cast<std::size_t>(k)];
        --free;
    }
    const Length each =
        free > 0 ? max(Length{}, girth - taken) / static_cast<double>(free) : Length{};
    std::vector<Length> seams{Length{}};
    for (const auto& width : own) seams.push_back(seams.back() + width.value_or(each));
    return seams;
}

Length greatestGirth(const Results& results) {
    Length greatest;
    for (const auto& curve : results.curves) {
        if (curve) greatest = max(greatest, curve->girth());
    }
    return greatest;
}

HeelDetail heelDetailAt(const Project& project, const std::string& frame) {
    const auto own = project.frame.find(frame);
    const auto& detail = own != project.frame.end() && own->second.heelDetail
                             ? own->second.heelDetail
                             : project.frames.all.heelDetail;
    return detail ? heelDetailNamed(*detail).value_or(HeelDetail::beside) : HeelDetail::beside;
}

FrameFasteningInput frameFasteningInput(const Project& project, const Structure& structure,
                                        const FramePlace& frame,
                                        std::shared_ptr<const FrameCurve> curve,
                                        const std::optional<RabbetPlace>& rabbet,
                                        Length greatestGirth, const Catalogue& catalogue,
                                        bool hardwoodFrame, const std::vector<Hole>& ballastBolts) {
    FrameFasteningInput in;
    in.frame = frame.id;
    in.curve = std::move(curve);
    in.sided = frame.sided.value_or(Length{});
    in.moulded = frame.moulded.value_or(Length{});
    in.planking = project.planking.thickness.value_or(Length{});
    in.hardwoodFrame = hardwoodFrame;
    for (const Hole& bolt : ballastBolts) {
        if (bolt.frame == frame.id) in.ballast.push_back(bolt);
    }
    if (structure.keel) {
        in.keelTop = keelTopAt(*structure.keel, frame.x);
        in.keelUnderside = keelUndersideAt(*structure.keel, frame.x);
        if (in.keelTop) {
            in.keelSided = structure.keel->sided;
            in.backboneTop = in.keelTop;
            // Where planking begins higher, deadwood carries the keel up beside the heels.
            if (rabbet)
                in.backboneTop =
                    max(*in.keelTop, rabbet->at.z + heelAboveRabbet * structure.keel->moulded);
        }
    }
    in.heelDetail = heelDetailAt(project, frame.id);
    if (frame.floorX && frame.floorTop && in.keelTop && in.curve) {
        const FloorDecisions floor = floorDecisions(project.floors, project.floor, frame.id);
        const Length byRule = in.curve->at(armGirthPart * in.curve->girth()).y;
        in.floor = FloorBody{*frame.floorX,
                             *frame.floorSided,
                             *in.keelTop,
                             *frame.floorTop,
                             floor.reach.value_or(byRule),
                             frame.floorKind != "cast" && frame.floorKind != "plate"};
    }
    const auto at = [&](const std::string& group, const char* side) {
        return choiceOf(
            fasteningAt(project, {group, frame.id + "." + group, frame.id + side + "." + group}),
            catalogue);
    };
    in.heelPort = at("heel", ".P");
    in.heelStarboard = at("heel", ".S");
    in.armPort = at("arm", ".P");
    in.armStarboard = at("arm", ".S");
    in.floorBolt =
        choiceOf(fasteningAt(project, {"floor_bolt", frame.id + ".floor_bolt"}), catalogue);
    if (in.curve && in.planking > Length{}) {
        in.seams = seamsAt(project, in.curve->girth(), greatestGirth);
        for (std::size_t k = 0; k + 1 < in.seams.size(); ++k) {
            const std::string strake = "strake" + std::to_string(k + 1);
            in.plank.push_back(
                choiceOf(fasteningAt(project, {"plank", frame.id + ".plank", strake + ".plank"}),
                         catalogue));
        }
    }
    return in;
}

}  // namespace fayline
