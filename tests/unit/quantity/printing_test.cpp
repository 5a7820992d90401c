#include "quantity/printing.h"

#include <gtest/gtest.h>

#include <limits>

#include "quantity/reading.h"

namespace fayline {
namespace {

Length length(const char* text) {
    return readLength(text, "").value();
}

TEST(ExactText, IsTheShortestDecimalOfTheUnit) {
    EXPECT_EQ(exactText(length("1 1/2 in"), LengthUnit::mm), "38.1 mm");
    EXPECT_EQ(exactText(length("1 1/2 in"), LengthUnit::in), "1.5 in");
    EXPECT_EQ(exactText(length("38.1 mm"), LengthUnit::m), "0.0381 m");
    EXPECT_EQ(exactText(length("-3.5 ft"), LengthUnit::ft), "-3.5 ft");
    // No decimal of 16 digits is near enough; found with exact fractions outside the program.
    EXPECT_EQ(exactText(length("1/3 in"), LengthUnit::in), "0.33333333333333337 in");
    EXPECT_EQ(exactText(readForce("250 lb", "").value(), ForceUnit::lbf), "250 lbf");
    EXPECT_EQ(exactText(readStress("45 ksi", "").value(), StressUnit::ksi), "45 ksi");
    EXPECT_EQ(exactText(readDensity("35 lb/ft3", "").value(), DensityUnit::lbPerFt3), "35 lb/ft3");
    EXPECT_EQ(exactText(readMass("0.11 t", "").value(), MassUnit::kg), "110 kg");
    EXPECT_EQ(exactText(readArea("0.5 cm2", "").value(), AreaUnit::mm2), "50 mm2");
    EXPECT_EQ(exactText(Angle::degrees(12.5)), "12.5 deg");
    EXPECT_EQ(exactText(Gauge(14)), "No. 14");
    EXPECT_EQ(exactText(0.1), "0.1");
}

TEST(ExactText, VeryLargeSmallAndZero) {
    EXPECT_EQ(exactText(0.0), "0");
    EXPECT_EQ(exactText(-0.0), "0");
    EXPECT_EQ(exactText(1e20), "100000000000000000000");
    EXPECT_EQ(exactText(1e22), "1e22");
    EXPECT_EQ(exactText(0.000012), "0.000012");
    EXPECT_EQ(exactText(1.2e-9), "1.2e-9");
    EXPECT_EQ(exactText(std::numeric_limits<double>::max()), "1.7976931348623157e308");
    EXPECT_EQ(exactText(std::numeric_limits<double>::denorm_min()), "5e-324");
}

TEST(ExactText, FeetInchesEighthsWhereTheyHoldTheValue) {
    const auto unit = LengthUnit::feetInchesEighths;
    EXPECT_EQ(exactText(length("40 1/4 in"), unit), "3-4-2");
    EXPECT_EQ(exactText(length("40 5/16 in"), unit), "3-4-2+");
    EXPECT_EQ(exactText(length("-40 5/16 in"), unit), "-3-4-2+");
    EXPECT_EQ(exactText(length("0 in"), unit), "0-0-0");
    EXPECT_EQ(exactText(length("40.3 in"), unit), "40.3 in");
    EXPECT_EQ(exactText(length("999999999 ft"), unit), "999999999-0-0");
    EXPECT_EQ(exactText(length("1000000000 ft"), unit), "12000000000 in");
}

TEST(NumberIn, HasNoNoiseOfConversion) {
    EXPECT_EQ(numberIn(length("38.1 mm"), LengthUnit::mm), 38.1);
    EXPECT_EQ(numberIn(length("8.2 mm"), LengthUnit::mm), 8.2);
    EXPECT_EQ(numberIn(readStress("45.7 ksi", "").value(), StressUnit::ksi), 45.7);
    EXPECT_EQ(numberIn(readForce("-0.3 kN", "").value(), ForceUnit::kn), -0.3);
    EXPECT_EQ(numberIn(readMass("2.1 lb", "").value(), MassUnit::lb), 2.1);
    EXPECT_EQ(numberIn(readArea("7.7 mm2", "").value(), AreaUnit::mm2), 7.7);
    EXPECT_EQ(numberIn(readDensity("0.3 lb/in3", "").value(), DensityUnit::lbPerIn3), 0.3);
}

}  // namespace
}  // namespace fayline
