#pragma once

#include <optional>
#include <vector>

#include "hull/section.h"
#include "quantity/quantity.h"

namespace fayline {

/// A place on a frame's line, starboard side.
struct CurvePoint {
    Length y, z;
    double outY = 0, outZ = 0;  ///< unit direction square to the line, out of the hull
};

/// The line of planking at one frame: the hull's outside from the rabbet to the sheer, one side,
/// measured by its length from the lower end. Inside it lie the planking, then the frame.
class FrameCurve {
  public:
    /// From a section, above a height (the top of the keel timber there; the whole section where
    /// there is no keel). Nothing when less than two points lie above it.
    static std::optional<FrameCurve> above(const Section& section, std::optional<Length> keelTop);

    /// From the section's place nearest to a foot upward, where planking begins in a rabbet.
    /// Nothing when nothing is left above it.
    static std::optional<FrameCurve> from(const Section& section, const SectionPoint& foot);

    [[nodiscard]] Length x() const { return x_; }
    [[nodiscard]] Length girth() const { return along_.back(); }
    /// The place a length along the line; the ends' own beyond them.
    [[nodiscard]] CurvePoint at(Length along) const;
    /// The same moved inwards, square to the line.
    [[nodiscard]] CurvePoint inside(Length along, Length depth) const;
    /// Length along the line to where it stands this far from the centreline, going up; nothing if
    /// it never does.
    [[nodiscard]] std::optional<Length> alongAtHalfBreadth(Length y) const;

  private:
    FrameCurve() = default;
    static std::optional<FrameCurve> along(FrameCurve curve);
    Length x_;
    std::vector<SectionPoint> points_;
    std::vector<Length> along_;
};

}  // namespace fayline
