#include "load/ballast.h"

#include <gtest/gtest.h>

#include <cmath>

#include "ballast_fixture.h"

using namespace fayline;
using namespace fayline::test;

namespace {

constexpr BoxBallast sample{3000, 200, 2500, 230, 8, 30, 200, 20, 700, 105000, 500, 150};

CaseLoads run(const BallastLoadInput& input, LoadCase loadCase) {
    return ballastLoads(input, loadCase, usualSettings(loadCase));
}

}  // namespace

TEST(BallastLoads, KnockdownMomentIsWeightTimesArmTowardsTheLowSide) {
    const auto loads = run(inputOf(sample), LoadCase::knockdownStarboard);
    EXPECT_NEAR(inNewtons(loads.total.y), 2500 * 9.80665, 1e-9);
    EXPECT_NEAR(inNewtonMetres(loads.totalMoment.x), 2500 * 9.80665 * 0.230, 1e-9);
    EXPECT_DOUBLE_EQ(run(inputOf(sample), LoadCase::knockdownPort).totalMoment.x.si(),
                     -loads.totalMoment.x.si());
}

TEST(BallastLoads, EqualForceIsMomentOverSumOfLevers) {
    const auto loads = run(inputOf(sample), LoadCase::knockdownStarboard);
    // Lee edge at +100: levers 130 and 70 alternately, four of each; windward are the four at −30.
    const double moment_Nm = 2500 * 9.80665 * 0.230;
    EXPECT_NEAR(inNewtons(loads.bolts[0].equalForce), moment_Nm / (4 * 0.130 + 4 * 0.070), 1e-6);
    EXPECT_NEAR(inNewtons(loads.bolts[0].windwardOnly), moment_Nm / (4 * 0.130), 1e-6);
    EXPECT_EQ(loads.bolts[1].windwardOnly, Force{});
    EXPECT_NEAR(inNewtons(loads.bolts[0].elastic),
                moment_Nm * 0.130 / (4 * 0.130 * 0.130 + 4 * 0.070 * 0.070), 1e-6);
}

TEST(BallastLoads, EquilibriumHoldsForEveryCase) {
    for (const LoadCase loadCase : allCases) {
        const auto loads = run(inputOf(sample), loadCase);
        EXPECT_LT(loads.residual.relative, 1e-12) << nameOf(loadCase);
        EXPECT_TRUE(loads.carried);
        EXPECT_TRUE(loads.settled);
    }
}

TEST(BallastLoads, EquilibriumReportsABoltLeftOut) {
    auto input = inputOf(sample);
    input.bolts.clear();
    const auto loads = run(input, LoadCase::knockdownPort);
    EXPECT_FALSE(loads.carried);
    EXPECT_NEAR(loads.residual.relative, 1.0, 1e-12);
}

TEST(BallastLoads, TacksMirrorEachOther) {
    auto input = inputOf(sample);
    const auto starboard = run(input, LoadCase::knockdownStarboard);
    for (auto& bolt : input.bolts) bolt.joint.y = -bolt.joint.y;
    const auto port = run(input, LoadCase::knockdownPort);
    for (std::size_t i = 0; i < starboard.bolts.size(); ++i) {
        EXPECT_EQ(starboard.bolts[i].cracked, port.bolts[i].cracked);
        EXPECT_EQ(starboard.bolts[i].force.y, -port.bolts[i].force.y);
        EXPECT_EQ(starboard.bolts[i].force.z, port.bolts[i].force.z);
    }
    EXPECT_EQ(starboard.bed->at, -port.bed->at);
}

TEST(BallastLoads, GroundingUpwardLeavesBoltsUnloadedAndPressesTheBed) {
    const auto loads = run(inputOf(sample), LoadCase::groundingUp);
    EXPECT_NEAR(inNewtons(loads.total.z), 1.5 * 2500 * 9.80665, 1e-9);
    for (const auto& bolt : loads.bolts) EXPECT_EQ(bolt.demandAxial, Force{});
    EXPECT_NEAR(inMegapascals(loads.bed->highest), 1.5 * 2500 * 9.80665 / (3000.0 * 200.0), 1e-12);
}

TEST(BallastLoads, TheLoadFactorMultipliesTheLoad) {
    auto settings = usualSettings(LoadCase::knockdownPort);
    const auto once = ballastLoads(inputOf(sample), LoadCase::knockdownPort, settings);
    settings.factor = 1.5;
    const auto more = ballastLoads(inputOf(sample), LoadCase::knockdownPort, settings);
    EXPECT_NEAR(more.bolts[0].cracked / once.bolts[0].cracked, 1.5, 1e-12);
}

