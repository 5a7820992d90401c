// Butts, plank ends and garboard on a box of a hull, worked by hand.

#include "layout/planking.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

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
    line.seat = GarboardSeat{"keel", metres(2), std::nullopt, std::nullopt};
    return line;
}

/// Places a quarter apart across a strake that ends square at its own section.
std::vector<EndSpot> endLine(const FrameCurve& curve, Length from, Length to) {
    std::vector<EndSpot> line;
    for (int i = 0; i <= 4; ++i)
        line.push_back({curve.x(), curve.x(), curve.at(from + (i / 4.0) * (to - from))});
    return line;
}

/// The box's ends as flat as its sections: at x, with the same strakes.
std::shared_ptr<const PlankEnds> boxEnds(const std::string& frame, double x_m, int strakes) {
    const PlankLine line = boxLine(frame, x_m, strakes);
    PlankEnds ends;
    ends.frame = frame;
    for (std::size_t k = 1; k < line.seams.size(); ++k)
        ends.strakes.push_back({k < 2, endLine(*line.curve, line.seams[k - 1], line.seams[k])});
    return std::make_shared<const PlankEnds>(ends);
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
                    if (back == 1) {
                        EXPECT_GE(std::max(bay, other) - std::min(bay, other), 3U) << strake;
                    }
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
    in.fore = boxEnds("F1", -0.4, 4);
    in.aft = boxEnds("F5", 2.4, 4);
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
        if (hole.group == "hood") {
            // Two diameters apart along the hull, so that points from both sides pass each other.
            EXPECT_NEAR(std::abs(inMillimetres(port[twin].x - hole.start.x)), 12, 1e-9);
        } else {
            EXPECT_EQ(port[twin].x, hole.start.x);
        }
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

// The strake runs on past the end frames: 0.8 m and 0.6 m more.
TEST(Butts, TheHullsEndsCountInTheLengthOfPlank) {
    PlankingInput in = box(9, 1);  // 4 m from frame to frame
    in.longest = metres(4.1);
    std::vector<Finding> findings;
    EXPECT_TRUE(setOutButts(in, findings).empty());
    in.fore = boxEnds("F1", -0.8, 1);
    in.aft = boxEnds("F9", 4.6, 1);
    const auto butts = setOutButts(in, findings);
    ASSERT_EQ(butts.size(), 1U);
    // 0.8 m before F1, so 3.3 m aft of it: the middle of F7 and F8 stands at 3.25.
    EXPECT_EQ(butts[0].bay, 6U);
    EXPECT_TRUE(findings.empty());
}

TEST(Butts, TheCureForCrowdedButtsWorks) {
    PlankingInput in = box(21, 12);
    in.longest = metres(1.2);
    std::vector<Finding> findings;
    setOutButts(in, findings);
    ASSERT_FALSE(findings.empty());
    ASSERT_TRUE(findings.front().missing);
    EXPECT_GT(*findings.front().missing, Length{});
    ASSERT_EQ(findings.front().cure.size(), 1U);
    EXPECT_EQ(findings.front().cure.front().rfind("planking.longest=", 0), 0U);
    in.longest = *in.longest + *findings.front().missing;
    findings.clear();
    setOutButts(in, findings);
    EXPECT_TRUE(findings.empty());
}

TEST(Butts, APlankShorterThanAFrameSpaceSaysSo) {
    PlankingInput in = box(5, 2);
    in.longest = metres(0.2);
    std::vector<Finding> findings;
    EXPECT_TRUE(setOutButts(in, findings).empty());
    EXPECT_EQ(findings.size(), 2U);
}

TEST(Butts, SixtyStrakesKeepTheShift) {
    PlankingInput in = box(31, 60);
    in.longest = metres(5);
    std::vector<Finding> findings;
    const auto butts = setOutButts(in, findings);
    EXPECT_TRUE(findings.empty());
    EXPECT_GE(butts.size(), 60U * 2U);
    for (const Butt& butt : butts)
        EXPECT_EQ(butt.id,
                  "butt" + std::to_string(butt.strake) + "_F" + std::to_string(butt.bay + 1));
    for (std::size_t i = 1; i < butts.size(); ++i) {
        EXPECT_TRUE(butts[i].strake > butts[i - 1].strake ||
                    (butts[i].strake == butts[i - 1].strake && butts[i].bay > butts[i - 1].bay));
    }
}

// One strake of 3 m girth is the whole side; its butt stands midway between frames, seven diameters
// of 6 mm to each end, halfway along the girth: 1.5 m out on the bottom.
TEST(Planking, AButtsFasteningsStandMidwayOnTheirBlock) {
    PlankingInput in = box(3, 1);
    in.longest = metres(0.8);
    in.butt = screw(1);
    const auto out = layOutPlanking(in);
    ASSERT_EQ(out.holes.size(), 4U);
    const Hole& fore = out.holes[2];
    EXPECT_EQ(fore.id, "butt1_F2.S.1");
    EXPECT_EQ(fore.frame, "F2");
    EXPECT_EQ(fore.joins, (std::vector<std::string>{"strake1.S", "butt1_F2"}));
    EXPECT_NEAR(inMillimetres(fore.start.x), 750 - 42, 1e-9);
    EXPECT_NEAR(inMillimetres(out.holes[3].start.x), 750 + 42, 1e-9);
    EXPECT_NEAR(inMillimetres(fore.start.y), 1500, 1e-9);
    EXPECT_NEAR(inMillimetres(fore.end.z), 50, 1e-9);
}

TEST(Planking, AHullOfOneFrameNamesBothItsEndsApart) {
    PlankingInput in = box(1, 2);
    in.hood = screw(2);
    in.fore = boxEnds("F1", -0.4, 2);
    in.aft = boxEnds("F1", 0.4, 2);
    const auto out = layOutPlanking(in);
    EXPECT_EQ(out.holes.size(), 16U);
    std::set<std::string> ids;
    for (const Hole& hole : out.holes) EXPECT_TRUE(ids.insert(hole.id).second) << hole.id;
}

TEST(Planking, EndsFarOutAreOnATransom) {
    PlankingInput in = box(2, 3);
    in.hood = screw(1);
    in.aft = boxEnds("F2", 0.9, 3);
    const auto out = layOutPlanking(in);
    ASSERT_EQ(out.holes.size(), 6U);
    EXPECT_EQ(out.holes[0].joins.back(), "sternpost");
    EXPECT_EQ(out.holes[2].joins.back(), "transom");
}

TEST(Planking, AGarboardsFasteningsKeepClearOfItsButt) {
    PlankingInput in = box(3, 1);
    in.longest = metres(0.8);
    in.garboard = screw(1);
    const auto out = layOutPlanking(in);
    ASSERT_EQ(out.holes.size(), 4U);
    EXPECT_NEAR(inMillimetres(out.holes[0].start.x), 250, 1e-9);
    // The butt stands at 750.
    EXPECT_NEAR(inMillimetres(out.holes[2].start.x), 750 + 24, 1e-9);
}

namespace {

const Finding* findingOf(const FrameFastenings& out, const std::string& kind,
                         const std::string& cure) {
    for (const Finding& finding : out.findings) {
        if (finding.kind == kind && finding.cure == std::vector<std::string>{cure}) return &finding;
    }
    return nullptr;
}

}  // namespace

TEST(PlankingFindings, LengthsAreSaidOnceForAllHolesAlike) {
    PlankingInput in = box(5, 1);
    in.hood = screw(1);
    in.hood->length = millimetres(20);
    in.fore = boxEnds("F1", -0.4, 1);
    auto out = layOutPlanking(in);
    const Finding* grip = findingOf(out, "grip", "hood.length=75 mm");
    ASSERT_NE(grip, nullptr);
    EXPECT_EQ(grip->holes.size(), 2U);
    EXPECT_NEAR(inMillimetres(*grip->missing), 5, 1e-9);
    in.hood->length = millimetres(60);
    out = layOutPlanking(in);
    const Finding* thread = findingOf(out, "thread_bound", "hood.length=75 mm");
    ASSERT_NE(thread, nullptr);
    EXPECT_NEAR(inMillimetres(*thread->missing), 5, 1e-9);
    in.hood->length = millimetres(75);
    EXPECT_TRUE(layOutPlanking(in).findings.empty());
    in.hood->counterbore = millimetres(26);
    EXPECT_NE(findingOf(layOutPlanking(in), "counterbore", "hood.counterbore=9 mm"), nullptr);
}

TEST(PlankingFindings, PointsThroughAButtBlockAreCuredByAThickerOne) {
    PlankingInput in = box(9, 1);
    in.longest = metres(3);
    in.butt = screw(1);
    in.butt->length = millimetres(75);
    const Finding* out = nullptr;
    const auto layout = layOutPlanking(in);
    out = findingOf(layout, "tip_out", "planking.butt_block=50 mm");
    ASSERT_NE(out, nullptr);
    EXPECT_NEAR(inMillimetres(*out->missing), 25, 1e-9);
    in.block = millimetres(50);
    EXPECT_TRUE(layOutPlanking(in).findings.empty());
}

// 3 m of girth in 60 strakes are 50 mm; three fastenings of 6 mm want (5 + 8)·6 = 78, two 54,
// one 30.
TEST(PlankingFindings, NarrowEndsSayHowManyFit) {
    PlankingInput in = box(5, 60);
    in.hood = screw(3);
    in.hood->length = millimetres(75);
    in.fore = boxEnds("F1", -0.4, 60);
    const Finding* edge = nullptr;
    const auto layout = layOutPlanking(in);
    edge = findingOf(layout, "edge", "hood.count=1");
    ASSERT_NE(edge, nullptr);
    EXPECT_NEAR(inMillimetres(*edge->missing), 28, 1e-6);
    in.hood->count = 1;
    EXPECT_EQ(findingOf(layOutPlanking(in), "edge", "hood.count=1"), nullptr);
}

TEST(PlankingFindings, GarboardFasteningsInABayAndTheKeelTheyReach) {
    PlankingInput in = box(3, 1);
    in.garboard = screw(24);  // 500/25 = 20 mm apart, 24 wanted: 500/24 − 1 = 19 fit
    in.garboard->length = millimetres(75);
    in.garboard->root = millimetres(4);
    EXPECT_NE(findingOf(layOutPlanking(in), "spacing", "garboard.count=19"), nullptr);
}

// Screws of 40 mm from 30 mm out on either side cross the middle, but two diameters apart.
TEST(PlankingFindings, PointsFromBothSidesPassEachOtherInTheStem) {
    PlankingInput in;
    in.planking = millimetres(10);
    in.hood = screw(1);
    in.hood->length = millimetres(40);
    Section section;
    section.points = {{millimetres(30), Length{}}, {millimetres(30), metres(1)}};
    PlankEnds ends;
    ends.frame = "F1";
    const auto curve =
        std::make_shared<const FrameCurve>(*FrameCurve::above(section, std::nullopt));
    ends.strakes.push_back({true, endLine(*curve, Length{}, metres(1))});
    in.fore = std::make_shared<const PlankEnds>(ends);
    EXPECT_TRUE(layOutPlanking(in).findings.empty());
    // On a strake of 12 mm three stand within their own thickness of each other.
    ends.strakes[0].line = endLine(*curve, Length{}, millimetres(12));
    in.fore = std::make_shared<const PlankEnds>(ends);
    in.hood->count = 3;
    const auto layout = layOutPlanking(in);
    EXPECT_TRUE(std::any_of(layout.findings.begin(), layout.findings.end(),
                            [](const Finding& f) { return f.kind == "clash"; }));
}

// A plank 25 mm thick lies up a keel's side at 30 degrees to level, its edge in a rabbet 105 mm
// out; the keel is 210 mm sided, its top well above.
namespace {

PlankLine vee(const std::string& id, double x_m, double degrees) {
    const double slope = degrees * 3.14159265358979323846 / 180.0;
    Section section;
    section.x = metres(x_m);
    section.points = {
        {millimetres(105), Length{}},
        {millimetres(105 + 2000 * std::cos(slope)), millimetres(2000 * std::sin(slope))}};
    PlankLine line;
    line.frame = id;
    line.curve = std::make_shared<const FrameCurve>(*FrameCurve::above(section, std::nullopt));
    line.seams = {Length{}, millimetres(200)};
    line.seat = GarboardSeat{"keel", millimetres(105), millimetres(-60), millimetres(140)};
    return line;
}

PlankingInput veeHull(double degrees) {
    PlankingInput in;
    in.planking = millimetres(25);
    in.frames = {vee("F1", 0, degrees), vee("F2", 0.3, degrees)};
    in.garboard = screw(1);
    return in;
}

}  // namespace

TEST(Garboard, AFlatOneIsSlantedTowardsTheRabbetAndEndsInTheKeel) {
    for (const double degrees : {10.0, 24.0, 40.0, 60.0}) {
        const auto out = layOutPlanking(veeHull(degrees));
        ASSERT_EQ(out.holes.size(), 2U);
        const Hole& hole = out.holes[1];
        EXPECT_EQ(hole.joins, (std::vector<std::string>{"strake1.S", "keel"}));
        EXPECT_TRUE(out.findings.empty() || out.findings.front().kind == "thread_bound")
            << degrees << ": " << out.findings.front().says;
        // 2.5 diameters of 6 mm of wood beside its point.
        EXPECT_LE(inMillimetres(abs(hole.end.y)), 105 - 15 + 1e-6) << degrees;
        EXPECT_LE(inMillimetres(hole.end.z), 140 - 15 + 1e-6) << degrees;
        EXPECT_GE(inMillimetres(hole.end.z), -60 + 15 - 1e-6) << degrees;
        // It starts on the plank, two and a half diameters up from its edge at the least.
        EXPECT_GE(inMillimetres(hole.start.y) - 105,
                  15 * std::cos(degrees * 3.1415927 / 180) - 1e-6);
    }
}

TEST(Garboard, ASteepOneIsDrivenSquare) {
    const auto out = layOutPlanking(veeHull(80));
    const Hole& hole = out.holes[1];
    // Square to a line at 80 degrees: 10 degrees up and inboard.
    const double rise = (hole.end.z - hole.start.z) / (hole.start.y - hole.end.y);
    EXPECT_NEAR(std::atan(rise) * 180 / 3.14159265, 10, 1e-6);
}

TEST(Garboard, WhatMissesTheKeelIsAFindingWithWhatLacks) {
    PlankingInput in = veeHull(24);
    // The keel stands 60 mm inside the rabbet: nothing reaches it straight out of the plank.
    for (PlankLine& line : in.frames) line.seat->half = millimetres(45);
    const auto out = layOutPlanking(in);
    const auto grip = std::find_if(out.findings.begin(), out.findings.end(),
                                   [](const Finding& f) { return f.kind == "grip"; });
    ASSERT_NE(grip, out.findings.end());
    EXPECT_EQ(grip->holes.size(), 2U);
    EXPECT_GT(inMillimetres(*grip->missing), 30);
    // No timber known there: nothing is placed.
    for (PlankLine& line : in.frames) line.seat.reset();
    EXPECT_TRUE(layOutPlanking(in).holes.empty());
}

TEST(Garboard, DeadwoodOnTheKeelNeedsNoTop) {
    PlankingInput in = veeHull(60);
    for (PlankLine& line : in.frames)
        line.seat = GarboardSeat{"deadwood", millimetres(105), std::nullopt, std::nullopt};
    const auto out = layOutPlanking(in);
    EXPECT_EQ(out.holes[0].joins.back(), "deadwood");
}

TEST(Butts, AnIdIsOfItsStrakeAndBayAndOutlivesOtherButts) {
    PlankingInput in = box(21, 12);
    in.longest = metres(4);
    std::vector<Finding> findings;
    const auto before = setOutButts(in, findings);
    in.longest = metres(3);
    const auto after = setOutButts(in, findings);
    EXPECT_GT(after.size(), before.size());
    for (const Butt& butt : after) {
        for (const Butt& old : before) {
            EXPECT_EQ(butt.id == old.id, butt.strake == old.strake && butt.bay == old.bay);
        }
    }
}
