#pragma once

#include <string>
#include <utility>
#include <vector>

namespace fayline::test {

using Decisions = std::vector<std::pair<std::string, std::string>>;

/// A made-up long-keel hull of this many frames (8 to 400), decided from its offsets to every group
/// of fastenings: 21 stations, room and space 230 mm whatever the number, a floor on every frame
/// over the ballast, a ballast bolt through every second of them, 14 strakes with two screws at
/// each crossing.
Decisions madeHull(int frames);

}  // namespace fayline::test
