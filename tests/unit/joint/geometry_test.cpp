// Sizes of fastenings against their holes, and what the trade knows of them.

#include <gtest/gtest.h>

#include <numbers>

#include "any_joint.h"
#include "joint/driving.h"
#include "joint/rivet.h"
#include "joint/work_joint.h"

using namespace fayline;
using namespace fayline::test;

namespace {

GeometryFinding sized(const Joint& joint, const std::string& what) {
    for (const GeometryFinding& finding : jointGeometry(joint)) {
        if (finding.what == what) return finding;
    }
    ADD_FAILURE() << "nothing about " << what;
    return {};
}

bool judged(const Joint& joint, const std::string& what) {
    for (const GeometryFinding& finding : jointGeometry(joint)) {
        if (finding.what == what) return true;
    }
    return false;
}

Joint squareRivet() {
    Joint joint = through(2);
    joint.fastener.kind = FastenerKind::rivet;
    joint.fastener.section = DowelSection::square;
    joint.fastener.diameter = inches(0.25);
    joint.fastener.root.reset();
    joint.fastener.hole = inches(0.25);
    joint.fastener.point = FastenerEnd::rove;
    joint.fastener.pointBearing = EndBearing{inches(0.75), inches(0.0625)};
    return joint;
}

}  // namespace

// Common practice, no published source: a 1/4 in square bar in a 1/4 in round hole bites at its
// corners.
TEST(Trade, ASquareBarBitesInARoundHoleOfItsOwnSide) {
    EXPECT_NEAR(inInches(cornerBite(inches(0.25), inches(0.25))),
                0.125 * (std::numbers::sqrt2 - 1.0), 1e-12);
    const GeometryFinding bite = sized(squareRivet(), "corner_bite");
    EXPECT_TRUE(bite.met);
    EXPECT_NEAR(inInches(bite.has), 0.25 * std::numbers::sqrt2, 1e-12);
    Joint loose = squareRivet();
    loose.fastener.hole = inches(0.36);
    EXPECT_FALSE(sized(loose, "corner_bite").met);
    EXPECT_LT(cornerBite(inches(0.25), inches(0.36)), Length{});
}

// Common practice, no published source: an outer timber that is not slip-fit leaves the screw
// thread-bound.
TEST(Trade, AnOuterTimberThatIsNotSlipFitLeavesTheScrewThreadBound) {
    Joint joint = plankScrew();
    EXPECT_FALSE(judged(joint, "slip_fit"));
    joint.fastener.screwHole.slipFit = inches(0.25);
    EXPECT_TRUE(sized(joint, "slip_fit").met);
    joint.fastener.screwHole.slipFit = inches(0.20);
    const GeometryFinding tight = sized(joint, "slip_fit");
    EXPECT_FALSE(tight.met);
    EXPECT_EQ(tight.standing, Standing::commonPractice);
    EXPECT_NE(tight.says().find("thread-bound"), std::string::npos);
}

// Common practice, no published source: the tapered bit is a little shorter than the screw.
TEST(Trade, TheBitIsALittleShorterThanTheScrew) {
    Joint joint = plankScrew();
    joint.fastener.screwHole.bit = inches(2.375);
    EXPECT_TRUE(sized(joint, "bit_long").met && sized(joint, "bit_short").met);
    joint.fastener.screwHole.bit = inches(2.625);
    EXPECT_FALSE(sized(joint, "bit_long").met);
    joint.fastener.screwHole.bit = inches(1.5);
    EXPECT_FALSE(sized(joint, "bit_short").met);
}

// Common practice, no published source: a heel screw wants 1-1/2 in or more in the keel, and 100 lb
// on each is the right order for the usual one.
TEST(Trade, AHeelScrewWantsAnInchAndAHalfAndCarriesAboutAHundredPounds) {
    Joint joint = plankScrew();
    joint.heel = true;
    joint.fastener.gauge = Gauge(16);
    joint.fastener.length = inches(2.6);
    EXPECT_TRUE(sized(joint, "heel_embedment").met);
    joint.fastener.length = inches(2.4);
    EXPECT_FALSE(sized(joint, "heel_embedment").met);
    joint.fastener.length = inches(2.6);
    joint.members[0] = member(0.73, inches(1.0), WoodFamily::hardwood);
    joint.service = Service::wet;
    joint.duration = Duration::tenMinutes;
    const double each_lb = inNewtons(workJoint(joint)->us.lateral->state.working) / pound_N;
    EXPECT_GT(each_lb, 50.0);
    EXPECT_LT(each_lb, 300.0);
}

// Common practice, no published source: under a formed head of usual proportion (1 3/4 diameters
// wide, 2/5 high) oak starts to give before the head shears off.
TEST(Trade, OakGivesUnderAFormedHeadBeforeTheHeadShears) {
    Joint joint = through(2);
    joint.fastener.head = FastenerEnd::formedHead;
    joint.fastener.headBearing = EndBearing{inches(0.875), inches(0.2)};
    joint.fastener.headHeight = inches(0.2);
    const auto us = workJoint(joint)->us;
    ASSERT_TRUE(us.washer && us.washer->gives && us.headShear && us.headShear->apart);
    EXPECT_LT(us.washer->gives->high, us.headShear->apart->low);
}

TEST(Geometry, StopCollarIsCounterboreAndBit) {
    Joint joint = plankScrew();
    joint.members[0].counterbore = inches(0.375);
    EXPECT_FALSE(judged(joint, "stop_collar"));
    joint.fastener.screwHole.bit = inches(2.375);
    EXPECT_NEAR(inInches(sized(joint, "stop_collar").needs), 2.75, 1e-12);
    joint.fastener.screwHole.collar = inches(2.5);
    EXPECT_FALSE(sized(joint, "stop_collar").met);
}

