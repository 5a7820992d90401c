#pragma once

#include "layout/planking.h"

namespace fayline {

/// What is wrong with the fastenings of butts, plank ends and garboard, told once for all holes
/// alike: no bite, points showing, threads bridging the joint, strakes too narrow, bays too short,
/// fastenings that meet.
void plankingFindings(const PlankingInput& input, const std::vector<Butt>& butts,
                      FrameFastenings& fastenings);

/// Whether the garboard runs along the keel from this frame to the next.
bool garboardBay(const PlankingInput& input, std::size_t bay);

}  // namespace fayline
