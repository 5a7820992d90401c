#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace fayline {

/// A label that would like to stand centred at a place of a row.
struct LabelWish {
    std::string text;
    double atMm = 0.0, widthMm = 0.0;
    int urgency = 0;  ///< higher first; those of nil only as every 1st, 2nd, 5th, 10th …
    bool operator==(const LabelWish&) const = default;
};

/// Least room between neighbours.
struct LabelGap {
    double mm = 1.0;
};

/// Which labels fit a row, as their places in it, in order. The urgent ones as far as there is
/// room, highest first; then the plain ones whose number is a multiple of the smallest step (1, 2,
/// 5, 10, 20 …) at which they do not run into each other, lettered ones (F9A) in step 1 only; then
/// the first and the last. The row runs from left to right.
std::vector<std::size_t> labelsThatFit(const std::vector<LabelWish>& row, LabelGap gap);

}  // namespace fayline