TEST(Geometry, ATaperedBitIsMeasuredInTheMiddleOfTheThread) {
    Joint joint = plankScrew();
    joint.fastener.screwHole.pilot = inches(0.20);
    joint.fastener.screwHole.pilotTip = inches(0.12);
    EXPECT_NEAR(inInches(sized(joint, "pilot").has), 0.16, 1e-12);
    // White oak: nine tenths of a root of 0.166 in.
    EXPECT_NEAR(inInches(sized(joint, "pilot").needs), 0.9 * 0.166, 1e-12);
    EXPECT_TRUE(sized(joint, "pilot").met && sized(joint, "pilot_wide").met);
    EXPECT_TRUE(sized(joint, "pilot_tip").met);
    joint.fastener.screwHole.pilotTip = inches(0.18);
    EXPECT_FALSE(sized(joint, "pilot_tip").met);
    EXPECT_FALSE(sized(joint, "pilot_wide").met);
    joint.fastener.screwHole.pilotTip = inches(0.3);
    EXPECT_EQ(workJoint(joint).error().where, "hole.pilot_tip");
}

TEST(Geometry, HolesOfBoltsAndDrifts) {
    Joint joint = through(2);
    joint.fastener.hole = inches(0.53);
    EXPECT_TRUE(sized(joint, "hole_fit").met && sized(joint, "hole_loose").met);
    joint.fastener.hole = inches(0.49);
    EXPECT_FALSE(sized(joint, "hole_fit").met);
    joint.fastener.hole = inches(0.57);
    EXPECT_FALSE(sized(joint, "hole_loose").met);
    joint.fastener.kind = FastenerKind::drift;
    joint.fastener.length = inches(3.5);
    EXPECT_FALSE(sized(joint, "drift_hole").met);
}

// Grip 4 in, rove 1/16 in.
TEST(Geometry, WhatStandsBeyondARove) {
    Joint joint = squareRivet();
    EXPECT_FALSE(judged(joint, "stand_off"));
    joint.fastener.length = inches(4.375);
    EXPECT_NEAR(inInches(sized(joint, "stand_off").has), 0.3125, 1e-9);
    EXPECT_TRUE(sized(joint, "stand_off").met && sized(joint, "stand_off_most").met);
    joint.fastener.length = inches(4.2);
    EXPECT_FALSE(sized(joint, "stand_off").met);
    joint.fastener.length = inches(5);
    EXPECT_FALSE(sized(joint, "stand_off_most").met);
    EXPECT_NEAR(inInches(equalAreaDiameter(inches(0.25))), 0.28209, 1e-5);
}

TEST(Geometry, TwoNutsAndWhatShowsBeyondThem) {
    Joint joint = through(2);
    joint.fastener.head = FastenerEnd::nut;
    joint.fastener.pitch = inches(1.0 / 13);
    joint.fastener.nutHeight = inches(0.4375);
    joint.fastener.length = inches(4 + 0.5 + 0.875 + 0.2);
    EXPECT_NEAR(inInches(sized(joint, "beyond_nut").has), 0.2, 1e-9);
    EXPECT_TRUE(sized(joint, "beyond_nut").met);
    joint.fastener.length -= inches(0.1);
    EXPECT_FALSE(sized(joint, "beyond_nut").met);
}

TEST(Driving, TorqueByHand) {
    EXPECT_NEAR(inNewtonMetres(rootYields(millimetres(4), megapascals(150))),
                std::numbers::pi / 16 * 64e-9 * 150e6, 1e-12);
    EXPECT_NEAR(inNewtonMetres(rootTwistsOff(millimetres(4), megapascals(300))),
                std::numbers::pi / 12 * 64e-9 * 300e6, 1e-12);
    // 0.4 · 5 MPa · π · 4 mm · 40 mm · 2 mm
    EXPECT_NEAR(inNewtonMetres(drivingTorque(millimetres(4), millimetres(40), megapascals(5), 0.4)),
                0.4 * 5e6 * std::numbers::pi * 0.004 * 0.040 * 0.002, 1e-12);
}

TEST(Driving, WaxHelpsAndWithoutTheWoodsStrengthNothingIsSaid) {
    Joint joint = plankScrew();
    const auto driving = workJoint(joint)->driving;
    ASSERT_TRUE(driving && driving->dry && driving->waxed);
    EXPECT_LT(*driving->waxed, *driving->dry);
    joint.members[1].acrossMean.reset();
    EXPECT_FALSE(workJoint(joint)->driving->dry);
}

TEST(Geometry, EveryFindingHasWordsForBothOutcomes) {
    for (const char* what :
         {"thread_bound", "penetration", "tip_out",       "counterbore",    "bung_depth",
          "bung",         "slip_fit",    "pilot",         "pilot_wide",     "pilot_tip",
          "bit_long",     "bit_short",   "stop_collar",   "heel_embedment", "hole_fit",
          "hole_loose",   "beyond_nut",  "drift_hole",    "corner_bite",    "square_hole",
          "rivet_hole",   "stand_off",   "stand_off_most"}) {
        const GeometryFinding met{what, inches(1), inches(0.5), true, false, {}};
        const GeometryFinding missed{what, inches(0.5), inches(1), false, false, {}};
        EXPECT_FALSE(met.says().empty()) << what;
        EXPECT_NE(met.says(), missed.says()) << what;
        EXPECT_EQ(missed.says().find('{'), std::string::npos) << what;
    }
}
