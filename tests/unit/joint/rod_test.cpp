#include "joint/rod.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace fayline;

namespace {

RodInput sample() {
    RodInput rod;
    rod.root = millimetres(18.76);
    rod.yield = megapascals(262);
    rod.ultimate = megapascals(483);
    return rod;
}

}  // namespace

TEST(Rod, TensionIsTheSmallerOfYieldAndHalfUltimateOverTheFactor) {
    const double area_mm2 = 3.14159265358979 / 4 * 18.76 * 18.76;
    const auto state = rodTension(sample());
    EXPECT_NEAR(inNewtons(state.working), 241.5 * area_mm2 / 2.5, 1e-6);
    EXPECT_NEAR(inNewtons(state.gives->low), 262 * area_mm2, 1e-6);
    EXPECT_NEAR(inNewtons(state.apart->low), 483 * area_mm2, 1e-6);
    auto soft = sample();
    soft.yield = megapascals(103);
    EXPECT_NEAR(inNewtons(rodTension(soft).working), 103 * area_mm2 / 2.5, 1e-6);
}

TEST(Rod, CorrosionComesOffTheRadius) {
    auto rod = sample();
    rod.corrosion = millimetres(0.5);
    EXPECT_NEAR(inSquareMillimetres(netArea(rod)), 3.14159265358979 / 4 * 17.76 * 17.76, 1e-9);
    rod.corrosion = millimetres(12);
    EXPECT_EQ(netArea(rod), Area{});
    EXPECT_FALSE(rodTension(rod).outside.empty());
    EXPECT_EQ(rodTension(rod).working, Force{});
}

TEST(Rod, PureTensionCombinedEqualsTension) {
    const auto combined = rodCombined(sample(), newtons(1000), Force{});
    ASSERT_TRUE(combined);
    EXPECT_NEAR(inNewtons(combined->working), inNewtons(rodTension(sample()).working), 1e-9);
}

TEST(Rod, ShearCountsAsRootThree) {
    const auto combined = rodCombined(sample(), Force{}, newtons(1000));
    ASSERT_TRUE(combined);
    EXPECT_NEAR(combined->working / rodTension(sample()).working, 1 / std::sqrt(3.0), 1e-12);
    // The load that is just met, put back in, meets the condition exactly.
    const auto slanted = rodCombined(sample(), newtons(3000), newtons(1000));
    const double along = inNewtons(slanted->working) / std::hypot(3000.0, 1000.0);
    const double equivalent_N = along * std::sqrt(3000.0 * 3000.0 + 3 * 1000.0 * 1000.0);
    EXPECT_NEAR(equivalent_N, inNewtons(rodTension(sample()).working), 1e-6);
}

TEST(Rod, NoLoadNoCombinedResult) {
    EXPECT_FALSE(rodCombined(sample(), Force{}, Force{}));
}

TEST(Rod, TraceHoldsTheNumbersOfTheResult) {
    Trace trace;
    const auto state = rodTension(sample(), &trace);
    EXPECT_EQ(std::get<Force>(trace.lines.back().value), state.working);
    EXPECT_EQ(trace.clause, state.clause);
}
