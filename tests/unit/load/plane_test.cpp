#include "load/plane.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

using namespace fayline;

namespace {

std::vector<PlaneStrip> bedOf(double length_mm, double breadth_mm, int slices = 64) {
    std::vector<PlaneStrip> bed;
    for (int i = 0; i < slices; ++i) {
        bed.push_back({millimetres(length_mm * ((i + 0.5) / slices - 0.5)),
                       millimetres(length_mm / slices), millimetres(breadth_mm / 2)});
    }
    return bed;
}

const BedStiffness soft = megapascals(500) / millimetres(110);

/// Forces and moments done again from what the section says alone.
void expectBalance(const std::vector<PlaneBolt>& bolts, const PlaneSection& section,
                   const PlaneLoad& load) {
    double up_N = load.up.si() - section.contact.si();
    double roll_Nm = load.roll.si() - section.contactY.si() * section.contact.si();
    double pitch_Nm = load.pitch.si() + section.contactX.si() * section.contact.si();
    for (std::size_t i = 0; i < bolts.size(); ++i) {
        up_N += section.tension[i].si();
        roll_Nm += bolts[i].y.si() * section.tension[i].si();
        pitch_Nm -= bolts[i].x.si() * section.tension[i].si();
        EXPECT_GE(section.tension[i], Force{});
    }
    const double size =
        std::abs(load.up.si()) + std::abs(load.roll.si()) + std::abs(load.pitch.si());
    EXPECT_LT(std::abs(up_N), 1e-10 * size);
    EXPECT_LT(std::abs(roll_Nm), 1e-11 * size);
    EXPECT_LT(std::abs(pitch_Nm), 1e-10 * size);
}

}  // namespace

TEST(PlaneSection, OneRowUnderARollEqualsTheClosedForm) {
    // x = [−nA + √((nA)² + 2·L·n·A·d)]/L and T = M/(d − x/3), statics of a cracked section.
    const double length_mm = 1700, breadth_mm = 140, ratio = 60, rods_mm2 = 7 * 314.159265;
    const double d_mm = breadth_mm / 2, na_mm2 = ratio * rods_mm2;
    const double x_mm =
        (-na_mm2 + std::sqrt(na_mm2 * na_mm2 + 2 * length_mm * na_mm2 * d_mm)) / length_mm;
    std::vector<PlaneBolt> bolts;
    const auto k = ForcePerLength::fromSi(ratio * 314.159265e-6 * soft.si());
    for (int i = 0; i < 7; ++i) bolts.push_back({millimetres(243.0 * (i - 3)), Length{}, k});
    const PlaneLoad load{Force{}, newtonMetres(5600), Moment{}};
    const auto section = planeSection(bolts, bedOf(length_mm, breadth_mm), soft, load);
    ASSERT_TRUE(section.balanced);
    for (const Force tension : section.tension)
        EXPECT_NEAR(inNewtons(tension), 5.6e6 / (d_mm - x_mm / 3) / 7, 1e-6);
    EXPECT_NEAR(inMillimetres(section.neutral), d_mm - x_mm, 1e-8);
    EXPECT_NEAR(inMegapascals(section.highest), 2 * inNewtons(section.contact) / (length_mm * x_mm),
                1e-9);
    expectBalance(bolts, section, load);
}

TEST(PlaneSection, AHangingWeightIsTheBoltsAlone) {
    const auto k = ForcePerLength::fromSi(1e8);
    const std::vector<PlaneBolt> bolts{{millimetres(-600), Length{}, k},
                                       {millimetres(400), Length{}, k}};
    const PlaneLoad load{newtons(-10000), Moment{}, Moment{}};
    const auto section = planeSection(bolts, bedOf(1700, 140), soft, load);
    ASSERT_TRUE(section.balanced);
    // A beam on two supports.
    EXPECT_NEAR(inNewtons(section.tension[0]), 4000, 1e-6);
    EXPECT_NEAR(inNewtons(section.tension[1]), 6000, 1e-6);
    EXPECT_NEAR(inNewtons(section.contact), 0, 1e-6);
}

TEST(PlaneSection, APressedBedIsEvenUnderItsMiddle) {
    const std::vector<PlaneBolt> bolts{{Length{}, Length{}, ForcePerLength::fromSi(1e8)}};
    const PlaneLoad load{newtons(23800), Moment{}, Moment{}};
    const auto section = planeSection(bolts, bedOf(1700, 140), soft, load);
    ASSERT_TRUE(section.balanced);
    EXPECT_EQ(section.tension[0], Force{});
    EXPECT_NEAR(inMegapascals(section.highest), 23800.0 / (1700 * 140), 1e-9);
}

