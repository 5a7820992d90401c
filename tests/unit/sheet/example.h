#pragma once

#include "sheet/profile.h"
#include "sheet/section.h"

namespace fayline::example {

/// The demo hull's side profile: its offsets lofted, 37 frames, floors on F14 to F24, nine bolts.
/// Statuses are invented: K.6 and F19 short, K.4 and F16 near, F12 unknown, F20 outside, the ends
/// unloaded.
ProfileInput profile();

/// The same hull with so many frames on the same length.
ProfileInput profileWithFrames(int count);

/// The demo hull at frame F19 (x 4910 mm), with bolt K.6 short to starboard and K.5 to port.
SectionInput section();

}  // namespace fayline::example
