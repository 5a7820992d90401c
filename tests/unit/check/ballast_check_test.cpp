#include "check/ballast.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

using namespace fayline;

namespace {

BoltCheckInput bolt() {
    BoltCheckInput input;
    input.id = "K.1";
    input.frame = "F4";
    RodInput rod;
    rod.root = millimetres(18.76);
    rod.yield = megapascals(262);
    rod.ultimate = megapascals(483);
    input.rod = rod;
    WasherInput washer;
    washer.diameter = millimetres(90);
    washer.thickness = millimetres(6);
    washer.hole = washer.bolt = millimetres(22.2);
    washer.usAllowable = megapascals(5.5);
    washer.ec5Characteristic = megapascals(8.0);
    input.washer = washer;
    return input;
}

BoltForces pulled(double tension_N, double shear_N) {
    BoltForces forces;
    forces.id = "K.1";
    forces.demandAxial = newtons(tension_N);
    forces.demandLateral = newtons(shear_N);
    return forces;
}

const Check& find(const std::vector<Check>& checks, LimitStateKind kind, Basis basis) {
    return *std::find_if(checks.begin(), checks.end(),
                         [&](const Check& c) { return c.limitState == kind && c.basis == basis; });
}

CaseSettings settings() {
    return usualSettings(LoadCase::knockdownPort);
}

}  // namespace

TEST(BoltChecks, FourLimitStatesNamedAndPlaced) {
    const auto checks =
        checkBallastBolt(bolt(), pulled(12500, 3160), LoadCase::knockdownPort, settings());
    ASSERT_EQ(checks.size(), 4U);
    for (const Check& check : checks) {
        EXPECT_EQ(check.id, "K.1");
        EXPECT_EQ(check.frame, "F4");
        EXPECT_EQ(check.group, "ballast");
        EXPECT_EQ(nameOf(check.loadCase), "knockdown_port");
    }
}

TEST(BoltChecks, Ec5DemandCarriesTheCaseFactorAndUsDoesNot) {
    const auto checks =
        checkBallastBolt(bolt(), pulled(12500, 0), LoadCase::knockdownPort, settings());
    EXPECT_DOUBLE_EQ(inNewtons(*find(checks, LimitStateKind::washer, Basis::us).demand), 12500);
    EXPECT_DOUBLE_EQ(inNewtons(*find(checks, LimitStateKind::washer, Basis::ec5).demand),
                     12500 * settings().ec5Factor);
    EXPECT_GT(settings().ec5Factor, 1.0);
}

TEST(BoltChecks, CombinedDemandIsTheSizeOfTheLoad) {
    const auto checks =
        checkBallastBolt(bolt(), pulled(12000, 5000), LoadCase::knockdownPort, settings());
    EXPECT_NEAR(inNewtons(*find(checks, LimitStateKind::combined, Basis::metal).demand), 13000,
                1e-9);
    EXPECT_LT(*find(checks, LimitStateKind::combined, Basis::metal).margin,
              *find(checks, LimitStateKind::metal, Basis::metal).margin);
}

TEST(BoltChecks, WhatIsNotDecidedIsUnknownAndSaysWhy) {
    BoltCheckInput input;
    input.whyNoRod = "the bolt's metal is not decided";
    input.whyNoWasher = "the floor's wood is not decided";
    const auto checks =
        checkBallastBolt(input, pulled(1000, 0), LoadCase::knockdownPort, settings());
    ASSERT_EQ(checks.size(), 3U);
    for (const Check& check : checks) {
        EXPECT_EQ(check.status, Status::unknown);
        EXPECT_FALSE(check.margin);
        EXPECT_FALSE(check.why.empty());
    }
}

TEST(BoltChecks, AnUnloadedBoltHasNoMargin) {
    for (const Check& check : checkBallastBolt(bolt(), pulled(0, 0), LoadCase::groundingUp,
                                               usualSettings(LoadCase::groundingUp))) {
        EXPECT_EQ(check.status, Status::unloaded);
        EXPECT_FALSE(check.margin);
    }
}

TEST(BoltChecks, TheWorkingNamesDemandAndMargin) {
    CaseLoads loads;
    loads.settings = settings();
    loads.bolts = {pulled(12500, 3160)};
    const auto checks =
        checkBallastBolt(bolt(), loads.bolts.front(), loads.loadCase, loads.settings);
    for (const Check& check : checks) {
        const auto trace = explainBallastBolt(bolt(), loads, check);
        ASSERT_TRUE(trace);
        EXPECT_EQ(std::get<double>(trace->lines.back().value), *check.margin);
        EXPECT_FALSE(trace->notes.empty());
    }
}
