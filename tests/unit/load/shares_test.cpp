#include <gtest/gtest.h>

#include <numeric>

#include "ballast_fixture.h"

using namespace fayline;
using namespace fayline::test;

namespace {

std::vector<BedSlice> evenBed(double length_mm, int slices) {
    std::vector<BedSlice> bed;
    for (int i = 0; i < slices; ++i) {
        bed.push_back({millimetres(length_mm * (i + 0.5) / slices), millimetres(length_mm / slices),
                       millimetres(200), kilograms(1000) / millimetres(length_mm)});
    }
    return bed;
}

double sum(const std::vector<double>& v) {
    return std::accumulate(v.begin(), v.end(), 0.0);
}

}  // namespace

TEST(Shares, BothWaysAddUpToOne) {
    const auto shares = sharesAlong(evenBed(3000, 300), millimetres(1600),
                                    {millimetres(300), millimetres(900), millimetres(2700)});
    EXPECT_NEAR(sum(shares.tributary), 1.0, 1e-12);
    EXPECT_NEAR(sum(shares.rigid), 1.0, 1e-12);
}

TEST(Shares, TributaryGivesEndsTheirOverhang) {
    const auto shares =
        sharesAlong(evenBed(3000, 3000), millimetres(1500), {millimetres(1000), millimetres(2000)});
    EXPECT_NEAR(shares.tributary[0], 0.5, 1e-3);
    const auto three = sharesAlong(evenBed(3000, 3000), millimetres(1500),
                                   {millimetres(1000), millimetres(1500), millimetres(2000)});
    EXPECT_NEAR(three.tributary[0], 1250.0 / 3000, 1e-3);
    EXPECT_NEAR(three.tributary[1], 500.0 / 3000, 1e-3);
}

TEST(Shares, RigidFollowsStaticsOfTwoSupports) {
    // A beam on two supports: the reaction is the lever on the other side over the span.
    const auto shares =
        sharesAlong(evenBed(3000, 30), millimetres(1200), {millimetres(1000), millimetres(2000)});
    EXPECT_NEAR(shares.rigid[0], 0.8, 1e-12);
    EXPECT_NEAR(shares.rigid[1], 0.2, 1e-12);
}

TEST(Shares, OneSupportTakesAll) {
    const auto shares = sharesAlong(evenBed(3000, 30), millimetres(1200), {millimetres(400)});
    EXPECT_EQ(shares.tributary[0], 1.0);
    EXPECT_EQ(shares.rigid[0], 1.0);
}
