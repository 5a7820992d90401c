#pragma once

#include "quantity/quantity.h"

namespace fayline {

/// Body of a wood screw: 0.060 in and 0.013 in a gauge (the US rule of ASME B18.6.1; the British
/// one differs).
Length screwBody(Gauge gauge);

/// Root of its thread, as measured at mid-thread on stock screws (averages between No. 4 and No. 20
/// as given by l-36.com; between and beyond them by proportion of the body). Cut threads taper:
/// this is a middle value.
Length screwRoot(Gauge gauge);

/// Greatest diameter of a flat head: about twice the body (ASME B18.6.1 sizes No. 4 to No. 8
/// within 1.5 %).
Length screwHead(Gauge gauge);

}  // namespace fayline
