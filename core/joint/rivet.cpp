#include "joint/rivet.h"

#include <cmath>
#include <numbers>

namespace fayline {

Length cornerBite(Length side, Length hole) {
    return (side * std::numbers::sqrt2 - hole) / 2.0;
}

Length equalAreaDiameter(Length side) {
    return side * (2.0 / std::sqrt(std::numbers::pi));
}

Length standOff(Length length, Length grip, Length rove) {
    return length - grip - rove;
}

}  // namespace fayline
