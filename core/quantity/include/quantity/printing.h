#pragma once

#include <string>

#include "quantity/display.h"
#include "quantity/quantity.h"
#include "quantity/units.h"

namespace fayline {

/// Exact texts, for files and editors: the shortest decimal in the unit that the reader of the same
/// kind turns back into the same double, whatever the double (minus zero prints as zero). Point as
/// decimal mark in every locale, an exponent only for very large and very small numbers.
/// The value must be finite. "38.1 mm", "1.5 in"; in feetInchesEighths "3-4-2+" where the value is
/// a whole number of sixteenths of an inch, decimal inches otherwise.
std::string exactText(Length value, LengthUnit unit);
std::string exactText(Area value, AreaUnit unit);
std::string exactText(Mass value, MassUnit unit);
std::string exactText(Force value, ForceUnit unit);
std::string exactText(Stress value, StressUnit unit);
std::string exactText(Density value, DensityUnit unit);
std::string exactText(Angle value);  ///< "12 deg"
std::string exactText(Gauge value);  ///< "No. 14"
std::string exactText(double ratio);

/// The number exactText prints, as the double nearest to it: 38.1 for "38.1 mm". For JSON, where a
/// plain conversion would show 38.100000000000001. feetInchesEighths counts as inches.
double numberIn(Length value, LengthUnit unit);
double numberIn(Area value, AreaUnit unit);
double numberIn(Mass value, MassUnit unit);
double numberIn(Force value, ForceUnit unit);
double numberIn(Stress value, StressUnit unit);
double numberIn(Density value, DensityUnit unit);

}  // namespace fayline
