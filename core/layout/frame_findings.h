#pragma once

#include "layout/frame_fastenings.h"

namespace fayline {

/// What is wrong with each fastening of one frame: tips showing, no bite, threads bridging the
/// joint, planks too narrow; then what stands in each other's way.
void frameFindings(const FrameFasteningInput& input, FrameFastenings& fastenings);

/// What is wrong between the holes of one frame, and with the ballast bolts beside them: clash,
/// near, spacing, edge, grain line.
void clearanceFindings(const FrameFasteningInput& input, FrameFastenings& fastenings);

}  // namespace fayline
