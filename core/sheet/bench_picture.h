#pragma once

#include "page_flow.h"
#include "sheet/bench.h"

namespace fayline {

/// The least height a picture needs for its column of marks.
double leastPictureHeight_mm(const BenchPicture& picture);

/// Draws it in a box of this height at the flow's place and goes on below it.
void drawPicture(PageFlow& flow, const BenchPicture& picture, double height_mm);

}  // namespace fayline
