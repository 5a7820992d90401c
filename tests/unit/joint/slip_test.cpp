#include "joint/slip.h"

#include <gtest/gtest.h>

#include <cmath>

#include "any_joint.h"

using namespace fayline;
using namespace fayline::test;

namespace {

double perMillimetre(ForcePerLength value) {
    return inNewtonsPerMillimetre(value);
}

}  // namespace

// By hand: √(640·430) = 524.6; 524.6^1.5·6/23 = 3134.4 N/mm.
TEST(Slip, ByHand) {
    EXPECT_NEAR(perMillimetre(slipModulusEc5(kilogramsPerCubicMetre(640),
                                             kilogramsPerCubicMetre(430), millimetres(6))),
                3134.4, 0.5);
    // 400^1.5·4^0.8/30 = 8000·3.0314/30.
    EXPECT_NEAR(perMillimetre(slipModulusDriven(kilogramsPerCubicMetre(400),
                                                kilogramsPerCubicMetre(400), millimetres(4))),
                8000 * std::pow(4.0, 0.8) / 30, 1e-6);
}

TEST(Slip, EitherMemberFirst) {
    const Density a = kilogramsPerCubicMetre(350), b = kilogramsPerCubicMetre(700);
    EXPECT_EQ(slipModulusEc5(a, b, millimetres(10)), slipModulusEc5(b, a, millimetres(10)));
    EXPECT_LT(slipModulusEc5(a, a, millimetres(10)), slipModulusEc5(a, b, millimetres(10)));
    EXPECT_LT(slipModulusEc5(a, a, millimetres(10)), slipModulusEc5(a, a, millimetres(11)));
}

TEST(Slip, WetWoodWidensTheBracketOnItsSoftSide) {
    Joint joint = through(2);
    const auto dry = slipBracket(joint, 0);
    joint.service = Service::wet;
    const auto wet = slipBracket(joint, 0);
    ASSERT_TRUE(dry && wet);
    EXPECT_EQ(dry->stiff, wet->stiff);
    EXPECT_NEAR(dry->soft / dry->stiff, 2.0 / 3.0, 1e-12);
    EXPECT_NEAR(wet->soft / dry->soft, 0.7, 1e-12);
    EXPECT_NE(sourceOf(*wet).find("judgement"), std::string_view::npos);
    EXPECT_EQ(sourceOf(*dry).find("judgement"), std::string_view::npos);
    // ρ_k 440, mean 528; half an inch.
    EXPECT_NEAR(perMillimetre(dry->stiff), std::pow(528.0, 1.5) * 12.7 / 23.0, 1e-6);
}

TEST(Slip, NothingWithoutADensityOrAPlane) {
    Joint joint = through(2);
    EXPECT_FALSE(slipBracket(joint, 1));
    joint.members[1].gravity.reset();
    joint.members[1].gravityTwelve.reset();
    joint.members[1].density.reset();
    EXPECT_FALSE(slipBracket(joint, 0));
}
