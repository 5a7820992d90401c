#include <string>

#include "formula_guard.h"
#include "quantity/csv.h"
#include "quantity/text.h"

namespace fayline {

bool detail::looksLikeFormula(std::string_view text) {
    const auto afterGuards = text.find_first_not_of('\'');
    if (afterGuards == std::string_view::npos) return false;
    text.remove_prefix(afterGuards);
    const auto afterBlanks = text.find_first_not_of(' ');
    if (afterBlanks == std::string_view::npos) return false;
    text.remove_prefix(afterBlanks);
    if (std::string_view("=+-@\t\r\n").find(text.front()) != std::string_view::npos) return true;
    for (const std::string_view fullWidth : {"\uFF1D", "\uFF0B", "\uFF0D", "\uFF20"}) {
        if (text.starts_with(fullWidth)) return true;
    }
    return false;
}

bool isPlainNumber(std::string_view text) {
    std::size_t at = 0;
    const auto digits = [&] {
        const std::size_t start = at;
        while (at < text.size() && text[at] >= '0' && text[at] <= '9') ++at;
        return at > start;
    };
    const auto sign = [&] {
        if (at < text.size() && (text[at] == '+' || text[at] == '-')) ++at;
    };
    sign();
    if (!digits()) return false;
    if (at < text.size() && text[at] == '.') {
        ++at;
        if (!digits()) return false;
    }
    if (at < text.size() && (text[at] == 'e' || text[at] == 'E')) {
        ++at;
        sign();
        if (!digits()) return false;
    }
    return at == text.size();
}

std::string csvCell(std::string_view text) {
    std::string cell(text);
    if (detail::looksLikeFormula(text) && !isPlainNumber(text)) cell.insert(0, 1, '\'');
    const bool quoted = cell.find_first_of(",;\"\t\r\n") != std::string::npos ||
                        trimmed(cell).size() != cell.size() || cell.starts_with('#') ||
                        cell.starts_with("\xEF\xBB\xBF");
    if (!quoted) return cell;
    std::string out = "\"";
    for (const char c : cell) {
        if (c == '"') out += '"';
        out += c;
    }
    out += '"';
    return out;
}

std::string csvLine(const std::vector<std::string>& cells) {
    std::string line;
    for (const auto& cell : cells) {
        if (&cell != &cells.front()) line += ',';
        line += csvCell(cell);
    }
    // A line of one empty cell would be a blank line.
    if (cells.size() == 1 && line.empty()) line = "\"\"";
    return line + "\r\n";
}

}  // namespace fayline
