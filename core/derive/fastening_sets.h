#pragma once

#include "frame_checks.h"

namespace fayline {

/// What a fastening's set is called: "F9.P.arm" of "F9.P.arm.2".
std::string_view setName(const std::string& id);

/// The holes of a frame gathered into sets of like fastenings, with what loads each.
std::vector<SetCheckInput> setsOf(const FrameChecksInput& input);

/// The timbers a set's fastening goes through, head side first, and the fastening; nothing with the
/// reason in `why`.
std::optional<Joint> jointOf(const FrameChecksInput& input, const Hole& hole,
                             const std::vector<const Hole*>& set, std::string& why);

/// Radius of the frame's curve around a place, outward; nothing where it is flat or hollow.
std::optional<Length> radiusAt(const FrameCurve& curve, Length along, Length reach);

}  // namespace fayline
