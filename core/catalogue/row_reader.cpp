#include "row_reader.h"

#include <algorithm>
#include <array>

#include "quantity/reading.h"
#include "quantity/text.h"

namespace fayline {
namespace {

constexpr std::size_t longestId = 60;
constexpr std::size_t longestWords = 400;

std::string meant(std::string_view name, const std::vector<std::string>& names) {
    const auto nearest = didYouMean(name, names);
    return nearest ? "did you mean " + *nearest + "?" : std::string{};
}

std::string joined(const std::vector<std::string>& names) {
    std::string text;
    for (const auto& name : names) text += (text.empty() ? "" : ", ") + name;
    return text;
}

bool isIdLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_';
}

}  // namespace

bool hasColumns(const CsvFile& file, std::span<const std::string_view> columns,
                Problems& problems) {
    const std::vector<std::string> names(columns.begin(), columns.end());
    const auto before = problems.size();
    for (const auto& title : file.header) {
        if (std::find(names.begin(), names.end(), title) != names.end()) continue;
        const auto hint = meant(title, names);
        problems.push_back({"catalogue.column_unknown", file.where(file.headerLine),
                            "column " + quotable(title) + " is not known",
                            hint.empty() ? "columns are " + joined(names) : hint});
    }
    for (const auto& name : names) {
        if (file.column(name)) continue;
        problems.push_back({"catalogue.column_missing", file.where(file.headerLine),
                            "there is no column " + name, "columns are " + joined(names)});
    }
    return problems.size() == before;
}

std::string_view RowReader::cell(std::string_view column) const {
    const auto place = file_.column(column);
    return place ? std::string_view(row_.cells[*place]) : std::string_view{};
}

std::string RowReader::where(std::string_view column) const {
    return file_.where(row_.line) + ": " + std::string(column);
}

void RowReader::refuse(std::string code, std::string_view column, std::string what,
                       std::string allowed) {
    problems_.push_back({std::move(code), where(column), std::move(what), std::move(allowed)});
}

void RowReader::refuseWord(std::string code, std::string_view column,
                           const std::vector<std::string>& allowed) {
    const auto word = cell(column);
    const auto hint = meant(word, allowed);
    refuse(std::move(code), column,
           word.empty() ? "there is nothing here" : quotable(word) + " is not known",
           hint.empty() ? "one of " + joined(allowed) : hint);
}

std::optional<std::string> RowReader::id(std::string_view column) {
    const auto text = cell(column);
    if (text.empty() || text.size() > longestId ||
        !std::all_of(text.begin(), text.end(), isIdLetter)) {
        refuse("catalogue.id", column,
               text.empty() ? "there is no id here" : quotable(text) + " is no id",
               "small letters, digits and _, at most 60");
        return std::nullopt;
    }
    return std::string(text);
}

std::optional<std::string> RowReader::words(std::string_view column) {
    const auto text = cell(column);
    if (text.empty()) {
        refuse("catalogue.empty", column, "there is nothing here",
               "every row needs its " + std::string(column));
        return std::nullopt;
    }
    if (text.size() > longestWords) {
        refuse("catalogue.too_long", column, "the text is " + std::to_string(text.size()) + " long",
               "at most 400 letters");
        return std::nullopt;
    }
    return std::string(text);
}

std::optional<Standing> RowReader::standing() {
    const auto standing = standingFromText(cell("standing"));
    if (!standing) {
        refuseWord("catalogue.standing", "standing",
                   {"read", "derived", "common_practice", "from_memory", "judgement"});
    }
    return standing;
}

template <typename Q>
std::optional<Q> RowReader::within(Result<Q> read, std::string_view column,
                                   const Limits<Q>& limits) {
    if (!read) {
        problems_.push_back(read.error());
        return std::nullopt;
    }
    if (*read < limits.least || *read > limits.most) {
        refuse("catalogue.out_of_limits", column, "it is " + quotable(cell(column)),
               std::string(limits.words));
        return std::nullopt;
    }
    return *read;
}

std::optional<Length> RowReader::length(std::string_view column, const Limits<Length>& limits) {
    return within(readLength(cell(column), where(column)), column, limits);
}
std::optional<Stress> RowReader::stress(std::string_view column, const Limits<Stress>& limits) {
    return within(readStress(cell(column), where(column)), column, limits);
}
std::optional<Density> RowReader::density(std::string_view column, const Limits<Density>& limits) {
    return within(readDensity(cell(column), where(column)), column, limits);
}
std::optional<double> RowReader::ratio(std::string_view column, const Limits<double>& limits) {
    return within(readRatio(cell(column), where(column)), column, limits);
}
std::optional<int> RowReader::count(std::string_view column, int least, int most) {
    const auto read = readCount(cell(column), where(column), least, most);
    if (read) return *read;
    problems_.push_back(read.error());
    return std::nullopt;
}

}  // namespace fayline
