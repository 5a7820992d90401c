#pragma once

#include <optional>
#include <string>
#include <vector>

#include "check/check.h"
#include "hull/section.h"
#include "sheet/format.h"

namespace fayline {

/// A ballast bolt in a section; x is not used.
struct SectionBolt {
    std::string id;
    Point start, end;  ///< head, lower nut
    std::optional<Length> diameter, washer;
    Status status = Status::unknown;
    bool operator==(const SectionBolt&) const = default;
};

/// Any other fastening at the frame; x is not used.
struct SectionHole {
    std::string id;
    Point start, end;  ///< head, point
    Length diameter;
    std::optional<Status> status;  ///< none: not checked
    bool small = false;            ///< one of very many: no sign, no stop of the keyboard
    bool operator==(const SectionHole&) const = default;
};

/// One frame's section. Everything may be missing.
struct SectionInput {
    std::string frame;
    std::vector<SectionPoint> side;  ///< hull, centreline to sheer, outside of everything
    std::vector<SectionPoint> keel,
        ballast;                     ///< one side, along its edge; mirrored for the other
    std::optional<Length> planking;  ///< thickness; nil when not known
    std::optional<Length> moulded;   ///< depth of the frame, inward from the planking
    std::optional<Length> heel;      ///< height of the frame's heel; the keel's top when not known
    std::optional<Length> floorTop;  ///< a floor stands here, its upper face at this height
    std::vector<SectionBolt> bolts;
    std::vector<SectionHole> holes;
    std::optional<Length> waterline;
    std::optional<std::string> selected;
    std::string emptyText = "No section here yet.";
    bool operator==(const SectionInput&) const = default;
};

/// The section looking aft. Someone who stands forward and looks aft has starboard on the left
/// hand, so y (to starboard) runs to the left of the drawing; both sides are named on it. The
/// floor's upper face is drawn level. Stops: the bolts from left to right, then the other
/// fastenings.
Drawing sectionDrawing(const SectionInput& input, const DrawFormat& format);

/// A chain of points moved inward (to the left of its direction, with y to the right and z up),
/// loops cut off. Empty when nothing is left of it.
std::vector<SectionPoint> movedInward(const std::vector<SectionPoint>& chain, Length distance);

}  // namespace fayline
