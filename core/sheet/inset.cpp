#include <algorithm>
#include <cmath>

#include "sheet/section.h"

namespace fayline {

namespace {

struct P {
    double y_m, z_m;
};

double toSegment(P p, P a, P b) {
    const double dy = b.y_m - a.y_m;
    const double dz = b.z_m - a.z_m;
    const double square = dy * dy + dz * dz;
    double t = square > 0.0 ? ((p.y_m - a.y_m) * dy + (p.z_m - a.z_m) * dz) / square : 0.0;
    t = std::clamp(t, 0.0, 1.0);
    return std::hypot(p.y_m - a.y_m - t * dy, p.z_m - a.z_m - t * dz);
}

double toChain(P p, const std::vector<P>& chain) {
    double least = std::hypot(p.y_m - chain.front().y_m, p.z_m - chain.front().z_m);
    for (std::size_t i = 1; i < chain.size(); ++i) {
        least = std::min(least, toSegment(p, chain[i - 1], chain[i]));
    }
    return least;
}

/// Without doubled points, which have no direction.
std::vector<P> cleaned(const std::vector<SectionPoint>& chain) {
    std::vector<P> points;
    for (const SectionPoint& p : chain) {
        const P next{p.y.si(), p.z.si()};
        if (!points.empty() &&
            std::hypot(next.y_m - points.back().y_m, next.z_m - points.back().z_m) < 1e-9) {
            continue;
        }
        points.push_back(next);
    }
    return points;
}

}  // namespace

std::vector<SectionPoint> movedInward(const std::vector<SectionPoint>& chain, Length distance) {
    const std::vector<P> points = cleaned(chain);
    if (points.size() < 2) return {};
    const double d_m = distance.si();
    // Each piece moved on its own: corners give two points, and what lies too near the chain is the
    // loop of a hollow corner and goes.
    std::vector<SectionPoint> moved;
    const auto keep = [&](P p) {
        if (toChain(p, points) < d_m * (1.0 - 1e-6) - 1e-9) return;
        moved.push_back({metres(p.y_m), metres(p.z_m)});
    };
    constexpr int pieces = 8;
    for (std::size_t i = 1; i < points.size(); ++i) {
        const P a = points[i - 1];
        const P b = points[i];
        const double length = std::hypot(b.y_m - a.y_m, b.z_m - a.z_m);
        const P normal{-(b.z_m - a.z_m) / length, (b.y_m - a.y_m) / length};
        for (int k = 0; k <= pieces; ++k) {
            const double t = static_cast<double>(k) / pieces;
            keep({a.y_m + t * (b.y_m - a.y_m) + d_m * normal.y_m,
                  a.z_m + t * (b.z_m - a.z_m) + d_m * normal.z_m});
        }
    }
    return moved;
}

}  // namespace fayline
