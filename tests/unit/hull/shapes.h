#pragma once

#include <functional>
#include <string>
#include <vector>

#include "hull/offsets.h"
#include "hull/surface.h"

namespace fayline::test {

/// A station without typed texts.
OffsetStation station(const std::string& id, Length x, const std::vector<SectionPoint>& points);

/// `count` stations evenly spread over a length; `section` gives the points at a share (0 to 1) of
/// it.
Offsets hullOf(int count, Length length,
               const std::function<std::vector<SectionPoint>(double)>& section);

/// A box: flat bottom, upright sides and ends.
Offsets box(Length length, Length breadth, Length depth, int stations);
/// A half cylinder lying along x, its axis at the top; each quarter circle by `chords` chords.
Offsets halfCylinder(Length length, Length radius, int stations, int chords);
/// Wigley's parabolic hull, y = B/2 (1 - (2x/L)^2) (1 - (z/T)^2), keel at height nil, waterline at
/// T and topsides going on upright from there to `freeboard` above.
Offsets wigley(Length length, Length breadth, Length draught, int stations, int pointsBelow);

/// The same hull moved, seen in a mirror across x, or scaled.
Offsets shifted(Offsets offsets, Length dx, Length dz);
Offsets reversed(Offsets offsets);
Offsets scaled(Offsets offsets, double factor);

LoftedSurface lofted(const Offsets& offsets);

/// Volume below a height by the trapezoid rule on the offsets alone: polygon areas of the stations,
/// straight between them.
struct RawFigures {
    Volume volume;
    Length centreX;
};
RawFigures trapezoids(const Offsets& offsets, Length waterline);

/// A text file of the tree.
std::string treeFile(const std::string& path);

}  // namespace fayline::test
