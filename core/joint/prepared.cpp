#include "prepared.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "material/density.h"
#include "result_parts.h"

namespace fayline {
namespace {

PreparedMember prepareMember(const JointMember& member, std::vector<std::string>& cautions) {
    Wood wood;
    wood.family = member.family;
    wood.us.specificGravity = member.gravity;
    wood.specificGravityTwelve = member.gravityTwelve;
    wood.ec5.density = member.density;
    PreparedMember prepared;
    prepared.given = &member;
    prepared.gravity = specificGravityOvenDry(wood);
    prepared.gravityTwelve = specificGravityTwelve(wood);
    if (!prepared.gravityTwelve && member.gravity)
        prepared.gravityTwelve = twelveFromGreen(greenFromOvenDry(*member.gravity));
    prepared.density = characteristicDensity(wood);
    if (!prepared.density && prepared.gravityTwelve)
        prepared.density = characteristicFromTwelve(*prepared.gravityTwelve);
    prepared.thickness = member.thickness - member.counterbore;
    prepared.bears = prepared.thickness;
    prepared.reaches = prepared.thickness;
    const std::string name = member.name.empty() ? "a member" : member.name;
    if (!member.gravity && prepared.gravity)
        cautions.push_back("specific gravity of " + name +
                           " worked out: " + prepared.gravity->source);
    if (!member.density && prepared.density)
        cautions.push_back("characteristic density of " + name +
                           " worked out: " + prepared.density->source);
    return prepared;
}

std::optional<Figure<Stress>> bendingYieldOf(const FastenerMetal& metal) {
    if (metal.bendingYield) return metal.bendingYield;
    if (!metal.yield || !metal.ultimate) return std::nullopt;
    return Figure<Stress>{
        (metal.yield->value + metal.ultimate->value) / 2.0,
        afterWorking(std::max(metal.yield->standing, metal.ultimate->standing)),
        "mean of yield and ultimate, ANSI/AWC NDS Appendix I; " + metal.ultimate->source};
}

void prepareScrew(Prepared& prepared) {
    const JointFastener& fastener = prepared.fastener();
    prepared.screw = screwShape(fastener);
    prepared.nominal = prepared.screw.body.value;
    prepared.inEquations = prepared.screw.root.value;
    prepared.root = prepared.screw.root.value;
    prepared.rootKnown = true;
}

void prepareRod(Prepared& prepared) {
    const JointFastener& fastener = prepared.fastener();
    const bool threaded =
        fastener.kind == FastenerKind::bolt &&
        (fastener.head == FastenerEnd::nut || fastener.point == FastenerEnd::nut ||
         fastener.point == FastenerEnd::thread);
    prepared.nominal = fastener.diameter;
    prepared.rootKnown = fastener.root.has_value() || !threaded;
    const double solid =
        fastener.section == DowelSection::square ? std::sqrt(4.0 / std::numbers::pi) : 1.0;
    prepared.root = fastener.root.value_or(fastener.diameter * solid);
    prepared.inEquations =
        fastener.threadBears ? fastener.root.value_or(fastener.diameter) : fastener.diameter;
}

void preparePoint(Prepared& prepared) {
    const JointFastener& fastener = prepared.fastener();
    Length before;
    for (std::size_t i = 0; i + 1 < prepared.members.size(); ++i)
        before += prepared.members[i].thickness + prepared.members[i].given->gap;
    prepared.penetration = fastener.length - before;
    PreparedMember& last = prepared.members.back();
    const Length tip =
        prepared.isScrew() ? prepared.screw.tip.value : fastener.tip.value_or(Length{});
    // NDS 12.3.5.3: half of the taper does not bear unless the point goes in deep.
    const bool deep = prepared.penetration >= 10.0 * prepared.nominal;
    const Length bears =
        deep ? prepared.penetration : max(prepared.penetration - tip / 2.0, Length{});
    last.bears = min(bears, last.thickness);
    last.reaches = min(prepared.penetration, last.thickness);
    if (prepared.isScrew()) {
        const Length beyond = max(prepared.penetration - last.thickness, Length{});
        prepared.thread =
            max(min(prepared.screw.thread.value, prepared.penetration) - beyond, Length{});
    } else {
        prepared.thread = min(prepared.penetration, last.thickness);
    }
}

}  // namespace

Prepared prepare(const Joint& joint) {
    Prepared prepared;
    prepared.joint = &joint;
    for (const JointMember& member : joint.members) {
        prepared.members.push_back(prepareMember(member, prepared.cautions));
        prepared.steepest = std::max(prepared.steepest, member.grain);
    }
    prepared.pointed = joint.fastener.kind == FastenerKind::woodScrew ||
                       joint.fastener.kind == FastenerKind::drift;
    prepared.bendingYield = bendingYieldOf(joint.fastener.metal);
    if (prepared.isScrew()) {
        prepareScrew(prepared);
    } else {
        prepareRod(prepared);
    }
    if (prepared.pointed) preparePoint(prepared);
    return prepared;
}

Trace* traceOf(JointTraces* traces, Basis basis, LimitStateKind kind) {
    return traces == nullptr ? nullptr : &(*traces)[{basis, kind}];
}

Angle toSurface(const JointLoad& load) {
    return Angle::degrees(std::atan2(load.axial.si(), load.lateral.si()) * 180.0 /
                          std::numbers::pi);
}

}  // namespace fayline
