#pragma once

#include "layout/frame_fastenings.h"
#include "practice.h"

namespace fayline {

/// A place of the starboard side, or its mirror.
Point mirrored(Length x, const HullSide& side, Length y, Length z);

/// A frame's hole with its names and sizes.
Hole holeFor(const FrameFasteningInput& in, const FasteningChoice& choice, const HullSide& side,
             const char* group, int number, const char* markLetter);

/// Heels into keel or deadwood, by how they stand. Beside the keel: a frame that leaves it flat is
/// fastened down through its inner face, a steep one level through its outer face (common practice,
/// no published source). `variant` 1, 2 … : the same a little higher, lower, or more slanted, and
/// then staggered the other way, for what else is bored there.
void heels(const FrameFasteningInput& in, const FasteningChoice& choice, const HullSide& side,
           int variant, FrameFastenings& out);
inline constexpr int heelVariants = 32;

/// Places along the frame of each strake's fastenings, from below.
using PlankPlaces = std::vector<std::vector<Length>>;

/// Clear of the plank's edges; evenly between.
PlankPlaces plankPlaces(const FrameFasteningInput& in);

/// Heels and the planks beside them: the first way of driving the heels that leaves wood enough,
/// else the one that lacks least.
void placeHeels(const FrameFasteningInput& in, const FasteningChoice& choice, const HullSide& side,
                PlankPlaces& places, FrameFastenings& out);

/// Plank fastenings at every crossing, spread over the plank's width, staggered fore and aft.
void planks(const FrameFasteningInput& in, const HullSide& side, const PlankPlaces& places,
            FrameFastenings& out);

}  // namespace fayline
