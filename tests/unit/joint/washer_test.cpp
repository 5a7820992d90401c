#include "joint/washer.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace fayline;

namespace {

WasherInput sample() {
    WasherInput washer;
    washer.diameter = millimetres(90);
    washer.thickness = millimetres(6);
    washer.hole = millimetres(22);
    washer.bolt = millimetres(22);
    washer.usAllowable = megapascals(5.5158);  // 800 psi
    washer.ec5Characteristic = megapascals(8.0);
    washer.meanWet = megapascals(4.6);
    return washer;
}

constexpr double pi = 3.14159265358979323846;

}  // namespace

TEST(Washer, BearingAreaIsDiscLessHole) {
    EXPECT_NEAR(inSquareMillimetres(bearingArea(sample())), pi / 4 * (90.0 * 90 - 22.0 * 22), 1e-9);
}

TEST(Washer, WhatOverhangsTheTimberIsNotCounted) {
    auto washer = sample();
    washer.timberWidth = millimetres(75);
    // Area of the strip ±37.5 of the circle by summing chords, independently of the segment
    // formula.
    double strip_mm2 = 0;
    const int steps = 200000;
    for (int i = 0; i < steps; ++i) {
        const double y_mm = -37.5 + 75.0 * (i + 0.5) / steps;
        strip_mm2 += 2 * std::sqrt(45.0 * 45 - y_mm * y_mm) * 75.0 / steps;
    }
    EXPECT_NEAR(inSquareMillimetres(bearingArea(washer)), strip_mm2 - pi / 4 * 22 * 22, 1e-3);
    washer.timberWidth = millimetres(500);
    EXPECT_EQ(bearingArea(washer), bearingArea(sample()));
}

TEST(Washer, UsTakesWetServiceAndShortBearing) {
    const auto state = washerUs(sample());
    ASSERT_TRUE(state);
    const double lb_in = 90 / 25.4;
    EXPECT_NEAR(
        inNewtons(state->working),
        5.5158 * 0.67 * (lb_in + 0.375) / lb_in * inSquareMillimetres(bearingArea(sample())), 1e-6);
    EXPECT_NEAR(inNewtons(state->reference), 5.5158 * inSquareMillimetres(bearingArea(sample())),
                1e-6);
}

TEST(Washer, LongDurationDoesNotChangeTheUsFigureAndLowersTheOther) {
    auto longer = sample();
    longer.duration = Duration::permanent;
    EXPECT_EQ(washerUs(longer)->working, washerUs(sample())->working);
    EXPECT_NEAR(washerEc5(longer)->working / washerEc5(sample())->working, 0.50 / 0.90, 1e-12);
}

TEST(Washer, Ec5IsThreeTimesTheStrengthWithItsFactors) {
    const auto state = washerEc5(sample());
    ASSERT_TRUE(state);
    EXPECT_NEAR(inNewtons(state->reference), 3 * 8.0 * inSquareMillimetres(bearingArea(sample())),
                1e-6);
    EXPECT_NEAR(state->working / state->reference, 0.90 / 1.3, 1e-12);
    auto accidental = sample();
    accidental.kindOfLoad = KindOfLoad::accidental;
    EXPECT_NEAR(washerEc5(accidental)->working / state->reference, 0.90, 1e-12);
}

TEST(Washer, WithoutAFigureThereIsNoResult) {
    auto washer = sample();
    washer.usAllowable.reset();
    washer.ec5Characteristic.reset();
    EXPECT_FALSE(washerUs(washer));
    EXPECT_FALSE(washerEc5(washer));
}

TEST(Washer, AThinWasherIsOutsideTheRange) {
    auto washer = sample();
    washer.thickness = millimetres(3);
    EXPECT_FALSE(washerUs(washer)->outside.empty());
    EXPECT_TRUE(washerUs(sample())->outside.empty());
}

TEST(Bed, CapacityIsTheContactForceScaledToTheAllowedPressure) {
    const BedInput bed{newtons(50000), megapascals(2.0), sample()};
    EXPECT_NEAR(inNewtons(bedUs(bed)->working), 50000 * 5.5158 * 0.67 / 2.0, 1e-6);
    EXPECT_NEAR(inNewtons(bedEc5(bed)->working), 50000 * 8.0 * 0.90 / 1.3 / 2.0, 1e-6);
    EXPECT_FALSE(bedUs({Force{}, Stress{}, sample()}));
}
