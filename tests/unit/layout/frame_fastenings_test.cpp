#include "layout/frame_fastenings.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

using namespace fayline;

namespace {

/// A straight-sided V: from (100, 200) mm up at 45° to (1100, 1200) mm. Out of the hull is (+,
/// −)/√2.
std::shared_ptr<const FrameCurve> veeCurve() {
    Section section;
    section.x = millimetres(4000);
    for (int i = 0; i <= 20; ++i)
        section.points.push_back({millimetres(100 + 50 * i), millimetres(200 + 50 * i)});
    return std::make_shared<const FrameCurve>(*FrameCurve::above(section, std::nullopt));
}

FasteningChoice screw(int count) {
    FasteningChoice choice;
    choice.count = count;
    choice.diameter = millimetres(6.15);
    choice.root = millimetres(4.2);
    choice.length = millimetres(45);
    choice.counterbore = millimetres(9);
    return choice;
}

FasteningChoice bolt(int count) {
    FasteningChoice choice;
    choice.kind = FasteningKind::bolt;
    choice.count = count;
    choice.diameter = millimetres(9.5);
    choice.washerThickness = millimetres(2);
    return choice;
}

FrameFasteningInput frame() {
    FrameFasteningInput in;
    in.frame = "F9";
    in.curve = veeCurve();
    in.sided = millimetres(44);
    in.moulded = millimetres(80);
    in.planking = millimetres(24);
    in.keelSided = millimetres(200);
    in.keelTop = millimetres(200);
    in.keelUnderside = millimetres(50);
    in.backboneTop = millimetres(330);
    in.floor = FloorBody{millimetres(4060), millimetres(75),  millimetres(200),
                         millimetres(380),  millimetres(500), true};
    for (int i = 0; i <= 10; ++i) in.seams.push_back(millimetres(140 * i));
    in.plank.assign(10, screw(2));
    in.armPort = in.armStarboard = bolt(3);
    return in;
}

std::vector<const Hole*> ofGroup(const FrameFastenings& layout, const std::string& group,
                                 const std::string& side = "") {
    std::vector<const Hole*> found;
    for (const Hole& hole : layout.holes) {
        if (hole.group == group && (side.empty() || hole.side == side)) found.push_back(&hole);
    }
    return found;
}

bool hasKind(const FrameFastenings& layout, const std::string& kind) {
    return std::any_of(layout.findings.begin(), layout.findings.end(),
                       [&](const Finding& f) { return f.kind == kind; });
}

}  // namespace

TEST(FrameFastenings, EveryHoleHasItsOwnIdAndSidesAreMirrored) {
    const auto layout = layOutFrame(frame());
    std::set<std::string> ids;
    for (const Hole& hole : layout.holes) EXPECT_TRUE(ids.insert(hole.id).second) << hole.id;
    const auto port = ofGroup(layout, "plank", "port");
    const auto starboard = ofGroup(layout, "plank", "starboard");
    ASSERT_EQ(port.size(), 20U);
    ASSERT_EQ(starboard.size(), 20U);
    for (std::size_t i = 0; i < port.size(); ++i) {
        EXPECT_EQ(port[i]->start.y, -starboard[i]->start.y);
        EXPECT_EQ(port[i]->end.z, starboard[i]->end.z);
    }
    EXPECT_EQ(port[0]->id, "F9.P.plank.1.1");
}

TEST(FrameFastenings, PlankScrewsStandSquareToThePlankAtTheCounterboresDepth) {
    const auto layout = layOutFrame(frame());
    const Hole& hole = *ofGroup(layout, "plank", "starboard")[0];
    const double dy_mm = inMillimetres(hole.end.y - hole.start.y);
    const double dz_mm = inMillimetres(hole.end.z - hole.start.z);
    EXPECT_NEAR(std::hypot(dy_mm, dz_mm), 45, 1e-9);
    EXPECT_NEAR(dy_mm, -45 / std::sqrt(2.0), 1e-6);
    EXPECT_NEAR(dz_mm, 45 / std::sqrt(2.0), 1e-6);
    // 9 mm below the outside: the plane y − z = −100 mm moved in by 9.
    EXPECT_NEAR((inMillimetres(hole.start.y) - inMillimetres(hole.start.z) + 100) / std::sqrt(2.0),
                -9, 1e-6);
    EXPECT_EQ(hole.bung, millimetres(9));
    EXPECT_EQ(hole.steps.size(), 3U);
}

