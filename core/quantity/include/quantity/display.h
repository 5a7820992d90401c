#pragma once

#include <string>

#include "quantity/quantity.h"

namespace fayline {

/// Rounded texts for screen and paper, never for files or reckoning. A value that is a whole number
/// of display steps reads back unchanged. Point as decimal mark in every locale. What is not finite
/// prints as "not known".

enum class UnitSystem { inches, millimetres };
enum class UnitMark { shown, leftOut };  ///< leftOut where the column's head carries the unit

enum class LengthStyle {
    inchFractions,      ///< 40-5/8"
    feetInches,         ///< 3'-4-5/8", 5/8" below a foot
    feetInchesEighths,  ///< 3-4-5, 3-4-5+ with a sixteenth; never with a unit mark
    millimetres         ///< 82.5 mm
};

/// How finely lengths are shown: halves of a millimetre, 64ths of an inch unless told otherwise.
/// Both are 1 or more; perInch a power of two. feetInchesEighths always goes by sixteenths.
struct LengthStep {
    int perInch = 64;
    int perMillimetre = 2;
};

std::string displayLength(Length value, LengthStyle style, UnitMark mark = UnitMark::shown,
                          LengthStep step = {});

/// To so many significant digits, trailing zeros left out: "12.5 kN", "850 N"; "2810 lb".
std::string displayForce(Force value, UnitSystem system, int significant = 3);
/// "310 MPa", below 0.1 MPa in kPa; "45 ksi", below 10 ksi in psi.
std::string displayStress(Stress value, UnitSystem system, int significant = 3);
/// "110 kg"; "243 lb".
std::string displayMass(Mass value, UnitSystem system, int significant = 3);
/// "560 kg/m³"; "35 lb/ft³".
std::string displayDensity(Density value, UnitSystem system, int significant = 3);
/// "1.02 in (25.9 mm)": both systems, for text that stands beside either.
std::string bothUnits(Length value);
/// "0.68": fixed decimals, a point in every locale.
std::string rounded(double value, int decimals);
/// "12.5°", to a tenth.
std::string displayAngle(Angle value);

/// A margin: "×0.99", cut (never rounded up) to two decimals below 10 and to one from there, so
/// that ×1.00 is printed only where demand is met. For finite margins of 0 or more.
std::string marginText(double margin);

}  // namespace fayline