TEST(BallastLoads, AStiffBedGivesTheLeverToTheLeeEdge) {
    auto box = sample;
    box.offset_mm = 0;
    box.acrossGrain_MPa = 1e9;
    const auto loads = run(inputOf(box), LoadCase::knockdownPort);
    EXPECT_NEAR(loads.bolts[0].cracked / loads.bolts[0].equalForce, 1.0, 1e-2);
    box.acrossGrain_MPa = 300;
    const auto soft = run(inputOf(box), LoadCase::knockdownPort);
    EXPECT_GT(soft.bolts[0].cracked, loads.bolts[0].cracked);
}

TEST(BallastLoads, BoltsOutsideTheBedFindNoBalance) {
    auto box = sample;
    auto input = inputOf(box);
    for (auto& bolt : input.bolts) bolt.joint.y = millimetres(500);
    const auto loads = run(input, LoadCase::knockdownStarboard);
    EXPECT_FALSE(loads.settled);
    EXPECT_FALSE(loads.why.empty());
}

TEST(BallastLoads, SailingHangsAndTipsAtThirtyDegrees) {
    const auto loads = run(inputOf(sample), LoadCase::sailingPort);
    const double weight_N = 2500 * 9.80665;
    EXPECT_NEAR(inNewtons(loads.total.y), -weight_N * 0.5, 1e-9);
    EXPECT_NEAR(inNewtons(loads.total.z), -weight_N * std::sqrt(3.0) / 2, 1e-9);
    EXPECT_NEAR(inNewtonMetres(loads.totalMoment.x), -weight_N * 0.5 * 0.230, 1e-9);
    double pulled_N = -inNewtons(loads.bed->resultant);
    for (const auto& bolt : loads.bolts) pulled_N += inNewtons(bolt.cracked);
    EXPECT_NEAR(pulled_N, weight_N * std::sqrt(3.0) / 2, 1e-6);
}

TEST(BallastLoads, SlingsHangTheBallastOnItsBolts) {
    const auto loads = run(inputOf(sample), LoadCase::slings);
    double pulled_N = 0;
    for (const auto& bolt : loads.bolts) pulled_N += inNewtons(bolt.cracked);
    EXPECT_NEAR(pulled_N, 1.4 * 2500 * 9.80665, 1e-6);
    EXPECT_FALSE(loads.bed.has_value());
}

TEST(BallastLoads, ABlowFromAheadPullsForwardBoltsAndPressesTheAfterEnd) {
    auto input = inputOf(sample);
    input.foot = millimetres(-480);
    input.waterline = metres(8);
    const auto loads = run(input, LoadCase::groundingAft);
    const double blow_N = 1.2 * 1.5 * 2500 * 9.80665;
    EXPECT_NEAR(inNewtons(loads.total.x), blow_N, 1e-9);
    EXPECT_NEAR(inNewtonMetres(loads.totalMoment.y), -blow_N * 0.48, 1e-6);
    EXPECT_GT(loads.bolts.front().cracked, loads.bolts.back().cracked);
    EXPECT_GT(*loads.bed->along, input.centre.x);
    EXPECT_GT(loads.bed->highest, Stress{});
    const auto astern = run(input, LoadCase::groundingForward);
    EXPECT_NEAR(inNewtons(astern.total.x), -blow_N / 2, 1e-9);
    EXPECT_LT(astern.bolts.front().cracked, astern.bolts.back().cracked);
    input.waterline = metres(15);
    EXPECT_NEAR(inNewtons(run(input, LoadCase::groundingAft).total.x), blow_N / 1.2 * 2.1, 1e-6);
}

TEST(BallastLoads, APushAtTheFootTipsTheOtherWayRound) {
    auto input = inputOf(sample);
    input.foot = millimetres(-480);
    const auto port = run(input, LoadCase::groundingPort);
    EXPECT_NEAR(inNewtons(port.total.y), -0.25 * 1.5 * 2500 * 9.80665, 1e-9);
    EXPECT_NEAR(inNewtonMetres(port.totalMoment.x), inNewtons(port.total.y) * 0.48, 1e-6);
    EXPECT_LT(port.bed->at, Length{});
}

TEST(BallastLoads, EquilibriumHoldsOnASlopingJointWithBoltsOffTheMiddle) {
    for (const bool oneRow : {false, true}) {
        auto input = inputOf(sample);
        input.foot = millimetres(-480);
        input.waterline = metres(9);
        for (std::size_t i = 0; i < input.bolts.size(); ++i) {
            Point& joint = input.bolts[i].joint;
            joint.z = 0.05 * (input.centre.x - joint.x);
            if (oneRow) joint.y = millimetres(12);
            if (!oneRow && i % 3 == 0) joint.y += millimetres(7);
            input.bolts[i].area *= 1.0 + 0.1 * static_cast<double>(i);
        }
        for (const LoadCase loadCase : allCases) {
            const auto loads = run(input, loadCase);
            EXPECT_TRUE(loads.settled) << nameOf(loadCase) << loads.why;
            EXPECT_LT(loads.residual.relative, 1e-12) << nameOf(loadCase) << oneRow;
        }
    }
}
