// A floor timber between its arms, worked by hand.

#include "check/floor.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace fayline;

namespace {

FloorCheckInput floorOf(double boredMm) {
    FloorCheckInput floor;
    floor.id = "F9.floor";
    floor.frame = "F9";
    floor.sided = millimetres(75);
    floor.throat = millimetres(180);
    floor.bored = millimetres(boredMm);
    floor.spread = metres(0.8);
    floor.keelSided = millimetres(210);
    Wood oak;
    oak.green.modulusOfRupture = {megapascals(57.2), Standing::read, "sample"};
    oak.green.shear = {megapascals(8.62), Standing::read, "sample"};
    oak.ec5.bending = {megapascals(30), Standing::read, "sample"};
    oak.ec5.shear = {megapascals(3.9), Standing::read, "sample"};
    floor.wood = oak;
    return floor;
}

FrameLoad knockdown() {
    FrameLoad load;
    load.settings = usualSettings(LoadCase::knockdownPort);
    load.bears = true;
    load.moment = newtonMetres(620);
    return load;
}

double marginOf(const std::vector<Check>& checks, LimitStateKind kind, Basis basis) {
    const auto found = std::find_if(checks.begin(), checks.end(), [&](const Check& c) {
        return c.limitState == kind && c.basis == basis;
    });
    return found == checks.end() ? -1 : found->margin.value_or(-2);
}

}  // namespace

// V = 620/0.21 − 620/0.8 = 2,177 N; τ = 1.5·2,177/(75·180) = 0.242 MPa; US 8.62·0.7697/4.5·1.6 =
// 2.359 MPa; Eurocode 5 0.67·3.9·0.9/1.3 = 1.809 MPa against 1.5·0.242.
TEST(FloorChecks, ShearAtTheThroat) {
    const auto checks = checkFloor(floorOf(0), knockdown());
    EXPECT_NEAR(marginOf(checks, LimitStateKind::floorShear, Basis::us), 2.359 / 0.2419, 0.02);
    EXPECT_NEAR(marginOf(checks, LimitStateKind::floorShear, Basis::ec5), 1.809 / 0.2419 / 1.5,
                0.02);
}

// M = 775·0.295 = 228.6 N·m; σ = 6·228,600/(53·180²) with a 22 mm bolt bored through = 0.799 MPa;
// US 57.2·0.7368/2.3·1.6 = 29.3 MPa.
TEST(FloorChecks, BendingAtTheThroatLessTheBoltsHole) {
    const auto checks = checkFloor(floorOf(22), knockdown());
    EXPECT_NEAR(marginOf(checks, LimitStateKind::floorBending, Basis::us), 29.3 / 0.7988, 0.1);
    EXPECT_LT(
        marginOf(checks, LimitStateKind::floorBending, Basis::us),
        marginOf(checkFloor(floorOf(0), knockdown()), LimitStateKind::floorBending, Basis::us));
}

TEST(FloorChecks, WhatTheCatalogueLacksIsUnknown) {
    FloorCheckInput floor = floorOf(0);
    floor.wood->ec5.shear.reset();
    EXPECT_EQ(marginOf(checkFloor(floor, knockdown()), LimitStateKind::floorShear, Basis::ec5), -2);
    floor.wood.reset();
    for (const Check& check : checkFloor(floor, knockdown())) {
        EXPECT_EQ(check.status, Status::unknown);
        EXPECT_FALSE(check.why.empty());
    }
}

TEST(FloorChecks, TheWorkingGivesTheStressAndTheMargin) {
    const FloorCheckInput floor = floorOf(22);
    for (const Check& check : checkFloor(floor, knockdown())) {
        const auto trace = explainFloor(floor, knockdown(), check);
        ASSERT_TRUE(trace);
        EXPECT_EQ(std::get<double>(trace->lines.back().value), *check.margin);
    }
}