TEST(FrameFastenings, ArmBoltsRunForeAndAftThroughFloorAndFrame) {
    const auto layout = layOutFrame(frame());
    const auto arms = ofGroup(layout, "arm", "starboard");
    ASSERT_EQ(arms.size(), 3U);
    for (const Hole* hole : arms) {
        EXPECT_EQ(hole->start.y, hole->end.y);
        EXPECT_NEAR(inMillimetres(hole->grip), 4060 + 37.5 - (4000 - 22), 1e-9);
        // In the middle of the frame: planking and half the moulding inside the outside.
        EXPECT_NEAR(
            (inMillimetres(hole->start.y) - inMillimetres(hole->start.z) + 100) / std::sqrt(2.0),
            -(24 + 40), 1e-6);
    }
    EXPECT_LT(arms[0]->start.y, arms[2]->start.y);
    EXPECT_LT(arms[2]->start.y, millimetres(500));
}

TEST(FrameFastenings, HeelsGoIntoTheKeelsSideOrItsTop) {
    auto in = frame();
    FasteningChoice heel = screw(2);
    heel.length = millimetres(90);
    in.heelPort = in.heelStarboard = heel;
    in.heelDetail = HeelDetail::beside;
    const auto beside = layOutFrame(in);
    const Hole& side = *ofGroup(beside, "heel", "starboard")[0];
    EXPECT_EQ(side.start.z, side.end.z);
    EXPECT_LT(side.end.y, millimetres(100));
    EXPECT_GT(side.start.y, millimetres(100));
    in.heelDetail = HeelDetail::onTop;
    const auto onTop = layOutFrame(in);
    const Hole& top = *ofGroup(onTop, "heel", "port")[0];
    EXPECT_EQ(top.start.y, top.end.y);
    EXPECT_LT(top.end.z, *in.keelTop);
}

// A side at 25 degrees from the keel's lower part: down through the inner face into its side.
TEST(FrameFastenings, HeelsOfFlatFramesGoDownIntoTheKeelsSide) {
    auto in = frame();
    const double slope = 25 * 3.14159265358979323846 / 180.0;
    Section section;
    section.x = millimetres(4000);
    section.points = {
        {millimetres(100), millimetres(90)},
        {millimetres(100 + 1500 * std::cos(slope)), millimetres(90 + 1500 * std::sin(slope))}};
    in.curve = std::make_shared<const FrameCurve>(*FrameCurve::above(section, std::nullopt));
    in.moulded = millimetres(60);
    in.backboneTop = in.keelTop;
    in.armPort.reset();
    in.armStarboard.reset();
    FasteningChoice heel = screw(2);
    heel.length = millimetres(150);
    in.heelPort = in.heelStarboard = heel;
    const auto laid = layOutFrame(in);
    for (const Hole* hole : ofGroup(laid, "heel", "starboard")) {
        EXPECT_EQ(hole->face, "inner");
        EXPECT_EQ(hole->joins.back(), "keel");
        EXPECT_GT(hole->start.z, hole->end.z);
        EXPECT_GT(hole->start.y, millimetres(100));
        EXPECT_LT(hole->end.y, millimetres(100 - 15));
        EXPECT_GT(hole->end.z, *in.keelUnderside);
        EXPECT_NEAR(inMillimetres(metres(std::hypot((hole->start.y - hole->end.y).si(),
                                                    (hole->start.z - hole->end.z).si()))),
                    150 + 9, 1e-9);
        // Its head stands on the frame's inner face, 84 mm square in from the outside.
        const double y = inMillimetres(hole->start.y) - 100, z = inMillimetres(hole->start.z) - 90;
        EXPECT_NEAR(z * std::cos(slope) - y * std::sin(slope), 84, 1.5);
    }
}

// A side at 80 degrees: level through the frame's outer face, port and starboard at turns.
TEST(FrameFastenings, HeelsOfSteepFramesGoLevelThroughTheFrame) {
    auto in = frame();
    Section section;
    section.x = millimetres(4000);
    section.points = {{millimetres(80), millimetres(200)}, {millimetres(256), millimetres(1200)}};
    in.curve = std::make_shared<const FrameCurve>(*FrameCurve::above(section, std::nullopt));
    in.plank.clear();
    in.seams.clear();
    in.armPort.reset();
    in.armStarboard.reset();
    FasteningChoice heel = screw(2);
    heel.length = millimetres(150);
    in.heelPort = in.heelStarboard = heel;
    const auto layout = layOutFrame(in);
    const auto port = ofGroup(layout, "heel", "port"),
               starboard = ofGroup(layout, "heel", "starboard");
    ASSERT_EQ(port.size(), 2U);
    for (const Hole* hole : port) {
        EXPECT_EQ(hole->face, "outer");
        EXPECT_EQ(hole->start.z, hole->end.z);
        for (const Hole* other : starboard)
            EXPECT_GT(distanceBetween(*hole, *other), 2.0 * hole->diameter);
    }
    EXPECT_EQ(port[0]->joins.back(), "deadwood");
}

