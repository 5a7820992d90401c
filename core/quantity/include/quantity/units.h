#pragma once

#include <string_view>

namespace fayline {

/// The units that can be read and written. Ratios to the SI units are exact: inch and foot by the
/// 1959 yard and pound agreement, lbf and kgf with the standard gravity 9.80665 m/s2.
enum class LengthUnit { mm, cm, m, in, ft, feetInchesEighths };
enum class AreaUnit { mm2, cm2, m2, in2, ft2 };
enum class MassUnit { g, kg, t, lb };
enum class ForceUnit { n, kn, lbf, kgf };
enum class StressUnit { pa, kpa, mpa, gpa, psi, ksi };
enum class DensityUnit { kgPerM3, gPerCm3, lbPerFt3, lbPerIn3 };

/// The unit as it is written behind a number ("mm", "MPa"); "" for feet-inches-eighths.
std::string_view unitText(LengthUnit unit);
std::string_view unitText(AreaUnit unit);
std::string_view unitText(MassUnit unit);
std::string_view unitText(ForceUnit unit);
std::string_view unitText(StressUnit unit);
std::string_view unitText(DensityUnit unit);

}  // namespace fayline
