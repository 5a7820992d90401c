#pragma once

#include <string>
#include <string_view>

#include "joint/ec5_coefficients.h"
#include "joint/us_coefficients.h"
#include "quantity/csv.h"
#include "quantity/quantity.h"

namespace fayline {

/// A row of a file of printed figures.
class Row {
  public:
    Row(const CsvFile& file, const CsvRow& row) : file_(file), row_(row) {}

    [[nodiscard]] std::string text(std::string_view column) const;
    [[nodiscard]] double number(std::string_view column) const;
    [[nodiscard]] Length length(std::string_view column) const;
    [[nodiscard]] Stress stress(std::string_view column) const;
    [[nodiscard]] Density density(std::string_view column) const;
    [[nodiscard]] Angle angle(std::string_view column) const;
    [[nodiscard]] std::string where() const;

  private:
    const CsvFile& file_;
    const CsvRow& row_;
};

/// As published, but for the tests of the tests.
struct Coefficients {
    UsCoefficients us;
    Ec5Coefficients ec5;
};

/// What the program says, in the unit of the row.
using Says = double (*)(const Row& row, const Coefficients& coefficients);

double lagWithdrawal_lbPerIn(const Row& row, const Coefficients& coefficients);
double screwWithdrawal_lbPerIn(const Row& row, const Coefficients& coefficients);
double screwOrNailWithdrawal_lbPerIn(const Row& row, const Coefficients& coefficients);
double handbookWithdrawal(const Row& row, const Coefficients& coefficients);
double pullThrough_lb(const Row& row, const Coefficients& coefficients);
double lagPlate_lb(const Row& row, const Coefficients& coefficients);
double nail_lb(const Row& row, const Coefficients& coefficients);
double lateral_lb(const Row& row, const Coefficients& coefficients);
double groupFactor(const Row& row, const Coefficients& coefficients);
double screwSize(const Row& row, const Coefficients& coefficients);
double ec5Figure(const Row& row, const Coefficients& coefficients);
double stripArea_mm2(const Row& row, const Coefficients& coefficients);
double ec5Axial(const Row& row, const Coefficients& coefficients);

}  // namespace fayline
