#include "material/standing.h"

#include <gtest/gtest.h>

#include "material/metal.h"
#include "material/wood.h"

namespace fayline {
namespace {

TEST(Standing, GoesToTextAndBack) {
    for (const auto standing : {Standing::read, Standing::derived, Standing::commonPractice,
                                Standing::fromMemory, Standing::judgement}) {
        EXPECT_EQ(standingFromText(standingText(standing)), standing);
    }
    EXPECT_EQ(standingText(Standing::commonPractice), "common_practice");
    EXPECT_EQ(standingText(Standing::fromMemory), "from_memory");
    EXPECT_FALSE(standingFromText("Read"));
    EXPECT_FALSE(standingFromText(""));
}

TEST(Standing, WorkingNeverImprovesIt) {
    EXPECT_EQ(afterWorking(Standing::read), Standing::derived);
    EXPECT_EQ(afterWorking(Standing::derived), Standing::derived);
    EXPECT_EQ(afterWorking(Standing::fromMemory), Standing::fromMemory);
    EXPECT_EQ(afterWorking(Standing::judgement), Standing::judgement);
}

TEST(Names, GoToTextAndBack) {
    for (const auto family : {WoodFamily::softwood, WoodFamily::hardwood}) {
        EXPECT_EQ(woodFamilyFromText(woodFamilyText(family)), family);
    }
    for (const auto moisture : {WoodMoisture::green, WoodMoisture::twelve}) {
        EXPECT_EQ(woodMoistureFromText(woodMoistureText(moisture)), moisture);
    }
    for (const auto family :
         {MetalFamily::bronze, MetalFamily::copper, MetalFamily::nickel, MetalFamily::steel,
          MetalFamily::stainless, MetalFamily::iron, MetalFamily::lead}) {
        EXPECT_EQ(metalFamilyFromText(metalFamilyText(family)), family);
    }
    EXPECT_FALSE(metalFamilyFromText("brass"));
}

}  // namespace
}  // namespace fayline
