#include "quantity/csv.h"

#include <algorithm>

#include "formula_guard.h"
#include "quantity/text.h"

namespace fayline {
namespace {

constexpr std::size_t longestCell = 64 * 1024;
constexpr std::size_t mostProblems = 1000;

bool isBlank(char c) {
    return c == ' ' || c == '\t';
}
bool isLineEnd(char c) {
    return c == '\n' || c == '\r';
}

std::string withoutGuard(std::string_view cell) {
    if (cell.starts_with('\'') && detail::looksLikeFormula(cell.substr(1))) cell.remove_prefix(1);
    return std::string(cell);
}

class Reader {
  public:
    Reader(std::string_view text, std::string_view fileName) : text_(text) {
        file_.name = fileName;
    }

    ResultAll<CsvFile> run() {
        if (text_.starts_with("\xEF\xBB\xBF")) text_.remove_prefix(3);
        if (text_.starts_with("\xFF\xFE") || text_.starts_with("\xFE\xFF")) {
            refuse(1, "csv.utf8", "the file is UTF-16 text", "save it as UTF-8");
            return tl::unexpected(inFileOrder());
        }
        checkBytes();
        while (at_ < text_.size() && problems_.size() < mostProblems) readLine();
        if (problems_.size() >= mostProblems) {
            problems_.erase(problems_.begin() + mostProblems, problems_.end());
            refuse(line_, "csv.too_many", "too many problems; the rest of the file was not read",
                   "put the ones above right first");
        } else if (file_.headerLine == 0 && problems_.empty()) {
            refuse(line_, "csv.no_header", "the file has no header line",
                   "a first line with the names of the columns");
        }
        if (!problems_.empty()) return tl::unexpected(inFileOrder());
        return std::move(file_);
    }

  private:
    struct Located {
        int line;
        Problem problem;
    };

    void refuse(int line, std::string code, std::string what, std::string allowed) {
        problems_.push_back(
            {line, {std::move(code), file_.where(line), std::move(what), std::move(allowed)}});
    }

    Problems inFileOrder() {
        std::stable_sort(problems_.begin(), problems_.end(),
                         [](const Located& a, const Located& b) { return a.line < b.line; });
        Problems problems;
        for (auto& located : problems_) problems.push_back(std::move(located.problem));
        return problems;
    }

    /// One problem for each line with NUL or with bytes that are not UTF-8.
    void checkBytes() {
        int line = 0;
        for (std::size_t start = 0; start < text_.size() && problems_.size() < mostProblems;) {
            ++line;
            std::size_t end = text_.find_first_of("\r\n", start);
            if (end == std::string_view::npos) end = text_.size();
            const auto content = text_.substr(start, end - start);
            if (content.find('\0') != std::string_view::npos) {
                refuse(line, "csv.nul", "the line holds a NUL byte", "plain UTF-8 text");
            } else if (const auto bad = firstBadUtf8(content)) {
                refuse(line, "csv.utf8",
                       "byte " + std::to_string(*bad + 1) + " of the line is not UTF-8",
                       "save the file as UTF-8");
            }
            start = end + lineEndSize(end);
        }
    }

    [[nodiscard]] std::size_t lineEndSize(std::size_t at) const {
        if (at >= text_.size() || !isLineEnd(text_[at])) return 0;
        return text_.substr(at, 2) == "\r\n" ? 2 : 1;
    }

    void skipBlanks() {
        while (at_ < text_.size() && isBlank(text_[at_])) ++at_;
    }

    [[nodiscard]] bool atCellEnd() const {
        return at_ >= text_.size() || text_[at_] == ',' || isLineEnd(text_[at_]);
    }

    void readLine() {
        const int line = line_;
        const std::size_t lineStart = at_;
        skipBlanks();
        if (at_ < text_.size() && text_[at_] == '#') {
            std::size_t end = text_.find_first_of("\r\n", at_);
            if (end == std::string_view::npos) end = text_.size();
            const auto comment = trimmed(text_.substr(at_ + 1, end - at_ - 1));
            file_.comments.push_back({line, std::string(comment)});
            at_ = end;
            endLine();
            return;
        }
        if (at_ >= text_.size() || isLineEnd(text_[at_])) {
            endLine();
            return;
        }
        at_ = lineStart;
        std::vector<std::string> cells;
        bool whole = true;
        while (true) {
            whole = readCell(cells) && whole;
            if (at_ >= text_.size() || text_[at_] != ',') break;
            ++at_;
        }
        endLine();
        if (!whole) {
            if (file_.headerLine == 0) file_.headerLine = -1;
        } else if (file_.headerLine == 0) {
            takeHeader(line, std::move(cells));
        } else {
            takeRow(line, std::move(cells));
        }
    }

