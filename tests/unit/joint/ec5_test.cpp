// Eurocode 5's pieces: modes, rope, rows, both loads together.

#include <gtest/gtest.h>

#include <cmath>

#include "joint/ec5_axial.h"
#include "joint/ec5_bearing.h"
#include "joint/ec5_lateral.h"

using namespace fayline;

namespace {

Ec5Dowel bolt() {
    return {megapascals(25.0),
            megapascals(20.0),
            millimetres(50),
            millimetres(70),
            millimetres(12),
            newtonMetres(76.7),
            {}};
}

Ec5Dowel swapped(Ec5Dowel dowel) {
    std::swap(dowel.embedment1, dowel.embedment2);
    std::swap(dowel.thickness1, dowel.thickness2);
    return dowel;
}

Force modeOf(const Ec5Lateral& lateral, std::string_view name) {
    for (const ModeLoad& mode : lateral.modes) {
        if (mode.name == name) return mode.load;
    }
    ADD_FAILURE() << "no mode " << name;
    return {};
}

}  // namespace

TEST(Ec5Lateral, ModesAreMirrorImages) {
    const auto there = ec5SingleShear(bolt(), {}, 0.25);
    const auto back = ec5SingleShear(swapped(bolt()), {}, 0.25);
    const char* pairs[][2] = {{"a", "b"}, {"c", "c"}, {"d", "e"}, {"e", "d"}, {"f", "f"}};
    for (const auto& [one, other] : pairs)
        EXPECT_NEAR(modeOf(there, one) / modeOf(back, other), 1.0, 1e-12) << one;
    EXPECT_NEAR(there.onePlane / back.onePlane, 1.0, 1e-12);
}

// Mode f from equilibrium of two hinges: F = √(2M·2f₁f₂d/(f₁+f₂)), times 1.15.
TEST(Ec5Lateral, TwoHingesFromEquilibrium) {
    const double f1 = 25, f2 = 20, d = 12, m = 76700;
    const double force_N = 1.15 * std::sqrt(2 * m * d * 2 * f1 * f2 / (f1 + f2));
    EXPECT_NEAR(inNewtons(modeOf(ec5SingleShear(bolt(), {}, 0), "f")), force_N, 1e-6);
}

// Without its empirical 1.05, mode d is the general dowel equation's hinge in the main member.
TEST(Ec5Lateral, OneHingeIsTheGeneralDowelEquation) {
    const Ec5Dowel dowel = bolt();
    const DowelModes general = dowelModes({dowel.embedment1 * dowel.diameter,
                                           dowel.embedment2 * dowel.diameter,
                                           dowel.thickness1,
                                           dowel.thickness2,
                                           {},
                                           dowel.yieldMoment,
                                           dowel.yieldMoment});
    const auto modes = ec5SingleShear(dowel, {}, 0);
    EXPECT_NEAR(modeOf(modes, "d") / general.iiis, 1.05, 1e-12);
    EXPECT_NEAR(modeOf(modes, "e") / general.iiim, 1.05, 1e-12);
    EXPECT_NEAR(modeOf(modes, "c") / general.ii, 1.0, 1e-12);
    EXPECT_NEAR(modeOf(modes, "f") / general.iv, 1.15, 1e-12);
}

TEST(Ec5Lateral, DoubleShearModes) {
    const auto one = ec5SingleShear(bolt(), {}, 0);
    const auto two = ec5DoubleShear(bolt(), {}, 0);
    EXPECT_EQ(modeOf(two, "g"), modeOf(one, "a"));
    EXPECT_NEAR(modeOf(two, "h") / modeOf(one, "b"), 0.5, 1e-12);
    EXPECT_EQ(modeOf(two, "j"), modeOf(one, "d"));
    EXPECT_EQ(modeOf(two, "k"), modeOf(one, "f"));
    EXPECT_EQ(two.modes.size(), 4U);
}

