#include "heights.h"

#include <cstddef>

namespace fayline::heights {

namespace {

/// Height of the piece a–b at x, the higher end of an upright piece; nothing where x is not on it.
std::optional<Length> onPiece(const Point& a, const Point& b, Length x) {
    if (x < min(a.x, b.x) || x > max(a.x, b.x)) return std::nullopt;
    if (a.x == b.x) return max(a.z, b.z);
    return a.z + (b.z - a.z) * ((x - a.x) / (b.x - a.x));
}

}  // namespace

std::optional<Length> onChain(const std::vector<Point>& chain, Length x) {
    for (std::size_t i = 1; i < chain.size(); ++i) {
        if (const auto z = onPiece(chain[i - 1], chain[i], x)) return z;
    }
    return std::nullopt;
}

std::optional<Length> topOfOutline(const std::vector<Point>& outline, Length x) {
    std::optional<Length> top;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const auto z = onPiece(outline[i], outline[(i + 1) % outline.size()], x);
        if (z && (!top || *z > *top)) top = z;
    }
    return top;
}

}  // namespace fayline::heights
