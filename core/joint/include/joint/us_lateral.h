#pragma once

#include <string_view>

#include "joint/dowel.h"
#include "joint/us_bearing.h"

namespace fayline {

/// Reference loads of a fastening, mode by mode, for the whole of it.
struct UsLateral {
    ModeLoads modes;  ///< Im, Is, II, IIIm, IIIs, IV; double shear Im, Is, IIIs, IV
    Force reference;  ///< the least: ten years' load, dry
    std::string_view governs;
    bool operator==(const UsLateral&) const = default;
};

/// One plane (NDS Table 12.3.1A).
UsLateral usSingleShear(const DowelModes& yield, const UsReduction& reduction);

/// Two planes about one main member: the side modes count twice, and modes II and IIIm cannot form.
UsLateral usDoubleShear(const DowelModes& onePlane, const UsReduction& reduction);

}  // namespace fayline
