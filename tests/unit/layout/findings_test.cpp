#include <gtest/gtest.h>

#include <algorithm>

#include "keel_fixture.h"

using namespace fayline;
using namespace fayline::test;

namespace {

/// Kinds of the findings that name a bolt.
std::vector<std::string> kindsOf(const BallastBoltInput& input, const std::string& bolt) {
    std::vector<std::string> kinds;
    for (const Finding& finding : layOutBallastBolts(input).findings) {
        if (std::find(finding.holes.begin(), finding.holes.end(), bolt) != finding.holes.end())
            kinds.push_back(finding.kind);
    }
    return kinds;
}

using Kinds = std::vector<std::string>;

}  // namespace

TEST(Findings, ThinBoltUnderTheClassRuleNamesTheCure) {
    auto input = keelWith(3);
    input.bolts[1].diameter = millimetres(12);
    const auto findings = layOutBallastBolts(input).findings;
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].kind, "rule");
    EXPECT_NEAR(inMillimetres(*findings[0].missing), 2, 1e-9);
    EXPECT_EQ(findings[0].cure, Kinds{"K.2.diameter=14 mm"});
}

TEST(Findings, SmallAndThinWasher) {
    auto input = keelWith(3);
    input.bolts[0].washerDiameter = millimetres(50);
    input.bolts[0].washerThickness = millimetres(3);
    EXPECT_EQ(kindsOf(input, "K.1"), (Kinds{"rule", "rule"}));
}

TEST(Findings, WasherThicknessStopsAtTheCap) {
    auto input = keelWith(3);
    input.bolts[0].diameter = millimetres(40);
    input.bolts[0].washerDiameter = millimetres(160);
    input.bolts[0].washerThickness = millimetres(8);
    const auto kinds = kindsOf(input, "K.1");
    EXPECT_EQ(std::count(kinds.begin(), kinds.end(), "rule"), 0);
}

TEST(Findings, TooNearTheSideOfTheKeelOffersTheNearestPlace) {
    auto input = keelWith(3);
    input.bolts[2].offset = millimetres(-70);
    const auto findings = layOutBallastBolts(input).findings;
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].kind, "edge");
    EXPECT_NEAR(inMillimetres(*findings[0].missing), 20, 1e-9);
    EXPECT_EQ(findings[0].cure, Kinds{"K.3.offset=-50 mm"});
    // The cure cures.
    input.bolts[2].offset = millimetres(-50);
    EXPECT_TRUE(layOutBallastBolts(input).findings.empty());
}

TEST(Findings, EndBedFloorGripClashSpacing) {
    auto input = keelWith(3);
    input.bolts[0].x = millimetres(1030);
    const auto end = kindsOf(input, "K.1");
    EXPECT_EQ(std::count(end.begin(), end.end(), "end"), 1);
    EXPECT_EQ(std::count(end.begin(), end.end(), "floor"), 1);

    input = keelWith(3);
    input.bolts[0].x = millimetres(900);
    EXPECT_EQ(kindsOf(input, "K.1"), Kinds{"bed"});

    input = keelWith(3);
    input.bolts[0].recess = millimetres(900);
    EXPECT_EQ(kindsOf(input, "K.1"), Kinds{"grip"});

    input = keelWith(2);
    input.bolts[0].x = input.bolts[1].x = millimetres(1450);
    input.bolts[0].offset = input.bolts[1].offset = millimetres(0);
    EXPECT_EQ(kindsOf(input, "K.1"), Kinds{"clash"});

    input.bolts[1].offset = millimetres(45);
    EXPECT_EQ(kindsOf(input, "K.2"), Kinds{"spacing"});
}

TEST(Findings, AWasherMuchWiderThanItsFloor) {
    auto input = keelWith(3);
    for (auto& floor : input.floors) floor.siding = millimetres(50);
    EXPECT_EQ(kindsOf(input, "K.2"), Kinds{"edge"});
}
