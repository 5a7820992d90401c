// What must hold for any joint a builder can describe.

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "any_joint.h"
#include "joint/moisture.h"
#include "joint/screw.h"
#include "joint/work_joint.h"

using namespace fayline;
using namespace fayline::test;

namespace {

double between(double low, double high) {
    return low + (high - low) * *rc::gen::inRange(0, 10001) / 10000.0;
}

JointMember anyMember() {
    JointMember made = member(between(0.3, 0.8), millimetres(between(10, 150)),
                              *rc::gen::element(WoodFamily::softwood, WoodFamily::hardwood));
    made.grain = Angle::degrees(between(0, 90));
    return made;
}

Joint anyBolt(int members) {
    Joint joint = through(2);
    joint.members.clear();
    for (int i = 0; i < members; ++i) joint.members.push_back(anyMember());
    joint.fastener.diameter = millimetres(between(4, 25));
    joint.fastener.root.reset();
    joint.fastener.threadBears = false;
    joint.service = *rc::gen::element(Service::dry, Service::wet);
    joint.duration =
        *rc::gen::element(Duration::permanent, Duration::tenYears, Duration::tenMinutes);
    return joint;
}

Joint anyScrew() {
    Joint joint = plankScrew();
    joint.members = {anyMember(), anyMember()};
    joint.members[0].thickness = millimetres(between(10, 50));
    joint.members[0].counterbore = joint.members[0].thickness * between(0, 0.4);
    joint.fastener.gauge = Gauge(*rc::gen::inRange(4, 25));
    joint.fastener.length = joint.members[0].thickness + millimetres(between(5, 80));
    return joint;
}

struct Capacities {
    std::vector<Force> loads;
};

enum class Modes { counted, leftOut };

/// Everything that must not fall, in one order.
Capacities capacities(const Joint& joint, Modes modes = Modes::counted) {
    const JointResult result = workJoint(joint).value();
    Capacities all;
    for (const BasisResult* basis : {&result.us, &result.ec5}) {
        for (const LimitState& state : basis->states()) {
            all.loads.push_back(state.reference);
            all.loads.push_back(state.working);
            if (state.gives) all.loads.push_back(state.gives->low);
            if (state.apart) all.loads.push_back(state.apart->low);
        }
        // Of more planes the modes are those of the weakest, which may be another one.
        if (modes == Modes::leftOut || joint.members.size() > 3) continue;
        for (const ModeLoad& mode : basis->lateral->modes) all.loads.push_back(mode.load);
    }
    return all;
}

void expectNoneLess(const Capacities& before, const Capacities& after) {
    RC_ASSERT(before.loads.size() == after.loads.size());
    for (std::size_t i = 0; i < before.loads.size(); ++i)
        RC_ASSERT(after.loads[i] >= before.loads[i] * (1.0 - 1e-9));
}

Joint denser(Joint joint, double factor) {
    for (JointMember& member : joint.members) {
        member.gravity->value.value *= factor;
        member.gravityTwelve->value.value *= factor;
        member.density->value.value *= factor;
    }
    return joint;
}

}  // namespace

RC_GTEST_PROP(AnyJoint, DenserWoodNeverCarriesLess, ()) {
    const Joint joint =
        *rc::gen::element(true, false) ? anyScrew() : anyBolt(*rc::gen::inRange(2, 5));
    expectNoneLess(capacities(joint), capacities(denser(joint, between(1.0, 1.3))));
}

RC_GTEST_PROP(AnyJoint, ThickerTimbersOnABoltNeverCarryLess, ()) {
    const Joint joint = anyBolt(*rc::gen::inRange(2, 5));
    Joint thicker = joint;
    thicker.members[*rc::gen::inRange<std::size_t>(0, joint.members.size())].thickness +=
        millimetres(between(0, 100));
    // A mode that cannot form, being above the crushing of its own side, may fall.
    expectNoneLess(capacities(joint, Modes::leftOut), capacities(thicker, Modes::leftOut));
}

RC_GTEST_PROP(AnyJoint, LongerScrewNeverHoldsLess, ()) {
    Joint joint = anyScrew();
    joint.members[1].thickness = millimetres(400);
    Joint longer = joint;
    longer.fastener.length += millimetres(between(0, 60));
    const auto before = workJoint(joint).value();
    const auto after = workJoint(longer).value();
    RC_ASSERT(after.us.lateral->state.reference >=
              before.us.lateral->state.reference * (1.0 - 1e-9));
    RC_ASSERT(after.us.withdrawal->state.reference >= before.us.withdrawal->state.reference);
    RC_ASSERT(after.ec5.withdrawal->state.reference >= before.ec5.withdrawal->state.reference);
}

