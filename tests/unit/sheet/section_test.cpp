#include "sheet/section.h"
#include "rounds.h"

#include <gtest/gtest.h>

#include <cmath>

#include "example.h"
#include "found.h"

namespace fayline {
namespace {

const DrawFormat panel{{106.0, 88.0}, 2.1, UnitSystem::inches, {}};

SectionPoint at(double y_m, double z_m) {
    return {metres(y_m), metres(z_m)};
}

RectMm around(const std::vector<PointMm>& points) {
    RectMm box;
    for (const PointMm& p : points) box = united(box, p);
    return box;
}

TEST(Section, LookingAftStarboardLiesOnTheLeft) {
    const SectionInput in = example::section();
    const Drawing drawing = sectionDrawing(in, panel);
    EXPECT_LT(drawing.scale->toDrawing({metres(1.0), {}}).x,
              drawing.scale->toDrawing({metres(-1.0), {}}).x);
    const auto all = texts(drawing);
    const shape::Text* starboard = textSaying(all, "STARBOARD");
    const shape::Text* port = textSaying(all, "PORT");
    ASSERT_TRUE(starboard && port);
    EXPECT_LT(starboard->anchor.x, drawing.size.width / 2.0);
    EXPECT_GT(port->anchor.x, drawing.size.width / 2.0);
    EXPECT_TRUE(textSaying(all, "F19, looking aft"));
}

TEST(Section, BoltsLieWhereTheyAre) {
    const SectionInput in = example::section();
    const Drawing drawing = sectionDrawing(in, {{300.0, 250.0}, 2.1, UnitSystem::inches, {}});
    const double middle = drawing.size.width / 2.0;
    for (const SectionBolt& bolt : in.bolts) {
        const RectMm box = boundsOf(drawing, bolt.id);
        EXPECT_NEAR(box.bottom, drawing.scale->toDrawing({{}, bolt.end.z}).y, 1e-9) << bolt.id;
        const Role role = bolt.id == "K.6" ? Role::boltShort : Role::bolt;
        RectMm nuts;
        for (const auto& part : found<shape::Polygon>(drawing, role, bolt.id)) {
            nuts = united(nuts, around(part.points));
        }
        const double x = (nuts.left + nuts.right) / 2.0;
        EXPECT_NEAR(x, drawing.scale->toDrawing({bolt.start.y, {}}).x, 1e-9);
        EXPECT_EQ(x<middle, bolt.start.y> Length{}) << "starboard to the left";
        EXPECT_NEAR(nuts.width(), drawing.scale->sizeMm(*bolt.washer), 1e-9);
    }
}

TEST(Section, BothSidesAreAlike) {
    const Drawing drawing = sectionDrawing(example::section(), panel);
    for (const Role role : {Role::hull, Role::timber, Role::ballast, Role::floor}) {
        const auto areas = found<shape::Polygon>(drawing, role);
        ASSERT_EQ(areas.size(), 1U);
        const RectMm box = around(areas[0].points);
        EXPECT_NEAR(box.left + box.right, drawing.size.width, 1e-9);
    }
    const auto legs = found<shape::Polygon>(drawing, Role::frame, "F19");
    ASSERT_EQ(legs.size(), 2U);
    EXPECT_NEAR(around(legs[0].points).left + around(legs[1].points).right, drawing.size.width,
                1e-9);
}

TEST(Section, FrameOfABoxStandsInsideThePlanking) {
    SectionInput in;
    in.frame = "F1";
    in.side = {at(0, 0), at(1, 0), at(1, 2)};
    in.planking = millimetres(30);
    in.moulded = millimetres(100);
    const Drawing drawing = sectionDrawing(in, panel);
    const auto legs = found<shape::Polygon>(drawing, Role::frame, "F1");
    ASSERT_EQ(legs.size(), 2U);
    // Starboard's leg first: from 0.87 to 0.97 m at its head.
    RectMm head;
    const double high = drawing.scale->toDrawing({{}, metres(1.0)}).y;
    for (const PointMm& p : legs[0].points) {
        if (p.y < high) head = united(head, p);
    }
    EXPECT_NEAR(head.left, drawing.scale->toDrawing({metres(0.97), {}}).x, 1e-6);
    EXPECT_NEAR(head.right, drawing.scale->toDrawing({metres(0.87), {}}).x, 1e-6);
    // Its bottom runs above the planking along the keel.
    const RectMm leg = around(legs[0].points);
    EXPECT_NEAR(leg.bottom, drawing.scale->toDrawing({{}, metres(0.03)}).y, 1e-6);
}

TEST(Section, MovedInwardCutsTheLoopOfAHollow) {
    // Down a fin and out along a floor: a hollow corner at (0.1, 0.5).
    const std::vector<SectionPoint> chain{at(0, 0), at(0.1, 0), at(0.1, 0.5), at(1, 0.7),
                                          at(1.2, 2)};
    const Length distance = millimetres(60);
    for (const SectionPoint& p : movedInward(chain, distance)) {
        double least_m = 1e9;
        for (std::size_t i = 1; i < chain.size(); ++i) {
            for (int k = 0; k <= 2000; ++k) {
                const double t = k / 2000.0;
                const double y = chain[i - 1].y.si() + t * (chain[i].y - chain[i - 1].y).si();
                const double z = chain[i - 1].z.si() + t * (chain[i].z - chain[i - 1].z).si();
                least_m = std::min(least_m, std::hypot(p.y.si() - y, p.z.si() - z));
            }
        }
        EXPECT_GE(least_m, 0.060 - 1e-5);
    }
    EXPECT_TRUE(movedInward({at(0, 0)}, distance).empty());
    EXPECT_TRUE(movedInward({at(0, 0), at(0, 0)}, distance).empty());
}

TEST(Section, FloorHasALevelTopUnderTheHeightGiven) {
    const SectionInput in = example::section();
    const Drawing drawing = sectionDrawing(in, panel);
    const auto floors = found<shape::Polygon>(drawing, Role::floor, "F19.floor");
    ASSERT_EQ(floors.size(), 1U);
    EXPECT_NEAR(around(floors[0].points).top, drawing.scale->toDrawing({{}, *in.floorTop}).y, 1e-9);
    EXPECT_NEAR(around(floors[0].points).bottom, drawing.scale->toDrawing({{}, in.keel[0].z}).y,
                1e-9);
}

TEST(Section, AnythingMayBeMissing) {
    const unsigned every = 1280U / static_cast<unsigned>(rounds(1280));
    for (unsigned left = 0; left < 256; left += every) {
        SectionInput in = example::section();
        if (left & 1U) in.side.clear();
        if (left & 2U) in.keel.clear();
        if (left & 4U) in.ballast.clear();
        if (left & 8U) in.bolts.clear();
        if (left & 16U) in.moulded.reset();
        if (left & 32U) in.planking.reset();
        if (left & 64U) in.floorTop.reset();
        if (left & 128U) in.waterline.reset();
        const Drawing drawing = sectionDrawing(in, panel);
        EXPECT_FALSE(drawing.items.empty());
        const RectMm bounds = boundsOf(drawing);
        EXPECT_GE(bounds.left, -1e-6) << left;
        EXPECT_GE(bounds.top, -1e-6) << left;
        EXPECT_LE(bounds.right, drawing.size.width + 1e-6) << left;
        EXPECT_LE(bounds.bottom, drawing.size.height + 1e-6) << left;
    }
    const Drawing nothing = sectionDrawing({}, panel);
    ASSERT_EQ(nothing.items.size(), 1U);
    EXPECT_FALSE(nothing.scale);
}

}  // namespace
}  // namespace fayline
