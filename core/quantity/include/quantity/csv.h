#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "quantity/result.h"

namespace fayline {

/// One row below the header; as many cells as the header has.
struct CsvRow {
    int line = 0;  ///< where the row starts, counted from 1
    std::vector<std::string> cells;
};

/// One comment line, without its '#' and the blanks around it.
struct CsvComment {
    int line = 0;
    std::string text;
};

struct CsvFile {
    std::string name;
    std::vector<CsvComment> comments;
    std::vector<std::string> header;
    int headerLine = 0;
    std::vector<CsvRow> rows;

    /// The place of a column by its exact name.
    [[nodiscard]] std::optional<std::size_t> column(std::string_view title) const;
    /// "offsets.csv:14", for Problem::where.
    [[nodiscard]] std::string where(int line) const;
};

/// Reads comma separated text (RFC 4180) with a header line. Taken besides: a byte order mark, any
/// line end, blank lines, lines starting with '#' (comments), blanks around a cell, a quotation
/// mark inside an unquoted cell (40 5/8"). Blanks inside quotation marks are kept. The apostrophe
/// that csvCell puts before a formula is taken off again. Refused, with file and line, all of them
/// in one go (the first thousand): NUL, text that is not UTF-8, a quotation mark never closed or
/// followed by text, a cell over 64 kB, rows with a cell too few or too many, a file without a
/// header, a column without a name or named twice.
ResultAll<CsvFile> readCsv(std::string_view text, std::string_view fileName);

/// One cell as readCsv takes it back: in quotation marks where needed, and with an apostrophe
/// before text that a spreadsheet would run as a formula (starting = + - @, tab, line end, or their
/// full-width forms) unless it is a plain number.
std::string csvCell(std::string_view text);

/// One line, with CR LF at its end.
std::string csvLine(const std::vector<std::string>& cells);

/// Whether the text is one number as a spreadsheet writes it: -12.5, +3, 1e-5.
bool isPlainNumber(std::string_view text);

}  // namespace fayline
