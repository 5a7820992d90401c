#pragma once

#include <vector>

#include "contour.h"

namespace fayline::detail {

/// The point of a contour at a girth.
SectionPoint pointAt(const Contour& contour, Length girth);

/// A stretch of a contour between two girths, and how much of it is passed at each place: half by
/// girth, half by height gone through, so that neighbouring sections of unlike shape are held
/// together mostly along water lines.
class Stretch {
  public:
    Stretch(const Contour& contour, Length from, Length to);

    /// 0 to 1; nil everywhere on a stretch of no length.
    [[nodiscard]] double shareAt(Length girth) const;
    [[nodiscard]] Length girthAt(double share) const;

  private:
    std::vector<Length> girth_;
    std::vector<double> share_;
};

}  // namespace fayline::detail
