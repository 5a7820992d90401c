#pragma once

#include "joint/limit_state.h"

namespace fayline {

/// A nut on a thread of 60 degrees (ISO metric or Unified).
struct ThreadStripInput {
    Length nominal, pitch;
    Length engaged;              ///< height of the nut that holds
    Stress boltShear, nutShear;  ///< ultimate shear of either metal
    double factor = 2.5;         ///< metal factor, on half the ultimate
    bool operator==(const ThreadStripInput&) const = default;
};

/// Sections through which the threads shear at the loosest fit of a medium thread (6H/6g): the
/// bolt's at the nut's largest minor diameter, the nut's at the bolt's least major diameter
/// (formulas of Machinery's Handbook 24, stress areas and length of engagement; tolerances by the
/// formulas of ISO 965-1, from memory, not rounded to its standard numbers). Unified threads of
/// class 2A/2B are taken alike.
Area boltStripArea(Length nominal, Length pitch, Length engaged);
Area nutStripArea(Length nominal, Length pitch, Length engaged);

/// The weaker of the two threads stripped, the load along the bolt. An engagement of nil carries
/// nothing.
LimitState threadStrip(const ThreadStripInput& input, Trace* trace = nullptr);

}  // namespace fayline
