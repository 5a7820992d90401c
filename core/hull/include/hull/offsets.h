#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "quantity/quantity.h"
#include "quantity/result.h"

namespace fayline {

/// One measured point of a section, on the outside of everything.
struct OffsetPoint {
    Length halfBreadth;           ///< out from the centreline, never negative
    Length height;                ///< above base
    std::string halfBreadthText;  ///< as typed, with its unit: "420 mm", "3-4-2"
    std::string heightText;
    bool operator==(const OffsetPoint&) const = default;
};

/// One lofting station: its points in order from keel to sheer. The first point is joined to the
/// centreline at its own height.
struct OffsetStation {
    std::string id;
    Length x;           ///< aft of the origin
    std::string xText;  ///< as typed, with its unit
    std::vector<OffsetPoint> points;
    std::optional<int> rabbet =
        std::nullopt;  ///< which of its points, counted from 1, lies on the rabbet line
    bool operator==(const OffsetStation&) const = default;
};

/// A table of offsets: one side of the hull, stations from forward to aft.
struct Offsets {
    std::vector<OffsetStation> stations;
    std::optional<Length> waterline;  ///< height above base
    std::string waterlineText;
    bool operator==(const Offsets&) const = default;
};

/// Reads a table of offsets from comma separated text: a comment line `# unit: mm` (or m, cm, in,
/// ft, ft-in-8ths), perhaps `# waterline: HEIGHT`, the header station,x,half_breadth,height, then a
/// row per point; perhaps a column `line`, in which `rabbet` marks a station's point on the rabbet
/// line. Problems name file and line.
ResultAll<Offsets> readOffsets(std::string_view text, std::string_view fileName);

/// The same checks for offsets that did not come from a file; problems name "offsets.STATION".
/// Empty when all is well.
Problems checkOffsets(const Offsets& offsets);

/// The height the hull floats at: the one given, else the lowest of the stations' tops. At least
/// one station with a point is needed.
Length waterlineOf(const Offsets& offsets);

}  // namespace fayline
