#include "joint/group.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace fayline {
namespace {

struct Plane {
    std::vector<std::array<double, 2>> places;  // metres, about their middle
    double fx, fy, moment;                      // of a unit load
    double polar;                               // Σ r²
};

Plane planeOf(const JointGroup& group) {
    Plane plane{};
    double x = 0.0, y = 0.0;
    for (const GroupPlace& place : group.places) {
        x += place.along.si();
        y += place.across.si();
    }
    const double count = static_cast<double>(group.places.size());
    x /= count;
    y /= count;
    for (const GroupPlace& place : group.places) {
        plane.places.push_back({place.along.si() - x, place.across.si() - y});
        plane.polar += std::pow(plane.places.back()[0], 2) + std::pow(plane.places.back()[1], 2);
    }
    plane.fx = std::cos(group.direction.inRadians());
    plane.fy = std::sin(group.direction.inRadians());
    plane.moment =
        (group.loadAt.along.si() - x) * plane.fy - (group.loadAt.across.si() - y) * plane.fx;
    return plane;
}

using Row = std::array<double, 4>;

/// Gauss with pivoting of three equations; a zero pivot leaves its unknown nil.
std::array<double, 3> solve(std::array<Row, 3> rows) {
    for (std::size_t i = 0; i < 3; ++i) {
        std::size_t best = i;
        for (std::size_t k = i + 1; k < 3; ++k)
            if (std::abs(rows[k][i]) > std::abs(rows[best][i])) best = k;
        std::swap(rows[i], rows[best]);
        if (rows[i][i] == 0.0) continue;
        for (std::size_t k = 0; k < 3; ++k) {
            if (k == i) continue;
            const double factor = rows[k][i] / rows[i][i];
            for (std::size_t j = i; j < 4; ++j) rows[k][j] -= factor * rows[i][j];
        }
    }
    std::array<double, 3> x{};
    for (std::size_t i = 0; i < 3; ++i) x[i] = rows[i][i] != 0.0 ? rows[i][3] / rows[i][i] : 0.0;
    return x;
}

}  // namespace

Force GroupShare::size() const {
    return newtons(std::hypot(along.si(), across.si()));
}

std::vector<GroupShare> elasticShares(const JointGroup& group, Force load) {
    std::vector<GroupShare> shares;
    if (group.places.empty()) return shares;
    const Plane plane = planeOf(group);
    const double even = 1.0 / static_cast<double>(plane.places.size());
    for (const auto& [x, y] : plane.places) {
        const double turning = plane.polar > 0.0 ? plane.moment / plane.polar : 0.0;
        shares.push_back(
            {load * (plane.fx * even - turning * y), load * (plane.fy * even + turning * x)});
    }
    return shares;
}

WorstShare worstShare(const JointGroup& group) {
    WorstShare worst;
    const auto shares = elasticShares(group, newtons(1));
    for (std::size_t i = 0; i < shares.size(); ++i) {
        // The first of equals, whatever the last digit says.
        if (shares[i].size().si() > worst.share * (1.0 + 1e-12))
            worst = {shares[i].size().si(), static_cast<int>(i)};
    }
    return worst;
}

double plasticLoad(const JointGroup& group) {
    const Plane plane = planeOf(group);
    const double count = static_cast<double>(plane.places.size());
    const double radius = plane.polar > 0.0 ? std::sqrt(plane.polar / count) : 1.0;
    // Motion (u, v, ω·radius) with unit work; Σ|v_i| is least: quadratic steps, each fastening's
    // square weighed by the inverse of its last speed.
    std::vector<double> weight(plane.places.size(), 1.0);
    double least = count;
    for (int step = 0; step < 300; ++step) {
        std::array<Row, 3> rows{};
        for (std::size_t i = 0; i < plane.places.size(); ++i) {
            const double a = -plane.places[i][1] / radius;
            const double b = plane.places[i][0] / radius;
            const double w = weight[i];
            rows[0][0] += w;
            rows[1][1] += w;
            rows[0][2] += w * a;
            rows[1][2] += w * b;
            rows[2][2] += w * (a * a + b * b);
        }
        rows[2][0] = rows[0][2];
        rows[2][1] = rows[1][2];
        rows[0][3] = plane.fx;
        rows[1][3] = plane.fy;
        rows[2][3] = plane.moment / radius;
        auto motion = solve(rows);
        const double work =
            motion[0] * plane.fx + motion[1] * plane.fy + motion[2] * plane.moment / radius;
        if (work <= 0.0) break;
        double dissipation = 0.0;
        for (std::size_t i = 0; i < plane.places.size(); ++i) {
            const double u = motion[0] - motion[2] * plane.places[i][1] / radius;
            const double v = motion[1] + motion[2] * plane.places[i][0] / radius;
            const double speed = std::hypot(u, v) / work;
            dissipation += speed;
            weight[i] = 1.0 / std::max(speed, 1e-9);
        }
        least = std::min(least, dissipation);
    }
    return least;
}

}  // namespace fayline
