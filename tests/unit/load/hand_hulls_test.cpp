// Hand answers for two invented hulls, worked with equal sharing among bolts, by equal force and by
// a cracked section on a bed of 500 MPa across the grain. Agreement within 25 % is asked; the rod's
// stiffness and the bed's depth are our reading of what the hand answers leave open, and are named
// in each row.

#include <gtest/gtest.h>

#include "ballast_fixture.h"

using namespace fayline;
using namespace fayline::test;

namespace {

void expectWithinQuarter(double value, double byHand) {
    EXPECT_GT(value, 0.75 * byHand);
    EXPECT_LT(value, 1.25 * byHand);
}

Force highest(const CaseLoads& loads) {
    Force most;
    for (const auto& bolt : loads.bolts) most = max(most, bolt.cracked);
    return most;
}

}  // namespace

TEST(HandHulls, LongKeelCutter) {
    // 2.9 t lead, centre 240 below, top 210 broad, 3200 long; nine 7/8 in bronze ±30; keel 150
    // deep, floor 180, rods about 700.
    const BoxBallast hollin{3200, 210, 2900, 240, 9, 30, 180, 22.225, 700, 105000, 500, 150};
    const auto loads = ballastLoads(inputOf(hollin), LoadCase::knockdownPort,
                                    usualSettings(LoadCase::knockdownPort));
    expectWithinQuarter(std::abs(inNewtonMetres(loads.totalMoment.x)) / 1000, 6.8);
    expectWithinQuarter(inNewtons(loads.bolts[0].equalForce) / 1000, 7.0);
    expectWithinQuarter(inNewtons(highest(loads)) / 1000, 12.5);
}

TEST(HandHulls, LightSloop) {
    // 1.35 t iron, centre 420 below, top 140 broad, 1700 long; seven M20 galvanised in one row;
    // keel timber 110 deep.
    const BoxBallast terrin{1700, 140, 1350, 420, 7, 0, 120, 20, 500, 205000, 500, 110};
    const auto loads = ballastLoads(inputOf(terrin), LoadCase::knockdownPort,
                                    usualSettings(LoadCase::knockdownPort));
    expectWithinQuarter(std::abs(inNewtonMetres(loads.totalMoment.x)) / 1000, 5.6);
    expectWithinQuarter(inNewtons(loads.bolts[0].equalForce) / 1000, 11.4);
    expectWithinQuarter(inNewtons(highest(loads)) / 1000, 16.1);
}
