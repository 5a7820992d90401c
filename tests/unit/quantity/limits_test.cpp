#include "quantity/limits.h"

#include <gtest/gtest.h>

#include <limits>

#include "quantity/printing.h"

namespace fayline {
namespace {

std::string inMm(Length value) {
    return exactText(value, LengthUnit::mm);
}

TEST(Limits, SentenceNamesValueAndLimits) {
    const Limits<Length> notNegative{millimetres(0), std::nullopt};
    EXPECT_EQ(within(millimetres(-12), notNegative, "offsets.csv:14", "half_breadth", inMm)
                  .error()
                  .line(),
              "offsets.csv:14: half_breadth is -12 mm; 0 mm or more");
    EXPECT_EQ(within(inches(-0.5), notNegative, "x", "keel.sided", inMm, "-1/2 in").error().line(),
              "x: keel.sided is -1/2 in; 0 mm or more");
    EXPECT_EQ(within(millimetres(0), notNegative, "", "", inMm), millimetres(0));
}

TEST(Limits, EndsAreInOrOut) {
    const Limits<double> in{1.0, 2.0};
    const Limits<double> out{1.0, 2.0, false, false};
    EXPECT_TRUE(in.hold(1.0) && in.hold(2.0));
    EXPECT_FALSE(out.hold(1.0) || out.hold(2.0));
    EXPECT_TRUE(out.hold(1.5));
    EXPECT_FALSE(in.hold(0.999) || in.hold(2.001));
    EXPECT_FALSE(in.hold(std::numeric_limits<double>::quiet_NaN()));
    EXPECT_TRUE(Limits<double>{}.hold(-1e300));
    EXPECT_FALSE(Limits<double>{}.hold(std::numeric_limits<double>::quiet_NaN()));
}

TEST(Limits, Words) {
    EXPECT_EQ(limitsText("1", true, "2", true), "from 1 to 2");
    EXPECT_EQ(limitsText("1", false, "2", true), "more than 1 and at most 2");
    EXPECT_EQ(limitsText("1", true, "2", false), "at least 1 and less than 2");
    EXPECT_EQ(limitsText("1", false, std::nullopt, true), "more than 1");
    EXPECT_EQ(limitsText(std::nullopt, true, "2", true), "2 or less");
    EXPECT_EQ(limitsText(std::nullopt, true, "2", false), "less than 2");
    EXPECT_EQ(limitsText(std::nullopt, true, std::nullopt, true), "");
}

}  // namespace
}  // namespace fayline
