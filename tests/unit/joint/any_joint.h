#pragma once

#include "joint/joint.h"

namespace fayline::test {

constexpr double pound_N = 4.4482216152605;

inline Stress psi(double value) {
    return Stress::fromSi(value * pound_N / (0.0254 * 0.0254));
}
inline Stress ksi(double value) {
    return psi(value * 1000.0);
}
template <typename T>
Figure<T> figure(T value) {
    return {value, Standing::read, "test"};
}

/// A member of this oven-dry gravity; the characteristic density is made to fit.
inline JointMember member(double gravity, Length thickness,
                          WoodFamily family = WoodFamily::softwood) {
    JointMember made;
    made.name = "timber";
    made.family = family;
    made.gravity = figure(SpecificGravityOvenDry{gravity});
    made.gravityTwelve = figure(SpecificGravityTwelve{gravity * 0.95});
    made.density = figure(CharacteristicDensity{kilogramsPerCubicMetre(gravity * 880.0)});
    made.acrossUs = figure(megapascals(5.5));
    made.acrossEc5 = figure(megapascals(5.3));
    made.acrossMean = figure(megapascals(4.6));
    made.thickness = thickness;
    return made;
}

inline FastenerMetal bronze() {
    FastenerMetal metal;
    metal.yield = figure(ksi(38));
    metal.ultimate = figure(ksi(70));
    metal.shear = figure(ksi(42));
    return metal;
}

/// Cedar plank of 1 in on a white oak frame, bronze No. 14 of 2 1/2 in: the joint of a hull.
inline Joint plankScrew() {
    Joint joint;
    joint.members = {member(0.35, inches(1.0)), member(0.73, inches(2.5), WoodFamily::hardwood)};
    joint.members[0].name = "plank";
    joint.members[1].name = "frame";
    joint.fastener.kind = FastenerKind::woodScrew;
    joint.fastener.gauge = Gauge(14);
    joint.fastener.length = inches(2.5);
    joint.fastener.head = FastenerEnd::countersunk;
    joint.fastener.point = FastenerEnd::blind;
    joint.fastener.metal = bronze();
    joint.service = Service::dry;
    return joint;
}

/// Half-inch bronze bolt through so many timbers.
inline Joint through(int members) {
    Joint joint;
    for (int i = 0; i < members; ++i) joint.members.push_back(member(0.50, inches(2.0)));
    joint.fastener.kind = FastenerKind::bolt;
    joint.fastener.diameter = inches(0.5);
    joint.fastener.root = inches(0.4056);
    joint.fastener.metal = bronze();
    joint.fastener.headBearing = EndBearing{inches(1.5), inches(0.25)};
    joint.fastener.pointBearing = EndBearing{inches(1.5), inches(0.25)};
    joint.service = Service::dry;
    return joint;
}

}  // namespace fayline::test
