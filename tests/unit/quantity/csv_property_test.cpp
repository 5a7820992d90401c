#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <numeric>

#include "quantity/csv.h"
#include "quantity/text.h"

namespace fayline {
namespace {

using Cells = std::vector<std::string>;

/// Text out of what is special to comma separated text, to spreadsheets and to UTF-8.
std::string anyCell() {
    const auto parts = *rc::gen::container<Cells>(rc::gen::element<std::string>(
        "a", "=", "+", "-", "@", "\t", "\r", "\n", "'", "\"", ",", ";", "#", " ", "1", "1.5", "½",
        "\uFF1D", "\uFF0B", "\uFF0D", "\uFF20", "\xEF\xBB\xBF", "\xC2\xA0", "e5"));
    return std::accumulate(parts.begin(), parts.end(), std::string());
}

std::string written(const CsvFile& file) {
    std::string text = csvLine(file.header);
    for (const auto& row : file.rows) text += csvLine(row.cells);
    return text;
}

bool isSame(const CsvFile& a, const CsvFile& b) {
    if (a.header != b.header || a.rows.size() != b.rows.size()) return false;
    for (std::size_t i = 0; i < a.rows.size(); ++i) {
        if (a.rows[i].cells != b.rows[i].cells) return false;
    }
    return true;
}

RC_GTEST_PROP(CsvProperty, CellsComeBackAsTheyWere, ()) {
    const auto width = *rc::gen::inRange<std::size_t>(1, 5);
    CsvFile file;
    for (std::size_t i = 0; i < width; ++i) file.header.push_back("c" + std::to_string(i));
    const auto height = *rc::gen::inRange(0, 6);
    for (int i = 0; i < height; ++i) {
        CsvRow row;
        for (std::size_t j = 0; j < width; ++j) row.cells.push_back(anyCell());
        file.rows.push_back(row);
    }
    const auto back = readCsv(written(file), "t.csv");
    if (!back) RC_FAIL(back.error().front().line());
    RC_ASSERT(isSame(*back, file));
}

/// What a spreadsheet sees of a cell, with the quotation marks off.
RC_GTEST_PROP(CsvProperty, NoCellStartsAFormula, ()) {
    std::string cell = csvCell(anyCell());
    if (cell.starts_with('"')) cell = cell.substr(1);
    const std::string bare(trimmed(cell));
    for (const std::string_view start : {"=", "@", "\uFF1D", "\uFF0B", "\uFF0D", "\uFF20"}) {
        RC_ASSERT(!cell.starts_with(start));
        RC_ASSERT(!bare.starts_with(start));
    }
    RC_ASSERT(!cell.starts_with('\t') && !cell.starts_with('\r') && !cell.starts_with('\n'));
    if (cell.starts_with('+') || cell.starts_with('-')) RC_ASSERT(isPlainNumber(cell));
}

RC_GTEST_PROP(CsvProperty, WhatIsReadOnceReadsTheSameWrittenAgain, ()) {
    const auto lines = *rc::gen::inRange(1, 8);
    std::string text;
    for (int i = 0; i < lines; ++i) {
        text += anyCell() + "," + anyCell() + *rc::gen::element<std::string>("\n", "\r\n", "\r");
    }
    const auto first = readCsv(text, "t.csv");
    if (!first) {
        RC_ASSERT(!first.error().empty());
        return;
    }
    int last = first->headerLine;
    for (const auto& row : first->rows) {
        RC_ASSERT(row.line > last);
        last = row.line;
    }
    const auto second = readCsv(written(*first), "t.csv");
    if (!second) RC_FAIL(second.error().front().line());
    RC_ASSERT(isSame(*first, *second));
}

}  // namespace
}  // namespace fayline
