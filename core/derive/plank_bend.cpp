#include "plank_bend.h"

#include <cmath>

namespace fayline {
namespace {

/// Flatter than this counts as straight.
constexpr double leastBend_per_m = 1.0 / 100.0;

struct Vec {
    double x = 0, y = 0, z = 0;
};
Vec operator-(Vec a, Vec b) {
    return {a.x - b.x, a.y - b.y, a.z - b.z};
}
double dot(Vec a, Vec b) {
    return a.x * b.x + a.y * b.y + a.z * b.z;
}
Vec cross(Vec a, Vec b) {
    return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
double size(Vec a) {
    return std::sqrt(dot(a, a));
}
Vec scaled(Vec a, double by) {
    return {a.x * by, a.y * by, a.z * by};
}

struct Crossing {
    Vec at;
    double outY = 0, outZ = 0;
};

Vec vecOf(Length x, const CurvePoint& at) {
    return {x.si(), at.y.si(), at.z.si()};
}

/// The middle of strake k of n on a frame.
Crossing crossingOf(const FrameCurve& curve, double part) {
    const CurvePoint at = curve.at(part * curve.girth());
    return {vecOf(curve.x(), at), at.outY, at.outZ};
}

/// Through three places, at the middle one: the bend square to the plank's face, outward convex
/// positive, per metre.
double bendThrough(Vec end, const Crossing& middle, Vec beyond) {
    const Vec first = middle.at - end;
    const Vec second = beyond - middle.at;
    const double before = size(first), after = size(second);
    if (before <= 0 || after <= 0) return 0;
    const Vec turn =
        scaled(scaled(second, 1 / after) - scaled(first, 1 / before), 2.0 / (before + after));
    // Square to the run of the plank and to the frame's line.
    Vec out = cross(beyond - end, {0, -middle.outZ, middle.outY});
    if (dot(out, {0, middle.outY, middle.outZ}) < 0) out = scaled(out, -1);
    const double length = size(out);
    return length > 0 ? -dot(turn, out) / length : 0;
}

}  // namespace

std::vector<PlankBend> bendsAt(const Results& results, std::size_t frame) {
    std::vector<PlankBend> bends;
    const auto& curves = results.curves;
    const std::string& id = results.structure->frames[frame].id;
    for (const auto& [ends, fore] :
         {std::pair(results.foreEnds, true), std::pair(results.aftEnds, false)}) {
        if (!ends || ends->frame != id || !bends.empty()) continue;
        const auto strakes = ends->strakes.size();
        for (std::size_t k = 0; k < strakes; ++k) {
            PlankBend bend;
            const EndSpot spot = ends->strakes[k].middle();
            const Vec end = vecOf(spot.x, spot.at);
            const double part = (static_cast<double>(k) + 0.5) / static_cast<double>(strakes);
            std::vector<Crossing> crossings;
            const double room_m = curves.size() > 1 && curves.front() && curves.back()
                                      ? std::abs((curves.back()->x() - curves.front()->x()).si()) /
                                            static_cast<double>(curves.size() - 1)
                                      : 0.0;
            for (std::size_t n = 0; n < curves.size() && crossings.size() < 2; ++n) {
                const auto& curve = curves[fore ? n : curves.size() - 1 - n];
                if (!curve || std::abs(curve->x().si() - end.x) < room_m / 2.0) continue;
                if ((curve->x().si() > end.x) != fore) continue;
                crossings.push_back(crossingOf(*curve, part));
            }
            if (crossings.size() == 2) {
                const double bend_per_m = bendThrough(end, crossings[0], crossings[1].at);
                bend.arm = metres(size(crossings[0].at - end));
                bend.hollow = bend_per_m < -leastBend_per_m;
                if (bend_per_m > leastBend_per_m) bend.radius = metres(1.0 / bend_per_m);
            }
            bends.push_back(bend);
        }
    }
    return bends;
}

}  // namespace fayline
