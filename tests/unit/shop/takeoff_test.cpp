// What to order, against arithmetic done by hand.
#include "shop/takeoff.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>
#include <random>

namespace fayline {
namespace {

/// A metal of 8.5 g/cm3 exactly, one of no known density, and a nut, rod and thread for 1/2 in.
struct Yard {
    std::map<std::string, Metal> metals;
    std::map<std::string, RodStock> rods;
    std::map<std::string, Nut> nuts;
    std::map<std::string, Washer> washers;
    std::map<std::string, Thread> threads;

    Yard() {
        Metal bronze;
        bronze.id = "bronze";
        bronze.name.value = "Bronze, half hard";
        bronze.density = Figure<Density>{kilogramsPerCubicMetre(8500), Standing::read, "made"};
        metals["bronze"] = bronze;
        Metal strange;
        strange.id = "strange";
        strange.name.value = "Strange";
        metals["strange"] = strange;
        Thread thread;
        thread.id = "unc_1_2";
        thread.nominal = inches(0.5);
        threads[thread.id] = thread;
        Nut nut;
        nut.id = "hex_1_2";
        nut.thread = thread.id;
        nut.acrossFlats = inches(0.75);
        nut.height = inches(7.0 / 16.0);
        nuts[nut.id] = nut;
        RodStock rod;
        rod.id = "bronze_1_2";
        rod.metal = "bronze";
        rod.diameter = inches(0.5);
        rods[rod.id] = rod;
    }
    [[nodiscard]] TakeOffStock stock() const { return {&metals, &rods, &nuts, &washers, &threads}; }
};

Hole hole(const std::string& kind, Length diameter, Length length, const std::string& metal) {
    Hole made;
    made.kind = kind;
    made.group = "arm";
    made.diameter = diameter;
    made.length = length;
    made.metal = metal;
    return made;
}

TakeOff of(const std::vector<Hole>& holes, UnitSystem units = UnitSystem::inches) {
    static const Yard yard;
    std::vector<const Hole*> list;
    for (const Hole& one : holes) list.push_back(&one);
    return takeOff(list, yard.stock(), units);
}

const TakeOffLine* line(const TakeOff& takeOff, const std::string& kind) {
    for (const TakeOffLine& one : takeOff.lines) {
        if (one.kind == kind) return &one;
    }
    return nullptr;
}

TEST(TakeOffRod, WeighsWhatACylinderWeighs) {
    const TakeOff takeOff = of({hole("bolt", inches(0.5), inches(10), "bronze")});
    const TakeOffLine* rod = line(takeOff, "bolt");
    ASSERT_NE(rod, nullptr);
    // pi/4 · 12.7² · 254 mm3 = 32 176 mm3; · 8.5e-6 kg/mm3 = 0.273 5 kg.
    ASSERT_TRUE(rod->mass);
    EXPECT_NEAR(inKilograms(*rod->mass), 0.2735, 0.00005);
    EXPECT_EQ(rod->stock, "bronze_1_2");
    EXPECT_EQ(rod->metalName, "Bronze, half hard");
    EXPECT_EQ(rod->size, "1/2 in");
    EXPECT_EQ(rod->spare, 0) << "a single bolt has no spare";
}

TEST(TakeOffRod, NutsAndWashersStandInLinesOfTheirOwn) {
    Hole bolt = hole("bolt", inches(0.5), inches(10), "bronze");
    bolt.washerDiameter = inches(2);
    bolt.washerThickness = inches(0.25);
    const TakeOff takeOff = of({bolt, bolt, bolt});
    const TakeOffLine* nut = line(takeOff, "nut");
    const TakeOffLine* washer = line(takeOff, "washer");
    ASSERT_TRUE(nut != nullptr && washer != nullptr);
    EXPECT_EQ(nut->count, 6);
    EXPECT_EQ(washer->count, 6);
    EXPECT_TRUE(nut->fitting && washer->fitting);
    EXPECT_EQ(takeOff.count, 3) << "fittings are not fastenings";
    // Hexagon 0.75 in: 0.866 025 · 0.5625 = 0.487 14 in2, less 0.196 35; · 0.4375 = 0.127 22 in3;
    // 6 and 1 spare: 0.890 54 in3 = 14 593 mm3; · 8.5e-6 = 0.124 0 kg.
    EXPECT_EQ(nut->order, 7);
    EXPECT_NEAR(inKilograms(*nut->mass), 0.1240, 0.00005);
    // pi/4 (4 − 0.25) · 0.25 = 0.736 31 in3; 7: 5.154 2 in3 = 84 462 mm3 = 0.717 9 kg.
    EXPECT_NEAR(inKilograms(*washer->mass), 0.7179, 0.0001);
    EXPECT_EQ(washer->size, "2 in × 1/4 in for 1/2 in");
}

TEST(TakeOffLength, IsCutToTheNextEighthOrFiveMillimetres) {
    const Hole longer = hole("bolt", inches(0.5), inches(10.01), "bronze");
    EXPECT_NEAR(inInches(*line(of({longer}), "bolt")->length), 10.125, 1e-9);
    EXPECT_NEAR(inMillimetres(*line(of({longer}, UnitSystem::millimetres), "bolt")->length), 255,
                1e-9);
    const Hole even = hole("drift", inches(0.5), inches(10.125), "bronze");
    EXPECT_NEAR(inInches(*line(of({even}), "drift")->length), 10.125, 1e-9) << "no further";
    Hole screw = hole("wood_screw", inches(0.242), inches(2.75), "bronze");
    screw.gauge = 14;
    EXPECT_NEAR(inInches(*line(of({screw}), "wood_screw")->length), 2.75, 1e-12);
}

TEST(TakeOffGroups, EqualThingsAreOneLineUnequalOnesAreNot) {
    Hole screw = hole("wood_screw", inches(0.242), inches(2.5), "bronze");
    screw.gauge = 14;
    Hole longer = screw, thinner = screw, other = screw;
    longer.length = inches(3);
    thinner.gauge = 12;
    other.metal = "strange";
    const TakeOff takeOff = of({screw, screw, longer, thinner, other, screw});
    ASSERT_EQ(takeOff.lines.size(), 4U);
    EXPECT_EQ(takeOff.count, 6);
    int three = 0;
    for (const TakeOffLine& one : takeOff.lines) three += one.count == 3 ? 1 : 0;
    EXPECT_EQ(three, 1);
}

TEST(TakeOffUnknown, HasNoMassAndSaysWhy) {
    const TakeOff none = of({hole("drift", inches(0.5), inches(6), "")});
    EXPECT_FALSE(none.lines.front().mass);
    EXPECT_EQ(none.lines.front().why, "the metal is not decided");
    EXPECT_FALSE(none.mass);
    const TakeOff strange = of({hole("drift", inches(0.5), inches(6), "strange"),
                                hole("drift", inches(0.5), inches(6), "bronze")});
    EXPECT_FALSE(strange.mass) << "a total with a gap in it is not known";
    EXPECT_GT(inKilograms(strange.knownMass), 0.1);
    const TakeOff noNut = of({hole("bolt", inches(0.3), inches(6), "bronze")});
    EXPECT_FALSE(line(noNut, "nut")->mass);
    EXPECT_FALSE(line(noNut, "nut")->why.empty());
    EXPECT_FALSE(line(noNut, "washer")->mass) << "its size is not decided";
}

TEST(TakeOffSpares, FollowTheKind) {
    Hole screw = hole("wood_screw", inches(0.242), inches(2.5), "bronze");
    screw.gauge = 14;
    const TakeOff few = of(std::vector<Hole>(30, screw));
    EXPECT_EQ(few.lines.front().spare, 2) << "5 in 100 of 30, rounded up";
    EXPECT_EQ(few.lines.front().order, 32) << "less than a box";
    const TakeOff many = of(std::vector<Hole>(190, screw));
    EXPECT_EQ(many.lines.front().spare, 10);
    EXPECT_EQ(many.lines.front().order, 200) << "two boxes exactly";
    const TakeOff more = of(std::vector<Hole>(191, screw));
    EXPECT_EQ(more.lines.front().order, 300);
    const Hole rivet = hole("rivet", millimetres(5), millimetres(70), "bronze");
    const TakeOff rivets = of(std::vector<Hole>(50, rivet));
    EXPECT_EQ(line(rivets, "rivet")->spare, 5);
    EXPECT_EQ(line(rivets, "rove")->count, 50);
    const TakeOff bolts = of(std::vector<Hole>(40, hole("bolt", inches(0.5), inches(6), "bronze")));
    EXPECT_EQ(line(bolts, "bolt")->spare, 2) << "one in each full twenty";
}

TEST(TakeOffRivet, ASquareOneIsWeighedBySideNotByCorner) {
    Hole rivet = hole("rivet", millimetres(5 * std::sqrt(2.0)), millimetres(60), "bronze");
    rivet.square = true;
    const TakeOff takeOff = of({rivet}, UnitSystem::millimetres);
    const TakeOffLine* one = line(takeOff, "rivet");
    EXPECT_EQ(one->size, "5 mm square");
    // Shank 25 · 60 = 1500 mm3; head pi/4 · 12.5² · 2.25 = 276.1 mm3; 1 and 1 spare at 8.5e-6.
    EXPECT_NEAR(inKilograms(*one->mass), 2 * 1776.1 * 8.5e-6, 1e-5);
}

TEST(TakeOffScrew, WeighsBetweenItsCoreAndAFullCylinderWithItsHead) {
    for (const int gauge : {6, 8, 10, 12, 14, 16, 20}) {
        const double body_mm = 25.4 * (0.060 + 0.013 * gauge);
        Hole screw = hole("wood_screw", millimetres(body_mm), millimetres(50), "bronze");
        screw.gauge = gauge;
        const double kg = inKilograms(*of({screw}).lines.front().mass) / 2.0;
        const double full = 8.5e-6 * 3.14159265 / 4 * body_mm * body_mm;
        EXPECT_GT(kg, 0.45 * full * 50) << gauge;
        EXPECT_LT(kg, full * 50 + full * 4 * body_mm) << gauge;
    }
}

TEST(TakeOffCount, IsTheCountOfHolesWhateverTheyAre) {
    std::mt19937 dice(7);
    const std::vector<std::string> kinds{"wood_screw", "bolt", "drift", "rivet"};
    for (int round = 0; round < 50; ++round) {
        std::vector<Hole> holes;
        const auto n = dice() % 400;
        for (unsigned long i = 0; i < n; ++i) {
            Hole one = hole(kinds[dice() % 4], millimetres(4.0 + static_cast<double>(dice() % 5)),
                            millimetres(30.0 + static_cast<double>(dice() % 40)),
                            dice() % 3 == 0 ? "" : "bronze");
            if (one.kind == "wood_screw") one.gauge = 10 + static_cast<int>(dice() % 4);
            holes.push_back(one);
        }
        const TakeOff takeOff = of(holes);
        int sum = 0, wanted = 0;
        for (const TakeOffLine& l : takeOff.lines) {
            EXPECT_GE(l.order, l.count + l.spare);
            if (!l.fitting) sum += l.count;
            wanted += l.count;
        }
        EXPECT_EQ(takeOff.count, static_cast<int>(n));
        EXPECT_EQ(sum, static_cast<int>(n));
        EXPECT_GE(wanted, sum);
    }
}

}  // namespace
}  // namespace fayline
