#include "material/design_stress.h"

#include <gtest/gtest.h>

using namespace fayline;

namespace {

Wood oak() {
    Wood wood;
    wood.family = WoodFamily::hardwood;
    wood.green.modulusOfRupture = {megapascals(57), Standing::read, "handbook"};
    wood.green.shear = {megapascals(8.6), Standing::read, "handbook"};
    wood.ec5.bending = {megapascals(30), Standing::read, "class"};
    return wood;
}

}  // namespace

// 57 · (1 − 1.645 · 0.16) / 2.3; 0.55 of it; 8.6 · (1 − 1.645 · 0.14) / 4.5.
TEST(DesignStress, FromClearWoodByHand) {
    EXPECT_NEAR(inMegapascals(bendingUs(oak())->value), 57 * 0.7368 / 2.3, 1e-9);
    EXPECT_NEAR(inMegapascals(tensionUs(oak())->value), 0.55 * 57 * 0.7368 / 2.3, 1e-9);
    EXPECT_NEAR(inMegapascals(shearUs(oak())->value), 8.6 * 0.7697 / 4.5, 1e-9);
    EXPECT_NEAR(inMegapascals(tensionEc5(oak())->value), 18, 1e-9);
    EXPECT_EQ(bendingUs(oak())->standing, Standing::fromMemory);
    EXPECT_NE(tensionUs(oak())->source.find("ASTM D2555"), std::string::npos);
}

TEST(DesignStress, AssignedShearStandsFirstAndNothingComesFromNothing) {
    Wood wood = oak();
    wood.us.shear = {megapascals(1.2), Standing::read, "assigned"};
    EXPECT_EQ(shearUs(wood)->source, "assigned");
    EXPECT_FALSE(bendingUs({}) || tensionUs({}) || shearUs({}) || tensionEc5({}));
}

TEST(DesignStress, SlopeOfGrain) {
    EXPECT_EQ(slopeOfGrainRatio(20), 1.0);
    EXPECT_EQ(slopeOfGrainRatio(100), 1.0);
    EXPECT_NEAR(slopeOfGrainRatio(12), 0.69, 1e-12);
    EXPECT_NEAR(slopeOfGrainRatio(7), 0.465, 1e-12);
    EXPECT_NEAR(slopeOfGrainRatio(3), 0.20, 1e-12);
    for (double run = 1; run < 25; run += 0.25)
        EXPECT_LE(slopeOfGrainRatio(run), slopeOfGrainRatio(run + 0.25));
}
