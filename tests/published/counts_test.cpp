// How many printed figures were read, source by source. Figures from memory stand in files of their
// own and do not count; nor do rows in which the catalogue merely holds the printed figure.

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <sstream>

#include "quantity/csv.h"

using namespace fayline;

namespace {

constexpr int mostOfOneTable = 40;

std::string cell(const CsvFile& file, const CsvRow& row, const char* column) {
    const auto place = file.column(column);
    return place ? row.cells[*place] : "";
}

std::vector<CsvFile> publishedFiles() {
    std::vector<CsvFile> files;
    for (const auto& entry : std::filesystem::directory_iterator(std::string(FAYLINE_SOURCE_DIR) +
                                                                 "/tests/published")) {
        if (entry.path().extension() != ".csv") continue;
        std::ifstream stream(entry.path());
        std::ostringstream text;
        text << stream.rdbuf();
        auto file = readCsv(text.str(), entry.path().filename().string());
        EXPECT_TRUE(file) << entry.path();
        if (file) files.push_back(*std::move(file));
    }
    return files;
}

}  // namespace

TEST(PublishedFigures, AtLeast250FromAtLeast12SourcesWereRead) {
    std::map<std::string, int> bySource;
    int held = 0, notReproduced = 0;
    for (const CsvFile& file : publishedFiles()) {
        const bool memory = file.name.find("memory") != std::string::npos;
        for (const CsvRow& row : file.rows) {
            const std::string standing = cell(file, row, "standing");
            EXPECT_EQ(memory, standing == "from_memory") << file.where(row.line);
            if (standing != "read") continue;
            if (cell(file, row, "why").find("holds this very figure") != std::string::npos) {
                ++held;
                continue;
            }
            notReproduced += cell(file, row, "reproduces") == "no" ? 1 : 0;
            ++bySource[cell(file, row, "source")];
        }
    }
    int counted = 0;
    for (const auto& [source, rows] : bySource) {
        counted += std::min(rows, mostOfOneTable);
        std::printf("%4d  %s\n", rows, source.c_str());
    }
    std::printf(
        "%d counted of %zu sources (at most %d of one), %d do not reproduce; %d only held\n",
        counted, bySource.size(), mostOfOneTable, notReproduced, held);
    EXPECT_GE(counted, 250);
    EXPECT_GE(bySource.size(), 12U);
}

// One idea of how far off a row may be: a tolerance, and why it is that.
TEST(PublishedFigures, EveryRowSaysWhereItStandsAndHowNearItMustCome) {
    for (const CsvFile& file : publishedFiles()) {
        for (const CsvRow& row : file.rows) {
            for (const char* column : {"source", "item", "published", "tolerance", "why"})
                EXPECT_FALSE(cell(file, row, column).empty()) << file.where(row.line) << column;
            const bool fails = cell(file, row, "reproduces") == "no";
            EXPECT_EQ(fails, !cell(file, row, "reason").empty()) << file.where(row.line);
        }
    }
}
