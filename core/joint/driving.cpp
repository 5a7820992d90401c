#include "joint/driving.h"

#include <numbers>

namespace fayline {

Moment rootYields(Length root, Stress shearYield) {
    return std::numbers::pi / 16.0 * shearYield * (root * root * root);
}

Moment rootTwistsOff(Length root, Stress shearUltimate) {
    return std::numbers::pi / 12.0 * shearUltimate * (root * root * root);
}

Moment drivingTorque(Length root, Length thread, Stress pressure, double friction) {
    return friction * std::numbers::pi / 2.0 * pressure * (root * root * thread);
}

}  // namespace fayline
