#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "material/figure.h"
#include "quantity/csv.h"
#include "quantity/quantity.h"
#include "quantity/result.h"

namespace fayline {

/// From least to most, both allowed, and the same in words.
template <typename Q>
struct Limits {
    Q least;
    Q most;
    std::string_view words;
};

/// Whether the header has exactly these columns, in any order; says what is wrong if not.
bool hasColumns(const CsvFile& file, std::span<const std::string_view> columns, Problems& problems);

/// Reads the cells of one row by column name; what is wrong is added to the problems and comes
/// back as nothing.
class RowReader {
  public:
    RowReader(const CsvFile& file, const CsvRow& row, Problems& problems)
        : file_(file), row_(row), problems_(problems) {}

    [[nodiscard]] int line() const { return row_.line; }
    [[nodiscard]] std::string_view cell(std::string_view column) const;
    [[nodiscard]] bool isEmpty(std::string_view column) const { return cell(column).empty(); }

    /// Adds a problem at this row and column.
    void refuse(std::string code, std::string_view column, std::string what, std::string allowed);
    /// Adds "… is not known", with the words allowed and the nearest of them.
    void refuseWord(std::string code, std::string_view column,
                    const std::vector<std::string>& allowed);

    std::optional<std::string> id(std::string_view column);
    std::optional<std::string> words(std::string_view column);
    std::optional<Standing> standing();
    std::optional<std::string> source() { return words("source"); }

    std::optional<Length> length(std::string_view column, const Limits<Length>& limits);
    std::optional<Stress> stress(std::string_view column, const Limits<Stress>& limits);
    std::optional<Density> density(std::string_view column, const Limits<Density>& limits);
    std::optional<double> ratio(std::string_view column, const Limits<double>& limits);
    std::optional<int> count(std::string_view column, int least, int most);

    /// The value with the row's source and standing, when all three are good.
    template <typename T>
    std::optional<Figure<T>> figure(std::optional<T> value) {
        const auto from = source();
        const auto trust = standing();
        if (!value || !from || !trust) return std::nullopt;
        return Figure<T>{*std::move(value), *trust, *from};
    }

  private:
    [[nodiscard]] std::string where(std::string_view column) const;
    template <typename Q>
    std::optional<Q> within(Result<Q> read, std::string_view column, const Limits<Q>& limits);

    const CsvFile& file_;
    const CsvRow& row_;
    Problems& problems_;
};

}  // namespace fayline
