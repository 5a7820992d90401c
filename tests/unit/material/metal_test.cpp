#include "material/metal.h"

#include <gtest/gtest.h>

namespace fayline {
namespace {

Figure<Stress> mpa(double value, Standing standing = Standing::read) {
    return {megapascals(value), standing, "table"};
}

TEST(Metal, GuaranteedBeforeTypical) {
    Metal metal;
    EXPECT_FALSE(designYield(metal));
    EXPECT_FALSE(bendingYield(metal));
    metal.yieldTypical = mpa(380.0);
    EXPECT_NE(designYield(metal)->source.find("nothing guaranteed"), std::string::npos);
    metal.yieldMin = mpa(262.0);
    EXPECT_EQ(designYield(metal)->value, megapascals(262.0));
    EXPECT_EQ(designYield(metal)->source, "table");
}

TEST(Metal, BendingYieldIsTheMeanAndTakesTheWeakerStanding) {
    Metal metal;
    metal.yieldMin = mpa(262.0);
    EXPECT_FALSE(bendingYield(metal));
    metal.ultimateMin = mpa(482.0, Standing::fromMemory);
    const auto bending = bendingYield(metal);
    ASSERT_TRUE(bending);
    EXPECT_NEAR(inMegapascals(bending->value), 372.0, 1e-9);
    EXPECT_EQ(bending->standing, Standing::fromMemory);
}

TEST(Metal, ShearFromUltimateOnlyWhereNonePublished) {
    Metal metal;
    EXPECT_FALSE(designShear(metal));
    metal.ultimateMin = mpa(500.0);
    EXPECT_NEAR(inMegapascals(designShear(metal)->value), 300.0, 1e-9);
    EXPECT_EQ(designShear(metal)->standing, Standing::derived);
    metal.shear = mpa(396.0);
    EXPECT_EQ(designShear(metal)->value, megapascals(396.0));
}

}  // namespace
}  // namespace fayline
