#pragma once

#include <optional>

#include "quantity/display.h"
#include "sheet/drawing.h"

namespace fayline {

/// The room and manner of a drawing.
struct DrawFormat {
    SizeMm size{200.0, 60.0};
    double letterMm = 2.1;  ///< height of the capitals
    UnitSystem units = UnitSystem::millimetres;
    std::optional<double> mmPerMetre;  ///< fixed scale; none: as large as fits
    bool operator==(const DrawFormat&) const = default;
};

}  // namespace fayline
