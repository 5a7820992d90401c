#pragma once

#include "layout/frame_fastenings.h"

namespace fayline {

/// What is wrong with the holes of one frame: tips showing, no bite, threads bridging the joint,
/// edges, spacing, clashes.
void frameFindings(const FrameFasteningInput& input, FrameFastenings& fastenings);

}  // namespace fayline
