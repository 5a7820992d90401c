#pragma once

#include <span>
#include <vector>

#include "contour.h"

namespace fayline::detail {

/// A station as the matching sees it.
struct MatchedStation {
    const Contour* contour = nullptr;
    /// How far up its side each point of the contour lies, up to 1, never falling; what lies below
    /// nil counts as nil.
    std::vector<double> level;
};

/// Levels of stations that follow each other smoothly: height gone through, of the whole.
std::vector<double> risenShare(const Contour& contour);
/// Levels of the deeper of two stations with a step between: nil at the shallower one's lowest
/// point, so that what hangs below shrinks into that point.
std::vector<double> risenShareAbove(const Contour& contour, Length lowestOfOther);

/// Where the sections of neighbouring stations are held together: girths of the same knuckles at
/// each station, in one common order, the first nil and the last the whole girth.
using Landmarks = std::vector<std::vector<Length>>;

/// Corners of neighbouring stations are paired in order when they bend alike and lie near each
/// other; a chain of pairs is one knuckle, and where it ends it goes on at the places most
/// like its last. `holdFoot` adds a landmark at the top end of what lies at level nil (for steps),
/// unless a knuckle contradicts it.
Landmarks landmarksOf(std::span<const MatchedStation> stations, bool holdFoot);

}  // namespace fayline::detail
