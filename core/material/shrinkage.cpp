#include "material/shrinkage.h"

#include <algorithm>

namespace fayline {
namespace {

double shrunkPart(double totalShrinkage, double moisture) {
    const double dryness = std::clamp(1.0 - moisture / fibreSaturation, 0.0, 1.0);
    return 1.0 - totalShrinkage * dryness;
}

}  // namespace

double dimensionalChangeCoefficient(double totalShrinkage) {
    // The width the coefficient refers to is the one at 10 %, the middle of the range.
    constexpr double middle = 0.10;
    return 1.0 / (fibreSaturation / totalShrinkage - fibreSaturation + middle);
}

Length sizeAtMoisture(Length size, double totalShrinkage, double from, double to) {
    return size * (shrunkPart(totalShrinkage, to) / shrunkPart(totalShrinkage, from));
}

}  // namespace fayline
