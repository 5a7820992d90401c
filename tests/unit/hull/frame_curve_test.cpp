#include "hull/frame_curve.h"

#include <gtest/gtest.h>

#include <cmath>

namespace fayline {
namespace {

constexpr double pi = 3.14159265358979323846;

/// A quarter circle of one metre about (0, 1 m), from the keel up to the level of its centre.
Section quarterCircle() {
    Section section;
    for (int i = 0; i <= 720; ++i) {
        const double a = pi / 2 * i / 720;
        section.points.push_back({metres(std::sin(a)), metres(1 - std::cos(a))});
    }
    return section;
}

TEST(FrameCurve, girthAndNormalsOfACircle) {
    const auto curve = FrameCurve::above(quarterCircle(), std::nullopt);
    ASSERT_TRUE(curve);
    EXPECT_NEAR(inMetres(curve->girth()), pi / 2, 1e-5);
    for (const double a : {0.3, 0.8, 1.2}) {
        const CurvePoint point = curve->at(metres(a));
        EXPECT_NEAR(inMetres(point.y), std::sin(a), 1e-5);
        EXPECT_NEAR(point.outY, std::sin(a), 1e-3);
        EXPECT_NEAR(point.outZ, -std::cos(a), 1e-3);
        const CurvePoint inner = curve->inside(metres(a), metres(0.1));
        EXPECT_NEAR(std::hypot(inMetres(inner.y), inMetres(inner.z) - 1), 0.9, 1e-4);
    }
}

TEST(FrameCurve, beginsAtTheKeelsTop) {
    const auto curve = FrameCurve::above(quarterCircle(), metres(0.5));
    ASSERT_TRUE(curve);
    EXPECT_NEAR(inMetres(curve->at(Length{}).z), 0.5, 1e-9);
    EXPECT_NEAR(inMetres(curve->girth()), pi / 2 - std::acos(0.5), 1e-4);
    EXPECT_FALSE(FrameCurve::above(quarterCircle(), metres(2)));
    EXPECT_FALSE(FrameCurve::above(Section{}, std::nullopt));
}

TEST(FrameCurve, findsTheWayToAHalfBreadth) {
    const auto curve = FrameCurve::above(quarterCircle(), std::nullopt);
    EXPECT_NEAR(inMetres(*curve->alongAtHalfBreadth(metres(0.5))), std::asin(0.5), 1e-4);
    EXPECT_FALSE(curve->alongAtHalfBreadth(metres(1.5)));
}

}  // namespace
}  // namespace fayline
