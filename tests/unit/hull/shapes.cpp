#include "shapes.h"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <numbers>
#include <sstream>
#include <stdexcept>

namespace fayline::test {

OffsetStation station(const std::string& id, Length x, const std::vector<SectionPoint>& points) {
    OffsetStation result{id, x, {}, {}};
    for (const auto& p : points) result.points.push_back({p.y, p.z, {}, {}});
    return result;
}

Offsets hullOf(int count, Length length,
               const std::function<std::vector<SectionPoint>(double)>& section) {
    Offsets offsets;
    for (int i = 0; i < count; ++i) {
        const double share = static_cast<double>(i) / (count - 1);
        offsets.stations.push_back(station(std::to_string(i), length * share, section(share)));
    }
    return offsets;
}

Offsets box(Length length, Length breadth, Length depth, int stations) {
    return hullOf(stations, length, [&](double) {
        return std::vector<SectionPoint>{{0.5 * breadth, Length{}}, {0.5 * breadth, depth}};
    });
}

Offsets halfCylinder(Length length, Length radius, int stations, int chords) {
    return hullOf(stations, length, [&](double) {
        std::vector<SectionPoint> points;
        for (int k = 0; k <= chords; ++k) {
            const double angle = std::numbers::pi / 2.0 * k / chords;
            points.push_back({radius * std::sin(angle), radius * (1.0 - std::cos(angle))});
        }
        return points;
    });
}

Offsets wigley(Length length, Length breadth, Length draught, int stations, int pointsBelow) {
    return hullOf(stations, length, [&](double share) {
        std::vector<SectionPoint> points;
        const double along = 1.0 - std::pow(2.0 * share - 1.0, 2);
        for (int k = 0; k <= pointsBelow; ++k) {
            const double down = 1.0 - static_cast<double>(k) / pointsBelow;
            points.push_back({0.5 * breadth * along * (1.0 - down * down), draught * (1.0 - down)});
        }
        return points;
    });
}

Offsets shifted(Offsets offsets, Length dx, Length dz) {
    for (auto& s : offsets.stations) {
        s.x += dx;
        for (auto& p : s.points) p.height += dz;
    }
    if (offsets.waterline) *offsets.waterline += dz;
    return offsets;
}

Offsets reversed(Offsets offsets) {
    std::reverse(offsets.stations.begin(), offsets.stations.end());
    for (auto& s : offsets.stations) s.x = -s.x;
    return offsets;
}

Offsets scaled(Offsets offsets, double factor) {
    for (auto& s : offsets.stations) {
        s.x *= factor;
        for (auto& p : s.points) {
            p.halfBreadth *= factor;
            p.height *= factor;
        }
    }
    if (offsets.waterline) *offsets.waterline *= factor;
    return offsets;
}

LoftedSurface lofted(const Offsets& offsets) {
    auto surface = loft(offsets);
    if (!surface) throw std::runtime_error(surface.error().front().line());
    return *std::move(surface);
}

namespace {

/// Straight from the points as given: the area between the centreline and the chain of points, up
/// to a height, both sides.
double polygonArea_m2(const OffsetStation& s, double top_m) {
    double area_m2 = 0.0;
    for (std::size_t i = 1; i < s.points.size(); ++i) {
        double y0_m = s.points[i - 1].halfBreadth.si(), z0_m = s.points[i - 1].height.si();
        double y1_m = s.points[i].halfBreadth.si(), z1_m = s.points[i].height.si();
        if (z0_m >= top_m && z1_m >= top_m) continue;
        if (z1_m > top_m) {
            y1_m = y0_m + (y1_m - y0_m) * (top_m - z0_m) / (z1_m - z0_m);
            z1_m = top_m;
        } else if (z0_m > top_m) {
            y0_m = y1_m + (y0_m - y1_m) * (top_m - z1_m) / (z0_m - z1_m);
            z0_m = top_m;
        }
        area_m2 += (y0_m + y1_m) * (z1_m - z0_m);
    }
    return area_m2;
}

}  // namespace

RawFigures trapezoids(const Offsets& offsets, Length waterline) {
    double volume_m3 = 0.0, moment_m4 = 0.0;
    const auto& s = offsets.stations;
    for (std::size_t i = 1; i < s.size(); ++i) {
        const double a_m2 = polygonArea_m2(s[i - 1], waterline.si());
        const double b_m2 = polygonArea_m2(s[i], waterline.si());
        const double h_m = (s[i].x - s[i - 1].x).si();
        volume_m3 += 0.5 * (a_m2 + b_m2) * h_m;
        moment_m4 +=
            0.5 * (a_m2 + b_m2) * h_m * s[i - 1].x.si() + h_m * h_m * (a_m2 + 2.0 * b_m2) / 6.0;
    }
    return {cubicMetres(volume_m3), metres(moment_m4 / volume_m3)};
}

std::string treeFile(const std::string& path) {
    std::ifstream in(std::string(FAYLINE_SOURCE_DIR) + "/" + path, std::ios::binary);
    if (!in) throw std::runtime_error("cannot open " + path);
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

}  // namespace fayline::test
