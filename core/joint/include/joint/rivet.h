#pragma once

#include "quantity/quantity.h"

namespace fayline {

/// How far the corners of a square bar stand into the wood beyond a round hole, on each side:
/// (a·√2 − D)/2; below nil it hangs free (geometry).
Length cornerBite(Length side, Length hole);

/// Diameter of the round bar with the same section: 2·a/√π (geometry).
Length equalAreaDiameter(Length side);

/// What a rivet shows beyond its rove before it is peened: its length less grip and rove.
Length standOff(Length length, Length grip, Length rove);

}  // namespace fayline
