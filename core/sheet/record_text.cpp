#include <algorithm>

#include "quantity/text.h"
#include "sheet/record.h"

namespace fayline {
namespace {

constexpr std::size_t lineLetters = 100;

/// Letters, not bytes.
std::size_t lettersOf(std::string_view text) {
    std::size_t count = 0;
    for (const char c : text) count += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
    return count;
}

std::string padded(std::string text, std::size_t width) {
    const std::size_t letters = lettersOf(text);
    if (letters < width) text.append(width - letters, ' ');
    return text;
}

/// Words in lines, the first begun behind `indent` letters that stand already, the others behind
/// `hanging` blanks.
std::string flowed(std::string_view text, std::size_t indent, std::size_t hanging) {
    std::string all;
    std::size_t column = indent;
    bool first = true;
    for (const std::string_view word : splitAt(text, ' ')) {
        if (word.empty()) continue;
        const std::size_t letters = lettersOf(word);
        if (!first && column + 1 + letters > lineLetters) {
            all += "\n" + std::string(hanging, ' ');
            column = hanging;
        } else if (!first) {
            all += ' ';
            ++column;
        }
        all += word;
        column += letters;
        first = false;
    }
    return all + "\n";
}

std::string filled(std::string_view text, std::size_t indent) {
    return std::string(indent, ' ') + flowed(text, indent, indent + 2);
}

struct Write {
    std::string& out;

    void operator()(const record::Heading& heading) {
        out += "\n" + heading.text + "\n" +
               std::string(lettersOf(heading.text), heading.level == 1 ? '=' : '-') + "\n";
    }
    void operator()(const record::Paragraph& paragraph) {
        const std::string gap = paragraph.label.empty() || paragraph.text.empty() ? "" : ": ";
        out += filled(paragraph.label + gap + paragraph.text, 0);
    }
    void operator()(const record::Table& table) {
        std::vector<std::size_t> widths;
        for (const std::string& head : table.heads) widths.push_back(lettersOf(head));
        for (const auto& row : table.rows) {
            for (std::size_t i = 0; i + 1 < row.size(); ++i)
                widths[i] = std::max(widths[i], lettersOf(row[i]));
        }
        const auto line = [&](const std::vector<std::string>& cells) {
            std::string text;
            for (std::size_t i = 0; i + 1 < cells.size(); ++i)
                text += padded(cells[i], widths[i]) + "  ";
            const std::size_t column = lettersOf(text);
            text += flowed(cells.back(), column, std::min<std::size_t>(column, 70));
            text.erase(text.find_last_not_of(" \n") + 1);
            out += text + "\n";
        };
        line(table.heads);
        for (const auto& row : table.rows) line(row);
    }
    void operator()(const record::Working& working) {
        out += "\n" + working.title + "\n";
        out += filled(working.formula, 2);
        out += filled(working.clause + " (" + working.standing + ")", 2);
        for (const record::Figure& f : working.figures) {
            std::string text = f.symbol + " = " + f.value;
            if (!f.other.empty()) text += " (" + f.other + ")";
            text += "  " + f.meaning;
            if (!f.source.empty()) text += "; " + f.source;
            if (!f.standing.empty()) text += " [" + f.standing + "]";
            out += filled(text, 4);
        }
        if (!working.result.empty()) out += filled("Result: " + working.result, 2);
        for (const std::string& outside : working.outside)
            out += filled("Outside the range: " + outside, 2);
        for (const std::string& note : working.notes) out += filled("Note: " + note, 2);
    }
    void operator()(const record::Picture& picture) {
        if (!picture.says.empty()) out += filled(picture.says, 0);
    }
};

}  // namespace

std::string textOf(const Record& record) {
    std::string out = record.title + "\n" + std::string(lettersOf(record.title), '=') + "\n";
    out += record.subject + "\nrevision " + revisionOf(record) + "\n";
    if (!record.printed.empty()) out += "printed " + record.printed + "\n";
    if (!record.program.empty()) out += record.program + "\n";
    out += filled(record.caution, 0);
    for (const record::Block& block : record.opening) std::visit(Write{out}, block);
    if (record.contents) {
        out += "\nContents\n========\n";
        for (const record::Block& block : record.blocks) {
            if (const auto* heading = std::get_if<record::Heading>(&block))
                out += std::string(heading->level == 1 ? 0 : 2, ' ') + heading->text + "\n";
        }
    }
    for (const record::Block& block : record.blocks) std::visit(Write{out}, block);
    return out + "\n" + filled(record.caution, 0);
}

}  // namespace fayline
