#include "layout/ballast_bolts.h"

#include <gtest/gtest.h>

#include "keel_fixture.h"

using namespace fayline;
using namespace fayline::test;

TEST(BallastBolts, SpreadOverFloorsAlternateSides) {
    const auto layout = layOutBallastBolts(keelWith(4));
    ASSERT_EQ(layout.placed.size(), 4U);
    EXPECT_EQ(layout.placed[0].frame, "F1");
    EXPECT_EQ(layout.placed[3].frame, "F10");
    EXPECT_NEAR(inMillimetres(layout.placed[0].joint.y), -25, 1e-9);
    EXPECT_NEAR(inMillimetres(layout.placed[1].joint.y), 25, 1e-9);
    EXPECT_TRUE(layout.findings.empty()) << layout.findings.front().says;
}

TEST(BallastBolts, AsManyAsFloorsUsesEachOnce) {
    const auto layout = layOutBallastBolts(keelWith(10));
    for (int i = 0; i < 10; ++i)
        EXPECT_EQ(layout.placed[static_cast<std::size_t>(i)].frame, "F" + std::to_string(i + 1));
}

TEST(BallastBolts, MoreBoltsThanFloorsIsFound) {
    const auto layout = layOutBallastBolts(keelWith(12));
    bool found = false;
    for (const Finding& finding : layout.findings)
        found = found || finding.kind == "clash" || finding.kind == "spacing";
    EXPECT_TRUE(found);
}

TEST(BallastBolts, GripRunsFromFloorTopToThePocketInTheBallast) {
    const auto layout = layOutBallastBolts(keelWith(3));
    EXPECT_NEAR(inMillimetres(layout.placed[0].grip), 320 + 400 - 50, 1e-9);
    const Hole& hole = layout.holes[0];
    EXPECT_NEAR(inMillimetres(hole.length), 670 + 2 * (5 + 20 + 5), 1e-9);
    EXPECT_EQ(hole.joins, (std::vector<std::string>{"F1.floor", "keel", "ballast"}));
    EXPECT_EQ(hole.side, "port");
    EXPECT_FALSE(hole.steps.empty());
    EXPECT_GT(hole.start.z, hole.end.z);
}

TEST(BallastBolts, BetweenFloorsTheWasherSitsOnTheKeel) {
    auto input = keelWith(3);
    input.bolts[1].between = true;
    const auto layout = layOutBallastBolts(input);
    EXPECT_TRUE(layout.placed[1].between);
    EXPECT_EQ(layout.placed[1].floors.size(), 2U);
    EXPECT_NEAR(inMillimetres(layout.placed[1].grip), 150 + 400 - 50, 1e-9);
    EXPECT_FALSE(layout.placed[1].seatWidth);
}

TEST(BallastBolts, PlacedByHandOffTheMiddleOfAFloorHasANarrowerSeat) {
    auto input = keelWith(3);
    input.bolts[1].x = millimetres(1460);
    const auto layout = layOutBallastBolts(input);
    EXPECT_EQ(layout.placed[1].frame, "F2");
    EXPECT_NEAR(inMillimetres(*layout.placed[1].seatWidth), 60, 1e-9);
}

TEST(BallastBolts, NoBallastNoBolts) {
    auto input = keelWith(3);
    input.sections.clear();
    EXPECT_TRUE(layOutBallastBolts(input).holes.empty());
}

TEST(SectionAt, StraightBetweenAndNothingBeyond) {
    const auto input = keelWith(1);
    EXPECT_NEAR(inMillimetres(sectionAt(input.sections, millimetres(2500))->ballastBottom), -400,
                1e-9);
    EXPECT_FALSE(sectionAt(input.sections, millimetres(4001)));
    EXPECT_FALSE(sectionAt({}, millimetres(1)));
}
