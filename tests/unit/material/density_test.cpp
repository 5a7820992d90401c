#include "material/density.h"

#include <gtest/gtest.h>

namespace fayline {
namespace {

Figure<SpecificGravityGreen> green(double value, Standing standing = Standing::read) {
    return {SpecificGravityGreen{value}, standing, "table"};
}

TEST(Density, OvenDryFromGreenByHand) {
    // 0.60 / (1 - 0.265 x 0.60) = 0.60 / 0.841
    const auto dry = ovenDryFromGreen(green(0.60));
    EXPECT_NEAR(dry.value.value, 0.713436, 1e-6);
    EXPECT_EQ(dry.standing, Standing::derived);
    EXPECT_NE(dry.source.find("worked out from: table"), std::string::npos);
}

TEST(Density, TwelveFromGreenByHand) {
    // 0.45 / (1 - 0.265 x 0.6 x 0.45) = 0.45 / 0.92845
    EXPECT_NEAR(twelveFromGreen(green(0.45)).value.value, 0.484679, 1e-6);
}

TEST(Density, DryIsDenserAndBackAgainIsTheSame) {
    for (double g = 0.10; g < 1.2; g += 0.05) {
        const auto dry = ovenDryFromGreen(green(g));
        const auto twelve = twelveFromGreen(green(g));
        EXPECT_LT(g, twelve.value.value);
        EXPECT_LT(twelve.value.value, dry.value.value);
        EXPECT_NEAR(greenFromOvenDry(dry).value.value, g, 1e-12);
        EXPECT_NEAR(greenFromTwelve(twelve).value.value, g, 1e-12);
    }
}

TEST(Density, CharacteristicAndBack) {
    // 0.60 x 1120 / 1.2
    const Figure<SpecificGravityTwelve> twelve{SpecificGravityTwelve{0.60}, Standing::read, "t"};
    const auto density = characteristicFromTwelve(twelve);
    EXPECT_NEAR(inKilogramsPerCubicMetre(density.value.value), 560.0, 1e-9);
    EXPECT_NEAR(twelveFromCharacteristic(density).value.value, 0.60, 1e-12);
}

TEST(Density, WeakInputStaysWeak) {
    EXPECT_EQ(ovenDryFromGreen(green(0.5, Standing::fromMemory)).standing, Standing::fromMemory);
}

TEST(Density, AssignedValueWinsOverWorkedOnes) {
    Wood wood;
    EXPECT_FALSE(specificGravityOvenDry(wood));
    EXPECT_FALSE(specificGravityTwelve(wood));
    EXPECT_FALSE(characteristicDensity(wood));

    wood.ec5.density = {CharacteristicDensity{kilogramsPerCubicMetre(530.0)}, Standing::read, "d"};
    const double fromClass = specificGravityOvenDry(wood)->value.value;
    EXPECT_NEAR(fromClass, 0.604227, 1e-6);  // at 12 % 0.567857, green 0.520831

    wood.specificGravityTwelve = {SpecificGravityTwelve{0.68}, Standing::read, "t"};
    EXPECT_GT(specificGravityOvenDry(wood)->value.value, fromClass);
    EXPECT_EQ(characteristicDensity(wood)->standing, Standing::read);

    wood.specificGravityGreen = green(0.60);
    EXPECT_NEAR(specificGravityOvenDry(wood)->value.value, 0.713436, 1e-6);

    wood.us.specificGravity = {SpecificGravityOvenDry{0.73}, Standing::read, "assigned"};
    EXPECT_EQ(specificGravityOvenDry(wood)->value.value, 0.73);
    EXPECT_EQ(specificGravityOvenDry(wood)->standing, Standing::read);
}

TEST(Density, OneBasisIsEnoughForAllThree) {
    Wood wood;
    wood.us.specificGravity = {SpecificGravityOvenDry{0.50}, Standing::read, "assigned"};
    ASSERT_TRUE(specificGravityTwelve(wood));
    ASSERT_TRUE(characteristicDensity(wood));
    EXPECT_EQ(characteristicDensity(wood)->standing, Standing::derived);
}

}  // namespace
}  // namespace fayline
