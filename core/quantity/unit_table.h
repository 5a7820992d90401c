#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "exact.h"
#include "quantity/units.h"

namespace fayline::detail {

enum class Kind { number, length, area, mass, force, stress, density, angle, gauge };

struct Unit {
    std::string_view spelling;
    Kind kind = Kind::number;
    Factor factor;
    bool anyCase = false;  ///< IN and Lb as well; never for SI symbols, where case carries meaning
};

/// "a length"; with its article.
std::string_view kindName(Kind kind);
/// "a length such as 38 mm, 1 1/2 in or 3' 4 5/8\"", for Problem::allowed.
std::string_view kindExample(Kind kind);

/// The unit so spelled; one of the wanted kind when a spelling serves two (lb). Null if none.
const Unit* findUnit(std::string_view spelling, Kind wanted);
/// A unit of the wanted kind that could have been meant.
std::optional<std::string> similarUnit(std::string_view spelling, Kind wanted);

/// Ratios to the SI unit. For feetInchesEighths the inch's.
Factor factorOf(LengthUnit unit);
Factor factorOf(AreaUnit unit);
Factor factorOf(MassUnit unit);
Factor factorOf(ForceUnit unit);
Factor factorOf(StressUnit unit);
Factor factorOf(DensityUnit unit);

}  // namespace fayline::detail
