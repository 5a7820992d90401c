#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "hull/offsets.h"
#include "shapes.h"

namespace fayline {
namespace {

using namespace test;

Offsets sound() {
    return box(metres(3), metres(2), metres(1), 4);
}

std::string only(const Offsets& offsets) {
    const auto problems = checkOffsets(offsets);
    return problems.size() == 1 ? problems.front().line()
                                : std::to_string(problems.size()) + " problems";
}

TEST(CheckOffsets, soundOnesPass) {
    EXPECT_TRUE(checkOffsets(sound()).empty());
}

TEST(CheckOffsets, placesAreDecisionNames) {
    auto offsets = sound();
    offsets.stations[2].points[1].halfBreadth = millimetres(-4);
    EXPECT_EQ(only(offsets), "offsets.2: half_breadth of point 2 is -4 mm; 0 mm or more");
    offsets = sound();
    offsets.stations[1].points.pop_back();
    EXPECT_EQ(only(offsets), "offsets.1: station 1 has 1 point; at least 2 points");
    offsets = sound();
    offsets.waterline = metres(2);
    EXPECT_EQ(only(offsets),
              "offsets.waterline: waterline is 2000 mm; above 0 mm (the lowest point), up to 1000 "
              "mm (the lowest station's top)");
    offsets = sound();
    offsets.stations[3].id = "1";
    EXPECT_EQ(only(offsets),
              "offsets.1: station 1 comes twice; all points of a station together, and each name "
              "once");
    offsets = sound();
    offsets.stations[3].id = "";
    EXPECT_EQ(only(offsets),
              "offsets: the station at x = 3000 mm has no name; a name for each station");
}

TEST(CheckOffsets, whatIsNotFinite) {
    for (const double bad :
         {std::nan(""), std::numeric_limits<double>::infinity(), 1e308, -201.0}) {
        auto offsets = sound();
        offsets.stations[1].points[0].height = metres(bad);
        EXPECT_FALSE(checkOffsets(offsets).empty()) << bad;
        offsets = sound();
        offsets.stations[1].points[0].halfBreadth = metres(bad);
        EXPECT_FALSE(checkOffsets(offsets).empty()) << bad;
        offsets = sound();
        offsets.stations[1].x = metres(bad);
        EXPECT_FALSE(checkOffsets(offsets).empty()) << bad;
        offsets = sound();
        offsets.waterline = metres(bad);
        EXPECT_FALSE(checkOffsets(offsets).empty()) << bad;
    }
}

TEST(CheckOffsets, crossingSpeaksOfPoints) {
    auto offsets = sound();
    offsets.stations[1] = station("1", metres(1),
                                  {{metres(0), metres(0)},
                                   {metres(1), metres(0)},
                                   {metres(1), metres(0.5)},
                                   {metres(0.5), metres(-0.2)},
                                   {metres(0.5), metres(1)}});
    EXPECT_EQ(
        only(offsets),
        "offsets.1: the section of station 1 crosses itself: the piece between points 3 and 4 "
        "meets the piece between points 1 and 2; points in order from keel to sheer, along a "
        "line that does not cross itself");
}

TEST(CheckOffsets, sectionFoldedBackOnItself) {
    auto offsets = sound();
    offsets.stations[1] = station("1", metres(1),
                                  {{metres(0), metres(0)},
                                   {metres(1), metres(0)},
                                   {metres(0.4), metres(0)},
                                   {metres(0.5), metres(1)}});
    EXPECT_FALSE(checkOffsets(offsets).empty());
}

TEST(CheckOffsets, lastPieceFoldedBack) {
    auto offsets = sound();
    offsets.stations[1] = station("1", metres(1),
                                  {{metres(0), metres(0)},
                                   {metres(1), metres(0)},
                                   {metres(1), metres(1)},
                                   {metres(1), metres(0.7)}});
    EXPECT_NE(only(offsets).find("between points 3 and 4 meets the piece between points 2 and 3"),
              std::string::npos)
        << only(offsets);
}

// Lawful shapes that look odd: a skeg of no thickness on the centreline, a bulb, tumblehome.
TEST(CheckOffsets, oddButLawfulSectionsPass) {
    auto offsets = sound();
    offsets.stations[1] = station("1", metres(1),
                                  {{metres(0), metres(-0.5)},
                                   {metres(0), metres(0)},
                                   {metres(1.1), metres(0.3)},
                                   {metres(1), metres(1)}});
    offsets.stations[2] = station("2", metres(2),
                                  {{metres(0.2), metres(-0.5)},
                                   {metres(0.2), metres(-0.3)},
                                   {metres(0.05), metres(-0.2)},
                                   {metres(0.05), metres(0)},
                                   {metres(1), metres(0)},
                                   {metres(1), metres(1)}});
    EXPECT_TRUE(checkOffsets(offsets).empty());
    EXPECT_TRUE(loft(offsets));
}

TEST(CheckOffsets, tooManyAreRefusedNotChewed) {
    auto offsets = sound();
    auto& points = offsets.stations[1].points;
    points.clear();
    for (int k = 0; k <= 1000; ++k) points.push_back({metres(1), millimetres(k), {}, {}});
    EXPECT_EQ(only(offsets), "offsets.1: station 1 has 1001 points; at most 1000");
    EXPECT_EQ(only(box(metres(100), metres(2), metres(1), 1001)),
              "offsets: there are 1001 stations; at most 1000");
    EXPECT_FALSE(checkOffsets(Offsets{}).empty());
}

}  // namespace
}  // namespace fayline
