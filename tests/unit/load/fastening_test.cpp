// Shares of a frame's load among arm, heel, floor and plank fastenings, worked by hand.

#include "load/fastening.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace fayline;

namespace {

FasteningSet arms() {
    FasteningSet set;
    set.id = "F9.P.arm.1";
    set.group = "arm";
    set.count = 3;
    set.spread = metres(0.8);
    set.keelSided = millimetres(210);
    set.floorHere = true;
    return set;
}

FrameLoad knockdown() {
    FrameLoad load;
    load.settings = usualSettings(LoadCase::knockdownPort);
    load.bears = true;
    load.moment = newtonMetres(620);
    return load;
}

FasteningSet plank() {
    FasteningSet set;
    set.id = "F9.P.plank.4.1";
    set.group = "plank";
    set.strake = "strake4";
    set.count = 2;
    set.thickness = millimetres(25);
    set.width = millimetres(125);
    set.spacing = millimetres(250);
    set.radius = metres(1);
    set.seam = megapascals(1.5);
    set.stiffness = megapascals(9000);
    return set;
}

FrameLoad inCaseOf(LoadCase loadCase) {
    FrameLoad load;
    load.loadCase = loadCase;
    load.settings = usualSettings(loadCase);
    load.settings.factor = 1;
    return load;
}

}  // namespace

// 620 N·m over 0.8 m on three bolts, a quarter more on the worst: 620/0.8/3·1.25 = 323 N.
TEST(FasteningLoads, ArmsTakeTheMomentAsACouple) {
    EXPECT_NEAR(inNewtons(demandOn(arms(), knockdown()).lateral), 322.9, 0.1);
}

TEST(FasteningLoads, ArmsAddWhatPushesUpAndSquareToItWhatPushesSideways) {
    FrameLoad load = knockdown();
    load.up = newtons(4000);
    load.sideways = newtons(2600);
    const double up_N = 775 + 2000;
    EXPECT_NEAR(inNewtons(demandOn(arms(), load).lateral), 1.25 / 3 * std::hypot(up_N, 1300), 1e-6);
}

// 2,600 N sideways, passed on 240 mm above the keel axis: 620 + 624 = 1,244 N·m.
TEST(FasteningLoads, ASidewaysForceTurnsMoreTheHigherItIsPassedOn) {
    FrameLoad load = knockdown();
    load.sideways = newtons(2600);
    FasteningSet set = arms();
    set.rise = millimetres(240);
    EXPECT_NEAR(inNewtons(demandOn(set, load).lateral), 1.25 / 3 * std::hypot(1244 / 0.8, 1300),
                1e-6);
    EXPECT_NEAR(inNewtonMetres(raisedBy(load, millimetres(240)).moment), 1244, 1e-9);
}

TEST(FasteningLoads, AFloorNoLoadReachesSaysSo) {
    FrameLoad load = knockdown();
    load.bears = false;
    const SetDemand demand = demandOn(arms(), load);
    EXPECT_EQ(demand.lateral, Force{});
    EXPECT_TRUE(demand.known);
    EXPECT_NE(demand.why.find("no load"), std::string::npos);
}

// Half of 620 N·m over a keel of 210 mm on two screws: 738 N. A judgement, and said to be one.
TEST(FasteningLoads, HeelsTakeTheUpperEndOfTheBand) {
    FasteningSet heel = arms();
    heel.group = "heel";
    heel.count = 2;
    const SetDemand sheared = demandOn(heel, knockdown());
    EXPECT_NEAR(inNewtons(sheared.lateral), 0.5 * 620 / 0.21 / 2, 1e-6);
    // A twentieth at the other end of the band.
    EXPECT_DOUBLE_EQ(sheared.lowest, 0.1);
    EXPECT_NE(sheared.band.find("twentieth"), std::string::npos);
    heel.heel = HeelPull::pull;
    const SetDemand drawn = demandOn(heel, knockdown());
    EXPECT_NEAR(inNewtons(drawn.axial), 0.5 * 620 / (0.21 * 2 / 3) / 2, 1e-6);
    heel.floorHere = false;
    EXPECT_NEAR(inNewtons(demandOn(heel, knockdown()).axial), 620 / (0.21 * 2 / 3) / 2, 1e-6);
    EXPECT_DOUBLE_EQ(demandOn(heel, knockdown()).lowest, 1.0);
}