TEST(FrameFastenings, TheGarboardsLowestFasteningGivesWayToTheHeels) {
    auto in = frame();
    FasteningChoice heel = screw(1);
    heel.length = millimetres(90);
    in.heelPort = in.heelStarboard = heel;
    const auto layout = layOutFrame(in);
    for (const Hole* hole : ofGroup(layout, "heel", "starboard")) {
        for (const Hole* plank : ofGroup(layout, "plank", "starboard"))
            EXPECT_GE(inMillimetres(distanceBetween(*hole, *plank)), 3 * 6.15 - 0.1) << plank->id;
    }
}

TEST(FrameFastenings, FloorBoltsReachTheKeelsUnderside) {
    auto in = frame();
    in.floorBolt = bolt(2);
    const auto layout = layOutFrame(in);
    const auto bolts = ofGroup(layout, "floor");
    ASSERT_EQ(bolts.size(), 2U);
    EXPECT_EQ(bolts[0]->id, "F9.floor.1");
    EXPECT_EQ(bolts[0]->end.z, *in.keelUnderside);
    EXPECT_NEAR(inMillimetres(bolts[0]->grip), 330, 1e-9);
    EXPECT_EQ(bolts[0]->side, "port");
}

TEST(FrameFastenings, OneSidedArmsAndNoFloorAreLaidOutAsDecided) {
    auto in = frame();
    in.armPort.reset();
    EXPECT_EQ(ofGroup(layOutFrame(in), "arm").size(), 3U);
    in.floor.reset();
    EXPECT_TRUE(ofGroup(layOutFrame(in), "arm").empty());
    in.curve.reset();
    EXPECT_TRUE(layOutFrame(in).holes.empty());
}

TEST(FrameFindings, CleanFrameHasNone) {
    auto in = frame();
    const auto layout = layOutFrame(in);
    EXPECT_TRUE(layout.findings.empty()) << layout.findings.front().says;
}

TEST(FrameFindings, TipOutThinCoverNoBiteThreadBound) {
    auto in = frame();
    for (auto& choice : in.plank) choice->length = millimetres(100);
    EXPECT_TRUE(hasKind(layOutFrame(in), "tip_out"));
    for (auto& choice : in.plank) choice->length = millimetres(15 + 76);
    EXPECT_TRUE(hasKind(layOutFrame(in), "near"));
    for (auto& choice : in.plank) choice->length = millimetres(14);
    EXPECT_TRUE(hasKind(layOutFrame(in), "grip"));
    for (auto& choice : in.plank) choice->length = millimetres(40);
    EXPECT_TRUE(hasKind(layOutFrame(in), "thread_bound"));
}

TEST(FrameFindings, APlankTooNarrowForTwo) {
    auto in = frame();
    in.seams[1] = millimetres(40);
    const auto layout = layOutFrame(in);
    ASSERT_TRUE(hasKind(layout, "edge"));
    EXPECT_EQ(layout.findings.front().cure, std::vector<std::string>{"strake1.plank.count=1"});
}

TEST(FrameFindings, BoltsThatRunIntoEachOther) {
    auto in = frame();
    in.armPort = bolt(12);
    in.armPort->diameter = millimetres(60);
    EXPECT_TRUE(hasKind(layOutFrame(in), "clash"));
}

namespace {

Hole ballastBolt(double x_mm, double y_mm) {
    Hole bolt;
    bolt.id = "K.3";
    bolt.frame = "F9";
    bolt.group = "ballast";
    bolt.kind = "bolt";
    bolt.diameter = millimetres(20);
    bolt.start = {millimetres(x_mm), millimetres(y_mm), millimetres(420)};
    bolt.end = {millimetres(x_mm), millimetres(y_mm), millimetres(-400)};
    return bolt;
}

const Finding* ofKind(const FrameFastenings& layout, const std::string& kind) {
    const auto found = std::find_if(layout.findings.begin(), layout.findings.end(),
                                    [&](const Finding& f) { return f.kind == kind; });
    return found == layout.findings.end() ? nullptr : &*found;
}

}  // namespace

// Plank screws of 6.15 mm and arm bolts of 9.5 mm want 7.825 + 2 × 6.15 mm between their middles.
TEST(FrameFastenings, ArmBoltsGiveWayToPlankScrews) {
    const auto layout = layOutFrame(frame());
    for (const Hole* arm : ofGroup(layout, "arm")) {
        for (const Hole* plank : ofGroup(layout, "plank", arm->side))
            EXPECT_GE(inMillimetres(distanceBetween(*arm, *plank)), 7.825 + 12.3 - 0.06) << arm->id;
    }
}

