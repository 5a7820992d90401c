#pragma once

#include <optional>

#include "paper_sheets.h"

namespace fayline {

/// Port −1, starboard 1: times y it is outboard.
double outwardSign(const std::string& side);

/// The strake a plank's hole belongs to: "strake4.P" → 4; 0 when it names none.
int strakeOf(const Hole& hole);

/// Length along the hull's outside to the place nearest a point.
Length alongOf(const FrameCurve& curve, PlanePoint p);

/// Lists of what stands on no frame's line: butts, plank ends, garboard to keel.
std::vector<PlankList> plankLists(const PaperContext& paper, const HolesOf& holes);

}  // namespace fayline
