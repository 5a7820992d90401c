#pragma once

#include <optional>
#include <string_view>

#include "quantity/quantity.h"
#include "quantity/result.h"
#include "quantity/units.h"

namespace fayline {

/// Reading of typed quantities, the same in every locale. The text becomes an exact ratio in the SI
/// unit and is rounded once, so that "1 1/2 in", "1½\"", "38.1 mm" are the same double.
///
/// Numbers: 40, 40.625, 40,625 (a comma marks decimals; digits are never grouped), 6.25e-3, 5/8,
/// 40 5/8, 40-5/8, 40⅝. Sums: 3' + 4 in. A leading minus applies to the whole and cannot stand
/// before a sum; nothing is ever subtracted. Minus zero is zero. A number without a unit takes
/// `bare`, or is refused where none is given. `where` goes into the Problem. Problem codes:
/// number.empty .malformed .separators .zero_denominator .too_large .too_small, unit.missing
/// .unknown .wrong_kind.

/// Also 3' 4 5/8", 3'-4-5/8", 3ft 4.625in, 3' 4 (inches behind feet), and three groups 3-4-2 or
/// 3-4-2+ : feet-inches-eighths, the + one sixteenth more, whatever `bare` is. With
/// bare == feetInchesEighths a number without a unit is refused unless it has three groups.
Result<Length> readLength(std::string_view text, std::string_view where,
                          std::optional<LengthUnit> bare = std::nullopt);
Result<Area> readArea(std::string_view text, std::string_view where,
                      std::optional<AreaUnit> bare = std::nullopt);
/// lb is 0.45359237 kg here.
Result<Mass> readMass(std::string_view text, std::string_view where,
                      std::optional<MassUnit> bare = std::nullopt);
/// lb is the pound-force here; kg is refused, kgf is taken.
Result<Force> readForce(std::string_view text, std::string_view where,
                        std::optional<ForceUnit> bare = std::nullopt);
Result<Stress> readStress(std::string_view text, std::string_view where,
                          std::optional<StressUnit> bare = std::nullopt);
Result<Density> readDensity(std::string_view text, std::string_view where,
                            std::optional<DensityUnit> bare = std::nullopt);
/// Degrees: 12, 12 deg, 12°.
Result<Angle> readAngle(std::string_view text, std::string_view where);
/// A number without a unit: 0.5, 1/2, 50 %.
Result<double> readRatio(std::string_view text, std::string_view where);
/// A whole number from least to most, digits only. Codes: number.empty, .malformed, .out_of_limits.
Result<int> readCount(std::string_view text, std::string_view where, int least, int most);
/// A screw gauge from 0 to 30: No. 14, No 14, #14, 14.
Result<Gauge> readGauge(std::string_view text, std::string_view where);

}  // namespace fayline
