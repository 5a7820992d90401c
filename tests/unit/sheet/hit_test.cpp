#include "sheet/hit.h"

#include <gtest/gtest.h>

namespace fayline {
namespace {

shape::Polygon square(double left, double top, double side) {
    return {
        {{left, top}, {left + side, top}, {left + side, top + side}, {left, top + side}}, true, {}};
}

TEST(Hit, DistanceToLineAndMark) {
    const DrawItem line{Role::frame, "F1", shape::Line{{0, 0}, {10, 0}, {1.0, {}}}};
    EXPECT_DOUBLE_EQ(distanceMm(line, {5.0, 3.0}), 2.5);
    EXPECT_DOUBLE_EQ(distanceMm(line, {13.0, 4.0}), 4.5);
    EXPECT_DOUBLE_EQ(distanceMm(line, {5.0, 0.2}), 0.0);
    const DrawItem mark{Role::frame, "F1",
                        shape::Mark{{0, 0}, shape::MarkKind::circle, 4.0, true, {}}};
    EXPECT_DOUBLE_EQ(distanceMm(mark, {0.0, 5.0}), 3.0);
}

TEST(Hit, InsideAnAreaOnly) {
    const DrawItem area{Role::ballast, "ballast", square(0, 0, 20)};
    EXPECT_DOUBLE_EQ(distanceMm(area, {10.0, 10.0}), 0.0);
    EXPECT_DOUBLE_EQ(distanceMm(area, {23.0, 10.0}), 3.0);
    DrawItem edge = area;
    std::get<shape::Polygon>(edge.shape).filled = false;
    EXPECT_DOUBLE_EQ(distanceMm(edge, {10.0, 10.0}), 10.0);
}

TEST(Hit, NearestLineWithinTolerance) {
    Drawing drawing;
    for (int i = 0; i < 5; ++i) {
        drawing.items.push_back({Role::frame, "F" + std::to_string(i),
                                 shape::Line{{i * 3.0, 0}, {i * 3.0, 10}, {0.0, {}}}});
    }
    EXPECT_EQ(hit(drawing, {7.4, 5.0}, {2.0}), "F2");
    EXPECT_EQ(hit(drawing, {7.6, 5.0}, {2.0}), "F3");
    EXPECT_EQ(hit(drawing, {12.0, 11.9}, {2.0}), "F4");
    EXPECT_EQ(hit(drawing, {12.0, 12.1}, {2.0}), std::nullopt);
    EXPECT_EQ(hit(Drawing{}, {0.0, 0.0}), std::nullopt);
}

TEST(Hit, ABoltBeforeTheBallastItGoesThrough) {
    Drawing drawing;
    drawing.items.push_back({Role::bolt, "K.1", shape::Line{{10, 0}, {10, 20}, {0.5, {}}}});
    drawing.items.push_back({Role::ballast, "ballast", square(0, 0, 20)});
    EXPECT_EQ(hit(drawing, {11.5, 10.0}, {2.0}), "K.1");
    EXPECT_EQ(hit(drawing, {15.0, 10.0}, {2.0}), "ballast");
    EXPECT_EQ(hit(drawing, {-1.0, 10.0}, {2.0}), std::nullopt);
}

TEST(Hit, WhatLiesOnTopOfEqualsAndNothingWithoutAnId) {
    Drawing drawing;
    drawing.items.push_back({Role::ballast, "keel", square(0, 0, 20)});
    drawing.items.push_back({Role::ballast, "ballast", square(0, 10, 20)});
    drawing.items.push_back({Role::hull, "", square(0, 0, 50)});
    EXPECT_EQ(hit(drawing, {10.0, 15.0}), "ballast");
    EXPECT_EQ(hit(drawing, {10.0, 5.0}), "keel");
    EXPECT_EQ(hit(drawing, {40.0, 40.0}), std::nullopt);
}

}  // namespace
}  // namespace fayline
