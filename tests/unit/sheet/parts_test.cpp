#include "sheet/parts.h"

#include <gtest/gtest.h>

#include <cmath>

namespace fayline {
namespace {

double totalLength(const std::vector<shape::Line>& lines) {
    double sum = 0.0;
    for (const shape::Line& line : lines)
        sum += std::hypot(line.to.x - line.from.x, line.to.y - line.from.y);
    return sum;
}

TEST(Hatch, LevelLinesOverASquare) {
    const shape::Hatch hatch{{{0.5, 0.5}, {10.5, 0.5}, {10.5, 10.5}, {0.5, 10.5}}, 0.0, 2.0, {}};
    const auto lines = linesOf(hatch);
    ASSERT_EQ(lines.size(), 5U);  // at 2, 4, 6, 8, 10
    EXPECT_DOUBLE_EQ(totalLength(lines), 50.0);
}

TEST(Hatch, LengthIsAreaOverSpacing) {
    // An L of 20 by 20 less 10 by 10: 300 mm2; lines 0.1 apart hold about 3000 mm.
    const shape::Hatch hatch{
        {{0, 0}, {20, 0}, {20, 10}, {10, 10}, {10, 20}, {0, 20}}, 33.0, 0.1, {}};
    EXPECT_NEAR(totalLength(linesOf(hatch)), 3000.0, 5.0);
}

TEST(Hatch, GoesRoundAHollow) {
    // A U: at half height two pieces of 3.
    const shape::Hatch hatch{
        {{0, 0}, {3, 0}, {3, 7}, {6, 7}, {6, 0}, {9, 0}, {9, 10}, {0, 10}}, 0.0, 5.0, {}};
    const auto lines = linesOf(hatch);
    ASSERT_GE(lines.size(), 2U);
    for (const shape::Line& line : lines) {
        if (line.from.y == 5.0) {
            EXPECT_DOUBLE_EQ(std::abs(line.to.x - line.from.x), 3.0);
        }
    }
}

TEST(Hatch, NothingWithoutAreaOrSpacing) {
    EXPECT_TRUE(linesOf({{{0, 0}, {1, 1}}, 45.0, 1.0, {}}).empty());
    EXPECT_TRUE(linesOf({{{0, 0}, {9, 0}, {9, 9}}, 45.0, 0.0, {}}).empty());
}

template <typename T>
std::vector<T> only(const std::vector<DrawItem>& items) {
    std::vector<T> found;
    for (const DrawItem& item : items) {
        if (const T* shape = std::get_if<T>(&item.shape)) found.push_back(*shape);
    }
    return found;
}

TEST(Dimension, LineArrowsAndFigureAboveIt) {
    shape::Dimension dimension{{10, 50}, {60, 50}, 8.0, "50", 3.5, shape::DimensionKind::between};
    const auto parts = partsOf(dimension);
    const auto lines = only<shape::Line>(parts);
    ASSERT_EQ(lines.size(), 3U);
    EXPECT_EQ(lines[2].from, (PointMm{10, 42}));  // 8 to the left of rightward is up
    EXPECT_EQ(lines[2].to, (PointMm{60, 42}));
    const auto heads = only<shape::Polygon>(parts);
    ASSERT_EQ(heads.size(), 2U);
    EXPECT_EQ(heads[0].points[0], (PointMm{60, 42}));
    EXPECT_EQ(heads[1].points[0], (PointMm{10, 42}));
    const auto texts = only<shape::Text>(parts);
    ASSERT_EQ(texts.size(), 1U);
    EXPECT_DOUBLE_EQ(texts[0].anchor.x, 35.0);
    EXPECT_LT(texts[0].anchor.y, 42.0);
    EXPECT_DOUBLE_EQ(texts[0].angleDeg, 0.0);
}

TEST(Dimension, ReadsFromBelowOrFromTheRight) {
    shape::Dimension dimension{{10, 10}, {10, 60}, 0.0, "50", 3.5, shape::DimensionKind::between};
    EXPECT_DOUBLE_EQ(only<shape::Text>(partsOf(dimension))[0].angleDeg, 90.0);
    std::swap(dimension.from, dimension.to);
    EXPECT_DOUBLE_EQ(only<shape::Text>(partsOf(dimension))[0].angleDeg, 90.0);
    dimension = {{60, 10}, {10, 10}, 0.0, "50", 3.5, shape::DimensionKind::between};
    EXPECT_DOUBLE_EQ(only<shape::Text>(partsOf(dimension))[0].angleDeg, 0.0);
}

TEST(Dimension, RunningOneStartsAtTheDatumsCircle) {
    const shape::Dimension dimension{{10, 50}, {60, 50}, 0.0,
                                     "50",     3.5,      shape::DimensionKind::running};
    const auto parts = partsOf(dimension);
    EXPECT_EQ(only<shape::Polygon>(parts).size(), 1U);
    ASSERT_EQ(only<shape::Mark>(parts).size(), 1U);
    EXPECT_EQ(only<shape::Mark>(parts)[0].at, (PointMm{10, 50}));
    EXPECT_DOUBLE_EQ(only<shape::Text>(parts)[0].anchor.x, 60.0);
}

TEST(Dimension, AHelpStandsInBrackets) {
    const shape::Dimension dimension{{0, 0}, {9, 0}, 0.0,
                                     "150",  3.5,    shape::DimensionKind::auxiliary};
    EXPECT_EQ(only<shape::Text>(partsOf(dimension))[0].text, "(150)");
}

TEST(Dimension, OfNoLengthStillStands) {
    const shape::Dimension dimension{{5, 5}, {5, 5}, 4.0, "0", 3.5, shape::DimensionKind::between};
    for (const DrawItem& part : partsOf(dimension)) {
        const RectMm box = boundsOf(part);
        EXPECT_TRUE(std::isfinite(box.left) && std::isfinite(box.top));
    }
}

TEST(RoundedRectangle, StaysInside) {
    for (const PointMm& p : roundedRectangle({0, 0, 10, 4}, {3, 3})) {
        EXPECT_TRUE((RectMm{-1e-9, -1e-9, 10 + 1e-9, 4 + 1e-9}.contains(p)));
    }
}

}  // namespace
}  // namespace fayline
