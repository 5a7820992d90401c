#include "quantity/display.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "quantity/reading.h"

namespace fayline {
namespace {

Length length(const char* text) {
    return readLength(text, "").value();
}

std::string inchText(const char* text, UnitMark mark = UnitMark::shown, int perInch = 64) {
    return displayLength(length(text), LengthStyle::inchFractions, mark, {perInch, 2});
}
std::string feetText(const char* text) {
    return displayLength(length(text), LengthStyle::feetInches);
}
std::string groups(const char* text) {
    return displayLength(length(text), LengthStyle::feetInchesEighths);
}
std::string metricText(const char* text) {
    return displayLength(length(text), LengthStyle::millimetres);
}

TEST(DisplayLength, InchFractionsAreReduced) {
    EXPECT_EQ(inchText("3.25 in"), "3-1/4\"");
    EXPECT_EQ(inchText("3.25 in", UnitMark::leftOut), "3-1/4");
    EXPECT_EQ(inchText("40 42/64 in"), "40-21/32\"");
    EXPECT_EQ(inchText("1/64 in"), "1/64\"");
    EXPECT_EQ(inchText("0.007 in"), "0\"");
    EXPECT_EQ(inchText("-0.007 in"), "0\"");
    EXPECT_EQ(inchText("0.008 in"), "1/64\"");
    EXPECT_EQ(inchText("-1.5 in"), "-1-1/2\"");
    EXPECT_EQ(inchText("38 mm"), "1-1/2\"");
    EXPECT_EQ(inchText("1 31/64 in", UnitMark::shown, 16), "1-1/2\"");
    EXPECT_EQ(inchText("0.999 in"), "1\"");
}

TEST(DisplayLength, FeetAndInchesCarryOver) {
    EXPECT_EQ(feetText("40 5/8 in"), "3'-4-5/8\"");
    EXPECT_EQ(feetText("4' 0 3/16"), "4'-3/16\"");
    EXPECT_EQ(feetText("3 ft"), "3'-0\"");
    EXPECT_EQ(feetText("11.999 in"), "1'-0\"");
    EXPECT_EQ(feetText("5/8 in"), "5/8\"");
    EXPECT_EQ(feetText("-1' 1/2\""), "-1'-1/2\"");
}

TEST(DisplayLength, FeetInchesEighths) {
    EXPECT_EQ(groups("40 5/8 in"), "3-4-5");
    EXPECT_EQ(groups("40 11/16 in"), "3-4-5+");
    EXPECT_EQ(groups("40.64 in"), "3-4-5");
    EXPECT_EQ(groups("47.99 in"), "4-0-0");
}

TEST(DisplayLength, HalfMillimetres) {
    EXPECT_EQ(metricText("82.5 mm"), "82.5 mm");
    EXPECT_EQ(metricText("82.2 mm"), "82 mm");
    EXPECT_EQ(metricText("82.3 mm"), "82.5 mm");
    EXPECT_EQ(metricText("-0.1 mm"), "0 mm");
    EXPECT_EQ(metricText("-0.4 mm"), "-0.5 mm");
    EXPECT_EQ(metricText("12 m"), "12000 mm");
    EXPECT_EQ(
        displayLength(length("82.44 mm"), LengthStyle::millimetres, UnitMark::leftOut, {64, 10}),
        "82.4");
}

TEST(DisplayLength, WhatIsNotFiniteOrTooLargeForSteps) {
    const Length nan = Length::fromSi(std::numeric_limits<double>::quiet_NaN());
    EXPECT_EQ(displayLength(nan, LengthStyle::inchFractions), "not known");
    EXPECT_EQ(displayLength(nan, LengthStyle::millimetres), "not known");
    EXPECT_EQ(displayLength(length("1e300 in"), LengthStyle::inchFractions), "1e300 in");
}

TEST(Display, ForceStressMassDensityAngle) {
    const auto metric = UnitSystem::millimetres;
    const auto inches = UnitSystem::inches;
    EXPECT_EQ(displayForce(newtons(12'500), metric), "12.5 kN");
    EXPECT_EQ(displayForce(newtons(12'500), inches), "2810 lb");
    EXPECT_EQ(displayForce(newtons(999.7), metric), "1 kN");
    EXPECT_EQ(displayForce(newtons(850.4), metric), "850 N");
    EXPECT_EQ(displayForce(newtons(-0.0), metric), "0 N");
    EXPECT_EQ(displayForce(newtons(123'456), metric, 5), "123.46 kN");
    EXPECT_EQ(displayStress(megapascals(310), metric), "310 MPa");
    EXPECT_EQ(displayStress(megapascals(0.0123), metric), "12.3 kPa");
    EXPECT_EQ(displayStress(megapascals(0), metric), "0 MPa");
    EXPECT_EQ(displayStress(readStress("45 ksi", "").value(), inches), "45 ksi");
    EXPECT_EQ(displayStress(readStress("9999.6 psi", "").value(), inches), "10 ksi");
    EXPECT_EQ(displayStress(readStress("1200 psi", "").value(), inches), "1200 psi");
    EXPECT_EQ(displayMass(kilograms(110.2), metric), "110 kg");
    EXPECT_EQ(displayMass(kilograms(110.2), inches), "243 lb");
    EXPECT_EQ(displayDensity(kilogramsPerCubicMetre(560), metric), "560 kg/m³");
    EXPECT_EQ(displayDensity(readDensity("35 lb/ft3", "").value(), inches), "35 lb/ft³");
    EXPECT_EQ(displayAngle(Angle::degrees(12.46)), "12.5°");
    EXPECT_EQ(displayAngle(Angle::degrees(-0.01)), "0°");
    EXPECT_EQ(displayForce(Force::fromSi(std::numeric_limits<double>::infinity()), metric),
              "not known");
}

TEST(MarginText, IsCutNotRounded) {
    EXPECT_EQ(marginText(0.998), "×0.99");
    EXPECT_EQ(marginText(1.0), "×1.00");
    EXPECT_EQ(marginText(std::nextafter(1.0, 0.0)), "×0.99");
    EXPECT_EQ(marginText(0.29), "×0.29");
    EXPECT_EQ(marginText(1.999), "×1.99");
    EXPECT_EQ(marginText(9.999), "×9.99");
    EXPECT_EQ(marginText(10.0), "×10.0");
    EXPECT_EQ(marginText(12.38), "×12.3");
    EXPECT_EQ(marginText(0.0), "×0.00");
    EXPECT_EQ(marginText(1e-9), "×0.00");
    EXPECT_EQ(marginText(1234.56), "×1234.5");
}

TEST(MarginText, NeverPromisesMoreThanThereIs) {
    for (int i = 0; i < 3000; ++i) {
        const double margin = i / 1000.0;
        const double shown = std::stod(marginText(margin).substr(std::string("×").size()));
        EXPECT_LE(shown, margin);
        EXPECT_GT(shown + 0.0100001, margin);
    }
}

}  // namespace
}  // namespace fayline
