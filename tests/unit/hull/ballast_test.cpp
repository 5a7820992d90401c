#include "hull/ballast.h"

#include <gtest/gtest.h>

#include <cmath>

namespace fayline {
namespace {

constexpr Density lead = kilogramsPerCubicMetre(11100.0);

KeelTimber levelKeel() {
    return {metres(1), metres(6), metres(0.5), metres(0.5), millimetres(200), millimetres(150)};
}

BallastShape boxBallast() {
    return {metres(2),        metres(5),        millimetres(200),
            millimetres(200), millimetres(200), millimetres(200),
            millimetres(400), millimetres(400), millimetres(400)};
}

TEST(Ballast, boxIsExact) {
    const auto body = ballastBody(boxBallast(), levelKeel(), lead);
    EXPECT_NEAR(body.volume.si(), 3.0 * 0.2 * 0.4, 1e-12);
    EXPECT_NEAR(body.mass.si(), 3.0 * 0.2 * 0.4 * 11100.0, 1e-8);
    EXPECT_NEAR(body.centre.x.si(), 3.5, 1e-12);
    EXPECT_NEAR(body.centre.z.si(), 0.3, 1e-12);
    EXPECT_EQ(body.centre.y, Length{});
    EXPECT_NEAR(body.centreBelow.si(), 0.2, 1e-12);
}

// Depth from nothing forward to 0.4 m aft: volume half the box, centre two thirds of the way aft
// and a third of the depth at that place weighted by area: 2/3 of half of 0.4 m.
TEST(Ballast, wedgeInDepthIsExact) {
    auto wedge = boxBallast();
    wedge.depthFore = Length{};
    wedge.depthMiddle = millimetres(200);
    const auto body = ballastBody(wedge, levelKeel(), lead);
    EXPECT_NEAR(body.volume.si(), 3.0 * 0.2 * 0.4 / 2.0, 1e-12);
    EXPECT_NEAR(body.centre.x.si(), 2.0 + 3.0 * 2.0 / 3.0, 1e-12);
    EXPECT_NEAR(body.centreBelow.si(), 0.4 / 3.0, 1e-12);
}

// A V keel: bottom breadth nil, so each section is a triangle with its centre at a third.
TEST(Ballast, triangularSectionIsExact) {
    auto vee = boxBallast();
    vee.bottomBreadth = Length{};
    const auto body = ballastBody(vee, levelKeel(), lead);
    EXPECT_NEAR(body.volume.si(), 3.0 * 0.2 * 0.4 / 2.0, 1e-12);
    EXPECT_NEAR(body.centreBelow.si(), 0.4 / 3.0, 1e-12);
}

TEST(Ballast, taperedBodyAgainstManyThinSlices) {
    const KeelTimber keel{metres(1),        metres(6),        millimetres(610),
                          millimetres(540), millimetres(210), millimetres(150)};
    const BallastShape ballast{metres(1.5),      metres(5.3),      millimetres(120),
                               millimetres(240), millimetres(160), millimetres(110),
                               millimetres(250), millimetres(560), millimetres(470)};
    const int n = 20000;
    double volume_m3 = 0.0, x_m4 = 0.0, z_m4 = 0.0;
    for (int i = 0; i < n; ++i) {
        const double share = (i + 0.5) / n, x = 1.5 + 3.8 * share;
        const double fold = share < 0.5 ? 2.0 * share : 2.0 * share - 1.0;
        const double top = share < 0.5 ? 0.12 + 0.12 * fold : 0.24 - 0.08 * fold;
        const double depth = share < 0.5 ? 0.25 + 0.31 * fold : 0.56 - 0.09 * fold;
        const double underside = 0.61 - 0.07 * (x - 1.0) / 5.0;
        // A box as wide as the bottom, and the two triangles beside it.
        const double box = 0.11 * depth, beside = (top - 0.11) * depth / 2.0;
        const double dx = 3.8 / n;
        volume_m3 += (box + beside) * dx;
        x_m4 += (box + beside) * dx * x;
        z_m4 += (box * (underside - depth / 2.0) + beside * (underside - depth / 3.0)) * dx;
    }
    const auto body = ballastBody(ballast, keel, lead);
    EXPECT_NEAR(body.volume.si() / volume_m3, 1.0, 1e-7);
    EXPECT_NEAR(body.centre.x.si(), x_m4 / volume_m3, 1e-7);
    EXPECT_NEAR(body.centre.z.si(), z_m4 / volume_m3, 1e-7);
    EXPECT_NEAR(body.centreBelow.si(),
                keelUndersideAt(keel, body.centre.x)->si() - body.centre.z.si(), 1e-12);
}

TEST(Ballast, sectionAtX) {
    auto ballast = boxBallast();
    ballast.topBreadthFore = millimetres(100);
    ballast.depthAft = millimetres(200);
    const auto quarter = ballastSectionAt(ballast, levelKeel(), metres(2.75));
    ASSERT_TRUE(quarter);
    EXPECT_NEAR(inMillimetres(quarter->topBreadth), 150.0, 1e-9);
    EXPECT_NEAR(inMillimetres(quarter->depth), 400.0, 1e-9);
    EXPECT_NEAR(quarter->area.si(), 0.07, 1e-12);
    EXPECT_NEAR(inMillimetres(quarter->topHeight), 500.0, 1e-9);
    EXPECT_NEAR(inMillimetres(quarter->centreBelow), 400.0 / 3.0 * 550.0 / 350.0, 1e-9);
    const auto last = ballastSectionAt(ballast, levelKeel(), metres(5));
    ASSERT_TRUE(last);
    EXPECT_NEAR(inMillimetres(last->depth), 200.0, 1e-9);
    EXPECT_FALSE(ballastSectionAt(ballast, levelKeel(), metres(5.001)));
    EXPECT_FALSE(ballastSectionAt(ballast, levelKeel(), metres(1.999)));
}

TEST(Ballast, problemsAreNamed) {
    EXPECT_TRUE(checkBallast(boxBallast(), levelKeel()).empty());
    auto bad = boxBallast();
    bad.to = metres(7);
    bad.depthMiddle = Length{};
    bad.bottomBreadth = millimetres(-3);
    const auto problems = checkBallast(bad, levelKeel());
    ASSERT_EQ(problems.size(), 3U);
    EXPECT_EQ(problems[0].line(),
              "ballast.to: the ballast's after end is 7000 mm; 1000 mm to 6000 mm");
    EXPECT_EQ(problems[1].line(),
              "ballast.bottom_breadth: the ballast's bottom breadth is -3 mm; 0 mm to 5000 mm");
    EXPECT_EQ(problems[2].line(),
              "ballast.depth_middle: the ballast's middle depth is 0 mm; 1 mm to 5000 mm");
    auto turned = boxBallast();
    std::swap(turned.from, turned.to);
    ASSERT_EQ(checkBallast(turned, levelKeel()).size(), 1U);
    EXPECT_EQ(checkBallast(turned, levelKeel())[0].line(),
              "ballast.to: the ballast's after end is at 2000 mm; aft of its fore end at 5000 mm");
    auto unknown = boxBallast();
    unknown.depthAft = millimetres(std::nan(""));
    EXPECT_EQ(checkBallast(unknown, levelKeel()).size(), 1U);
}

}  // namespace
}  // namespace fayline
