#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <charconv>

#include "quantity/reading.h"

namespace fayline {
namespace {

double read(const std::string& text) {
    return readRatio(text, "").value();
}

TEST(Rounding, TiesGoToEven) {
    EXPECT_EQ(read("9007199254740993"), 9007199254740992.0);
    EXPECT_EQ(read("9007199254740995"), 9007199254740996.0);
    EXPECT_EQ(read("9007199254740993.00000000000000000001"), 9007199254740994.0);
    EXPECT_EQ(read("4503599627370497.5"), 4503599627370498.0);
    EXPECT_EQ(read("1.7976931348623158e308"), 1.7976931348623157e308);
    EXPECT_EQ(read("2.4703282292062328e-324"), 5e-324);
    EXPECT_EQ(readRatio("1.7976931348623159e308", "").error().code, "number.too_large");
    EXPECT_EQ(readRatio("2.4703282292062327e-324", "").error().code, "number.too_small");
}

// The standard library's reader is the judge where the unit is 1.
RC_GTEST_PROP(RoundingProperty, DecimalsAsTheStandardLibraryReadsThem, ()) {
    const auto digits = *rc::gen::nonEmpty(rc::gen::string<std::string>());
    std::string text = "0";
    for (const char c : digits)
        text += static_cast<char>('0' + (static_cast<unsigned char>(c) % 10));
    text.insert(*rc::gen::inRange<std::size_t>(1, text.size()), ".");
    text += "e" + std::to_string(*rc::gen::inRange(-335, 325));
    double wanted = 0.0;
    const auto outcome = std::from_chars(text.data(), text.data() + text.size(), wanted);
    const auto found = readRatio(text, "");
    if (outcome.ec == std::errc()) {
        RC_ASSERT(found.has_value());
        RC_ASSERT(*found == wanted);
    } else {
        RC_ASSERT(!found.has_value());
    }
}

}  // namespace
}  // namespace fayline
