#pragma once

#include "joint/direction.h"
#include "joint/ec5_coefficients.h"
#include "quantity/quantity.h"

namespace fayline {

/// Characteristic withdrawal of one screw, its axis at this angle to the grain (EN 1995-1-1
/// 8.38–8.40). Made for outer diameters of 6 to 12 mm and roots of 0.6 to 0.75 of that.
Force screwWithdrawalEc5(CharacteristicDensity density, Length diameter, Length thread,
                         Angle axisToGrain, const Ec5Coefficients& coefficients = ec5Published);

/// The same for a withdrawal strength declared at a density (8.40a).
Force screwWithdrawalDeclared(Stress declared, Density declaredAt, CharacteristicDensity density,
                              Length diameter, Length thread, Angle axisToGrain,
                              const Ec5Coefficients& coefficients = ec5Published);

/// Characteristic pull-through of a head: of a declared strength (8.40b), or as of a smooth nail
/// (8.3.2(6)), the least any head is worth.
Force pullThroughDeclared(Stress declared, Density declaredAt, CharacteristicDensity density,
                          Length head, const Ec5Coefficients& coefficients = ec5Published);
Force pullThroughNail(CharacteristicDensity density, Length head,
                      const Ec5Coefficients& coefficients = ec5Published);

/// Fastenings that n in a row along the grain are worth: nails and thin screws n^k_ef by their
/// spacing in diameters, from 4 d, predrilled (8.17, Table 8.1); bolts (8.34); screws drawn
/// out (8.41).
double effectiveNails(int inRow, double spacing_d);
double effectiveBolts(int inRow, double spacing_d, Angle toGrain,
                      const Ec5Coefficients& coefficients = ec5Published);
double effectiveAxial(int count, const Ec5Coefficients& coefficients = ec5Published);

/// Loads together, capacities as sizes alone: (F_ax/R_ax)² + (F_v/R_v)² ≤ 1 for screws (8.28), the
/// sum itself for smooth nails (8.27). The size of the load, its direction kept, that is just
/// carried.
Force combinedEc5(Force lateral, Force axial, Angle toSurface, bool squared);
Force combinedEc5(Force lateral, Force axial, const Direction& toSurface, bool squared);

}  // namespace fayline