TEST(FrameFastenings, ASingleFloorBoltStandsOnTheSideTheBallastBoltLeavesFree) {
    auto in = frame();
    in.floorBolt = bolt(1);
    EXPECT_EQ(ofGroup(layOutFrame(in), "floor")[0]->start.y, Length{});
    in.ballast = {ballastBolt(4060, 25)};
    EXPECT_EQ(inMillimetres(ofGroup(layOutFrame(in), "floor")[0]->start.y), -50);
    in.ballast = {ballastBolt(4060, -25)};
    EXPECT_EQ(inMillimetres(ofGroup(layOutFrame(in), "floor")[0]->start.y), 50);
    // A bolt at the frame but not in its floor asks nothing.
    in.ballast = {ballastBolt(4000, 25)};
    EXPECT_EQ(ofGroup(layOutFrame(in), "floor")[0]->start.y, Length{});
}

TEST(FrameFastenings, MarksOfACrossingDiffer) {
    auto in = frame();
    for (auto& choice : in.plank) choice->count = 6;
    const auto layout = layOutFrame(in);
    std::set<std::string> marks;
    for (const Hole* hole : ofGroup(layout, "plank", "port"))
        EXPECT_TRUE(marks.insert(hole->mark).second) << hole->mark;
}

TEST(FrameFastenings, NothingIsPlacedBeforeTheFramesSizesAreKnown) {
    auto in = frame();
    in.moulded = Length{};
    EXPECT_TRUE(layOutFrame(in).holes.empty());
    in = frame();
    in.sided = Length{};
    EXPECT_TRUE(layOutFrame(in).holes.empty());
}

TEST(FrameFindings, AHeelBoltWithoutALengthSaysSo) {
    auto in = frame();
    in.heelPort = bolt(2);
    const auto layout = layOutFrame(in);
    EXPECT_TRUE(ofGroup(layout, "heel").empty());
    const Finding* found = ofKind(layout, "grip");
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->cure, std::vector<std::string>{"F9.P.heel.length="});
}

TEST(FrameFindings, AFloorBoltThatMeetsABallastBolt) {
    auto in = frame();
    in.floorBolt = bolt(2);
    in.ballast = {ballastBolt(4060, 45)};
    const auto met = layOutFrame(in);
    const Finding* clash = ofKind(met, "clash");
    ASSERT_NE(clash, nullptr);
    EXPECT_EQ(clash->holes, (std::vector<std::string>{"F9.floor.2", "K.3"}));
    // 4.75 and 10 mm of radius, 5 mm between the middles.
    EXPECT_NEAR(inMillimetres(*clash->missing), 9.75, 1e-6);
    EXPECT_EQ(clash->cure.front(), "K.3.offset=");
}

TEST(FrameFindings, HowMuchANearHoleLacks) {
    auto in = frame();
    in.floorBolt = bolt(2);
    in.ballast = {ballastBolt(4060, 20)};
    const auto layout = layOutFrame(in);
    const Finding* near = ofKind(layout, "near");
    ASSERT_NE(near, nullptr);
    // 30 mm apart, 14.75 of it metal: 15.25 of wood where twice 20 is asked.
    EXPECT_NEAR(inMillimetres(*near->missing), 24.75, 1e-6);
}

TEST(FrameFindings, BoltsTooNearEachOtherOrAnEdge) {
    auto in = frame();
    in.floorBolt = bolt(4);
    // 100 mm between four: 33.3 apart, and 38 asked.
    const auto rowed = layOutFrame(in);
    const Finding* spacing = ofKind(rowed, "spacing");
    ASSERT_NE(spacing, nullptr);
    EXPECT_NEAR(inMillimetres(*spacing->missing), 38 - 100.0 / 3, 1e-6);

    in = frame();
    in.moulded = millimetres(46);
    for (auto& choice : in.plank) choice->length = millimetres(40);
    const auto thin = layOutFrame(in);
    const Finding* frameEdge = ofKind(thin, "edge");
    ASSERT_NE(frameEdge, nullptr);
    EXPECT_NEAR(inMillimetres(*frameEdge->missing), 23.75 - 23, 1e-6);

    in = frame();
    in.floorBolt = bolt(1);
    in.floor->siding = millimetres(40);
    const auto narrow = layOutFrame(in);
    const Finding* floorEdge = ofKind(narrow, "edge");
    ASSERT_NE(floorEdge, nullptr);
    EXPECT_EQ(floorEdge->holes, std::vector<std::string>{"F9.floor.1"});
    EXPECT_EQ(floorEdge->cure, std::vector<std::string>{"F9.floor.sided="});
}

TEST(FrameFindings, TwoScrewsOnOneGrainLineOfAThinFrameAreToldOnce) {
    auto in = frame();
    in.sided = millimetres(25);
    const auto layout = layOutFrame(in);
    const auto grain = std::count_if(layout.findings.begin(), layout.findings.end(),
                                     [](const Finding& f) { return f.kind == "grain_line"; });
    EXPECT_EQ(grain, 1);
    // 0.4 of 25 mm apart; twice 6.15 mm asked.
    EXPECT_NEAR(inMillimetres(*ofKind(layout, "grain_line")->missing), 2.3, 1e-6);
}
