#pragma once

#include <optional>
#include <string>
#include <vector>

#include "layout/hole.h"
#include "quantity/quantity.h"

namespace fayline {

enum class FasteningKind { woodScrew, bolt, drift, rivet };
std::string_view nameOf(FasteningKind kind);
std::optional<FasteningKind> fasteningKindNamed(std::string_view name);

/// One group of fastenings as decided for one place, sizes filled in.
struct FasteningChoice {
    FasteningKind kind = FasteningKind::woodScrew;
    int count = 0;
    Length diameter;               ///< body; corner to corner of a square rivet
    std::optional<int> gauge;      ///< of a screw, for its name
    Length root;                   ///< of a screw's thread or a bolt's
    std::optional<Length> length;  ///< of a screw or drift
    Length counterbore;
    std::string metal;
    bool square = false;
    std::optional<Length> washerDiameter;
    Length washerThickness;  ///< bolt: washer and nut stand proud by this and a diameter
    bool operator==(const FasteningChoice&) const = default;
};

/// Steps for a screw's hole: counterbore, shank to the joint, pilot to a little short of the point.
/// The pilot is 90 % of the root in hardwood, 70 % in softwood (tests behind the US standard's lead
/// holes).
std::vector<HoleStep> screwSteps(const FasteningChoice& screw, Length throughHeadPiece,
                                 bool hardwood);
/// Steps for a bolt, drift or rivet right through a stack.
std::vector<HoleStep> throughSteps(const FasteningChoice& fastening, Length depth);

/// What a hole takes over from its group: kind, metal, sizes. Place, length and steps are its own.
void dress(Hole& hole, const FasteningChoice& choice);

/// How far a bolt's rod stands out of its washer seat: washer, nut of its own diameter, a little
/// thread.
Length proudOf(const FasteningChoice& bolt);

}  // namespace fayline
