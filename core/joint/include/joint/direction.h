#pragma once

#include <cmath>

#include "quantity/quantity.h"

namespace fayline {

/// An angle from 0 to 90° by its sine and cosine, for those who need it more than once. Right
/// angles are exact.
struct Direction {
    double sine = 0.0, cosine = 1.0;

    static Direction of(Angle angle) {
        if (angle == Angle{}) return {0.0, 1.0};
        if (angle == Angle::degrees(90)) return {1.0, 0.0};
        return {std::sin(angle.inRadians()), std::cos(angle.inRadians())};
    }
    bool operator==(const Direction&) const = default;
};

}  // namespace fayline
