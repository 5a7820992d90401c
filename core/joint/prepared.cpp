#include "prepared.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "material/density.h"

namespace fayline {
namespace {

/// Densities the member does not give follow from those it does.
void weigh(PreparedMember& prepared) {
    const JointMember& member = *prepared.given;
    if (member.density) {
        prepared.density = member.density->value;
        prepared.densityStanding = member.density->standing;
    }
    if (member.gravity) {
        prepared.gravity = member.gravity->value;
        prepared.gravityStanding = member.gravity->standing;
    }
    Standing twelve = Standing::judgement;
    if (member.gravityTwelve) {
        prepared.gravityTwelve = member.gravityTwelve->value;
        twelve = member.gravityTwelve->standing;
    } else if (member.density) {
        prepared.gravityTwelve = twelveFromCharacteristic(*prepared.density);
        twelve = afterWorking(prepared.densityStanding);
    } else if (member.gravity) {
        prepared.gravityTwelve = twelveFromGreen(greenFromOvenDry(*prepared.gravity));
        twelve = afterWorking(prepared.gravityStanding);
    }
    if (!prepared.gravityTwelve) return;
    if (!prepared.gravity) {
        prepared.gravity = ovenDryFromGreen(greenFromTwelve(*prepared.gravityTwelve));
        prepared.gravityStanding = afterWorking(twelve);
    }
    if (!prepared.density) {
        prepared.density = characteristicFromTwelve(*prepared.gravityTwelve);
        prepared.densityStanding = afterWorking(twelve);
    }
}

void prepareMember(const JointMember& member, Length nominal, PreparedMember& prepared) {
    prepared.given = &member;
    prepared.thickness = member.thickness - member.counterbore;
    prepared.bears = prepared.thickness;
    prepared.reaches = prepared.thickness;
    if (member.lead) return;
    weigh(prepared);
    prepared.grain = Direction::of(member.grain);
    // NDS 12.3.3: in end grain the bearing across the grain counts.
    prepared.bearsAt = member.endGrain ? Direction{1.0, 0.0} : prepared.grain;
    if (!prepared.gravity || member.bearingUs) return;
    if (prepared.bearsAt.sine == 0.0 && nominal >= inches(0.25)) {
        const Stress along = dowelBearingUs(*prepared.gravity, nominal, prepared.bearsAt);
        prepared.bearing = DowelBearing{along, along, false};  // across is not asked for
    } else {
        prepared.bearing = dowelBearingPair(*prepared.gravity, nominal);
    }
}

void prepareBending(Prepared& prepared) {
    const FastenerMetal& metal = prepared.fastener().metal;
    if (metal.bendingYield) {
        prepared.bendingYield = metal.bendingYield->value;
        prepared.bendingStanding = metal.bendingYield->standing;
    } else if (metal.yield && metal.ultimate) {
        prepared.bendingYield = (metal.yield->value + metal.ultimate->value) / 2.0;
        prepared.bendingStanding =
            afterWorking(std::max(metal.yield->standing, metal.ultimate->standing));
    }
    const JointFastener& fastener = prepared.fastener();
    if (fastener.yieldMoment) {
        prepared.hinge = prepared.hingeTypical = fastener.yieldMoment->value;
        prepared.bendingStanding = fastener.yieldMoment->standing;
        return;
    }
    if (!prepared.bendingYield) return;
    Stress typical = *prepared.bendingYield;
    if (metal.yieldTypical && metal.ultimateTypical)
        typical = max(typical, (metal.yieldTypical->value + metal.ultimateTypical->value) / 2.0);
    prepared.hinge = dowelMoment(*prepared.bendingYield, prepared.inEquations, fastener.section);
    prepared.hingeTypical = dowelMoment(typical, prepared.inEquations, fastener.section);
}

void prepareScrew(Prepared& prepared) {
    prepared.screw = screwShape(prepared.fastener());
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
    prepared.pointed = joint.fastener.kind == FastenerKind::woodScrew ||
                       joint.fastener.kind == FastenerKind::drift;
    if (prepared.isScrew()) {
        prepareScrew(prepared);
    } else {
        prepareRod(prepared);
    }
    prepared.members.resize(joint.members.size());
    for (std::size_t i = 0; i < joint.members.size(); ++i) {
        prepareMember(joint.members[i], prepared.nominal, prepared.members[i]);
        prepared.steepest = std::max(prepared.steepest, joint.members[i].grain);
    }
    prepareBending(prepared);
    if (prepared.pointed) preparePoint(prepared);
    return prepared;
}

MemberFigures figuresOf(const JointMember& member) {
    MemberFigures figures;
    if (member.lead) return figures;
    Wood wood;
    wood.family = member.family;
    wood.us.specificGravity = member.gravity;
    wood.specificGravityTwelve = member.gravityTwelve;
    wood.ec5.density = member.density;
    figures.gravity = specificGravityOvenDry(wood);
    figures.gravityTwelve = specificGravityTwelve(wood);
    figures.density = characteristicDensity(wood);
    return figures;
}

Trace* traceOf(JointTraces* traces, Basis basis, LimitStateKind kind) {
    return traces == nullptr ? nullptr : &(*traces)[{basis, kind}];
}

Direction toSurface(const JointLoad& load) {
    const double size =
        std::sqrt(load.axial.si() * load.axial.si() + load.lateral.si() * load.lateral.si());
    if (size <= 0.0) return {};
    return {load.axial.si() / size, load.lateral.si() / size};
}

}  // namespace fayline
