#pragma once

#include "joint/direction.h"
#include "quantity/quantity.h"

namespace fayline {

/// Load on one fastening, along this angle to the grain, at which the wood left beside its hole
/// reaches a tension along the grain: f·t·(b − d) / cos α. `stress` is whichever of the two codes'
/// is meant (ANSI/AWC NDS 3.1.2, EN 1995-1-1 5.2). Nil where the hole takes all of it; infinite
/// where the load runs across the grain, which splits the wood instead.
Force netSectionLoad(Stress stress, Length width, Length hole, Length thickness,
                     const Direction& toGrain);

}  // namespace fayline
