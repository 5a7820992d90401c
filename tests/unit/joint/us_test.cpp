// The US standard's pieces: bearing, reduction, withdrawal, factors.

#include <gtest/gtest.h>

#include <cmath>

#include "any_joint.h"
#include "joint/us_axial.h"
#include "joint/us_bearing.h"
#include "joint/us_factors.h"

using namespace fayline;
using namespace fayline::test;

namespace {

double inPsi(Stress stress) {
    return stress / psi(1.0);
}
Stress rounded(double gravity, double diameter_in, double degrees) {
    return dowelBearingUs({gravity}, inches(diameter_in), Angle::degrees(degrees),
                          BearingRounding::toFiftyPsi);
}

}  // namespace

// Rows of NDS Table 12.3.3 from memory, which the coefficients give.
TEST(UsBearing, TableOfBearingStrengths) {
    EXPECT_NEAR(inPsi(rounded(0.67, 0.2, 0)), 7950, 1e-6);
    EXPECT_NEAR(inPsi(rounded(0.67, 0.25, 0)), 7500, 1e-6);
    EXPECT_NEAR(inPsi(rounded(0.67, 0.25, 90)), 6850, 1e-6);
    EXPECT_NEAR(inPsi(rounded(0.67, 1.0, 90)), 3400, 1e-6);
    EXPECT_NEAR(inPsi(rounded(0.50, 0.2, 45)), 4650, 1e-6);
    EXPECT_NEAR(inPsi(rounded(0.50, 0.5, 90)), 3150, 1e-6);
    EXPECT_NEAR(inPsi(rounded(0.36, 0.625, 90)), 1750, 1e-6);
}

TEST(UsBearing, HankinsonBetween) {
    const double expected[][2] = {{30, 4688.4}, {45, 4032.0}, {60, 3536.8}};
    for (const auto& [degrees, value] : expected)
        EXPECT_NEAR(inPsi(rounded(0.50, 0.5, degrees)), value, 0.05);
    EXPECT_NEAR(inPsi(hankinson(psi(5600), psi(3150), Angle{})), 5600, 1e-9);
    EXPECT_NEAR(inPsi(hankinson(psi(5600), psi(3150), Angle::degrees(90))), 3150, 1e-9);
}

TEST(UsBearing, ReductionGoesByTheDiameterOfTheEquations) {
    const auto along = Angle{};
    const auto across = Angle::degrees(90);
    EXPECT_EQ(usReduction(inches(0.5), inches(0.5), across), (UsReduction{5.0, 4.5, 4.0}));
    EXPECT_EQ(usReduction(inches(0.152), inches(0.190), across), (UsReduction{2.2, 2.2, 2.2}));
    const double lag = usReduction(inches(0.173), inches(0.25), across).bending;
    EXPECT_NEAR(lag, (10 * 0.173 + 0.5) * 1.25, 1e-12);
    EXPECT_NEAR(usReduction(inches(0.196), inches(0.242), along).turning, 2.46, 1e-12);
}

// Ultimates for each inch, worked by hand from the handbook's formulas, pounds.
TEST(UsAxial, HandbookUltimates) {
    const auto perInch = [](ForcePerLength value) {
        return inNewtonsPerMillimetre(value) * 25.4 / pound_N;
    };
    EXPECT_NEAR(perInch(screwWithdrawalUltimate({0.68}, inches(0.190))), 1379, 0.5);
    EXPECT_NEAR(perInch(screwWithdrawalUltimate({0.68}, inches(0.242))), 1757, 0.5);
    EXPECT_NEAR(perInch(driftWithdrawalUltimate({0.68}, inches(0.5))), 1526, 0.5);
    EXPECT_NEAR(perInch(screwWithdrawalUltimate({0.32}, inches(0.190))), 305, 0.5);
    EXPECT_NEAR(perInch(driftWithdrawalUltimate({0.32}, inches(0.5))), 338, 0.5);
}

// Estep (1928): a steel drift of 1 in breaks in tension before it pulls 3 ft out of fir.
TEST(UsAxial, LongDriftOutlastsItsRod) {
    const Force pull = driftWithdrawalUltimate({0.48}, inches(1)) * inches(36);
    const Force rod = ksi(60) * (inches(1) * inches(1)) * 0.7853981634;
    EXPECT_GT(pull, rod);
    EXPECT_NEAR(inNewtons(pull) / pound_N, 54743, 1);
}

