#include "quantity/text.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace fayline {
namespace {

TEST(Text, TrimSplitLower) {
    EXPECT_EQ(trimmed(" \t a b\r\n"), "a b");
    EXPECT_EQ(trimmed("  "), "");
    EXPECT_EQ(splitAt("a,,b", ','), (std::vector<std::string_view>{"a", "", "b"}));
    EXPECT_EQ(splitAt("", ','), std::vector<std::string_view>{""});
    EXPECT_EQ(lowered("K.5 IJ"), "k.5 ij");
}

TEST(Text, NaturalOrder) {
    std::vector<std::string> ids{"F10",         "F2",  "K.10", "F9A", "F9",        "F9.P.arm.2",
                                 "F9.P.arm.10", "K.5", "F1",   "F02", "F9.P.arm.9"};
    std::sort(ids.begin(), ids.end(), NaturalLess{});
    EXPECT_EQ(ids, (std::vector<std::string>{"F1", "F2", "F02", "F9", "F9.P.arm.2", "F9.P.arm.9",
                                             "F9.P.arm.10", "F9A", "F10", "K.5", "K.10"}));
    EXPECT_TRUE(naturalOrder("F2", "F2") == 0);
    EXPECT_TRUE(naturalOrder("F2", "F02") < 0);
    EXPECT_TRUE(NaturalLess{}("F99999999999999999999998", "F99999999999999999999999"));
}

TEST(Text, NaturalOrderIsAnOrder) {
    const std::vector<std::string> texts{"",   "0",   "00",  "1",   "01",   "a",
                                         "a0", "a1",  "a01", "a1b", "a01b", "a1a",
                                         "1a", "01a", "a.1", "a2",  "10",   "2"};
    for (const auto& a : texts) {
        for (const auto& b : texts) {
            EXPECT_EQ(naturalOrder(a, b) < 0, naturalOrder(b, a) > 0) << a << " " << b;
            EXPECT_EQ(naturalOrder(a, b) == 0, a == b) << a << " " << b;
            for (const auto& c : texts) {
                if (naturalOrder(a, b) < 0 && naturalOrder(b, c) < 0) {
                    EXPECT_TRUE(naturalOrder(a, c) < 0) << a << " " << b << " " << c;
                }
            }
        }
    }
}

TEST(Text, EditDistance) {
    EXPECT_EQ(editDistance("", "abc"), 3);
    EXPECT_EQ(editDistance("moulded", "molded"), 1);
    EXPECT_EQ(editDistance("sided", "isded"), 1);
    EXPECT_EQ(editDistance("Keel", "keel"), 0);
    EXPECT_EQ(editDistance("kitten", "sitting"), 3);
}

TEST(Text, DidYouMean) {
    const std::vector<std::string> names{"keel.sided", "keel.moulded", "ballast.mass"};
    EXPECT_EQ(didYouMean("keel.molded", names), "keel.moulded");
    EXPECT_EQ(didYouMean("balast.mas", names), "ballast.mass");
    EXPECT_EQ(didYouMean("rudder", names), std::nullopt);
    EXPECT_EQ(didYouMean("k", names), std::nullopt);
    EXPECT_EQ(didYouMean("abc", std::vector<std::string>{"abx", "xyz"}), "abx");
    EXPECT_EQ(didYouMean("abc", std::vector<std::string>{"xyz"}), std::nullopt);
    EXPECT_EQ(didYouMean(std::string(100'000, 'k'), names), std::nullopt);
}

// RFC 3629, section 4 (what is well formed) and section 10 (what must not slip through).
TEST(Text, Utf8) {
    for (const std::string_view good : {"", "plain", "½ ⌀ 🙂", "\uFFFF", "\U0010FFFF"}) {
        EXPECT_EQ(firstBadUtf8(good), std::nullopt) << good;
    }
    EXPECT_EQ(firstBadUtf8("ab\xC0\xAF"), 2U);
    for (const std::string_view bad :
         {"\x80", "\xC1\xBF", "\xE0\x9F\xBF", "\xED\xA0\x80", "\xF0\x8F\xBF\xBF",
          "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xE2\x82", "\xC3", "\xE2\x28\xA1"}) {
        EXPECT_EQ(firstBadUtf8(bad), 0U);
    }
}

TEST(Text, QuotableFitsOneLine) {
    EXPECT_EQ(quotable("½ in"), "½ in");
    EXPECT_EQ(quotable("a\nb\x01\xFFz"), "a?b??z");
    EXPECT_EQ(quotable("½½½½", 3), "½½½…");
}

}  // namespace
}  // namespace fayline
