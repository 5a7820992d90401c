// Rows of bolts and drifts along a joint of the backbone, worked by hand.

#include "layout/backbone.h"

#include <gtest/gtest.h>

using namespace fayline;

namespace {

BackboneJoint scarph(FasteningKind kind, int count) {
    BackboneJoint joint;
    joint.name = "scarph";
    joint.foreX = metres(1);
    joint.foreHeight = metres(0.5);
    joint.aftX = metres(2);
    joint.aftHeight = metres(0.5);
    joint.upper = "stem";
    joint.lower = "keel";
    joint.choice.kind = kind;
    joint.choice.count = count;
    joint.choice.diameter = millimetres(16);
    joint.choice.length = millimetres(300);
    joint.choice.washerThickness = millimetres(4);
    return joint;
}

}  // namespace

TEST(Backbone, BoltsStandSquareAndEvenOnTheJoint) {
    const auto out = layOutBackbone({{scarph(FasteningKind::bolt, 4)}, {}});
    ASSERT_EQ(out.holes.size(), 4U);
    EXPECT_TRUE(out.findings.empty());
    for (int i = 0; i < 4; ++i) {
        const Hole& hole = out.holes[static_cast<std::size_t>(i)];
        EXPECT_EQ(hole.id, "B.scarph." + std::to_string(i + 1));
        EXPECT_NEAR(inMillimetres(hole.start.x), 1125 + 250 * i, 1e-9);
        EXPECT_NEAR(inMillimetres(hole.end.x), 1125 + 250 * i, 1e-9);
        EXPECT_NEAR(inMillimetres(hole.start.z + hole.end.z) / 2, 500, 1e-9);
        EXPECT_NEAR(inMillimetres(hole.grip), 300, 1e-9);
        EXPECT_GT(hole.start.z, hole.end.z);
    }
}

TEST(Backbone, NoTwoJointsShareAMark) {
    BackboneJoint second = scarph(FasteningKind::drift, 3);
    second.name = "sternpost";
    second.foreX += metres(4);
    second.aftX += metres(4);
    const auto out = layOutBackbone({{scarph(FasteningKind::bolt, 2), second}, {}});
    std::vector<std::string> marks;
    for (const Hole& hole : out.holes) marks.push_back(hole.mark);
    EXPECT_EQ(marks, (std::vector<std::string>{"J1.1", "J1.2", "J2.1", "J2.2", "J2.3"}));
}

TEST(Backbone, DriftsSlantInTurn) {
    const auto out = layOutBackbone({{scarph(FasteningKind::drift, 2)}, {}});
    ASSERT_EQ(out.holes.size(), 2U);
    // 300 mm at five degrees: 26.1 mm along.
    EXPECT_NEAR(inMillimetres(out.holes[0].start.x - out.holes[0].end.x), 26.147, 0.01);
    EXPECT_NEAR(inMillimetres(out.holes[1].start.x - out.holes[1].end.x), -26.147, 0.01);
}

// 16 of 16 mm on 1 m: 64 mm from each end leaves 872 mm for 15 spaces of 58.1, which want 64.
TEST(Backbone, CrowdedRowsSayHowManyFit) {
    const auto crowded = layOutBackbone({{scarph(FasteningKind::bolt, 16)}, {}});
    ASSERT_EQ(crowded.findings.size(), 1U);
    const Finding& finding = crowded.findings.front();
    EXPECT_EQ(finding.kind, "spacing");
    EXPECT_NEAR(inMillimetres(*finding.missing), 64 - 872.0 / 15, 1e-9);
    EXPECT_EQ(finding.cure, std::vector<std::string>{"B.scarph.count=14"});
    EXPECT_TRUE(layOutBackbone({{scarph(FasteningKind::bolt, 14)}, {}}).findings.empty());
    const auto twelve = layOutBackbone({{scarph(FasteningKind::bolt, 12)}, {}});
    EXPECT_TRUE(twelve.findings.empty());
    EXPECT_NEAR(inMillimetres(twelve.holes.front().start.x), 1064, 1e-9);
    EXPECT_NEAR(inMillimetres(twelve.holes.back().start.x), 1936, 1e-9);
}

TEST(Backbone, AJointTooShortForOneSaysSo) {
    BackboneJoint joint = scarph(FasteningKind::bolt, 1);
    joint.aftX = joint.foreX + millimetres(100);
    const auto out = layOutBackbone({{joint}, {}});
    ASSERT_EQ(out.findings.size(), 1U);
    EXPECT_EQ(out.findings.front().kind, "end");
    EXPECT_NEAR(inMillimetres(*out.findings.front().missing), 14, 1e-9);
    EXPECT_EQ(out.findings.front().cure, std::vector<std::string>{"B.scarph.diameter=12 mm"});
    joint.aftX = joint.foreX;
    const auto none = layOutBackbone({{joint}, {}});
    EXPECT_TRUE(none.holes.empty());
    ASSERT_EQ(none.findings.size(), 1U);
}

TEST(Backbone, AnUprightJointIsNumberedFromBelowWhicheverEndIsFirst) {
    BackboneJoint joint = scarph(FasteningKind::bolt, 3);
    joint.aftX = joint.foreX;
    joint.foreHeight = metres(1.5);
    joint.aftHeight = metres(0.5);
    const auto out = layOutBackbone({{joint}, {}});
    ASSERT_EQ(out.holes.size(), 3U);
    EXPECT_LT(out.holes[0].start.z, out.holes[2].start.z);
    EXPECT_EQ(out.holes[0].start.z, out.holes[0].end.z);
    EXPECT_LT(out.holes[0].start.x, out.holes[0].end.x);
}

TEST(Backbone, ABoltThatMeetsAnotherHasACureThatWorks) {
    Hole bolt;
    bolt.id = "K.1";
    bolt.diameter = millimetres(22);
    bolt.start = {metres(1.130), Length{}, metres(0.9)};
    bolt.end = {metres(1.130), Length{}, metres(0.1)};
    const auto met = layOutBackbone({{scarph(FasteningKind::bolt, 4)}, {bolt}});
    ASSERT_EQ(met.findings.size(), 1U);
    const Finding& finding = met.findings.front();
    EXPECT_EQ(finding.kind, "clash");
    EXPECT_EQ(finding.holes, (std::vector<std::string>{"B.scarph.1", "K.1"}));
    // 11 mm and 8 mm of radius, 5 mm between the middles.
    EXPECT_NEAR(inMillimetres(*finding.missing), 14, 1e-6);
    ASSERT_EQ(finding.cure, std::vector<std::string>{"B.scarph.count=5"});
    EXPECT_TRUE(layOutBackbone({{scarph(FasteningKind::bolt, 5)}, {bolt}}).findings.empty());
}
