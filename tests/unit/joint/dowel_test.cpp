#include "joint/dowel.h"

#include <gtest/gtest.h>

#include <cmath>

#include "any_joint.h"
#include "joint/us_lateral.h"

using namespace fayline;
using namespace fayline::test;

namespace {

double pounds(Force force) {
    return inNewtons(force) / pound_N;
}

DowelInput dowel(double side_psi, double main_psi, double side_in, double main_in, double d_in,
                 double yield_psi, double gap_in = 0.0) {
    const Moment moment = dowelMoment(psi(yield_psi), inches(d_in));
    return {psi(side_psi) * inches(d_in),
            psi(main_psi) * inches(d_in),
            inches(side_in),
            inches(main_in),
            inches(gap_in),
            moment,
            moment};
}

}  // namespace

// The closed forms of NDS Table 12.3.1A, written out from k1, k2, k3, against the quadratic ones.
TEST(Dowel, WithoutGapEqualsTheClosedForms) {
    for (const double fem : {2400.0, 5600.0, 9300.0}) {
        for (const double lm : {0.8, 1.5, 3.5}) {
            const double fes = 3150, ls = 1.5, d = 0.5, fyb = 45000;
            const double re = fem / fes, rt = lm / ls;
            const double k1 =
                (std::sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re) -
                 re * (1 + rt)) /
                (1 + re);
            const double k2 =
                -1 + std::sqrt(2 * (1 + re) + 2 * fyb * (1 + 2 * re) * d * d / (3 * fem * lm * lm));
            const double k3 = -1 + std::sqrt(2 * (1 + re) / re +
                                             2 * fyb * (2 + re) * d * d / (3 * fem * ls * ls));
            const DowelModes modes = dowelModes(dowel(fes, fem, ls, lm, d, fyb));
            EXPECT_NEAR(pounds(modes.im), d * lm * fem, 1e-6);
            EXPECT_NEAR(pounds(modes.is), d * ls * fes, 1e-6);
            EXPECT_NEAR(pounds(modes.ii), k1 * d * ls * fes, 1e-6);
            EXPECT_NEAR(pounds(modes.iiim), k2 * d * lm * fem / (1 + 2 * re), 1e-6);
            EXPECT_NEAR(pounds(modes.iiis), k3 * d * ls * fem / (2 + re), 1e-6);
            EXPECT_NEAR(pounds(modes.iv), d * d * std::sqrt(2 * fem * fyb / (3 * (1 + re))), 1e-6);
        }
    }
}

// Worked by hand: copper rivet .165 in, plank .75 in on a frame of .875 in, with and without 1/8 in
// of bedding.
TEST(Dowel, RivetWithAndWithoutBedding) {
    const DowelModes tight = dowelModes(dowel(2400, 9300, 0.75, 0.875, 0.165, 33000));
    EXPECT_NEAR(pounds(tight.iiis), 153.917, 5e-4);
    EXPECT_NEAR(pounds(tight.iv), 176.374, 5e-4);
    EXPECT_NEAR(pounds(tight.ii), 326.088, 5e-4);
    const DowelModes bedded = dowelModes(dowel(2400, 9300, 0.75, 0.875, 0.165, 33000, 0.125));
    EXPECT_NEAR(pounds(bedded.iiis) / 2.2, 58.616, 5e-4);
    EXPECT_NEAR(pounds(bedded.iv) / 2.2, 64.256, 5e-4);
    EXPECT_EQ(bedded.im, tight.im);
}

// No. 14 in a cedar plank of 1 in on white oak: every mode by hand.
TEST(Dowel, PlankScrewModeByMode) {
    const UsReduction reduction = usReduction(inches(0.196), inches(0.242), {});
    EXPECT_NEAR(reduction.bending, 2.46, 1e-12);
    const UsLateral lateral =
        usSingleShear(dowelModes(dowel(2400, 9300, 1.0, 1.5, 0.196, 70000)), reduction);
    const double expected[] = {1111.4634, 191.2195, 273.3579, 284.5749, 114.7903, 147.3447};
    for (std::size_t i = 0; i < 6; ++i)
        EXPECT_NEAR(pounds(lateral.modes[i].load), expected[i], 1e-4) << lateral.modes[i].name;
    EXPECT_EQ(lateral.governs, "IIIs");
    EXPECT_EQ(lateral.reference, lateral.modes[4].load);
}

TEST(Dowel, HugeGapLeavesLittleAndNothingNegative) {
    const DowelModes modes = dowelModes(dowel(2400, 9300, 1.0, 1.5, 0.196, 70000, 1e6));
    for (const Force load : {modes.ii, modes.iiim, modes.iiis, modes.iv}) {
        EXPECT_GT(load.si(), 0.0);
        EXPECT_LT(pounds(load), 0.01);
    }
}

TEST(Dowel, NothingBearsNothingCarries) {
    const DowelModes modes = dowelModes(dowel(0, 9300, 1.0, 1.5, 0.196, 70000));
    EXPECT_EQ(modes.is, Force{});
    EXPECT_EQ(modes.iiis, Force{});
}

TEST(Dowel, PlasticMoments) {
    EXPECT_NEAR(inNewtonMetres(dowelMoment(psi(33000), inches(0.165))) / (pound_N * 0.0254),
                24.7066875, 1e-9);
    const Stress yield = megapascals(100);
    EXPECT_NEAR(inNewtonMetres(dowelMoment(yield, millimetres(10), DowelSection::square)), 25.0,
                1e-9);
    EXPECT_NEAR(inNewtonMetres(dowelMoment(yield, millimetres(10))), 100.0 / 6.0, 1e-9);
}
