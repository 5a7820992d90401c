#pragma once

#include <string>
#include <vector>

#include "sheet/format.h"

/// What profile and section share: fitting a plane into a box, and standing texts.
namespace fayline::plan {

/// The part of the plane that is to be seen, in metres.
class Extent {
  public:
    void add(PlanePoint p);
    [[nodiscard]] bool empty() const { return empty_; }
    [[nodiscard]] Length width() const { return right_ - left_; }
    [[nodiscard]] Length height() const { return top_ - bottom_; }
    [[nodiscard]] Length left() const { return left_; }
    [[nodiscard]] Length right() const { return right_; }
    [[nodiscard]] Length top() const { return top_; }
    [[nodiscard]] Length bottom() const { return bottom_; }

  private:
    bool empty_ = true;
    Length left_, right_, bottom_, top_;
};

/// The largest scale at which the extent fits the room, or the format's own.
double mmPerMetre(const Extent& extent, SizeMm room, const DrawFormat& format);

/// A heading or note; muted.
shape::Text note(std::string text, PointMm at, const DrawFormat& format);
double widthMm(const std::string& text, const DrawFormat& format,
               shape::Weight weight = shape::Weight::regular);

/// A drawing that says why there is nothing to see, centred, broken into lines that fit.
Drawing emptyDrawing(const std::string& says, const DrawFormat& format);

/// A rod with a nut at either end: a line, or its true breadth where that is more.
struct Rod {
    PointMm from, to;
    double breadthMm = 0.0;     ///< true breadth on paper; nil when not known
    double nutBreadthMm = 1.6;  ///< of the bars at its ends
    double strokeMm = 0.45;
};
void addRod(Drawing& drawing, const Rod& rod, Role role, const std::string& id);

}  // namespace fayline::plan
