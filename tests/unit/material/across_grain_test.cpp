#include "material/across_grain.h"

#include <gtest/gtest.h>

namespace fayline {
namespace {

Figure<Stress> mpa(double value) {
    return {megapascals(value), Standing::read, "table"};
}

Wood oak() {
    Wood wood;
    wood.family = WoodFamily::hardwood;
    wood.twelve.modulusOfElasticity = mpa(12300.0);
    wood.green.modulusOfElasticity = mpa(8600.0);
    wood.modulusRatioTangential = {0.072, Standing::read, "ratios"};
    wood.modulusRatioRadial = {0.163, Standing::read, "ratios"};
    return wood;
}

TEST(AcrossGrain, RatioTimesModulusByHand) {
    const auto wood = oak();
    const auto tangential = modulusAcrossGrain(wood, AcrossGrain::tangential, WoodMoisture::twelve);
    ASSERT_TRUE(tangential);
    EXPECT_NEAR(inMegapascals(tangential->value), 0.072 * 1.1 * 12300.0, 1e-6);
    EXPECT_EQ(tangential->standing, Standing::derived);
    const auto radial = modulusAcrossGrain(wood, AcrossGrain::radial, WoodMoisture::twelve);
    EXPECT_NEAR(inMegapascals(radial->value), 0.163 * 1.1 * 12300.0, 1e-6);
}

TEST(AcrossGrain, UnknownDirectionTakesTheSofter) {
    const auto wood = oak();
    EXPECT_EQ(modulusAcrossGrain(wood, AcrossGrain::unknown, WoodMoisture::twelve),
              modulusAcrossGrain(wood, AcrossGrain::tangential, WoodMoisture::twelve));
}

TEST(AcrossGrain, WetTimberIsSofter) {
    const auto wood = oak();
    for (const auto direction : {AcrossGrain::radial, AcrossGrain::tangential}) {
        EXPECT_LT(modulusAcrossGrain(wood, direction, WoodMoisture::green)->value,
                  modulusAcrossGrain(wood, direction, WoodMoisture::twelve)->value);
    }
}

TEST(AcrossGrain, WithoutARatioTheClassRuleStepsIn) {
    auto wood = oak();
    wood.modulusRatioRadial.reset();
    wood.modulusRatioTangential.reset();
    const auto hard = modulusAcrossGrain(wood, AcrossGrain::radial, WoodMoisture::twelve);
    EXPECT_NEAR(inMegapascals(hard->value), 12300.0 / 15.0, 1e-6);
    wood.family = WoodFamily::softwood;
    const auto soft = modulusAcrossGrain(wood, AcrossGrain::radial, WoodMoisture::twelve);
    EXPECT_NEAR(inMegapascals(soft->value), 12300.0 / 30.0, 1e-6);
    wood.green.modulusOfElasticity.reset();
    EXPECT_FALSE(modulusAcrossGrain(wood, AcrossGrain::radial, WoodMoisture::green));
}

TEST(AcrossGrain, ClassValueServesWhereNoBendingModulusIsKnown) {
    Wood wood;
    wood.ec5.modulusPerpendicular = mpa(730.0);
    EXPECT_EQ(modulusAcrossGrain(wood, AcrossGrain::unknown, WoodMoisture::twelve)->value,
              megapascals(730.0));
    EXPECT_FALSE(modulusAcrossGrain(wood, AcrossGrain::unknown, WoodMoisture::green));
}

TEST(CompressionAcross, EditionsOfEn338DifferForHardwoodOnly) {
    const CharacteristicDensity oakDensity{kilogramsPerCubicMetre(530.0)};
    EXPECT_NEAR(inMegapascals(compressionPerpendicularEn338(WoodFamily::hardwood, oakDensity,
                                                            En338Edition::e2009)),
                7.95, 1e-9);
    EXPECT_NEAR(inMegapascals(compressionPerpendicularEn338(WoodFamily::hardwood, oakDensity,
                                                            En338Edition::e2016)),
                5.30, 1e-9);
    for (const auto edition : {En338Edition::e2009, En338Edition::e2016}) {
        EXPECT_NEAR(
            inMegapascals(compressionPerpendicularEn338(WoodFamily::softwood, oakDensity, edition)),
            3.71, 1e-9);
    }
}

TEST(CompressionAcross, UsFallsBackToTheGreenMeanAndSaysSo) {
    Wood wood;
    EXPECT_FALSE(compressionPerpendicularUs(wood));
    wood.green.compressionPerpendicular = mpa(4.6);
    const auto mean = compressionPerpendicularUs(wood);
    ASSERT_TRUE(mean);
    EXPECT_EQ(mean->standing, Standing::derived);
    EXPECT_NE(mean->source.find("no assigned value"), std::string::npos);
    wood.us.compressionPerpendicular = mpa(5.5);
    EXPECT_EQ(compressionPerpendicularUs(wood)->value, megapascals(5.5));
}

TEST(CompressionAcross, Ec5FallsBackToDensity) {
    Wood wood;
    wood.family = WoodFamily::softwood;
    EXPECT_FALSE(compressionPerpendicularEc5(wood));
    wood.specificGravityTwelve = {SpecificGravityTwelve{0.48}, Standing::read, "t"};
    // 0.007 x 0.48 x 1120 / 1.2
    EXPECT_NEAR(inMegapascals(compressionPerpendicularEc5(wood)->value), 3.136, 1e-9);
    EXPECT_EQ(compressionPerpendicularEc5(wood)->standing, Standing::derived);
}

TEST(CompressionAcross, EstimatesGrowWithGravityAndAreNeverMoreThanMemory) {
    double before = 0.0;
    for (double g = 0.3; g < 1.0; g += 0.1) {
        const auto estimate = estimatedCompressionPerpendicularGreen(
            WoodFamily::hardwood, {SpecificGravityGreen{g}, Standing::read, "t"});
        EXPECT_GT(inMegapascals(estimate.value), before);
        EXPECT_EQ(estimate.standing, Standing::fromMemory);
        before = inMegapascals(estimate.value);
    }
    // 8.8 x 0.5^1.53, 16.5 x 0.5^1.57
    const auto soft = estimatedCompressionPerpendicularGreen(
        WoodFamily::softwood, {SpecificGravityGreen{0.5}, Standing::read, "t"});
    EXPECT_NEAR(inMegapascals(soft.value), 3.0473, 0.0001);
    const auto dry = estimatedCompressionPerpendicularTwelve(
        WoodFamily::softwood, {SpecificGravityTwelve{0.5}, Standing::judgement, "t"});
    EXPECT_NEAR(inMegapascals(dry.value), 5.5573, 0.0001);
    EXPECT_EQ(dry.standing, Standing::judgement);
}

}  // namespace
}  // namespace fayline