    void endLine() {
        at_ += lineEndSize(at_);
        ++line_;
    }

    /// Leaves at_ on the comma or line end behind the cell. False when the cell was refused.
    bool readCell(std::vector<std::string>& cells) {
        const int line = line_;
        skipBlanks();
        if (at_ < text_.size() && text_[at_] == '"') return readQuotedCell(cells);
        const std::size_t start = at_;
        while (!atCellEnd()) ++at_;
        const auto cell = trimmed(text_.substr(start, at_ - start));
        if (cell.size() > longestCell) return refuseLong(line);
        cells.push_back(withoutGuard(cell));
        return true;
    }

    bool readQuotedCell(std::vector<std::string>& cells) {
        const int line = line_;
        std::string cell;
        for (++at_;;) {
            const std::size_t quote = text_.find('"', at_);
            const auto part = text_.substr(at_, quote - at_);
            countLines(part);
            if (quote == std::string_view::npos) {
                at_ = text_.size();
                refuse(line, "csv.open_quote", "a quotation mark is opened and never closed",
                       "a second quotation mark at the end of the cell");
                return false;
            }
            cell += part;
            at_ = quote + 1;
            if (at_ >= text_.size() || text_[at_] != '"') break;
            cell += '"';
            ++at_;
        }
        skipBlanks();
        if (!atCellEnd()) {
            const std::size_t start = at_;
            while (!atCellEnd()) ++at_;
            refuse(line_, "csv.after_quote",
                   "\"" + quotable(text_.substr(start, at_ - start), 20) +
                       "\" stands behind a closing quotation mark",
                   "a comma there, or the quotation mark written twice");
            return false;
        }
        if (cell.size() > longestCell) return refuseLong(line);
        cells.push_back(withoutGuard(cell));
        return true;
    }

    bool refuseLong(int line) {
        refuse(line, "csv.cell_too_long", "a cell is longer than 64 kB", "at most 65536 bytes");
        return false;
    }

    void countLines(std::string_view part) {
        for (std::size_t i = 0; i < part.size(); ++i) {
            if (part[i] == '\n' || (part[i] == '\r' && part.substr(i, 2) != "\r\n")) ++line_;
        }
    }

    void takeHeader(int line, std::vector<std::string> cells) {
        file_.headerLine = line;
        std::vector<std::string_view> sorted(cells.begin(), cells.end());
        std::sort(sorted.begin(), sorted.end());
        if (const auto twice = std::adjacent_find(sorted.begin(), sorted.end());
            twice != sorted.end() && !twice->empty()) {
            refuse(line, "csv.column_twice",
                   "the column \"" + quotable(*twice) + "\" stands there twice",
                   "each column once");
        }
        if (std::find(cells.begin(), cells.end(), "") != cells.end()) {
            refuse(line, "csv.column_unnamed", "a column has no name", "a name for each column");
        }
        file_.header = std::move(cells);
    }

    void takeRow(int line, std::vector<std::string> cells) {
        if (file_.headerLine > 0 && cells.size() != file_.header.size()) {
            refuse(line, "csv.cells",
                   "the row has " + std::to_string(cells.size()) +
                       (cells.size() == 1 ? " cell" : " cells") + ", the header has " +
                       std::to_string(file_.header.size()),
                   "one cell for each column");
            return;
        }
        file_.rows.push_back({line, std::move(cells)});
    }

    std::string_view text_;
    std::size_t at_ = 0;
    int line_ = 1;
    CsvFile file_;
    std::vector<Located> problems_;
};

}  // namespace

std::optional<std::size_t> CsvFile::column(std::string_view title) const {
    const auto found = std::find(header.begin(), header.end(), title);
    if (found == header.end()) return std::nullopt;
    return static_cast<std::size_t>(found - header.begin());
}

std::string CsvFile::where(int line) const {
    return name + ":" + std::to_string(line);
}

ResultAll<CsvFile> readCsv(std::string_view text, std::string_view fileName) {
    return Reader(text, fileName).run();
}

}  // namespace fayline
