#include "fastener/bolt_hole.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace fayline {
namespace {

BoltHoleWish wish() {
    BoltHoleWish w;
    w.rod = millimetres(20);
    w.grip = millimetres(500);
    return w;
}

TEST(BoltHole, PilotThenReamFromTheEndThatCanBeReached) {
    auto w = wish();
    w.boredFrom = HoleEnd::point;
    const auto hole = boltHole(w);
    ASSERT_TRUE(hole);
    EXPECT_EQ(hole->diameter, millimetres(20));
    ASSERT_EQ(hole->steps.size(), 2U);
    EXPECT_NEAR(inMillimetres(hole->steps[0].bit), 10.0, 1e-9);
    EXPECT_FALSE(hole->steps[0].depth);
    EXPECT_EQ(hole->steps[1].bit, millimetres(20));
    for (const auto& step : hole->steps) EXPECT_EQ(step.from, HoleEnd::point);
}

TEST(BoltHole, RecessesFirstAtTheNearEndLastAtTheFar) {
    auto w = wish();
    w.headRecess = Recess{millimetres(85), millimetres(30)};
    w.pointRecess = Recess{millimetres(60), millimetres(25)};
    const auto hole = boltHole(w);
    ASSERT_TRUE(hole);
    ASSERT_EQ(hole->steps.size(), 4U);
    EXPECT_EQ(hole->steps.front().bit, millimetres(85));
    EXPECT_EQ(hole->steps.front().depth, millimetres(30));
    EXPECT_EQ(hole->steps.front().from, HoleEnd::head);
    EXPECT_EQ(hole->steps.back().bit, millimetres(60));
    EXPECT_EQ(hole->steps.back().from, HoleEnd::point);
}

TEST(BoltHole, FitsDifferByTheirAllowance) {
    auto w = wish();
    const auto sizeOf = [&](HoleFit fit) {
        w.fit = fit;
        return inMillimetres(boltHole(w)->diameter);
    };
    EXPECT_NEAR(sizeOf(HoleFit::driven), 19.6, 1e-9);
    EXPECT_NEAR(sizeOf(HoleFit::snug), 20.0, 1e-9);
    EXPECT_NEAR(sizeOf(HoleFit::easy), 20.79375, 1e-9);
    EXPECT_NEAR(sizeOf(HoleFit::plate), 21.0, 1e-9);
    for (const auto fit : {HoleFit::driven, HoleFit::snug, HoleFit::easy, HoleFit::plate}) {
        EXPECT_EQ(holeFitFromText(holeFitText(fit)), fit);
        EXPECT_FALSE(holeAllowanceSource(fit).empty());
    }
    EXPECT_EQ(holeAllowanceStanding(HoleFit::plate), Standing::commonPractice);
    EXPECT_FALSE(holeFitFromText("tight"));
}

TEST(BoltHole, ThinRodNeedsNoPilotOfItsOwn) {
    auto w = wish();
    w.rod = millimetres(6);
    const auto hole = boltHole(w);
    ASSERT_TRUE(hole);
    EXPECT_EQ(hole->steps.size(), 1U);
    w.rod = millimetres(8);
    EXPECT_EQ(boltHole(w)->steps.front().bit, millimetres(6));
}

TEST(BoltHole, BadSizesAreRefused) {
    const auto refused = [](const BoltHoleWish& w, std::string_view place) {
        const auto hole = boltHole(w);
        return !hole && hole.error().where == place;
    };
    for (const double bad : {0.0, -1.0, std::nan(""), std::numeric_limits<double>::infinity()}) {
        auto w = wish();
        w.rod = millimetres(bad);
        EXPECT_TRUE(refused(w, "rod")) << bad;
        w = wish();
        w.grip = millimetres(bad);
        EXPECT_TRUE(refused(w, "grip")) << bad;
    }
    auto w = wish();
    w.headRecess = Recess{millimetres(20), millimetres(5)};
    EXPECT_TRUE(refused(w, "head recess"));
    w = wish();
    w.pointRecess = Recess{millimetres(60), millimetres(0)};
    EXPECT_TRUE(refused(w, "point recess"));
    w = wish();
    w.rod = millimetres(0.3);
    w.fit = HoleFit::driven;
    EXPECT_TRUE(refused(w, "fit"));
}

}  // namespace
}  // namespace fayline
