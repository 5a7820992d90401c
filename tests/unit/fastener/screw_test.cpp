#include "fastener/screw.h"

#include <gtest/gtest.h>

namespace fayline {
namespace {

// Bodies 0.164, 0.190, 0.216, 0.242 in of No. 8, 10, 12, 14 as printed by homemadetools.net and
// trayedit.com after B18.6.1.
TEST(Screw, bodiesOfTheGaugeSeries) {
    EXPECT_NEAR(inInches(screwBody(Gauge(8))), 0.164, 1e-12);
    EXPECT_NEAR(inInches(screwBody(Gauge(10))), 0.190, 1e-12);
    EXPECT_NEAR(inInches(screwBody(Gauge(12))), 0.216, 1e-12);
    EXPECT_NEAR(inInches(screwBody(Gauge(14))), 0.242, 1e-12);
}

TEST(Screw, rootsAsMeasuredAndInBetween) {
    EXPECT_NEAR(inInches(screwRoot(Gauge(10))), 0.130, 1e-12);
    EXPECT_NEAR(inInches(screwRoot(Gauge(14))), 0.166, 1e-12);
    for (int n = 1; n <= 30; ++n) {
        EXPECT_GT(screwRoot(Gauge(n)), screwRoot(Gauge(n - 1)));
        const double ratio = screwRoot(Gauge(n)) / screwBody(Gauge(n));
        EXPECT_GT(ratio, 0.65);
        EXPECT_LT(ratio, 0.72);
    }
}

// Sharp-edged head diameters of flat-head screws No. 4 to 8, in: 0.225 0.252 0.279 0.305 0.332.
TEST(Screw, headsAreTwiceTheBody) {
    const double printed_in[5] = {0.225, 0.252, 0.279, 0.305, 0.332};
    for (int i = 0; i < 5; ++i)
        EXPECT_NEAR(inInches(screwHead(Gauge(4 + i))), printed_in[i], 0.015 * printed_in[i]);
}

}  // namespace
}  // namespace fayline