RC_GTEST_PROP(AnyJoint, AGapNeverHelps, ()) {
    const Joint joint = anyBolt(*rc::gen::inRange(2, 5));
    Joint gaping = joint;
    gaping.members[*rc::gen::inRange<std::size_t>(0, joint.members.size() - 1)].gap =
        millimetres(between(0, 30));
    expectNoneLess(capacities(gaping), capacities(joint));
}

RC_GTEST_PROP(AnyJoint, ABoltTurnedEndForEndCarriesTheSame, ()) {
    Joint joint = anyBolt(*rc::gen::inRange(2, 4));
    for (std::size_t i = 0; i + 1 < joint.members.size(); ++i)
        joint.members[i].gap = millimetres(between(0, 5));
    Joint turned = joint;
    std::reverse(turned.members.begin(), turned.members.end());
    for (std::size_t i = 0; i < turned.members.size(); ++i) {
        const std::size_t behind = turned.members.size() - 1 - i;
        turned.members[i].gap = behind > 0 ? joint.members[behind - 1].gap : Length{};
    }
    const auto one = workJoint(joint).value();
    const auto other = workJoint(turned).value();
    const auto same = [](Force a, Force b) { return std::abs(a / b - 1.0) < 1e-9; };
    RC_ASSERT(same(one.us.lateral->state.working, other.us.lateral->state.working));
    RC_ASSERT(same(one.ec5.lateral->state.working, other.ec5.lateral->state.working));
    RC_ASSERT(same(one.us.lateral->state.gives->high, other.us.lateral->state.gives->high));
}

RC_GTEST_PROP(AnyJoint, TheLeastModeGoverns, ()) {
    const Joint joint =
        *rc::gen::element(true, false) ? anyScrew() : anyBolt(*rc::gen::inRange(2, 5));
    const JointResult result = workJoint(joint).value();
    const LateralResult& us = *result.us.lateral;
    RC_ASSERT(us.state.reference == us.modes[us.modes.least()].load);
    RC_ASSERT(us.governs == us.modes[us.modes.least()].name);
    const LateralResult& ec5 = *result.ec5.lateral;
    std::optional<Force> governing;
    for (const ModeLoad& mode : ec5.modes) {
        if (mode.name == ec5.governs) governing = mode.load;
    }
    RC_ASSERT(governing.has_value());
    RC_ASSERT(std::abs((*governing + ec5.rope) * ec5.planes / ec5.state.reference - 1.0) < 1e-12);
    RC_ASSERT(ec5.rope <= *governing);
}

// Sizes typed in inches or in millimetres are the same joint.
RC_GTEST_PROP(AnyJoint, InchesAndMillimetresGiveTheSame, ()) {
    const int sixteenths = *rc::gen::inRange(8, 64);
    Joint inch = through(2);
    Joint metric = through(2);
    inch.members[0].thickness = inches(sixteenths / 16.0);
    metric.members[0].thickness = millimetres(sixteenths / 16.0 * 25.4);
    const Force one = workJoint(inch).value().us.lateral->state.working;
    const Force other = workJoint(metric).value().us.lateral->state.working;
    RC_ASSERT(std::abs(one / other - 1.0) < 1e-12);
}

// In very thick timber the dowel bends twice; in a very thin one the wood is crushed flat.
RC_GTEST_PROP(AnyJoint, Limits, ()) {
    Joint joint = anyBolt(2);
    joint.members[0].thickness = joint.members[1].thickness = metres(2);
    RC_ASSERT(workJoint(joint).value().us.lateral->governs == "IV");
    RC_ASSERT(workJoint(joint).value().ec5.lateral->governs == "f");
    joint.members[0].thickness = millimetres(0.5);
    const JointResult thin = workJoint(joint).value();
    RC_ASSERT(thin.us.lateral->governs == "Is");
    RC_ASSERT(thin.ec5.lateral->governs == "a");
}

// Within one branch of the codes a thicker bolt never carries less: from 1/4 in the US bearing and
// reductions keep their form, and Eurocode 5's embedment falls slower than the diameter rises.
RC_GTEST_PROP(AnyJoint, AThickerBoltNeverCarriesLessWithinABranch, ()) {
    Joint joint = anyBolt(*rc::gen::inRange(2, 4));
    joint.fastener.diameter = millimetres(between(6.4, 20));
    Joint thicker = joint;
    thicker.fastener.diameter += millimetres(between(0, 5));
    const auto before = workJoint(joint).value();
    const auto after = workJoint(thicker).value();
    RC_ASSERT(after.us.lateral->state.reference >=
              before.us.lateral->state.reference * (1.0 - 1e-9));
    RC_ASSERT(after.ec5.lateral->state.reference >=
              before.ec5.lateral->state.reference * (1.0 - 1e-9));
}

