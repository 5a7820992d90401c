#pragma once

#include <string>

#include "layout/hole.h"

namespace fayline {

// What the layout of all groups shares.

// Fastenings in timber, in their diameters: the Japanese small-craft design handbook BDB-401-02
// (end 4 d, edge 2.5 d, pitch 4 d).
inline constexpr double edgeDiameters = 2.5;
inline constexpr double endDiameters = 4.0;
inline constexpr double pitchDiameters = 4.0;
/// What a drift wants in the timber it is driven into (common practice, no published source).
inline constexpr double biteDiameters = 4.0;

/// One side of the hull: starboard as the curve has it, port its mirror.
struct HullSide {
    double sign;  ///< of y
    const char* letter;
    const char* word;
};
inline constexpr HullSide portSide{-1.0, "P", "port"};
inline constexpr HullSide starboardSide{1.0, "S", "starboard"};

/// Even places between two ends; one stands in the middle.
Length spread(Length from, Length to, int i, int count);

/// How findings speak of lengths: "12.5 mm".
std::string shown(Length length);
/// For cures, on the safe side: "13 mm" of 12.2 and "12 mm" of 12.8.
std::string wholeUp(Length length);
std::string wholeDown(Length length);

}  // namespace fayline
