#include <cmath>

#include "paint/style.h"

namespace fayline {

namespace {

double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour) {
    return 0.2126 * linear(static_cast<double>(colour.redF())) +
           0.7152 * linear(static_cast<double>(colour.greenF())) +
           0.0722 * linear(static_cast<double>(colour.blueF()));
}

}  // namespace

double contrastRatio(const QColor& a, const QColor& b) {
    const double one = luminance(a);
    const double two = luminance(b);
    return (std::max(one, two) + 0.05) / (std::min(one, two) + 0.05);
}

QColor statusColour(Status status, bool onDark) {
    switch (status) {
        case Status::isShort:
            return onDark ? QColor(0xF2, 0x7D, 0x66) : QColor(0x7A, 0x0C, 0x2E);
        case Status::near:
            return onDark ? QColor(0xFF, 0xD1, 0x66) : QColor(0x8C, 0x52, 0x00);
        case Status::unknown:
        case Status::outside:
        case Status::unloaded:
            return onDark ? QColor(0xB8, 0xBC, 0xC0) : QColor(0x60, 0x60, 0x60);
        case Status::ok:
            return onDark ? QColor(0x4F, 0xA8, 0xE0) : QColor(0x00, 0x61, 0x99);
    }
    return {};
}

}  // namespace fayline
