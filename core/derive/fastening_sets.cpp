#include "fastening_sets.h"

#include <algorithm>
#include <cmath>

#include "layout/fastening.h"

namespace fayline {
namespace {

Length middleY(const std::vector<const Hole*>& holes) {
    Length sum;
    for (const Hole* hole : holes) sum += abs(hole->start.y);
    return sum / static_cast<double>(holes.size());
}

/// Between the middles of the port and starboard arms; an arm on one side alone works against the
/// keel's far edge.
std::optional<Length> armSpread(const FrameChecksInput& input) {
    std::vector<const Hole*> port, starboard;
    for (const Hole& hole : input.fastenings->holes) {
        if (hole.group == "arm") (hole.side == "port" ? port : starboard).push_back(&hole);
    }
    if (port.empty() && starboard.empty()) return std::nullopt;
    const Length half = input.keelSided.value_or(Length{}) / 2.0;
    return (port.empty() ? half : middleY(port)) + (starboard.empty() ? half : middleY(starboard));
}

JointMember timber(const std::optional<Wood>& wood, const char* name, Length thickness,
                   double grainDegrees) {
    JointMember member = jointMember(*wood);
    member.name = name;
    member.thickness = thickness;
    member.grain = Angle::degrees(grainDegrees);
    return member;
}

/// Angle between upright and the line through a set's holes, in steps of 15 degrees.
double slopeFromUpright(const std::vector<const Hole*>& set) {
    if (set.size() < 2) return 45.0;
    const double y = std::abs(set.back()->start.y.si() - set.front()->start.y.si());
    const double z = std::abs(set.back()->start.z.si() - set.front()->start.z.si());
    const double angle = std::atan2(y, z) * 180.0 / 3.14159265358979323846;
    return std::clamp(15.0 * std::ceil(angle / 15.0 - 1e-9), 0.0, 90.0);
}

JointFastener fastenerOf(const Hole& hole, const TimberContext& context) {
    JointFastener fastener;
    const auto kind = fasteningKindNamed(hole.kind);
    fastener.diameter = hole.square ? hole.diameter / std::sqrt(2.0) : hole.diameter;
    fastener.length = hole.length;
    if (hole.washerDiameter) {
        fastener.pointBearing =
            EndBearing{*hole.washerDiameter, hole.washerThickness.value_or(Length{})};
    }
    switch (kind.value_or(FasteningKind::bolt)) {
        case FasteningKind::woodScrew:
            fastener.kind = FastenerKind::woodScrew;
            if (hole.gauge) fastener.gauge = Gauge(*hole.gauge);
            fastener.head = FastenerEnd::countersunk;
            fastener.point = FastenerEnd::thread;
            break;
        case FasteningKind::bolt:
            fastener.kind = FastenerKind::bolt;
            fastener.head = FastenerEnd::nut;
            fastener.point = FastenerEnd::nut;
            fastener.headBearing = fastener.pointBearing;
            break;
        case FasteningKind::drift:
            fastener.kind = FastenerKind::drift;
            fastener.point = FastenerEnd::blind;
            fastener.hole = hole.steps.empty() ? hole.diameter : hole.steps.back().diameter;
            fastener.pointBearing.reset();
            break;
        case FasteningKind::rivet:
            fastener.kind = FastenerKind::rivet;
            fastener.section = hole.square ? DowelSection::square : DowelSection::round;
            fastener.head = FastenerEnd::formedHead;
            fastener.point = FastenerEnd::rove;
            break;
    }
    if (const auto metal = context.metals.find(hole.metal); metal != context.metals.end())
        fastener.metal = fastenerMetal(metal->second);
    if (context.metalFactor) {
        fastener.metal.factor = *context.metalFactor;
        fastener.metal.factorSource = "the builder's decision, metal_set.factor";
    }
    return fastener;
}

/// The two timbers of a group's joint, head side first.
std::optional<std::vector<JointMember>> membersOf(const FrameChecksInput& input, const Hole& hole,
                                                  const std::vector<const Hole*>& set,
                                                  std::string& why) {
    const TimberContext& context = *input.context;
    const auto need = [&](const std::optional<Wood>& wood, const char* says) {
        if (!wood && why.empty()) why = says;
        return wood.has_value();
    };
    const Length keelDepth = input.keelMoulded.value_or(Length{});
    const Length keelSided = input.keelSided.value_or(Length{});
    const char* noPlank = "the planking's wood is not decided";
    const char* noFrame = "the frames' wood is not decided";
    const char* noKeel = "the keel's wood is not decided";
    const char* noFloor = input.metalFloor ? "a metal floor's joints are not worked out yet"
                                           : "the floor's wood is not decided";
    if (hole.group == "arm") {
        if (!need(input.floorWood, noFloor) || !need(context.frame, noFrame)) return std::nullopt;
        const double frameGrain = slopeFromUpright(set);
        return std::vector<JointMember>{
            timber(input.floorWood, "floor", input.floorSided.value_or(Length{}),
                   input.straightGrain ? 90.0 : frameGrain),
            timber(context.frame, "frame", input.sided, frameGrain)};
    }
    if (hole.group == "heel") {
        if (!need(context.frame, noFrame) || !need(context.keel, noKeel)) return std::nullopt;
        return std::vector<JointMember>{
            timber(context.frame, "frame", hole.grip + hole.bung.value_or(Length{}), 30.0),
            timber(context.keel, "keel",
                   abs(hole.start.y - hole.end.y) > Length{} ? keelSided : keelDepth, 90.0)};
    }
    if (hole.group == "floor") {
        if (!need(input.floorWood, noFloor) || !need(context.keel, noKeel)) return std::nullopt;
        return std::vector<JointMember>{
            timber(input.floorWood, "floor", input.floorThroat.value_or(Length{}), 0.0),
            timber(context.keel, "keel", keelDepth, 90.0)};
    }
    if (!need(context.plank, noPlank)) return std::nullopt;
    JointMember plank = timber(context.plank, "plank", context.planking, 0.0);
    if (hole.group == "plank") {
        if (!need(context.frame, noFrame)) return std::nullopt;
        return std::vector<JointMember>{plank, timber(context.frame, "frame", input.moulded, 90.0)};
    }
    if (hole.group == "butt") {
        const Length block = max(context.planking, hole.grip - context.planking);
        return std::vector<JointMember>{plank, timber(context.plank, "butt block", block, 0.0)};
    }
    if (!need(context.keel, noKeel)) return std::nullopt;
    return std::vector<JointMember>{plank,
                                    timber(context.keel, hole.group == "hood" ? "stem" : "keel",
                                           max(keelSided / 2.0, hole.length), 90.0)};
}

}  // namespace

std::optional<Length> radiusAt(const FrameCurve& curve, Length along, Length reach) {
    const CurvePoint below = curve.at(along - reach);
    const CurvePoint above = curve.at(along + reach);
    // How far the outward direction turns over the arc between the two.
    const double turn = below.outY * above.outZ - below.outZ * above.outY;
    const double length_m =
        (std::min(curve.girth(), along + reach) - std::max(Length{}, along - reach)).si();
    // At most 100 m counts as curved at all.
    if (length_m <= 0 || turn < length_m / 100.0) return std::nullopt;
    return metres(length_m / std::asin(std::min(1.0, turn)));
}

std::optional<Joint> jointOf(const FrameChecksInput& input, const Hole& hole,
                             const std::vector<const Hole*>& set, std::string& why) {
    auto members = membersOf(input, hole, set, why);
    if (!members) return std::nullopt;
    Joint joint;
    joint.members = std::move(*members);
    if (hole.bung) joint.members.front().counterbore = *hole.bung;
    joint.fastener = fastenerOf(hole, *input.context);
    joint.service = Service::wet;
    joint.fitted = Fitted::dry;
    return joint;
}

std::string_view setName(const std::string& id) {
    return std::string_view(id).substr(0, id.rfind('.'));
}

std::vector<SetCheckInput> setsOf(const FrameChecksInput& input) {
    std::vector<SetCheckInput> sets;
    const auto spread = armSpread(input);
    const TimberContext& context = *input.context;
    std::vector<const Hole*> holes;
    for (const Hole& hole : input.fastenings->holes) holes.push_back(&hole);
    holes.insert(holes.end(), input.plankingHere.begin(), input.plankingHere.end());
    for (std::size_t i = 0; i < holes.size();) {
        const std::string_view name = setName(holes[i]->id);
        std::vector<const Hole*> same;
        for (; i < holes.size() && setName(holes[i]->id) == name; ++i) same.push_back(holes[i]);
        const Hole& first = *same.front();
        SetCheckInput entry;
        entry.metal = first.metal;
        FasteningSet& set = entry.set;
        set.id = first.id;
        set.frame = input.frame;
        set.side = first.side;
        set.group = first.group;
        set.count = static_cast<int>(same.size());
        set.spread = spread;
        set.keelSided = input.keelSided.value_or(Length{});
        set.rise = input.keelMoulded.value_or(Length{});
        if (set.group == "arm") set.rise += input.floorThroat.value_or(Length{}) / 2.0;
        set.heel = input.heelDetail == HeelDetail::onTop ||
                           input.heelDetail == HeelDetail::continuous ||
                           input.heelDetail == HeelDetail::halfFrames
                       ? HeelPull::pull
                       : HeelPull::shear;
        set.floorHere = input.floorHere;
        set.ballastBoltHere = input.ballastBolt.has_value();
        const bool keel = set.group == "arm" || set.group == "floor";
        entry.consequence = keel ? ConsequenceClass::keel : ConsequenceClass::hull;
        entry.target = keel ? context.targetKeel : context.targetHull;
        if (const int strake = strakeOf(first); strake > 0) {
            set.strake = "strake" + std::to_string(strake);
            set.thickness = context.planking;
            set.spacing = input.spacing;
            const auto k = static_cast<std::size_t>(strake);
            if (k < input.seams.size()) {
                set.width = input.seams[k] - input.seams[k - 1];
                if (input.curve)
                    set.radius = radiusAt(*input.curve, (input.seams[k] + input.seams[k - 1]) / 2.0,
                                          max(set.width, millimetres(60)));
            }
            if (k <= input.bends.size()) {
                set.bendRadius = input.bends[k - 1].radius;
                set.bendArm = input.bends[k - 1].arm;
                set.hollowBend = input.bends[k - 1].hollow;
            }
            set.seam = context.seam;
            set.stiffness = context.stiffness;
        }
        entry.joint = jointOf(input, first, same, entry.whyNoJoint);
        sets.push_back(std::move(entry));
    }
    return sets;
}

}  // namespace fayline
