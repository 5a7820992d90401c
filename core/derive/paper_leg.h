#pragma once

#include <vector>

#include "hull/frame_curve.h"
#include "sheet/drawing.h"

namespace fayline {

/// The frame's two edges on one side: the moulded edge against the planking, and the inner one.
/// A tape laid along the moulded edge measures from its lower end; below that end it hangs plumb.
class FrameLeg {
  public:
    FrameLeg(const FrameCurve& curve, Length planking, Length moulded);

    /// A place as a tape and a rule find it.
    struct Place {
        Length along;   ///< up the moulded edge from its lower end; negative below it
        Length across;  ///< square in from the edge
    };
    [[nodiscard]] Place placeOf(PlanePoint p) const;
    /// Where the moulded edge stands at a height; its ends' places beyond them.
    [[nodiscard]] PlanePoint edgeAtHeight(Length z) const;
    [[nodiscard]] Length alongAtHeight(Length z) const;
    [[nodiscard]] const std::vector<PlanePoint>& outer() const { return outer_; }
    [[nodiscard]] const std::vector<PlanePoint>& inner() const { return inner_; }
    /// The timber up to a height, as a closed outline.
    [[nodiscard]] std::vector<PlanePoint> outlineUpTo(Length z) const;

  private:
    std::vector<PlanePoint> outer_, inner_;
    std::vector<Length> along_;
};

}  // namespace fayline