TEST(Ec5Lateral, RopeAddsAQuarterUpToItsShare) {
    const auto bare = ec5SingleShear(bolt(), {}, RopeLimits::bolt);
    EXPECT_EQ(bare.rope, Force{});
    const Force johansen = bare.onePlane;
    const auto slack = ec5SingleShear(bolt(), newtons(1000), RopeLimits::bolt);
    EXPECT_NEAR(inNewtons(slack.rope), 250, 1e-9);
    EXPECT_NEAR(inNewtons(slack.onePlane - johansen), 250, 1e-9);
    const auto taut = ec5SingleShear(bolt(), newtons(1e6), RopeLimits::bolt);
    EXPECT_NEAR(taut.rope / modeOf(taut, taut.governs), 0.25, 1e-12);
    EXPECT_EQ(ec5SingleShear(bolt(), newtons(1e6), RopeLimits::dowel).onePlane, johansen);
}

TEST(Ec5Lateral, RopeNeverHelpsWoodThatIsCrushedFlat) {
    Ec5Dowel thin = bolt();
    thin.thickness1 = millimetres(5);
    const auto lateral = ec5SingleShear(thin, newtons(1e6), RopeLimits::screw);
    EXPECT_EQ(lateral.governs, "a");
    EXPECT_EQ(lateral.rope, Force{});
}

TEST(Ec5Bearing, GrainMattersToBoltsAlone) {
    const CharacteristicDensity oak{kilogramsPerCubicMetre(560)};
    const Length d = millimetres(12);
    const Stress along = embedmentLarge(oak, d, Angle{}, WoodFamily::hardwood);
    EXPECT_NEAR(inMegapascals(along), 0.082 * 0.88 * 560, 1e-9);
    EXPECT_NEAR(along / embedmentLarge(oak, d, Angle::degrees(90), WoodFamily::hardwood), 1.08,
                1e-12);
    EXPECT_NEAR(along / embedmentLarge(oak, d, Angle::degrees(90), WoodFamily::softwood), 1.53,
                1e-12);
}

TEST(Ec5Axial, EndGrainIsWorthLess) {
    const CharacteristicDensity pine{kilogramsPerCubicMetre(350)};
    const auto at = [&](double degrees) {
        return screwWithdrawalEc5(pine, millimetres(8), millimetres(60), Angle::degrees(degrees));
    };
    EXPECT_NEAR(at(90) / at(0), 1.2, 1e-12);
    EXPECT_EQ(screwWithdrawalEc5(pine, millimetres(8), {}, Angle::degrees(90)), Force{});
}

TEST(Ec5Axial, RowsOfNailsAndBolts) {
    EXPECT_NEAR(effectiveNails(6, 20), 6.0, 1e-12);
    EXPECT_NEAR(effectiveNails(6, 10), std::pow(6.0, 0.85), 1e-12);
    EXPECT_NEAR(effectiveNails(6, 8.5), std::pow(6.0, 0.775), 1e-12);
    EXPECT_NEAR(effectiveNails(6, 2), std::pow(6.0, 0.5), 1e-12);
    EXPECT_EQ(effectiveBolts(4, 5, Angle::degrees(90)), 4.0);
    EXPECT_EQ(effectiveBolts(1, 100, {}), 1.0);
    EXPECT_LT(effectiveBolts(4, 5, Angle::degrees(30)), effectiveBolts(4, 5, Angle::degrees(60)));
}

TEST(Ec5Axial, BothLoadsTogether) {
    const Force v = newtons(1000);
    const Force ax = newtons(500);
    for (const bool squared : {true, false}) {
        EXPECT_NEAR(inNewtons(combinedEc5(v, ax, Angle{}, squared)), 1000, 1e-9);
        EXPECT_NEAR(inNewtons(combinedEc5(v, ax, Angle::degrees(90), squared)), 500, 1e-9);
    }
    // The size just met, put back into the code's sum, gives one.
    const Angle angle = Angle::degrees(35);
    const double size_N = inNewtons(combinedEc5(v, ax, angle, true));
    EXPECT_NEAR(std::hypot(size_N * std::sin(angle.inRadians()) / 500,
                           size_N * std::cos(angle.inRadians()) / 1000),
                1.0, 1e-12);
    EXPECT_LT(combinedEc5(v, ax, angle, false), combinedEc5(v, ax, angle, true));
    EXPECT_EQ(combinedEc5(v, {}, angle, true), Force{});
    EXPECT_EQ(combinedEc5({}, ax, Angle::degrees(90), true), ax);
}