TEST(FasteningLoads, GarboardsSwellButTheKeelsRollIsNotKnown) {
    FasteningSet garboard = plank();
    garboard.group = "garboard";
    // Half of what a plank's fastenings at a frame carry.
    EXPECT_NEAR(inNewtons(demandOn(garboard, inCaseOf(LoadCase::swelling)).axial), 195.3 / 2, 0.1);
    EXPECT_TRUE(demandOn(garboard, inCaseOf(LoadCase::seaBottom)).known);
    const SetDemand rolled = demandOn(garboard, knockdown());
    EXPECT_FALSE(rolled.known);
    EXPECT_NE(rolled.why.find("stiffness"), std::string::npos);
    FrameLoad apart = knockdown();
    apart.bears = false;
    EXPECT_TRUE(demandOn(garboard, apart).known) << "no keel hangs at this frame";
    EXPECT_FALSE(demandOn(garboard, apart).why.empty());
    garboard.group = "backbone";
    EXPECT_FALSE(demandOn(garboard, knockdown()).known);
}

TEST(FasteningLoads, AHollowRunPressesItsEndOn) {
    FasteningSet hood = plank();
    hood.group = "hood";
    hood.hollowBend = true;
    const SetDemand demand = demandOn(hood, inCaseOf(LoadCase::springback));
    EXPECT_EQ(demand.axial, Force{});
    EXPECT_TRUE(demand.known);
    EXPECT_NE(demand.why.find("presses"), std::string::npos);
}

TEST(FasteningLoads, ABallastBoltRelievesTheFloorsOwnBolts) {
    FasteningSet bolts = arms();
    bolts.group = "floor";
    bolts.count = 2;
    EXPECT_NEAR(inNewtons(demandOn(bolts, knockdown()).axial), 620 / 0.07 / 2, 1e-6);
    bolts.ballastBoltHere = true;
    EXPECT_EQ(demandOn(bolts, knockdown()).axial, Force{});
}

// 25 mm plank, 1.5 MPa, radius 1 m, frames 250 mm apart, planks 125 mm wide, two screws: 12.5 N/mm
// of seam, 12.5 kPa, 195.3 N each.
TEST(FasteningLoads, SwellingDrawsPlanksOffACurvedFrame) {
    const SetDemand demand = demandOn(plank(), inCaseOf(LoadCase::swelling));
    EXPECT_NEAR(inNewtons(demand.axial), 195.3, 0.1);
    FasteningSet hard = plank();
    hard.radius = metres(0.3);
    EXPECT_NEAR(inNewtons(demandOn(hard, inCaseOf(LoadCase::swelling)).axial), 651, 0.5);
}

TEST(FasteningLoads, FlatRunsAndSeaPressureLoadNoPlankFastening) {
    FasteningSet flat = plank();
    flat.radius.reset();
    EXPECT_EQ(demandOn(flat, inCaseOf(LoadCase::swelling)).axial, Force{});
    const SetDemand sea = demandOn(plank(), inCaseOf(LoadCase::seaBottom));
    EXPECT_EQ(sea.axial, Force{});
    EXPECT_NE(sea.why.find("presses"), std::string::npos);
}

// E·w·t³/12/R/a/n with 9,000 MPa, 125 × 25 mm, R 8 m, a 250 mm, two screws: 366.2 N.
TEST(FasteningLoads, ABentPlankSpringsAtItsEnd) {
    FasteningSet hood = plank();
    hood.group = "hood";
    hood.bendRadius = metres(8);
    hood.bendArm = millimetres(250);
    EXPECT_NEAR(inNewtons(demandOn(hood, inCaseOf(LoadCase::springback)).axial), 366.2, 0.1);
    hood.bendRadius.reset();
    EXPECT_EQ(demandOn(hood, inCaseOf(LoadCase::springback)).axial, Force{});
}

TEST(FasteningLoads, WhatIsNotWorkedOutIsNotCalledUnloaded) {
    FasteningSet joint = arms();
    joint.group = "backbone";
    EXPECT_FALSE(demandOn(joint, knockdown()).known);
}

// R = 620/0.8 = 775 N; M = 775·(0.8 − 0.21)/2 = 228.6 N·m; V = 620/0.21 − 775 = 2,177 N.
TEST(FasteningLoads, AFloorBendsBesideTheKeelAndShearsOverIt) {
    const FloorLoad at = floorLoad(metres(0.8), millimetres(210), knockdown());
    EXPECT_NEAR(inNewtonMetres(at.bending), 228.6, 0.1);
    EXPECT_NEAR(inNewtons(at.shear), 2177.4, 0.1);
}

TEST(FasteningLoads, TheWorkingEndsInTheDemand) {
    Trace trace;
    const SetDemand demand = demandOn(arms(), knockdown(), &trace);
    ASSERT_FALSE(trace.lines.empty());
    EXPECT_EQ(std::get<Force>(trace.lines.back().value), demand.lateral);
}
