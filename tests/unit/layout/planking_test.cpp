// Butts, plank ends, garboard and backbone rows on a box of a hull, worked by hand.

#include "layout/planking.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "layout/backbone.h"

using namespace fayline;

namespace {

/// A box 4 m broad and 1 m deep: frames every half metre, each with strakes of 250 mm up its side.
PlankLine boxLine(const std::string& id, double x_m, int strakes) {
    Section section;
    section.x = metres(x_m);
    section.points = {{Length{}, Length{}}, {metres(2), Length{}}, {metres(2), metres(1)}};
    PlankLine line;
    line.frame = id;
    line.curve = std::make_shared<const FrameCurve>(*FrameCurve::above(section, std::nullopt));
    for (int k = 0; k <= strakes; ++k)
        line.seams.push_back(line.curve->girth() * (static_cast<double>(k) / strakes));
    line.overKeel = true;
    return line;
}

FasteningChoice screw(int count) {
    FasteningChoice choice;
    choice.count = count;
    choice.gauge = 14;
    choice.diameter = millimetres(6);
    choice.root = millimetres(4);
    choice.length = millimetres(50);
    choice.metal = "c65100_h02";
    return choice;
}

PlankingInput box(int frames, int strakes) {
    PlankingInput in;
    for (int i = 0; i < frames; ++i)
        in.frames.push_back(boxLine("F" + std::to_string(i + 1), 0.5 * i, strakes));
    in.planking = millimetres(25);
    in.block = millimetres(25);
    return in;
}

}  // namespace

TEST(Butts, NoneWithoutALongestPlank) {
    std::vector<Finding> findings;
    EXPECT_TRUE(setOutButts(box(21, 12), findings).empty());
}

// 20 bays of 0.5 m are 10 m of strake; planks of 4 m.
TEST(Butts, NoPlankIsTooLongAndNeighboursAreShifted) {
    PlankingInput in = box(21, 12);
    in.longest = metres(4);
    std::vector<Finding> findings;
    const auto butts = setOutButts(in, findings);
    EXPECT_TRUE(findings.empty());
    std::map<int, std::set<std::size_t>> byStrake;
    for (const Butt& butt : butts) byStrake[butt.strake].insert(butt.bay);
    ASSERT_EQ(byStrake.size(), 12U);
    for (const auto& [strake, bays] : byStrake) {
        double from_m = 0;
        for (const std::size_t bay : bays) {
            const double at_m = 0.5 * (static_cast<double>(bay) + 0.5);
            EXPECT_LE(at_m - from_m, 4.0 + 1e-9) << strake;
            from_m = at_m;
        }
        EXPECT_LE(10.0 - from_m, 4.0 + 1e-9) << strake;
        for (const std::size_t bay : bays) {
            for (int back = 1; back <= 3; ++back) {
                if (!byStrake.contains(strake - back)) continue;
                for (const std::size_t other : byStrake[strake - back]) {
                    EXPECT_NE(bay, other) << strake;
                    if (back == 1)
                        EXPECT_GE(std::max(bay, other) - std::min(bay, other), 3U) << strake;
                }
            }
        }
    }
    std::set<std::string> ids;
    for (const Butt& butt : butts) EXPECT_TRUE(ids.insert(butt.id).second);
}

TEST(Butts, AStrakeThatCannotKeepTheShiftSaysSo) {
    PlankingInput in = box(21, 12);
    in.longest = metres(1.2);
    std::vector<Finding> findings;
    setOutButts(in, findings);
    ASSERT_FALSE(findings.empty());
    EXPECT_EQ(findings.front().kind, "butt");
}

TEST(Planking, ButtsTakeTheirNumberInEachPlankEndOnBothSides) {
    PlankingInput in = box(21, 4);
    in.longest = metres(4);
    in.butt = screw(3);
    std::vector<Finding> findings;
    const std::size_t butts = setOutButts(in, findings).size();
    ASSERT_GT(butts, 0U);
    EXPECT_EQ(layOutPlanking(in).holes.size(), butts * 2 * 3 * 2);
}

TEST(Planking, EndsAndGarboardAreCountedAndMirrored) {
    PlankingInput in = box(5, 4);
    in.hood = screw(3);
    in.fore = boxLine("F1", -0.4, 4);
    in.aft = boxLine("F5", 2.4, 4);
    in.garboard = screw(2);
    const auto out = layOutPlanking(in);
    const auto count = [&](const char* group) {
        return std::count_if(out.holes.begin(), out.holes.end(),
                             [&](const Hole& hole) { return hole.group == group; });
    };
    EXPECT_EQ(count("hood"), 2 * 2 * 4 * 3);
    EXPECT_EQ(count("garboard"), 4 * 2 * 2);
    std::set<std::string> ids;
    std::map<std::string, Point> port;
    for (const Hole& hole : out.holes) {
        EXPECT_TRUE(ids.insert(hole.id).second) << hole.id;
        EXPECT_EQ(hole.metal, "c65100_h02");
        EXPECT_FALSE(hole.steps.empty());
        if (hole.side == "port") port[hole.id] = hole.start;
    }
    for (const Hole& hole : out.holes) {
        if (hole.side != "starboard") continue;
        std::string twin = hole.id;
        twin.replace(twin.find(".S."), 3, ".P.");
        ASSERT_TRUE(port.contains(twin)) << twin;
        EXPECT_EQ(port[twin].x, hole.start.x);
        EXPECT_EQ(port[twin].y, -hole.start.y);
        EXPECT_EQ(port[twin].z, hole.start.z);
    }
}

TEST(Planking, NothingDecidedOrNoFramesPlacesNothing) {
    EXPECT_TRUE(layOutPlanking(box(5, 4)).holes.empty());
    EXPECT_TRUE(layOutPlanking({}).holes.empty());
    PlankingInput one = box(1, 1);
    one.longest = metres(4);
    one.butt = one.garboard = screw(2);
    EXPECT_TRUE(layOutPlanking(one).holes.empty());
}

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

TEST(Backbone, DriftsSlantInTurn) {
    const auto out = layOutBackbone({{scarph(FasteningKind::drift, 2)}, {}});
    ASSERT_EQ(out.holes.size(), 2U);
    // 300 mm at five degrees: 26.1 mm along.
    EXPECT_NEAR(inMillimetres(out.holes[0].start.x - out.holes[0].end.x), 26.147, 0.01);
    EXPECT_NEAR(inMillimetres(out.holes[1].start.x - out.holes[1].end.x), -26.147, 0.01);
}

TEST(Backbone, CrowdedRowsAndMeetingBoltsAreFound) {
    const auto crowded = layOutBackbone({{scarph(FasteningKind::bolt, 12)}, {}});
    ASSERT_FALSE(crowded.findings.empty());
    EXPECT_EQ(crowded.findings.front().kind, "spacing");
    Hole bolt;
    bolt.id = "K.1";
    bolt.diameter = millimetres(22);
    bolt.start = {metres(1.130), Length{}, metres(0.9)};
    bolt.end = {metres(1.130), Length{}, metres(0.1)};
    const auto met = layOutBackbone({{scarph(FasteningKind::bolt, 4)}, {bolt}});
    ASSERT_EQ(met.findings.size(), 1U);
    EXPECT_EQ(met.findings.front().kind, "clash");
    EXPECT_EQ(met.findings.front().holes, (std::vector<std::string>{"B.scarph.1", "K.1"}));
    // 11 mm and 8 mm of radius, 5 mm between the middles.
    EXPECT_NEAR(inMillimetres(*met.findings.front().missing), 14, 1e-6);
}
