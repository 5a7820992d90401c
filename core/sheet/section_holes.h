#pragma once

#include "sheet/section.h"

namespace fayline::plan {

/// The fastenings of a section other than its ballast bolts: those along the section as rods with
/// their heads, those across it end on.
void addSectionHoles(Drawing& drawing, const SectionInput& input, const DrawFormat& format);

}  // namespace fayline::plan
