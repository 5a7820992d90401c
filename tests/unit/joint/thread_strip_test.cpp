#include "joint/thread_strip.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace fayline;

namespace {

ThreadStripInput m12() {
    return {millimetres(12), millimetres(1.75), millimetres(10), megapascals(250),
            megapascals(250)};
}

}  // namespace

TEST(ThreadStrip, GrowsWithTheNutAndIsNilWithoutOne) {
    ThreadStripInput input = m12();
    const Force ten = threadStrip(input).reference;
    input.engaged = millimetres(20);
    EXPECT_NEAR(threadStrip(input).reference / ten, 2.0, 1e-12);
    input.engaged = {};
    EXPECT_EQ(threadStrip(input).reference, Force{});
}

TEST(ThreadStrip, TheWeakerThreadGoes) {
    ThreadStripInput input = m12();
    Trace trace;
    const LimitState bolt = threadStrip(input, &trace);
    EXPECT_EQ(trace.title, "Thread of the bolt stripped");
    EXPECT_EQ(bolt.reference,
              input.boltShear * boltStripArea(input.nominal, input.pitch, input.engaged));
    input.nutShear = megapascals(100);
    const LimitState nut = threadStrip(input, &trace);
    EXPECT_EQ(trace.title, "Thread of the nut stripped");
    EXPECT_EQ(nut.reference,
              input.nutShear * nutStripArea(input.nominal, input.pitch, input.engaged));
    EXPECT_LT(nut.reference, bolt.reference);
    EXPECT_EQ(std::get<Force>(trace.lines.back().value), nut.working);
}

TEST(ThreadStrip, HalfTheUltimateByTheMetalFactorAndSudden) {
    const LimitState state = threadStrip(m12());
    EXPECT_NEAR(state.working / state.reference, 1.0 / 5.0, 1e-12);
    EXPECT_EQ(state.apart->low, state.reference);
    EXPECT_FALSE(state.soft);
    EXPECT_FALSE(state.gives);
    EXPECT_EQ(state.kind, LimitStateKind::threadStrip);
}

// A nut of one diameter outlasts the rod: the rule of thumb the standard heights come from.
TEST(ThreadStrip, ANutOfOneDiameterOutlastsItsRod) {
    for (const double d_mm : {6.0, 12.0, 24.0}) {
        const Length d = millimetres(d_mm);
        const Length pitch = millimetres(d_mm == 6.0 ? 1.0 : d_mm == 12.0 ? 1.75 : 3.0);
        const double strip_mm2 = inSquareMillimetres(boltStripArea(d, pitch, d));
        const double stress_mm2 = 0.785398 * std::pow(d_mm - 0.9382 * inMillimetres(pitch), 2);
        EXPECT_GT(0.6 * strip_mm2, stress_mm2) << d_mm;
    }
}
