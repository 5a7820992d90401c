#include "joint/net_section.h"

#include <cmath>
#include <limits>

namespace fayline {

Force netSectionLoad(Stress stress, Length width, Length hole, Length thickness, Angle toGrain) {
    const Length left = max(width - hole, Length{});
    const double along = std::cos(toGrain.inRadians());
    constexpr double square = 1e-12;  // a right angle's cosine is not quite nil in doubles
    if (along <= square) return Force::fromSi(std::numeric_limits<double>::infinity());
    return stress * (left * thickness) / along;
}

}  // namespace fayline
