// The rabbet line as given and as derived, by hand.

#include "hull/rabbet.h"

#include <gtest/gtest.h>

#include "hull/frame_curve.h"

using namespace fayline;

namespace {

OffsetStation stationAt(const char* id, double x_m, double rabbetUp_mm) {
    OffsetStation station;
    station.id = id;
    station.x = metres(x_m);
    station.points = {{millimetres(50), Length{}, "", ""},
                      {millimetres(60), millimetres(rabbetUp_mm), "", ""},
                      {millimetres(900), millimetres(1200), "", ""}};
    station.rabbet = 2;
    return station;
}

/// A keel 100 mm broad with upright sides to 300 mm, then a straight side out at 45 degrees.
Section keeled() {
    Section section;
    section.points = {{millimetres(50), Length{}},
                      {millimetres(50), millimetres(300)},
                      {millimetres(1050), millimetres(1300)}};
    return section;
}

}  // namespace

TEST(Rabbet, GoesThroughItsPointsAndStraightBetweenThoseInLine) {
    Offsets offsets;
    offsets.stations = {stationAt("1", 0, 300), stationAt("2", 1, 250), stationAt("3", 2, 200)};
    const auto line = RabbetLine::through(offsets);
    ASSERT_TRUE(line);
    EXPECT_NEAR(inMillimetres(line->at(metres(1))->z), 250, 1e-9);
    EXPECT_NEAR(inMillimetres(line->at(metres(1.5))->z), 225, 1e-6);
    EXPECT_NEAR(inMillimetres(line->at(metres(0.3))->y), 60, 1e-9);
    EXPECT_FALSE(line->at(metres(-0.01)));
    EXPECT_FALSE(line->at(metres(2.01)));
}

TEST(Rabbet, StationsThatDoNotSayLeaveItOut) {
    Offsets offsets;
    offsets.stations = {stationAt("1", 0, 300), stationAt("2", 1, 250), stationAt("3", 2, 200)};
    offsets.stations[0].rabbet.reset();
    const auto line = RabbetLine::through(offsets);
    ASSERT_TRUE(line);
    EXPECT_FALSE(line->at(metres(0.5)));
    EXPECT_TRUE(line->at(metres(1)));
    offsets.stations[1].rabbet.reset();
    EXPECT_FALSE(RabbetLine::through(offsets));
}

// Planking 30 mm thick at 45 degrees has its inside 30·sin 45 = 21.2 mm nearer the middle: 50 mm
// out where its outside is 71.2 mm out, 21.2 above the corner. Near the corner a direction is taken
// over 15 mm either way, so that the place is good to some millimetres.
TEST(Rabbet, DerivedWherePlankingsInsideClearsTheKeelsSide) {
    const SectionPoint found =
        rabbetByRule(keeled(), millimetres(50), millimetres(30), std::nullopt);
    EXPECT_NEAR(inMillimetres(found.y), 50 + 21.2, 0.5);
    EXPECT_NEAR(inMillimetres(found.z), 300 + 21.2, 0.5);
    // A wider keel: 90 mm out.
    const SectionPoint wide =
        rabbetByRule(keeled(), millimetres(90), millimetres(30), std::nullopt);
    EXPECT_NEAR(inMillimetres(wide.y), 90 + 21.2, 0.1);
    // Not below a given height.
    const SectionPoint high =
        rabbetByRule(keeled(), millimetres(50), millimetres(30), millimetres(400));
    EXPECT_NEAR(inMillimetres(high.z), 400, 0.5);
    // Never as wide as that: the sheer.
    EXPECT_EQ(rabbetByRule(keeled(), metres(5), millimetres(30), std::nullopt),
              keeled().points.back());
}

TEST(Rabbet, AFrameLineBeginsAtItsFoot) {
    const auto curve = FrameCurve::from(keeled(), {millimetres(150), millimetres(400)});
    ASSERT_TRUE(curve);
    EXPECT_NEAR(inMillimetres(curve->at(Length{}).y), 150, 1e-9);
    EXPECT_NEAR(inMillimetres(curve->girth()), 900 * 1.41421356, 1e-3);
    // A foot off the section: its nearest place, here the corner.
    const auto corner = FrameCurve::from(keeled(), {millimetres(50), millimetres(295)});
    EXPECT_NEAR(inMillimetres(corner->at(Length{}).z), 295, 1e-9);
    // At the sheer nothing is left.
    EXPECT_FALSE(FrameCurve::from(keeled(), keeled().points.back()));
}
