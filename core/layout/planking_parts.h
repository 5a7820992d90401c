#pragma once

#include "layout/planking.h"
#include "practice.h"

namespace fayline {

inline constexpr HullSide bothSides[] = {portSide, starboardSide};

/// A hole square to the planking at a place of its outside: against the place's outward direction.
void drill(Hole& hole, const PlankingInput& in, const FasteningChoice& choice, const HullSide& side,
           Length x, const CurvePoint& place, Length inner);

/// The garboard's lower edge to keel, stem or deadwood, clear of a butt, with what lacks there.
void fastenGarboard(const PlankingInput& in, const std::vector<Butt>& butts, FrameFastenings& out);

}  // namespace fayline
