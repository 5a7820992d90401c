#include "joint/net_section.h"

#include <limits>

namespace fayline {

Force netSectionLoad(Stress stress, Length width, Length hole, Length thickness,
                     const Direction& toGrain) {
    const Length left = max(width - hole, Length{});
    const double along = toGrain.cosine;
    constexpr double square = 1e-12;  // a right angle's cosine is not quite nil in doubles
    if (along <= square) return Force::fromSi(std::numeric_limits<double>::infinity());
    return stress * (left * thickness) / along;
}

}  // namespace fayline
