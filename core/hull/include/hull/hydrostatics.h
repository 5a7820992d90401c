#pragma once

#include <string>

#include "hull/surface.h"
#include "quantity/quantity.h"
#include "quantity/result.h"

namespace fayline {

/// Sea water unless the builder decides otherwise: 1025 kg/m3 (common practice).
inline constexpr Density seaWater = kilogramsPerCubicMetre(1025.0);

/// The hull afloat, upright and level. Both sides.
struct Hydrostatics {
    Length waterline;
    Density water;
    Volume volume;
    Mass displacement;
    Point centre;  ///< of the volume
    Area waterplaneArea;
    Point waterplaneCentre;  ///< on the centreline, at the waterline
    /// Skin below the waterline: the surface between the end stations as it slopes, and the flat
    /// ends where they are wet.
    Area wettedArea;
    Length wettedLength;  ///< from the foremost to the aftermost wet place
};

/// Works out the hull afloat. Refused: a waterline not between the hull's lowest point and the
/// lowest of its stations' tops; a water density outside 900 to 1100 kg/m3.
Result<Hydrostatics> hydrostatics(const LoftedSurface& surface, Length waterline, Density water);

/// A section's figures at the waterline.
struct SectionFigures {
    std::string id;  ///< of the station or frame
    Length x;
    Area area;           ///< below the waterline, both sides
    Length girth;        ///< one side, centreline to top
    Length wettedGirth;  ///< one side, below the waterline
    bool operator==(const SectionFigures&) const = default;
};

/// Figures at any x between the ends (beyond one: the end's own, as x then says).
SectionFigures sectionFigures(const LoftedSurface& surface, std::string id, Length x,
                              Length waterline);
/// The same at every station.
std::vector<SectionFigures> stationFigures(const LoftedSurface& surface, Length waterline);

}  // namespace fayline
