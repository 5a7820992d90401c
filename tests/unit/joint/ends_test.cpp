// Heads, peened ends, nuts, washers drawn through, lead under a nut.

#include <gtest/gtest.h>

#include <numbers>

#include "any_joint.h"
#include "joint/ec5_axial.h"
#include "joint/head_shear.h"
#include "joint/lead_bearing.h"
#include "joint/thread_strip.h"
#include "joint/us_axial.h"
#include "joint/work_joint.h"

using namespace fayline;
using namespace fayline::test;

// π · 12 mm · 5 mm · 240 MPa = 45.24 kN; a square shank 4 · 12 · 5 · 240.
TEST(HeadShear, ByHand) {
    HeadShearInput input{millimetres(12), DowelSection::round, millimetres(5), megapascals(240),
                         2.5};
    EXPECT_NEAR(inNewtons(headShearLoad(input)), std::numbers::pi * 12 * 5 * 240, 1e-6);
    const LimitState state = headShear(input);
    EXPECT_NEAR(state.reference / state.working, 5.0, 1e-12);
    EXPECT_FALSE(state.soft);
    input.section = DowelSection::square;
    EXPECT_NEAR(inNewtons(headShearLoad(input)), 4 * 12 * 5 * 240, 1e-6);
}

// Lloyd's rules of 1891 give a head two fifths of the diameter high: as strong as its shank where
// shear is 0.6 of tension (0.417).
TEST(HeadShear, AHeadAsStrongAsItsShank) {
    EXPECT_NEAR(equalHeadHeight(megapascals(400), megapascals(240)), 0.4167, 0.0001);
    const double d = 20.0;
    const double height = equalHeadHeight(megapascals(400), megapascals(240)) * d;
    EXPECT_NEAR(inNewtons(headShearLoad({millimetres(d), DowelSection::round, millimetres(height),
                                         megapascals(240), 2.5})),
                std::numbers::pi / 4 * d * d * 400, 1e-6);
}

// π/4 · (40² − 14²) · 30 MPa.
TEST(LeadBearing, ByHand) {
    const LimitState state =
        leadBearing({millimetres(40), millimetres(14), megapascals(30), Standing::read, 2.5});
    EXPECT_NEAR(inNewtons(state.reference), std::numbers::pi / 4 * (1600 - 196) * 30, 1e-6);
    EXPECT_NEAR(state.reference / state.working, 5.0, 1e-12);
    EXPECT_EQ(state.standing, Standing::judgement);
    EXPECT_FALSE(state.apart);
    ASSERT_EQ(state.outside.size(), 1U);
    EXPECT_EQ(state.outside[0].rule, Rule::leadNotCovered);
    EXPECT_EQ(leadBearing({millimetres(10), millimetres(14), megapascals(30), {}, 2.5}).reference,
              Force{});
}

TEST(Ends, LeadUnderTheNutIsCrushedNotItsWood) {
    Joint joint = through(2);
    joint.members[1] = {};
    joint.members[1].thickness = inches(4);
    joint.members[1].lead = figure(megapascals(30));
    const auto result = workJoint(joint).value();
    ASSERT_TRUE(result.us.crushing);
    EXPECT_EQ(result.us.crushing, result.ec5.crushing);
    EXPECT_EQ(result.us.crushing->place, "point end");
    EXPECT_EQ(result.us.washer->place, "head end");
    // The yield equations take the lead's strength as its bearing.
    ASSERT_TRUE(result.us.lateral && result.ec5.lateral);
    joint.members[1].lead = figure(megapascals(60));
    EXPECT_GE(workJoint(joint)->us.lateral->state.reference, result.us.lateral->state.reference);
}

TEST(Ends, AWasherDrawnThroughIsAHeadThatWide) {
    Joint joint = through(2);
    joint.fastener.pointBearing->diameter = inches(1.2);
    const auto result = workJoint(joint).value();
    ASSERT_TRUE(result.us.punching && result.ec5.punching);
    EXPECT_EQ(result.us.punching->place, "point end");
    EXPECT_EQ(result.us.punching->reference, pullThroughUs({0.50}, inches(1.2), inches(2)));
    EXPECT_EQ(result.ec5.punching->reference,
              pullThroughNail(joint.members[1].density->value, inches(1.2)));
    EXPECT_FALSE(result.us.punching->outside.empty());
}

TEST(Ends, ThreadsStripWherePitchAndNutAreKnownElseThatIsNamed) {
    Joint joint = through(2);
    joint.fastener.head = FastenerEnd::nut;
    const auto why = [&] {
        const JointResult result = workJoint(joint).value();
        for (const MissingState& missing : result.us.missing)
            if (missing.kind == LimitStateKind::threadStrip) return std::string(missing.why);
        return std::string();
    };
    EXPECT_EQ(why(), "pitch of the thread is not given");
    joint.fastener.pitch = inches(1.0 / 13);
    EXPECT_EQ(why(), "height of the nut is not given");
    joint.fastener.nutHeight = inches(7.0 / 16);
    EXPECT_EQ(why(), "");
    const auto one = workJoint(joint)->us.threadStrip;
    ASSERT_TRUE(one);
    const ThreadStripInput input{inches(0.5), inches(1.0 / 13), inches(7.0 / 16),
                                 ksi(42),     ksi(42),          2.5};
    EXPECT_EQ(one->reference, threadStrip(input).reference);
    joint.fastener.nutShear = figure(ksi(10));
    EXPECT_LT(workJoint(joint)->us.threadStrip->reference, one->reference);
}

TEST(Ends, ThePeenedEndOfARivetIsSheredLikeAHead) {
    Joint joint = through(2);
    joint.fastener.kind = FastenerKind::rivet;
    joint.fastener.point = FastenerEnd::rove;
    joint.fastener.headHeight = millimetres(4);
    joint.fastener.peenHeight = millimetres(3);
    const auto state = workJoint(joint)->us.headShear;
    ASSERT_TRUE(state);
    EXPECT_EQ(state->place, "peened end");
    EXPECT_EQ(state->reference,
              headShearLoad({inches(0.5), DowelSection::round, millimetres(3), ksi(42), 2.5}));
    joint.fastener.peenHeight.reset();
    bool named = false;
    const JointResult without = workJoint(joint).value();
    for (const MissingState& missing : without.us.missing)
        named = named || missing.why == "height of the peened end is not given";
    EXPECT_TRUE(named);
}
