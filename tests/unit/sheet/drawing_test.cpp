#include "sheet/drawing.h"

#include <gtest/gtest.h>

namespace fayline {
namespace {

TEST(Drawing, SquareRoundAPoint) {
    const RectMm box = united(united(RectMm{}, PointMm{3.0, 4.0}), PointMm{-1.0, 9.0});
    EXPECT_EQ(box, (RectMm{-1.0, 4.0, 3.0, 9.0}));
    EXPECT_TRUE(RectMm{}.empty());
    EXPECT_FALSE(united(RectMm{}, PointMm{0.0, 0.0}).empty());
}

TEST(Drawing, UnitedWithNothingIsItself) {
    const RectMm box{1.0, 2.0, 3.0, 4.0};
    EXPECT_EQ(united(box, RectMm{}), box);
    EXPECT_EQ(united(RectMm{}, box), box);
}

TEST(Drawing, ScaleGoesThereAndBack) {
    DrawScale scale{{100.0, 50.0}, 20.0, false};
    const PlanePoint place{metres(2.0), metres(1.5)};
    EXPECT_EQ(scale.toDrawing(place), (PointMm{140.0, 20.0}));
    EXPECT_EQ(scale.toPlane({140.0, 20.0}), place);
    scale.mirrored = true;
    EXPECT_EQ(scale.toDrawing(place), (PointMm{60.0, 20.0}));
    EXPECT_EQ(scale.toPlane({60.0, 20.0}), place);
    EXPECT_DOUBLE_EQ(scale.sizeMm(millimetres(250.0)), 5.0);
}

TEST(Drawing, BoundsHoldStrokesAndMarks) {
    EXPECT_EQ(boundsOf(DrawItem{Role::outline, {}, shape::Line{{0, 0}, {10, 0}, {2.0, {}}}}),
              (RectMm{-1.0, -1.0, 11.0, 1.0}));
    EXPECT_EQ(
        boundsOf(DrawItem{
            Role::outline, {}, shape::Mark{{5, 5}, shape::MarkKind::circle, 4.0, true, {0.0, {}}}}),
        (RectMm{3.0, 3.0, 7.0, 7.0}));
    EXPECT_TRUE(boundsOf(DrawItem{Role::outline, {}, shape::Polyline{}}).empty());
}

TEST(Drawing, BoundsOfOneId) {
    Drawing drawing;
    drawing.items.push_back({Role::frame, "F1", shape::Line{{0, 0}, {0, 10}, {0.0, {}}}});
    drawing.items.push_back({Role::frame, "F2", shape::Line{{5, 0}, {5, 10}, {0.0, {}}}});
    drawing.items.push_back({Role::frame, "F2", shape::Line{{5, 20}, {6, 20}, {0.0, {}}}});
    EXPECT_EQ(boundsOf(drawing, "F2"), (RectMm{5.0, 0.0, 6.0, 20.0}));
    EXPECT_TRUE(boundsOf(drawing, "F3").empty());
    EXPECT_TRUE(boundsOf(drawing, "").empty());
    EXPECT_EQ(boundsOf(drawing), (RectMm{0.0, 0.0, 6.0, 20.0}));
}

}  // namespace
}  // namespace fayline
