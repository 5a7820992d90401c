#include "fastener/thread.h"

#include <gtest/gtest.h>

namespace fayline {
namespace {

Thread unc(double diameterIn, double perInch) {
    Thread thread;
    thread.series = ThreadSeries::unifiedCoarse;
    thread.nominal = inches(diameterIn);
    thread.pitch = inches(1.0 / perInch);
    return thread;
}

Thread metric(double diameterMm, double pitchMm) {
    Thread thread;
    thread.series = ThreadSeries::metricCoarse;
    thread.nominal = millimetres(diameterMm);
    thread.pitch = millimetres(pitchMm);
    return thread;
}

TEST(Thread, AreasByHand) {
    // 1/2-13: 0.5 - 0.9743/13 = 0.4250538 in; x^2 pi/4 = 0.1418985 in2
    EXPECT_NEAR(inSquareMillimetres(tensileStressArea(unc(0.5, 13))), 0.1418985 * 645.16, 0.001);
    EXPECT_NEAR(inInches(rootDiameter(unc(0.5, 13))), 0.405625, 1e-6);
    // M20: 20 - 0.9382 x 2.5 = 17.6545
    EXPECT_NEAR(inSquareMillimetres(tensileStressArea(metric(20, 2.5))), 244.793, 0.01);
    EXPECT_NEAR(inMillimetres(rootDiameter(metric(20, 2.5))), 16.9328, 1e-4);
}

TEST(Thread, RootIsSmallerThanStressAreaSmallerThanRod) {
    for (const auto& thread : {unc(0.25, 20), unc(1.5, 6), metric(5, 0.8), metric(30, 3.5)}) {
        const Area rod = thread.nominal * thread.nominal * 0.785398163;
        EXPECT_LT(rootArea(thread), tensileStressArea(thread));
        EXPECT_LT(tensileStressArea(thread), rod);
    }
}

TEST(Thread, TheTwoSeriesAreOneProfile) {
    // The same bolt written in inches and in millimetres.
    const auto inch = unc(0.75, 10);
    const auto mm = metric(19.05, 2.54);
    EXPECT_NEAR(inMillimetres(rootDiameter(inch)), inMillimetres(rootDiameter(mm)), 1e-4);
    EXPECT_NEAR(tensileStressArea(inch) / tensileStressArea(mm), 1.0, 0.011);
}

TEST(Thread, TurnsOfTheNut) {
    EXPECT_NEAR(turnsFor(metric(12, 1.75), millimetres(3.5)), 2.0, 1e-12);
}

TEST(Thread, SeriesGoesToTextAndBack) {
    for (const auto series : {ThreadSeries::unifiedCoarse, ThreadSeries::metricCoarse}) {
        EXPECT_EQ(threadSeriesFromText(threadSeriesText(series)), series);
    }
    EXPECT_FALSE(threadSeriesFromText("unf"));
}

}  // namespace
}  // namespace fayline
