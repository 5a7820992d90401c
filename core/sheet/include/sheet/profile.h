#pragma once

#include <optional>
#include <string>
#include <vector>

#include "check/check.h"
#include "sheet/format.h"

namespace fayline {

/// A frame as the profile shows it. What is not known is left out of the picture.
struct ProfileFrame {
    std::string id;
    Length x;
    std::optional<Length> bottom, top;  ///< heights of heel and head
    std::optional<Length> sided;
    bool hasFloor = false;
    std::optional<Length> floorBottom, floorTop, floorSided;
    std::optional<Status> worst;  ///< none: nothing is asked of it yet
    bool operator==(const ProfileFrame&) const = default;
};

/// A ballast bolt from its head to its lower nut; y is not used.
struct ProfileBolt {
    std::string id;
    Point start, end;
    Status status = Status::unknown;
    std::optional<Length> diameter{};
    bool operator==(const ProfileBolt&) const = default;
};

/// Everything may be missing. Points by x and z; y is not used.
struct ProfileInput {
    std::vector<Point> sheer, lowest;  ///< from forward to aft
    std::vector<Point> keel, ballast;  ///< outlines
    std::vector<ProfileFrame> frames;  ///< from forward to aft
    std::vector<ProfileBolt> bolts;
    std::vector<ProfileBolt> others;  ///< floor to keel and backbone: drawn, not named
    std::optional<Length> waterline;
    std::optional<std::string> selected;
    std::string emptyText = "No hull yet. Enter the offsets, and the side profile appears here.";
    bool operator==(const ProfileInput&) const = default;
};

/// The hull from port, forward end on the left, to one scale both ways: outline, frames, floors,
/// keel timber, ballast, bolts, waterline; beneath each frame the sign of its worst margin and as
/// many names as there is room for; the words for the signs that occur; a scale bar. Stops: frames,
/// then bolts.
Drawing profileDrawing(const ProfileInput& input, const DrawFormat& format);

}  // namespace fayline
