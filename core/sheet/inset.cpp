#include <algorithm>
#include <cmath>

#include "sheet/section.h"

namespace fayline {

namespace {

struct P {
    double y_m, z_m;
};

double squareToSegment_m2(P p, P a, P b) {
    const double dy = b.y_m - a.y_m;
    const double dz = b.z_m - a.z_m;
    const double square = dy * dy + dz * dz;
    double t = square > 0.0 ? ((p.y_m - a.y_m) * dy + (p.z_m - a.z_m) * dz) / square : 0.0;
    t = std::clamp(t, 0.0, 1.0);
    const double y = p.y_m - a.y_m - t * dy;
    const double z = p.z_m - a.z_m - t * dz;
    return y * y + z * z;
}

/// Whether any piece of the chain comes nearer than this.
bool isNearer(P p, const std::vector<P>& chain, double limit_m) {
    if (limit_m <= 0.0) return false;
    for (std::size_t i = 1; i < chain.size(); ++i) {
        const P& a = chain[i - 1];
        const P& b = chain[i];
        const bool away =
            std::min(a.y_m, b.y_m) > p.y_m + limit_m || std::max(a.y_m, b.y_m) < p.y_m - limit_m ||
            std::min(a.z_m, b.z_m) > p.z_m + limit_m || std::max(a.z_m, b.z_m) < p.z_m - limit_m;
        if (!away && squareToSegment_m2(p, a, b) < limit_m * limit_m) return true;
    }
    return false;
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
        if (isNearer(p, points, d_m * (1.0 - 1e-6) - 1e-9)) return;
        moved.push_back({metres(p.y_m), metres(p.z_m)});
    };
    constexpr int most = 8;
    for (std::size_t i = 1; i < points.size(); ++i) {
        const P a = points[i - 1];
        const P b = points[i];
        const double length = std::hypot(b.y_m - a.y_m, b.z_m - a.z_m);
        const P normal{-(b.z_m - a.z_m) / length, (b.y_m - a.y_m) / length};
        // Long pieces are cut so that a loop is cut off close to where it begins.
        const double parts = d_m > 0.0 ? std::ceil(4.0 * length / d_m) : 1.0;
        const int pieces = static_cast<int>(std::clamp(parts, 1.0, static_cast<double>(most)));
        for (int k = 0; k <= pieces; ++k) {
            const double t = static_cast<double>(k) / pieces;
            keep({a.y_m + t * (b.y_m - a.y_m) + d_m * normal.y_m,
                  a.z_m + t * (b.z_m - a.z_m) + d_m * normal.z_m});
        }
    }
    return moved;
}

}  // namespace fayline
