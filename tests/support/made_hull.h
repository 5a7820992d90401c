#pragma once

#include <string>
#include <utility>
#include <vector>

namespace fayline::test {

using Decisions = std::vector<std::pair<std::string, std::string>>;

/// A made-up long-keel hull of this many frames (8 to 400), decided from its offsets to every group
/// of fastenings: 21 stations, room and space 230 mm whatever the number, a floor on every frame
/// over the ballast, a ballast bolt through every second of them, so many strakes with so many
/// screws at each crossing.
Decisions madeHull(int frames, int strakes = 14, int eachCrossing = 2);

}  // namespace fayline::test
