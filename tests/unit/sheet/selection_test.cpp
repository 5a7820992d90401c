#include "sheet/selection.h"

#include <gtest/gtest.h>

namespace fayline {
namespace {

Drawing twoFrames() {
    Drawing drawing;
    drawing.size = {100.0, 60.0};
    drawing.items.push_back({Role::frame, "F1", shape::Line{{20, 20}, {20, 50}, {0.4, {}}}});
    drawing.items.push_back({Role::frame, "F2", shape::Line{{60, 20}, {60, 50}, {0.4, {}}}});
    return drawing;
}

TEST(Selection, ABoxAroundTheChosenAndItsName) {
    const Drawing drawing = twoFrames();
    const auto items = selectionOf(drawing, "F2", {2.1, 2.1});
    ASSERT_EQ(items.size(), 2U);
    const RectMm box = boundsOf(items[0]);
    EXPECT_LT(box.left, 59.8);
    EXPECT_GT(box.right, 60.2);
    EXPECT_LT(box.top, 20.0);
    EXPECT_GT(box.bottom, 50.0);
    EXPECT_GT(box.left, 21.0);
    EXPECT_FALSE(std::get<shape::Polygon>(items[0].shape).filled);
    const auto& name = std::get<shape::Text>(items[1].shape);
    EXPECT_EQ(name.text, "F2");
    EXPECT_TRUE(name.cleared);
    EXPECT_LT(name.anchor.y, box.top);
}

TEST(Selection, NoSecondNameWhereAllAreNamed) {
    Drawing drawing = twoFrames();
    drawing.namesAll = true;
    EXPECT_EQ(selectionOf(drawing, "F2", {2.1, 2.1}).size(), 1U);
}

TEST(Selection, NothingForWhatIsNotThere) {
    EXPECT_TRUE(selectionOf(twoFrames(), "F3", {2.1, 2.1}).empty());
    EXPECT_TRUE(selectionOf(twoFrames(), "", {2.1, 2.1}).empty());
}

TEST(Selection, NameStaysInTheDrawing) {
    Drawing drawing = twoFrames();
    drawing.items.push_back({Role::frame, "F128A", shape::Line{{99.5, 1}, {99.5, 50}, {0.4, {}}}});
    const auto items = selectionOf(drawing, "F128A", {2.1, 2.1});
    ASSERT_EQ(items.size(), 2U);
    EXPECT_LE(boundsOf(items[1]).right, 100.0);
    EXPECT_GE(boundsOf(items[1]).top, 0.0);
}

}  // namespace
}  // namespace fayline
