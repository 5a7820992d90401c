// Tape and rule along a frame, against places known beforehand.
#include "paper_leg.h"

#include <gtest/gtest.h>

#include "hull/section.h"

namespace fayline {
namespace {

FrameCurve curveOf(const std::vector<SectionPoint>& points) {
    Section section;
    section.x = metres(1);
    section.points = points;
    return *FrameCurve::above(section, std::nullopt);
}

TEST(FrameLegs, OnAnUprightSideAlongIsHeightAndAcrossIsInFromThePlanking) {
    const FrameCurve curve =
        curveOf({{millimetres(500), millimetres(0)}, {millimetres(500), millimetres(1000)}});
    const FrameLeg leg(curve, millimetres(25), millimetres(60));
    const auto place = leg.placeOf({millimetres(455), millimetres(300)});
    EXPECT_NEAR(inMillimetres(place.along), 300, 1e-6);
    EXPECT_NEAR(inMillimetres(place.across), 20, 1e-6);
    const auto outside = leg.placeOf({millimetres(480), millimetres(300)});
    EXPECT_NEAR(inMillimetres(outside.across), -5, 1e-6);
    const auto below = leg.placeOf({millimetres(440), millimetres(-50)});
    EXPECT_NEAR(inMillimetres(below.along), -50, 1e-6);
    EXPECT_NEAR(inMillimetres(below.across), 35, 1e-6);
    EXPECT_NEAR(inMillimetres(leg.edgeAtHeight(millimetres(700)).across), 475, 1e-6);
    EXPECT_NEAR(inMillimetres(leg.alongAtHeight(millimetres(700))), 700, 1e-6);
}

TEST(FrameLegs, OnASlopeTheyRunWithTheSlope) {
    // 3 : 4 : 5, 300 out and 400 up.
    const FrameCurve curve =
        curveOf({{millimetres(200), millimetres(0)}, {millimetres(500), millimetres(400)}});
    const FrameLeg leg(curve, millimetres(0), millimetres(60));
    // 250 along, then 30 square in: in is (−4, 3)/5.
    const auto place = leg.placeOf({millimetres(200 + 150 - 24), millimetres(200 + 18)});
    EXPECT_NEAR(inMillimetres(place.along), 250, 1e-6);
    EXPECT_NEAR(inMillimetres(place.across), 30, 1e-6);
}

TEST(FrameLegs, AFoldIsLeftOut) {
    // A turn far tighter than the frame is deep.
    const FrameCurve curve = curveOf({{millimetres(20), millimetres(0)},
                                      {millimetres(300), millimetres(10)},
                                      {millimetres(305), millimetres(800)}});
    const FrameLeg leg(curve, millimetres(25), millimetres(90));
    for (const PlanePoint& p : leg.inner()) {
        EXPECT_GE(p.across, Length{});
        EXPECT_GE(inMillimetres(p.up), 100) << "nearer to the bottom than the frame is deep";
    }
}

}  // namespace
}  // namespace fayline
