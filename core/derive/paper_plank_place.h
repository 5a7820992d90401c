#pragma once

#include <optional>

#include "paper_sheets.h"

namespace fayline {

/// Port −1, starboard 1: times y it is outboard.
double outwardSign(const std::string& side);

/// Length along the hull's outside to the place nearest a point.
Length alongOf(const FrameCurve& curve, PlanePoint p);

/// Lists of what stands on no frame's line: butts, plank ends, garboard to keel.
std::vector<PlankList> plankLists(const PaperContext& paper, const HolesOf& holes);

}  // namespace fayline