TEST(UsAxial, PullThroughIsContinuous) {
    const Force below = pullThroughUs({0.5}, inches(0.4), inches(1.0 - 1e-9));
    const Force above = pullThroughUs({0.5}, inches(0.4), inches(1.0 + 1e-9));
    EXPECT_NEAR(below / above, 1.0, 1e-8);
    EXPECT_EQ(pullThroughUs({0.5}, inches(0.4), inches(2)),
              pullThroughUs({0.5}, inches(0.4), inches(3)));
}

TEST(UsAxial, CombinedMeetsBothEnds) {
    const Force z = newtons(1000);
    const Force w = newtons(400);
    EXPECT_NEAR(inNewtons(combinedUs(z, w, Angle{})), 1000, 1e-9);
    EXPECT_NEAR(inNewtons(combinedUs(z, w, Angle::degrees(90))), 400, 1e-9);
    EXPECT_NEAR(inNewtons(combinedUs(z, w, Angle::degrees(45))), 2.0 * 400 * 1000 / 1400, 1e-9);
    EXPECT_EQ(combinedUs(z, {}, Angle::degrees(45)), Force{});
}

TEST(UsFactors, DurationRisesAsLoadsShorten) {
    EXPECT_EQ(durationFactorUs(Duration::tenYears), 1.0);
    const Duration order[] = {Duration::permanent, Duration::tenYears, Duration::twoMonths,
                              Duration::sevenDays, Duration::tenMinutes};
    for (int i = 0; i < 4; ++i)
        EXPECT_LT(durationFactorUs(order[i]), durationFactorUs(order[i + 1]));
    EXPECT_EQ(durationFactorUs(Duration::tenMinutes), 1.6);
}

TEST(UsFactors, Moisture) {
    const Length bolt = inches(0.5);
    EXPECT_EQ(moistureFactorLateralUs(Fitted::dry, Service::dry, bolt, false), 1.0);
    EXPECT_EQ(moistureFactorLateralUs(Fitted::dry, Service::wet, bolt, true), 0.7);
    EXPECT_EQ(moistureFactorLateralUs(Fitted::wet, Service::dry, bolt, true), 1.0);
    EXPECT_EQ(moistureFactorLateralUs(Fitted::wet, Service::dry, bolt, false), 0.4);
    EXPECT_EQ(moistureFactorLateralUs(Fitted::wet, Service::dry, inches(0.2), false), 0.7);
    EXPECT_EQ(moistureFactorAxialUs(Service::wet), 0.7);
}

TEST(UsFactors, GroupActionByItsDefinition) {
    // Two equal members, R_EA = 1, written out for two fastenings.
    const GroupMember member{5.0 * (inches(1) * inches(1)), psi(1.4e6)};
    const double u = 1 + 180000.0 * 4 / 2 * 2 / (1.4e6 * 5);
    const double m = u - std::sqrt(u * u - 1);
    const double expected =
        m * (1 - std::pow(m, 4)) / (2 * ((1 + m * m) * (1 + m) - 1 + std::pow(m, 4))) * 2 / (1 - m);
    EXPECT_NEAR(groupFactorUs(2, inches(4), inches(1), member, member), expected, 1e-12);
    EXPECT_EQ(groupFactorUs(1, inches(4), inches(1), member, member), 1.0);
    EXPECT_EQ(groupFactorUs(9, inches(4), inches(0.2), member, member), 1.0);
}

TEST(UsFactors, GeometryTakesTheLeastOfEndAndSpacing) {
    Placement placement;
    placement.end = inches(3.5);
    placement.spacing = inches(1.75);
    const auto soft = geometryFactorUs(placement, inches(0.5), WoodFamily::softwood);
    EXPECT_NEAR(soft.factor, 3.5 / 4, 1e-12);
    EXPECT_FALSE(soft.endTooNear || soft.spacingTooNear || soft.edgeTooNear);
    placement.end = inches(1.0);
    const auto near = geometryFactorUs(placement, inches(0.5), WoodFamily::softwood);
    EXPECT_EQ(near.factor, 0.5);
    EXPECT_TRUE(near.endTooNear);
    placement.load = EndLoad::across;
    EXPECT_FALSE(geometryFactorUs(placement, inches(0.5), WoodFamily::softwood).endTooNear);
    placement.edge = inches(1.0);
    EXPECT_FALSE(geometryFactorUs(placement, inches(0.5), WoodFamily::hardwood).edgeTooNear);
    placement.edgeLoadedAcross = true;
    EXPECT_TRUE(geometryFactorUs(placement, inches(0.5), WoodFamily::hardwood).edgeTooNear);
    EXPECT_EQ(geometryFactorUs(placement, inches(0.2), WoodFamily::softwood), GeometryFactor{});
}
