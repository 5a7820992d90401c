#include "fastener/bolt.h"

#include <gtest/gtest.h>

namespace fayline {
namespace {

TEST(Washer, BearsOnTheRingOutsideTheLargerHole) {
    const auto washer =
        plateWasher(millimetres(20), millimetres(22), millimetres(80), millimetres(5));
    EXPECT_NEAR(inSquareMillimetres(bearingArea(washer, millimetres(20))),
                0.785398163 * (80.0 * 80.0 - 22.0 * 22.0), 1e-3);
    EXPECT_NEAR(inSquareMillimetres(bearingArea(washer, millimetres(30))),
                0.785398163 * (80.0 * 80.0 - 30.0 * 30.0), 1e-3);
    EXPECT_EQ(bearingArea(washer, millimetres(90)), Area{});
}

TEST(Rod, CutLengthByHand) {
    Thread thread;
    thread.pitch = millimetres(2.5);
    Nut nut;
    nut.height = millimetres(18);
    Washer washer;
    washer.thickness = millimetres(5);
    // 400 + 2 x (5 + 18 + 3.75) + 12
    EXPECT_NEAR(inMillimetres(rodLength(thread, nut, washer, millimetres(400), millimetres(12))),
                465.5, 1e-9);
    EXPECT_NEAR(inMillimetres(threadLength(thread, nut, washer, millimetres(12))), 38.75, 1e-9);
}

TEST(Nut, KindGoesToTextAndBack) {
    for (const auto kind : {NutKind::hex, NutKind::heavyHex, NutKind::jam}) {
        EXPECT_EQ(nutKindFromText(nutKindText(kind)), kind);
    }
    EXPECT_FALSE(nutKindFromText("square"));
}

}  // namespace
}  // namespace fayline
