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
        EXPECT_LT(loads.residual.relative, 1e-9) << nameOf(loadCase);
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

TEST(CrackedSection, SingleRowEqualsTheClosedForm) {
    // One row at the middle: x = [−nA + √((nA)² + 2·L·n·A·d)]/L and T = M/(d − x/3), statics.
    const double length_mm = 1700, breadth_mm = 140, area_mm2 = 7 * 314.159265, modularRatio = 60;
    const double d_mm = breadth_mm / 2;
    const double na_mm2 = modularRatio * area_mm2;
    const double x_mm =
        (-na_mm2 + std::sqrt(na_mm2 * na_mm2 + 2 * length_mm * na_mm2 * d_mm)) / length_mm;
    const double moment_Nmm = 5.6e6;
    const double tension_N = moment_Nmm / (d_mm - x_mm / 3) / 7;

    const double bedStiffness_MPa_per_mm = 500.0 / 110.0;
    std::vector<CrackedBolt> bolts(
        7, {Length{},
            ForcePerLength::fromSi(modularRatio * 314.159265 * bedStiffness_MPa_per_mm * 1000.0)});
    const std::vector<CrackedStrip> strips{{millimetres(length_mm), millimetres(breadth_mm / 2)}};
    const auto section = crackedSection(bolts, strips, megapascals(500) / millimetres(110),
                                        newtonMetres(moment_Nmm / 1000));
    ASSERT_TRUE(section.balanced);
    EXPECT_NEAR(inNewtons(section.tension[3]), tension_N, 1e-6 * tension_N);
    EXPECT_NEAR(inMillimetres(section.neutral), d_mm - x_mm, 1e-6);
    // Highest pressure of a triangle: σ = 2C/(L·x).
    EXPECT_NEAR(inMegapascals(section.highest), 2 * 7 * tension_N / (length_mm * x_mm), 1e-9 * 100);
}

TEST(CrackedSection, AStiffBedGivesTheLeverToTheLeeEdge) {
    auto box = sample;
    box.offset_mm = 0;
    box.acrossGrain_MPa = 1e9;
    const auto loads = run(inputOf(box), LoadCase::knockdownPort);
    EXPECT_NEAR(loads.bolts[0].cracked / loads.bolts[0].equalForce, 1.0, 1e-2);
    box.acrossGrain_MPa = 300;
    const auto soft = run(inputOf(box), LoadCase::knockdownPort);
    EXPECT_GT(soft.bolts[0].cracked, loads.bolts[0].cracked);
}

TEST(CrackedSection, BoltsOutsideTheBedFindNoBalance) {
    auto box = sample;
    auto input = inputOf(box);
    for (auto& bolt : input.bolts) bolt.joint.y = millimetres(500);
    const auto loads = run(input, LoadCase::knockdownStarboard);
    EXPECT_FALSE(loads.settled);
    EXPECT_FALSE(loads.why.empty());
}