TEST(PlaneSection, ABlowOnTheForeEndPullsForwardBoltsMost) {
    std::vector<PlaneBolt> bolts;
    for (int i = 0; i < 7; ++i)
        bolts.push_back({millimetres(243.0 * (i - 3)), Length{}, ForcePerLength::fromSi(1e8)});
    const PlaneLoad load{Force{}, Moment{}, newtonMetres(-20000)};
    const auto section = planeSection(bolts, bedOf(1700, 140), soft, load);
    ASSERT_TRUE(section.balanced);
    for (std::size_t i = 1; i < bolts.size(); ++i)
        EXPECT_LE(section.tension[i], section.tension[i - 1]);
    EXPECT_GT(section.tension[0], Force{});
    EXPECT_GT(section.contactX, Length{});
    expectBalance(bolts, section, load);
}

TEST(PlaneSection, BalancesAnyLoadOnAnyPattern) {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> part(-1, 1);
    for (int turn = 0; turn < 200; ++turn) {
        std::vector<PlaneBolt> bolts;
        for (int i = 0; i < 8; ++i) {
            bolts.push_back({millimetres(800 * part(random)), millimetres(45 * part(random)),
                             ForcePerLength::fromSi(1e8 * (1.2 + part(random)))});
        }
        // A weight that hangs inside the bolts can always be held, and a little moment with it.
        const PlaneLoad load{newtons(15000 * part(random)), newtonMetres(900 * part(random)),
                             newtonMetres(4000 * part(random))};
        const auto section = planeSection(bolts, bedOf(1700, 140), soft, load);
        if (!section.balanced) continue;
        expectBalance(bolts, section, load);
    }
}

TEST(PlaneSection, TwiceTheLoadTwiceTheForces) {
    const std::vector<PlaneBolt> bolts{
        {millimetres(-500), millimetres(30), ForcePerLength::fromSi(1e8)},
        {Length{}, millimetres(-30), ForcePerLength::fromSi(2e8)},
        {millimetres(500), millimetres(30), ForcePerLength::fromSi(1e8)}};
    const PlaneLoad once{newtons(-3000), newtonMetres(600), newtonMetres(200)};
    const PlaneLoad twice{newtons(-6000), newtonMetres(1200), newtonMetres(400)};
    const auto a = planeSection(bolts, bedOf(1700, 140), soft, once);
    const auto b = planeSection(bolts, bedOf(1700, 140), soft, twice);
    ASSERT_TRUE(a.balanced && b.balanced);
    for (std::size_t i = 0; i < bolts.size(); ++i)
        EXPECT_NEAR(inNewtons(b.tension[i]), 2 * inNewtons(a.tension[i]), 1e-6);
}

TEST(PlaneSection, MirrorImagesAreTheSameBits) {
    std::vector<PlaneBolt> bolts;
    for (int i = 0; i < 9; ++i) {
        bolts.push_back({millimetres(300.0 * (i - 4)), millimetres(i % 2 == 0 ? 30 : -30),
                         ForcePerLength::fromSi(1e8)});
    }
    auto mirror = bolts;
    for (PlaneBolt& bolt : mirror) bolt.y = -bolt.y;
    const auto a = planeSection(bolts, bedOf(2800, 200), soft,
                                {newtons(-900), newtonMetres(5000), newtonMetres(70)});
    const auto b = planeSection(mirror, bedOf(2800, 200), soft,
                                {newtons(-900), newtonMetres(-5000), newtonMetres(70)});
    ASSERT_TRUE(a.balanced && b.balanced);
    EXPECT_EQ(a.tension, b.tension);
    EXPECT_EQ(a.contactY, -b.contactY);
    EXPECT_EQ(a.neutral, -b.neutral);
}

TEST(PlaneSection, BoltsOutsideTheBedFindNoBalance) {
    const std::vector<PlaneBolt> bolts{
        {millimetres(-500), millimetres(500), ForcePerLength::fromSi(1e8)},
        {millimetres(500), millimetres(500), ForcePerLength::fromSi(1e8)}};
    EXPECT_FALSE(planeSection(bolts, bedOf(1700, 140), soft, {Force{}, newtonMetres(600), Moment{}})
                     .balanced);
    EXPECT_FALSE(planeSection(bolts, {}, soft, {Force{}, newtonMetres(600), Moment{}}).balanced);
    EXPECT_FALSE(
        planeSection(bolts, bedOf(1700, 140), {}, {Force{}, newtonMetres(600), Moment{}}).balanced);
}
