#include "hull/section.h"

#include <gtest/gtest.h>

#include <cmath>

namespace fayline {
namespace {

SectionPoint mm(double y, double z) {
    return {millimetres(y), millimetres(z)};
}

TEST(Section, triangleFiguresAreExact) {
    const Section vee{metres(1), {mm(0, 0), mm(1000, 500)}};
    EXPECT_DOUBLE_EQ(vee.areaBelow(millimetres(500)).si(), 0.5);
    EXPECT_DOUBLE_EQ(vee.areaBelow(millimetres(250)).si(), 0.125);
    EXPECT_DOUBLE_EQ(vee.areaBelow(millimetres(900)).si(), 0.5) << "closed level at its top";
    EXPECT_DOUBLE_EQ(vee.areaBelow(millimetres(-1)).si(), 0.0);
    EXPECT_DOUBLE_EQ(vee.centreHeightBelow(millimetres(500))->si(), 1.0 / 3.0);
    EXPECT_FALSE(vee.centreHeightBelow(millimetres(0)));
    EXPECT_DOUBLE_EQ(vee.girth().si(), std::hypot(1.0, 0.5));
    EXPECT_DOUBLE_EQ(vee.wettedGirth(millimetres(250)).si(), 0.5 * std::hypot(1.0, 0.5));
    EXPECT_EQ(vee.lowest(), millimetres(0));
    EXPECT_EQ(vee.top(), millimetres(500));
}

TEST(Section, halfBreadthIsTheOutermostCrossing) {
    const Section vee{metres(1), {mm(0, 0), mm(1000, 500)}};
    EXPECT_DOUBLE_EQ(vee.halfBreadthAt(millimetres(250))->si(), 0.5);
    EXPECT_DOUBLE_EQ(vee.halfBreadthAt(millimetres(500))->si(), 1.0);
    EXPECT_FALSE(vee.halfBreadthAt(millimetres(501)));
    EXPECT_FALSE(vee.halfBreadthAt(millimetres(-1)));
    const Section flat{metres(1), {mm(0, 0), mm(1000, 0), mm(1000, 500)}};
    EXPECT_EQ(flat.halfBreadthAt(millimetres(0)), millimetres(1000));
}

// A bulb: out at the bottom, in at a waist, out again. Between 100 and 200 mm the waist is 50 mm.
TEST(Section, sectionsThatTurnBackAreCounted) {
    const Section bulb{
        metres(1),
        {mm(0, 0), mm(200, 0), mm(200, 100), mm(50, 100), mm(50, 200), mm(300, 200), mm(300, 300)}};
    EXPECT_NEAR(bulb.areaBelow(millimetres(300)).si(), 2 * (0.02 + 0.005 + 0.03), 1e-15);
    EXPECT_EQ(bulb.waterplaneHalfBreadth(millimetres(150)), millimetres(50));
    EXPECT_EQ(bulb.waterplaneHalfBreadth(millimetres(250)), millimetres(300));
}

// A hanging lip: going up the side, the section comes down again before it rises to the sheer. The
// hollow under the lip is outside the hull.
TEST(Section, hollowsAreLeftOutOfTheWaterplane) {
    const Section lip{metres(1),
                      {mm(0, 0), mm(100, 0), mm(100, 400), mm(200, 400), mm(200, 100), mm(300, 100),
                       mm(300, 500)}};
    EXPECT_EQ(*lip.halfBreadthAt(millimetres(250)), millimetres(300));
    EXPECT_NEAR(inMillimetres(lip.waterplaneHalfBreadth(millimetres(250))), 200.0, 1e-9);
    // Both sides, below 250 mm: the inner 100 by 250 and the outer 100 by 150.
    EXPECT_NEAR(lip.areaBelow(millimetres(250)).si(), 2 * (0.025 + 0.015), 1e-15);
}

TEST(Section, waterplaneAboveTheTopTakesTheTop) {
    const Section vee{metres(1), {mm(0, 0), mm(1000, 500)}};
    EXPECT_EQ(vee.waterplaneHalfBreadth(millimetres(600)), metres(1));
    EXPECT_EQ(vee.waterplaneHalfBreadth(millimetres(0)), Length{});
}

}  // namespace
}  // namespace fayline
