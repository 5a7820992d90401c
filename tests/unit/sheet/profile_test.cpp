#include "sheet/profile.h"
#include "rounds.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "example.h"
#include "found.h"

namespace fayline {
namespace {

const DrawFormat wide{{320.0, 90.0}, 2.1, UnitSystem::millimetres, {}};

Point at(double x_m, double z_m) {
    return {metres(x_m), Length{}, metres(z_m)};
}

/// A box of a hull, 10 m long and 2 m deep, with what a test adds.
ProfileInput box() {
    ProfileInput in;
    in.sheer = {at(0, 2), at(10, 2)};
    in.lowest = {at(0, 0), at(10, 0)};
    return in;
}

TEST(Profile, ForwardEndOnTheLeftToOneScaleBothWays) {
    const Drawing drawing = profileDrawing(box(), wide);
    const auto outline = found<shape::Polygon>(drawing, Role::outline);
    ASSERT_EQ(outline.size(), 1U);
    RectMm hull;
    for (const PointMm& p : outline[0].points) hull = united(hull, p);
    EXPECT_NEAR(hull.width(), 5.0 * hull.height(), 1e-9);
    EXPECT_LT(drawing.scale->toDrawing({metres(0), metres(1)}).x,
              drawing.scale->toDrawing({metres(10), metres(1)}).x);
    const auto all = texts(drawing);
    const shape::Text* forward = textSaying(all, "FWD");
    ASSERT_TRUE(forward);
    EXPECT_LT(boundsOf(DrawItem{Role::label, {}, *forward}).right, hull.left + 1e-9);
}

TEST(Profile, FixedScaleIsKeptAndTheDrawingGrowsToHoldIt) {
    DrawFormat format = wide;
    format.mmPerMetre = 100.0;  // 1 : 10
    const Drawing drawing = profileDrawing(box(), format);
    EXPECT_DOUBLE_EQ(drawing.scale->mmPerMetre, 100.0);
    EXPECT_GT(drawing.size.width, 1000.0);
    EXPECT_LE(boundsOf(drawing).right, drawing.size.width);
}

TEST(Profile, FrameStandsBetweenTheLinesWhereNothingElseIsSaid) {
    ProfileInput in = box();
    in.keel = {at(4, 0.5), at(8, 0.5), at(8, 0.2), at(4, 0.2)};
    ProfileFrame frame;
    frame.id = "F1";
    frame.x = metres(2.0);
    in.frames.push_back(frame);
    frame.id = "F2";
    frame.x = metres(6.0);
    in.frames.push_back(frame);
    frame.id = "F3";
    frame.bottom = metres(0.9);
    frame.top = metres(1.4);
    in.frames.push_back(frame);
    const Drawing drawing = profileDrawing(in, wide);
    const auto line = [&](const char* id) {
        const auto lines = found<shape::Line>(drawing, Role::frame, id);
        return lines.size() == 1 ? lines[0] : shape::Line{};
    };
    EXPECT_EQ(line("F1").from, drawing.scale->toDrawing({metres(2), metres(0)}));
    EXPECT_EQ(line("F1").to, drawing.scale->toDrawing({metres(2), metres(2)}));
    EXPECT_EQ(line("F2").from, drawing.scale->toDrawing({metres(6), metres(0.5)}));
    EXPECT_EQ(line("F3").from, drawing.scale->toDrawing({metres(6), metres(0.9)}));
    EXPECT_EQ(line("F3").to, drawing.scale->toDrawing({metres(6), metres(1.4)}));
}

TEST(Profile, TimbersHaveTheirTrueSize) {
    const Drawing drawing = profileDrawing(example::profile(), wide);
    const double scale = drawing.scale->mmPerMetre;
    for (const auto& frame : found<shape::Polygon>(drawing, Role::frame, "F9")) {
        RectMm bar;
        for (const PointMm& p : frame.points) bar = united(bar, p);
        EXPECT_NEAR(bar.width(), 0.044 * scale, 1e-9);
    }
    const auto floors = found<shape::Polygon>(drawing, Role::floor, "F18");
    ASSERT_EQ(floors.size(), 1U);
    RectMm floor;
    for (const PointMm& p : floors[0].points) floor = united(floor, p);
    EXPECT_NEAR(floor.width(), 0.075 * scale, 1e-9);
    EXPECT_NEAR(floor.height(), 0.180 * scale, 1e-6);
    EXPECT_TRUE(found<shape::Polygon>(drawing, Role::floor, "F2").empty());
}

TEST(Profile, BoltRunsFromHeadToNutAndAShortOneHasAnotherShape) {
    ProfileInput in = example::profile();
    for (ProfileBolt& bolt : in.bolts) bolt.diameter.reset();
    const Drawing drawing = profileDrawing(in, wide);
    for (const ProfileBolt& bolt : in.bolts) {
        const bool isShort = bolt.id == "K.6";
        const bool isNear = bolt.id == "K.4";
        const Role role = isShort ? Role::boltShort : isNear ? Role::boltNear : Role::bolt;
        const auto rods = found<shape::Line>(drawing, role, bolt.id);
        ASSERT_EQ(rods.size(), 1U) << bolt.id;
        EXPECT_EQ(rods[0].from, drawing.scale->toDrawing({bolt.start.x, bolt.start.z}));
        EXPECT_EQ(rods[0].to, drawing.scale->toDrawing({bolt.end.x, bolt.end.z}));
        EXPECT_EQ(found<shape::Polygon>(drawing, role, bolt.id).size(), 2U) << "head and nut";
        const auto squares = found<shape::Mark>(drawing, Role::statusShort, bolt.id);
        EXPECT_EQ(squares.size(), isShort ? 1U : 0U);
        EXPECT_EQ(found<shape::Mark>(drawing, Role::statusNear, bolt.id).size(), isNear ? 1U : 0U);
    }
}

TEST(Profile, BoltHasItsTrueDiameterWhereThatIsBroadEnough) {
    DrawFormat format = wide;
    format.mmPerMetre = 100.0;
    const Drawing drawing = profileDrawing(example::profile(), format);
    const auto parts = found<shape::Polygon>(drawing, Role::bolt, "K.1");
    ASSERT_EQ(parts.size(), 3U) << "rod, head, nut";
    RectMm rod;
    for (const PointMm& p : parts[0].points) rod = united(rod, p);
    EXPECT_NEAR(rod.width(), 2.2225, 1e-9);  // 7/8 in at 1 : 10
}

TEST(Profile, SignOfEachFrameBeneathIt) {
    const ProfileInput in = example::profile();
    const Drawing drawing = profileDrawing(in, wide);
    const double lowest = drawing.scale->toDrawing({metres(4.9), metres(0.0)}).y;
    const auto sign = [&](Role role, const char* id) {
        const auto marks = found<shape::Mark>(drawing, role, id);
        return marks.empty() ? PointMm{} : marks[0].at;
    };
    for (const auto& [role, id, number] : {std::tuple{Role::statusShort, "F19", 19},
                                           {Role::statusNear, "F16", 16},
                                           {Role::statusOutside, "F20", 20},
                                           {Role::statusOk, "F18", 18}}) {
        const ProfileFrame& frame = in.frames[static_cast<std::size_t>(number - 1)];
        EXPECT_DOUBLE_EQ(sign(role, id).x, drawing.scale->toDrawing({frame.x, {}}).x) << id;
        EXPECT_GT(sign(role, id).y, lowest - 0.2 * drawing.scale->mmPerMetre) << id;
    }
    EXPECT_EQ(found<shape::Text>(drawing, Role::statusUnknown, "F12").size(), 1U);
    EXPECT_EQ(found<shape::Line>(drawing, Role::statusUnloaded, "F1").size(), 1U);
    EXPECT_TRUE(textSaying(texts(drawing), "worst margin"));
}

TEST(Profile, WordsForTheSignsThatOccur) {
    const auto all = texts(profileDrawing(example::profile(), wide));
    for (const char* word :
         {"short", "near", "unknown", "outside the formula's range", "ok", "unloaded"}) {
        EXPECT_TRUE(textSaying(all, word)) << word;
    }
    ProfileInput calm = example::profile();
    for (ProfileFrame& frame : calm.frames) frame.worst = Status::ok;
    for (ProfileBolt& bolt : calm.bolts) bolt.status = Status::ok;
    const auto few = texts(profileDrawing(calm, wide));
    EXPECT_TRUE(textSaying(few, "ok"));
    EXPECT_FALSE(textSaying(few, "short"));
}

TEST(Profile, WaterlineHasItsName) {
    ProfileInput in = box();
    EXPECT_TRUE(found<shape::Line>(profileDrawing(in, wide), Role::waterline).empty());
    in.waterline = metres(1.2);
    const Drawing drawing = profileDrawing(in, wide);
    const auto lines = found<shape::Line>(drawing, Role::waterline);
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_DOUBLE_EQ(lines[0].from.y, drawing.scale->toDrawing({{}, metres(1.2)}).y);
    EXPECT_EQ(lines[0].stroke.style, LineStyle::dashed);
    EXPECT_TRUE(textSaying(texts(drawing), "LWL"));
}

TEST(Profile, SaysWhenThereIsNothingToDraw) {
    const Drawing drawing = profileDrawing({}, wide);
    ASSERT_EQ(drawing.items.size(), 1U);
    EXPECT_TRUE(std::holds_alternative<shape::Text>(drawing.items[0].shape));
    EXPECT_FALSE(drawing.scale);
    EXPECT_TRUE(drawing.rows.empty());
}

TEST(Profile, AnythingMayBeMissing) {
    const unsigned every = 320U / static_cast<unsigned>(rounds(320));
    for (unsigned left = 0; left < 64; left += every) {
        ProfileInput in = example::profile();
        if (left & 1U) in.sheer.clear();
        if (left & 2U) in.lowest.clear();
        if (left & 4U) in.keel.clear();
        if (left & 8U) in.ballast.clear();
        if (left & 16U) in.frames.clear();
        if (left & 32U) in.bolts.clear();
        const Drawing drawing = profileDrawing(in, wide);
        EXPECT_FALSE(drawing.items.empty());
        const RectMm bounds = boundsOf(drawing);
        EXPECT_GE(bounds.left, -1e-6) << left;
        EXPECT_GE(bounds.top, -1e-6) << left;
        EXPECT_LE(bounds.right, drawing.size.width + 1e-6) << left;
        EXPECT_LE(bounds.bottom, drawing.size.height + 1e-6) << left;
    }
}

TEST(Profile, OneFrameAloneDoesNotDivideByNothing) {
    ProfileInput in;
    ProfileFrame frame;
    frame.id = "F1";
    frame.x = metres(3.0);
    frame.worst = Status::unknown;
    in.frames = {frame};
    const RectMm bounds = boundsOf(profileDrawing(in, wide));
    EXPECT_GE(bounds.left, 0.0);
    EXPECT_LE(bounds.right, 320.0);
}

TEST(Profile, StopsRunFromForwardToAft) {
    ProfileInput in = example::profile();
    std::reverse(in.frames.begin(), in.frames.end());
    const Drawing drawing = profileDrawing(in, wide);
    ASSERT_EQ(drawing.rows.size(), 2U);
    EXPECT_EQ(drawing.rows[0].front().id, "F1");
    EXPECT_EQ(drawing.rows[0].back().id, "F37");
    EXPECT_EQ(drawing.rows[1].front().id, "K.1");
    EXPECT_EQ(drawing.rows[1].size(), 9U);
}

TEST(Profile, ChosenFrameIsBoxedAndNamed) {
    ProfileInput in = example::profile();
    EXPECT_TRUE(found<shape::Polygon>(profileDrawing(in, wide), Role::selection).empty());
    in.selected = "F14";
    const Drawing drawing = profileDrawing(in, wide);
    const auto boxes = found<shape::Polygon>(drawing, Role::selection, "F14");
    ASSERT_EQ(boxes.size(), 1U);
    RectMm chosen;
    for (const PointMm& p : boxes[0].points) chosen = united(chosen, p);
    const double x = drawing.scale->toDrawing({in.frames[13].x, {}}).x;
    EXPECT_NEAR((chosen.left + chosen.right) / 2.0, x, 0.1);
    EXPECT_EQ(found<shape::Text>(drawing, Role::selection, "F14").size(), 1U);
}

TEST(Profile, SpeaksTheBuildersUnits) {
    DrawFormat format = wide;
    format.units = UnitSystem::inches;
    EXPECT_TRUE(textSaying(texts(profileDrawing(box(), format)), "3 ft"));
    EXPECT_TRUE(textSaying(texts(profileDrawing(box(), wide)), "1 m"));
}

}  // namespace
}  // namespace fayline