// Two equal members swapped are the same joint.
RC_GTEST_PROP(AnyJoint, EqualMembersSwappedAreTheSame, ()) {
    Joint joint = anyBolt(2);
    joint.members[1] = joint.members[0];
    Joint swapped = joint;
    std::swap(swapped.members[0], swapped.members[1]);
    RC_ASSERT(workJoint(joint).value() == workJoint(swapped).value());
    const auto us = workJoint(joint)->us.lateral->modes;
    RC_ASSERT(std::abs(us[0].load / us[1].load - 1.0) < 1e-12);
    RC_ASSERT(std::abs(us[3].load / us[4].load - 1.0) < 1e-9);
}

// A wide gap leaves nothing to bend over it; a dowel that never bends turns stiff.
RC_GTEST_PROP(AnyJoint, LimitsOfGapAndDowel, ()) {
    const double q_N = between(1e5, 1e7), l_m = between(0.01, 0.2), m_Nm = between(1, 500);
    DowelInput input{
        newtons(q_N) / metres(1), newtons(q_N) / metres(1), metres(l_m), metres(l_m), metres(1e9),
        newtonMetres(m_Nm),       newtonMetres(m_Nm)};
    for (const Force load : {dowelModes(input).ii, dowelModes(input).iiim, dowelModes(input).iiis,
                             dowelModes(input).iv})
        RC_ASSERT(load.si() < 1e-6 * q_N * l_m);
    input.gap = {};
    input.sideMoment = input.mainMoment = newtonMetres(1e12);
    const DowelModes stiff = dowelModes(input);
    RC_ASSERT(stiff.ii < min(stiff.iiim, min(stiff.iiis, stiff.iv)));
    input.sideMoment = input.mainMoment = {};
    RC_ASSERT(dowelModes(input).iv == Force{});
    input.sideLength = input.mainLength = {};
    RC_ASSERT(dowelModes(input).ii == Force{});
}

// Timber fastened dry is never weaker than afloat in the bilge: which is why a hull's checks, all
// of soaked timber fastened dry, name that state.
RC_GTEST_PROP(AnyJoint, FastenedDryTheBilgeAfloatGoverns, ()) {
    const Joint joint =
        *rc::gen::element(true, false) ? anyScrew() : anyBolt(*rc::gen::inRange(2, 5));
    const auto rows = moistureRows(joint, MoistureZone::soaked).value();
    for (const MoistureRow& row : rows) RC_ASSERT(row.governs == MoistureState::afloat);
}

// The steps the codes themselves make, each where its clause puts it.
TEST(Jumps, EachIsWhereItsClausePutsIt) {
    const auto us = [](const Joint& joint) {
        return workJoint(joint)->us.lateral->state.reference;
    };
    Joint bolt = through(2);
    bolt.fastener.root.reset();
    const auto at = [&](double diameter_in) {
        bolt.fastener.diameter = inches(diameter_in);
        return us(bolt);
    };
    const double step = at(0.25) / at(0.25 - 1e-9);
    EXPECT_TRUE(step < 0.99 || step > 1.01) << "NDS Tables 12.3.1B and 12.3.3 at 1/4 in: " << step;
    EXPECT_NEAR(at(0.17 + 1e-9) / at(0.17), 1.0, 1e-6) << "K_D joins up at 0.17 in";

    // NDS 12.3.5.3: from ten diameters on the taper is no longer taken off.
    Joint screw = plankScrew();
    screw.members[1].thickness = inches(6);
    const auto bears = [&](double diameters) {
        screw.fastener.length = inches(1.0) + screwBody(Gauge(14)) * diameters;
        return workJoint(screw)->us.lateral->modes[0].load;
    };
    EXPECT_NEAR(bears(10.0) / bears(10.0 - 1e-6), 10.0 / 9.0, 1e-4);

    // NDS 12.2.5: thin and thick timber under a head join up at 2.5 heads.
    Joint head = plankScrew();
    const Length joins = screwShape(head.fastener).head.value * 2.5;
    const auto pulled = [&](Length plank) {
        head.members[0].thickness = plank;
        head.fastener.length = plank + inches(1.5);
        return workJoint(head)->us.pullThrough->reference;
    };
    EXPECT_NEAR(pulled(joins * 1.0001) / pulled(joins), 1.0, 1e-3);
    EXPECT_EQ(pulled(joins * 1.2), pulled(joins * 1.5));
}
