#pragma once

#include "joint/joint.h"
#include "quantity/display.h"
#include "sheet/drawing.h"

namespace fayline {

/// Room and letters of a joint's picture.
struct JointPictureRoom {
    SizeMm size;
    double letterMm = 2.1;
    UnitSystem units = UnitSystem::inches;
};

/// A joint cut open along its fastening, head on the left, to one scale: members with their
/// thickness, gaps, counterbore and plug, fastener with its ends. Every member can be picked as
/// "member.0", the fastener as "fastener". A joint whose sizes are not all there yet is drawn as
/// far as they go.
Drawing jointDrawing(const Joint& joint, const JointPictureRoom& room);

}  // namespace fayline
