#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "hull/offsets.h"
#include "hull/section.h"
#include "quantity/quantity.h"
#include "quantity/result.h"

namespace fayline {

/// The hull's outside between its end stations, through the offsets.
///
/// Along the hull it follows a modified Akima spline through corresponding points of the sections,
/// and a monotone spline where that would overshoot; a prismatic body is exact. Such a line keeps a
/// knuckle where it turns sharply at one station (see along.h). A bay whose lowest
/// point drops or rises by more than its length, and more than four times as steeply as both
/// neighbouring bays, is a step (the end of a fin, a sternpost): the curves end on either side of
/// it and straight lines join the two sections, the hull above going through undisturbed. In a
/// section, corners stay sharp and the rest is curved (see the rule in contour.h).
class LoftedSurface {
  public:
    struct Station {
        std::string id;
        Length x;
        bool operator==(const Station&) const = default;
    };

    [[nodiscard]] const std::vector<Station>& stations() const { return stations_; }
    [[nodiscard]] Length foreEnd() const { return stations_.front().x; }
    [[nodiscard]] Length afterEnd() const { return stations_.back().x; }
    [[nodiscard]] bool spans(Length x) const { return x >= foreEnd() && x <= afterEnd(); }

    /// The section at x; beyond an end, the end station's own (its x says so).
    [[nodiscard]] Section sectionAt(Length x) const;

    /// Bays between neighbouring stations, one less than stations.
    [[nodiscard]] std::size_t bays() const { return bays_.size(); }
    /// A section a fraction (0 to 1) of a bay behind its fore end. The points of all sections of
    /// one bay correspond one to one, so that they span the surface.
    [[nodiscard]] Section sectionIn(std::size_t bay, double fraction) const;

    /// Height of the hull's lowest point at x; x as for sectionAt.
    [[nodiscard]] Length lowestAt(Length x) const;
    /// Height of the sheer at x.
    [[nodiscard]] Length sheerHeightAt(Length x) const;
    /// The lowest points from forward to aft, on the centreline, for drawing and looking up.
    [[nodiscard]] std::vector<Point> profileLine() const;
    /// The sheer on the starboard side, from forward to aft.
    [[nodiscard]] std::vector<Point> sheerLine() const;

  private:
    /// One line along a bay, a cubic in y and in z.
    struct Strand {
        SectionPoint from, to;
        double yFrom = 0.0, yTo = 0.0, zFrom = 0.0, zTo = 0.0;  ///< slopes at the ends
        [[nodiscard]] SectionPoint at(double fraction, Length bay) const;
    };
    using Bay = std::vector<Strand>;

    friend ResultAll<LoftedSurface> loft(const Offsets& offsets);
    friend class Loft;

    [[nodiscard]] std::size_t bayAt(Length x) const;
    [[nodiscard]] double fractionOf(std::size_t bay, Length x) const;

    std::vector<Station> stations_;
    std::vector<Bay> bays_;
};

/// Lofts the offsets. Problems: those of checkOffsets.
ResultAll<LoftedSurface> loft(const Offsets& offsets);

}  // namespace fayline
