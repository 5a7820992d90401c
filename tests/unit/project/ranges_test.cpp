#include <gtest/gtest.h>

#include "project/fields.h"

using namespace fayline;

namespace {

Project twelveFrames() {
    Project project;
    project.frames.count = 12;
    project.bolts.count = 5;
    project.frame["F9A"].x = millimetres(3000);
    return project;
}

using Names = std::vector<std::string>;

Names expanded(const Project& project, const char* what) {
    const auto names = expandRange(project, what);
    EXPECT_TRUE(names) << names.error().line();
    return names.value_or(Names{});
}

}  // namespace

TEST(Ranges, FramesBetweenIncludeLetteredOnes) {
    EXPECT_EQ(expanded(twelveFrames(), "F8-F10.floor.kind"),
              (Names{"F8.floor.kind", "F9.floor.kind", "F9A.floor.kind", "F10.floor.kind"}));
    EXPECT_EQ(expanded(twelveFrames(), "F8-10.floor.kind").size(), 4U);
}

TEST(Ranges, Bolts) {
    EXPECT_EQ(expanded(twelveFrames(), "K.2-K.4.diameter"),
              (Names{"K.2.diameter", "K.3.diameter", "K.4.diameter"}));
    EXPECT_EQ(expanded(twelveFrames(), "K.3.diameter"), Names{"K.3.diameter"});
}

TEST(Ranges, WhatDoesNotExistIsAnError) {
    for (const char* name :
         {"F13.floor.kind", "F8-F13.floor.kind", "K.6.diameter", "K.4-K.9.diameter"}) {
        const auto names = expandRange(twelveFrames(), name);
        ASSERT_FALSE(names) << name;
        EXPECT_NE(names.error().what.find("there is no"), std::string::npos);
    }
    EXPECT_FALSE(expandRange(twelveFrames(), "F10-F8.floor.kind"));
    EXPECT_FALSE(expandRange(Project{}, "F1.floor.kind"));
}

TEST(Ranges, ARangeOfUnlikeThingsNamesThePlaceAsTyped) {
    const auto names = expandRange(twelveFrames(), "F8-K9.floor.kind");
    ASSERT_FALSE(names);
    EXPECT_EQ(names.error().what, "there is no frame K9");
}

TEST(Ranges, AFrameSetInLaterIsMadeByItsPlace) {
    EXPECT_TRUE(expandRange(twelveFrames(), "F4A.frame.x"));
    EXPECT_FALSE(expandRange(twelveFrames(), "F4A.floor.kind"));
    EXPECT_FALSE(expandRange(twelveFrames(), "F40A.frame.x"));
}

TEST(Titles, ReadAsPlainWords) {
    EXPECT_EQ(decisionTitle("K.5.diameter"), "ballast bolt K.5 diameter");
    EXPECT_EQ(decisionTitle("keel.sided"), "keel siding");
    EXPECT_EQ(decisionTitle("F17.P.arm.diameter"), "F17 port arm diameter");
    EXPECT_EQ(decisionTitle("F17.floor_bolt.count"), "F17 floor bolt number");
    EXPECT_EQ(stepTitle({{"K.5.diameter", std::nullopt, "5/8 in"}}),
              "ballast bolt K.5 diameter to 5/8 in");
    EXPECT_EQ(stepTitle({{"K.5.diameter", "5/8 in", std::nullopt}}),
              "ballast bolt K.5 diameter back to the rule");
    EXPECT_EQ(stepTitle({{"catalogue.wood.white_oak", std::nullopt, "x"},
                         {"keel.wood", std::nullopt, "white_oak"},
                         {"floors.wood", std::nullopt, "white_oak"}}),
              "keel wood to white oak and 1 more");
}
