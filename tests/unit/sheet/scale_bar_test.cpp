#include "sheet/scale_bar.h"

#include <gtest/gtest.h>

namespace fayline {
namespace {

ScaleLength chosen(double mmPerMetre, double room_mm, UnitSystem units) {
    return scaleLength(DrawScale{{}, mmPerMetre, false}, {room_mm, 3.0}, units);
}

TEST(ScaleBar, LongestRoundLengthThatFits) {
    // 20 mm a metre: 50 mm of room are 2.5 m or 8.2 ft.
    EXPECT_EQ(chosen(20.0, 50.0, UnitSystem::millimetres).text, "2 m");
    EXPECT_EQ(chosen(20.0, 50.0, UnitSystem::inches).text, "5 ft");
    EXPECT_EQ(chosen(20.0, 50.0, UnitSystem::inches).length, inches(60.0));
    // 200 mm a metre: 50 mm are 250 mm or 9.8 in.
    EXPECT_EQ(chosen(200.0, 50.0, UnitSystem::millimetres).text, "200 mm");
    EXPECT_EQ(chosen(200.0, 50.0, UnitSystem::inches).text, "6 in");
}

TEST(ScaleBar, TheShortestWhenNoneFits) {
    EXPECT_EQ(chosen(1e6, 50.0, UnitSystem::millimetres).text, "10 mm");
    EXPECT_EQ(chosen(1e6, 50.0, UnitSystem::inches).text, "1 in");
}

TEST(ScaleBar, IsAsLongAsItSays) {
    const DrawScale scale{{7.0, 9.0}, 20.0, false};
    const auto items =
        scaleBar(scale, {200.0, 50.0}, {80.0, 3.0}, {2.5, 2.5}, UnitSystem::millimetres);
    RectMm bar;
    std::vector<std::string> figures;
    for (const DrawItem& item : items) {
        if (const auto* part = std::get_if<shape::Polygon>(&item.shape)) {
            for (const PointMm& p : part->points) bar = united(bar, p);
        } else {
            figures.push_back(std::get<shape::Text>(item.shape).text);
        }
        EXPECT_LE(boundsOf(item).right, 200.0 + 1e-9);
        EXPECT_GE(boundsOf(item).left, 120.0);
    }
    EXPECT_EQ(figures, (std::vector<std::string>{"2 m", "0"}));
    EXPECT_NEAR(bar.width(), 40.0, 1e-9);
}

}  // namespace
}  // namespace fayline
