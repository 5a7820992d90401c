#pragma once

#include <string>
#include <vector>

#include "layout/fastening.h"
#include "layout/frame_fastenings.h"

namespace fayline {

/// A joint of the backbone: a straight line in the middle line plane, and what goes square through
/// it.
struct BackboneJoint {
    std::string name;  ///< "stem_scarph"
    Length foreX, foreHeight, aftX, aftHeight;
    FasteningChoice choice;
    std::string upper, lower;  ///< timbers, head side first
    std::string frame;         ///< nearest the joint's middle; may be empty
    bool operator==(const BackboneJoint&) const = default;
};

struct BackboneInput {
    std::vector<BackboneJoint> joints;
    std::vector<Hole> others;  ///< ballast bolts and others they may meet
    bool operator==(const BackboneInput&) const = default;
};

/// Even rows, numbered from forward or from below; drifts at alternate slants of five degrees, so
/// that they lock the timbers (common practice, no published source). Findings: ends closer than 4
/// diameters and rows closer than 4 (the small-craft design handbook BDB-401-02), clashes.
FrameFastenings layOutBackbone(const BackboneInput& input);

}  // namespace fayline
