#include "quantity/csv.h"

#include <gtest/gtest.h>

namespace fayline {
namespace {

using Cells = std::vector<std::string>;

CsvFile good(std::string_view text) {
    auto file = readCsv(text, "t.csv");
    EXPECT_TRUE(file) << (file ? "" : file.error().front().line());
    return file ? *file : CsvFile{};
}

/// The lines of all problems, one a line.
std::string refusal(std::string_view text) {
    const auto file = readCsv(text, "t.csv");
    if (file) return "accepted";
    std::string lines;
    for (const auto& problem : file.error()) lines += problem.line() + "\n";
    return lines;
}

TEST(Csv, ReadsHeaderRowsAndComments) {
    const auto file = good(
        "\xEF\xBB\xBF# source: own measurements\r\nframe,half_breadth\r\n\r\nF1, 12 mm \r\n"
        "  # between\nF2,\"3' 4 5/8\"\"\"\nF3,40 5/8\"");
    ASSERT_EQ(file.comments.size(), 2U);
    EXPECT_EQ(file.comments[0].text, "source: own measurements");
    EXPECT_EQ(file.comments[1].line, 5);
    EXPECT_EQ(file.header, (Cells{"frame", "half_breadth"}));
    EXPECT_EQ(file.headerLine, 2);
    ASSERT_EQ(file.rows.size(), 3U);
    EXPECT_EQ(file.rows[0].cells, (Cells{"F1", "12 mm"}));
    EXPECT_EQ(file.rows[0].line, 4);
    EXPECT_EQ(file.rows[1].cells[1], "3' 4 5/8\"");
    EXPECT_EQ(file.rows[2].cells[1], "40 5/8\"");
    EXPECT_EQ(file.rows[2].line, 7);
    EXPECT_EQ(file.column("half_breadth"), 1U);
    EXPECT_EQ(file.column("Half_breadth"), std::nullopt);
}

// RFC 4180, section 2, rules 5 to 7.
TEST(Csv, QuotedCellsHoldCommasQuotesAndLineEnds) {
    const auto file = good("a,b,c\r\n\"x,y\",\"l1\r\nl2\",\"say \"\"no\"\"\"\r\nlast,,\"\"\r\n");
    ASSERT_EQ(file.rows.size(), 2U);
    EXPECT_EQ(file.rows[0].cells, (Cells{"x,y", "l1\r\nl2", "say \"no\""}));
    EXPECT_EQ(file.rows[1].line, 4);
    EXPECT_EQ(file.rows[1].cells, (Cells{"last", "", ""}));
}

TEST(Csv, CountsLinesForEveryLineEnd) {
    for (const std::string end : {"\n", "\r", "\r\n"}) {
        const auto file = good("a" + end + "1" + end + end + "\"x" + end + end + "y\"" + end + "9");
        ASSERT_EQ(file.rows.size(), 3U);
        EXPECT_EQ(file.rows[1].line, 4);
        EXPECT_EQ(file.rows[2].line, 7);
    }
}

TEST(Csv, ReturnsEveryProblemInFileOrder) {
    const std::string text =
        "a,b\n1,2\n3\n4,5,6\nx\xFF,1\nok,\"q\"z\n" + std::string("n\0,1\n", 5) + "1,\"open\n2,3\n";
    EXPECT_EQ(refusal(text),
              "t.csv:3: the row has 1 cell, the header has 2; one cell for each column\n"
              "t.csv:4: the row has 3 cells, the header has 2; one cell for each column\n"
              "t.csv:5: byte 2 of the line is not UTF-8; save the file as UTF-8\n"
              "t.csv:6: \"z\" stands behind a closing quotation mark; a comma there, or the "
              "quotation mark written twice\n"
              "t.csv:7: the line holds a NUL byte; plain UTF-8 text\n"
              "t.csv:8: a quotation mark is opened and never closed; a second quotation mark at "
              "the end of the cell\n");
}

TEST(Csv, RefusesWhatHasNoUsableHeader) {
    EXPECT_NE(refusal("").find("no header line"), std::string::npos);
    EXPECT_NE(refusal("# only\n\n").find("t.csv:3: the file has no header"), std::string::npos);
    EXPECT_NE(refusal("a,b,a\n").find("\"a\" stands there twice"), std::string::npos);
    EXPECT_NE(refusal("a,,b\n").find("no name"), std::string::npos);
    EXPECT_NE(refusal(std::string("\xFF\xFE"
                                  "a\0",
                                  4))
                  .find("UTF-16"),
              std::string::npos);
}

TEST(Csv, RefusesACellOver64Kilobytes) {
    const std::string most(64 * 1024, 'x');
    EXPECT_EQ(good("a\n" + most).rows[0].cells[0], most);
    EXPECT_NE(refusal("a\n" + most + "x\n").find("t.csv:2: a cell is longer"), std::string::npos);
    EXPECT_NE(refusal("a\n\"" + most + "x\"\n").find("t.csv:2: a cell"), std::string::npos);
}

TEST(Csv, StopsAtAThousandProblems) {
    std::string text = "a,b\n";
    for (int i = 0; i < 5000; ++i) text += "1\n";
    const auto file = readCsv(text, "t.csv");
    ASSERT_FALSE(file);
    EXPECT_EQ(file.error().size(), 1001U);
    EXPECT_EQ(file.error().back().code, "csv.too_many");
}

TEST(Csv, GuardsFormulasAndTakesTheGuardOff) {
    EXPECT_EQ(csvCell("=1+1"), "'=1+1");
    EXPECT_EQ(csvCell("@SUM(A1)"), "'@SUM(A1)");
    EXPECT_EQ(csvCell("-cmd"), "'-cmd");
    EXPECT_EQ(csvCell("\t=1"), "\"'\t=1\"");
    EXPECT_EQ(csvCell("  =1"), "'  =1");
    EXPECT_EQ(csvCell("\uFF1D1"), "'\uFF1D1");
    EXPECT_EQ(csvCell("'=1"), "''=1");
    EXPECT_EQ(csvCell("-12.5"), "-12.5");
    EXPECT_EQ(csvCell("+1e-5"), "+1e-5");
    EXPECT_EQ(csvCell("-12 mm"), "'-12 mm");
    EXPECT_EQ(csvCell("it's"), "it's");
    EXPECT_EQ(csvCell("1;2"), "\"1;2\"");
    EXPECT_EQ(csvCell("#1"), "\"#1\"");
}

TEST(Csv, PlainNumbers) {
    for (const auto* number : {"0", "-1", "+2.50", "1e9", "-1.5E-3"}) {
        EXPECT_TRUE(isPlainNumber(number)) << number;
    }
    for (const auto* other : {"", "-", "1.", ".5", "1e", "1 ", "1,5", "-1+1", "nan", "0x1"}) {
        EXPECT_FALSE(isPlainNumber(other)) << other;
    }
}

}  // namespace
}  // namespace fayline
