#include "hull/section.h"

#include <algorithm>
#include <cmath>

namespace fayline {
namespace {

Length distance(SectionPoint a, SectionPoint b) {
    return Length::fromSi(std::hypot((b.y - a.y).si(), (b.z - a.z).si()));
}

SectionPoint atHeight(SectionPoint a, SectionPoint b, Length z) {
    return {a.y + (b.y - a.y) * ((z - a.z) / (b.z - a.z)), z};
}

/// The part of the piece a-b at or below z, run in the same direction.
struct Piece {
    SectionPoint a, b;
};
std::optional<Piece> below(SectionPoint a, SectionPoint b, Length z) {
    if (a.z <= z && b.z <= z) return Piece{a, b};
    if (a.z > z && b.z > z) return std::nullopt;
    if (a.z <= z) return Piece{a, atHeight(a, b, z)};
    return Piece{atHeight(a, b, z), b};
}

template <typename Visit>
void eachPieceBelow(const std::vector<SectionPoint>& points, Length z, Visit visit) {
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (const auto piece = below(points[i - 1], points[i], z)) visit(piece->a, piece->b);
    }
}

}  // namespace

Length Section::lowest() const {
    return std::min_element(points.begin(), points.end(),
                            [](const auto& a, const auto& b) { return a.z < b.z; })
        ->z;
}

Length Section::top() const {
    return points.back().z;
}

Length Section::girth() const {
    Length sum;
    for (std::size_t i = 1; i < points.size(); ++i) sum += distance(points[i - 1], points[i]);
    return sum;
}

Length Section::wettedGirth(Length z) const {
    Length sum;
    eachPieceBelow(points, z, [&](SectionPoint a, SectionPoint b) { sum += distance(a, b); });
    return sum;
}

// Green's theorem on the closed half section: the centreline has y = 0 and the cut at z has
// dz = 0, so only the pieces below the cut count, with their sign.
Area Section::areaBelow(Length z) const {
    Area half;
    eachPieceBelow(points, z, [&](SectionPoint a, SectionPoint b) {
        half += 0.5 * (a.y + b.y) * (b.z - a.z);
    });
    return 2.0 * half;
}

std::optional<Length> Section::centreHeightBelow(Length z) const {
    const Area area = areaBelow(z);
    if (!(area.si() > 0.0)) return std::nullopt;
    const Length base = lowest();
    Volume half;
    eachPieceBelow(points, z, [&](SectionPoint a, SectionPoint b) {
        const Length za = a.z - base;
        const Length zb = b.z - base;
        half += ((2.0 * a.y + b.y) * za + (a.y + 2.0 * b.y) * zb) * (zb - za) / 6.0;
    });
    return base + 2.0 * half / area;
}

std::optional<Length> Section::halfBreadthAt(Length z) const {
    std::optional<Length> outermost;
    for (std::size_t i = 1; i < points.size(); ++i) {
        const SectionPoint a = points[i - 1];
        const SectionPoint b = points[i];
        if (z < min(a.z, b.z) || z > max(a.z, b.z)) continue;
        const Length y = a.z == b.z ? max(a.y, b.y) : atHeight(a, b, z).y;
        outermost = outermost ? max(*outermost, y) : y;
    }
    return outermost;
}

Length Section::waterplaneHalfBreadth(Length z) const {
    Length width;
    for (std::size_t i = 1; i < points.size(); ++i) {
        const SectionPoint a = points[i - 1];
        const SectionPoint b = points[i];
        if ((a.z < z) == (b.z < z)) continue;
        const Length y = atHeight(a, b, z).y;
        width += a.z < z ? y : -y;
    }
    if (points.back().z < z) width += points.back().y;
    return width;
}

}  // namespace fayline
