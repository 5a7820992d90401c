#pragma once

#include <optional>
#include <string>
#include <vector>

#include "check/check.h"
#include "load/fastening.h"
#include "material/wood.h"

namespace fayline {

/// A wooden floor timber between its arms.
struct FloorCheckInput {
    std::string id, frame;  ///< "F9.floor", "F9"
    Length sided, throat;
    Length bored;   ///< hole through its throat, off the siding
    Length spread;  ///< between the middles of the two arms' fastenings
    Length keelSided;
    Length rise;               ///< of mid-throat above the keel axis
    std::optional<Wood> wood;  ///< none: not decided
    double target = 1.5;
    bool operator==(const FloorCheckInput&) const = default;
};

/// Bending and shear at the throat, both timber sets, as sizes of the load on one arm. US design
/// stresses are worked from clear wood (ASTM D245 and D2555, from memory) where the catalogue has
/// none; Eurocode 5 from the strength class (EN 1995-1-1 6.1.6, 6.1.7, with k_cr 0.67).
std::vector<Check> checkFloor(const FloorCheckInput& input, const FrameLoad& load);

std::optional<Trace> explainFloor(const FloorCheckInput& input, const FrameLoad& load,
                                  const Check& check);

}  // namespace fayline
