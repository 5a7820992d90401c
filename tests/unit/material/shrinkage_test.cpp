#include "material/shrinkage.h"

#include <gtest/gtest.h>

namespace fayline {
namespace {

TEST(Shrinkage, CoefficientByHand) {
    // 10.5 %: 1 / (30 / 0.105 - 30 + 10) for each per cent
    EXPECT_NEAR(dimensionalChangeCoefficient(0.105) / 100.0, 0.0037634, 1e-7);
}

TEST(Shrinkage, GreenToOvenDryIsTheTotal) {
    const auto dry = sizeAtMoisture(millimetres(100.0), 0.105, 0.30, 0.0);
    EXPECT_NEAR(inMillimetres(dry), 89.5, 1e-9);
}

TEST(Shrinkage, NothingMovesAboveFibreSaturation) {
    EXPECT_EQ(sizeAtMoisture(millimetres(100.0), 0.105, 0.80, 0.35), millimetres(100.0));
    EXPECT_EQ(sizeAtMoisture(millimetres(100.0), 0.105, 0.80, 0.12),
              sizeAtMoisture(millimetres(100.0), 0.105, 0.30, 0.12));
}

TEST(Shrinkage, ThereAndBackIsTheSameSize) {
    const auto there = sizeAtMoisture(millimetres(250.0), 0.098, 0.25, 0.12);
    EXPECT_LT(there, millimetres(250.0));
    EXPECT_NEAR(inMillimetres(sizeAtMoisture(there, 0.098, 0.12, 0.25)), 250.0, 1e-9);
}

TEST(Shrinkage, CoefficientAgreesWithSizeInItsOwnRange) {
    for (const double total : {0.024, 0.056, 0.076, 0.105}) {
        const Length at10 = millimetres(100.0);
        const Length at14 = sizeAtMoisture(at10, total, 0.10, 0.14);
        const double moved = inMillimetres(at14 - at10);
        EXPECT_NEAR(moved, 100.0 * dimensionalChangeCoefficient(total) * 0.04, 0.002 * moved);
    }
}

}  // namespace
}  // namespace fayline
