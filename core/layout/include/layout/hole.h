#pragma once

#include <optional>
#include <string>
#include <vector>

#include "quantity/quantity.h"

namespace fayline {

/// One drilling step, in working order.
struct HoleStep {
    std::string drill;  ///< what to do and with what: "pilot right through, to a string"
    Length diameter, depth;
    bool operator==(const HoleStep&) const = default;
};

/// One fastening's hole, as it is to be drilled. Runs from `start` (head, or the end driven last)
/// to `end`.
struct Hole {
    std::string id, mark, frame;
    std::string side;  ///< port, starboard; empty on the centreline
    std::string face;  ///< face it is drilled from: fore, aft, inner, outer
    std::string group, kind;
    std::vector<std::string> joins;  ///< member ids, head side first
    Point start, end;
    Length diameter, length, grip;
    std::string metal;         ///< catalogue name; empty while not decided
    std::optional<int> gauge;  ///< of a screw
    bool square = false;       ///< a square rivet: the side is the diameter over the root of two
    std::optional<Length> washerDiameter, washerThickness;  ///< washers, rings or roves it takes
    std::vector<HoleStep> steps;
    std::optional<Length> bung;  ///< depth of the counterbore it fills
    bool locked = false, drilled = false;
    bool operator==(const Hole&) const = default;
};

/// Something wrong with the layout: a value, never an error. Names the things, how much is missing,
/// and a cure.
struct Finding {
    std::string kind;  ///< clash near edge end spacing grip rule bed floor …
    std::vector<std::string> holes;
    std::optional<Length> missing;
    std::string says;
    std::vector<std::string> cure;  ///< decisions that would put it right: "K.5.diameter=14 mm"
    bool operator==(const Finding&) const = default;
};

/// The strake a plank's hole belongs to: "strake4.P" → 4; 0 when it names none.
int strakeOf(const Hole& hole);

/// Shortest distance between the middle lines of two holes.
Length distanceBetween(const Hole& a, const Hole& b);

}  // namespace fayline
