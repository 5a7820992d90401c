#include <gtest/gtest.h>

#include <bit>
#include <fstream>
#include <sstream>

#include "by_kind.h"
#include "quantity/csv.h"
#include "quantity/reading.h"

namespace fayline {
namespace {

CsvFile table(const std::string& name) {
    std::ifstream in(std::string(FAYLINE_SOURCE_DIR "/tests/unit/quantity/") + name);
    std::ostringstream text;
    text << in.rdbuf();
    auto file = readCsv(text.str(), name);
    if (!file) {
        ADD_FAILURE() << file.error().front().line();
        return {};
    }
    return *file;
}

/// n/d of whole numbers that a double holds: one IEEE division is then the nearest double.
double ratio(const std::string& text) {
    constexpr long long mostExact = 1LL << 53;
    const auto stroke = text.find('/');
    const long long numerator = std::stoll(text.substr(0, stroke));
    const long long denominator = std::stoll(text.substr(stroke + 1));
    EXPECT_LE(std::abs(numerator), mostExact) << text;
    EXPECT_LE(denominator, mostExact) << text;
    return double(numerator) / double(denominator);
}

TEST(Spellings, EachIsTheDoubleNearestToItsExactRatio) {
    const auto file = table("spellings.csv");
    ASSERT_GE(file.rows.size(), 190U);
    for (const auto& row : file.rows) {
        const auto read = readByKind(row.cells[0], row.cells[1], row.cells[2]);
        ASSERT_TRUE(read) << file.where(row.line) << ": no such kind or unit";
        if (!*read) {
            ADD_FAILURE() << file.where(row.line) << ": " << read->error().line();
            continue;
        }
        const double wanted = ratio(row.cells[3]);
        EXPECT_EQ(std::bit_cast<std::uint64_t>(**read), std::bit_cast<std::uint64_t>(wanted))
            << file.where(row.line) << ": " << row.cells[1];
    }
}

TEST(Spellings, RefusedOnesSayWhatWhereAndWhatIsAllowed) {
    const auto file = table("refused.csv");
    ASSERT_GE(file.rows.size(), 90U);
    for (const auto& row : file.rows) {
        const auto read = readByKind(row.cells[0], row.cells[1], row.cells[2]);
        ASSERT_TRUE(read) << file.where(row.line) << ": no such kind or unit";
        ASSERT_FALSE(*read) << file.where(row.line) << ": " << row.cells[1] << " was taken";
        const Problem& problem = read->error();
        EXPECT_EQ(problem.code, row.cells[3]) << file.where(row.line) << ": " << problem.line();
        EXPECT_NE(problem.line().find(row.cells[4]), std::string::npos)
            << file.where(row.line) << ": " << problem.line();
        EXPECT_EQ(problem.where, "t.csv:1");
        EXPECT_FALSE(problem.allowed.empty()) << file.where(row.line);
    }
}

TEST(Spellings, WholeSentence) {
    EXPECT_EQ(readLength("250 lb", "deck.csv:7").error().line(),
              "deck.csv:7: 250 lb is a mass, a length is wanted; a length such as 38 mm, 1 1/2 in "
              "or 3' 4 5/8\"");
    EXPECT_EQ(readCount("13", "F9.heel.count", 1, 12).error().line(),
              "F9.heel.count: 13 is outside the limits; a whole number from 1 to 12");
}

TEST(Spellings, GaugesAndCounts) {
    for (const auto* text : {"No. 14", "no 14", "No.14", "#14", "# 14", "14", " №14 "}) {
        const auto gauge = readGauge(text, "");
        ASSERT_TRUE(gauge) << text;
        EXPECT_EQ(*gauge, Gauge(14));
    }
    EXPECT_EQ(readGauge("0", ""), Gauge(0));
    EXPECT_EQ(readCount("1", "", 1, 12), 1);
    EXPECT_EQ(readCount("12", "", 1, 12), 12);
    EXPECT_EQ(readCount("007", "", 1, 12), 7);
    EXPECT_EQ(readCount("-3", "", -5, 5), -3);
}

TEST(Spellings, TextLongerThanAnyQuantityIsRefused) {
    EXPECT_TRUE(readLength(std::string(190, '0') + "1 mm", ""));
    EXPECT_FALSE(readLength(std::string(300, '0') + "1 mm", ""));
    EXPECT_FALSE(readLength(std::string("38 m\0m", 6), ""));
    EXPECT_FALSE(readLength("38 \xFF mm", ""));
}

}  // namespace
}  // namespace fayline
