#include "along.h"

#include <math.h>  // NOLINT(modernize-deprecated-headers): Boost 1.74's pchip.hpp calls ::isnan

#include <algorithm>
#include <array>
#include <boost/math/interpolators/makima.hpp>
#include <boost/math/interpolators/pchip.hpp>
#include <cmath>

namespace fayline::detail {
namespace {

using Numbers = std::vector<double>;

double chordSlope(const Numbers& x_m, const Numbers& v_m, std::size_t bay) {
    return (v_m[bay + 1] - v_m[bay]) / (x_m[bay + 1] - x_m[bay]);
}

template <typename Spline>
Numbers splineSlopes(const Numbers& x_m, const Numbers& v_m) {
    const Spline spline{Numbers(x_m), Numbers(v_m)};
    Numbers slopes;
    for (const double at_m : x_m) slopes.push_back(spline.prime(at_m));
    return slopes;
}

Numbers parabolaSlopes(const Numbers& x_m, const Numbers& v_m) {
    const double first = chordSlope(x_m, v_m, 0);
    const double second = chordSlope(x_m, v_m, 1);
    const double bend = (second - first) / (x_m[2] - x_m[0]);
    const double h0_m = x_m[1] - x_m[0];
    const double h1_m = x_m[2] - x_m[1];
    return {first - bend * h0_m, first + bend * h0_m, second + bend * h1_m};
}

struct Range {
    double low_m;
    double high_m;
};

Range allowed(const Numbers& v_m, std::size_t bay, std::optional<Length> least) {
    const auto from = v_m.begin() + static_cast<std::ptrdiff_t>(bay == 0 ? 0 : bay - 1);
    const auto to = v_m.begin() + static_cast<std::ptrdiff_t>(std::min(bay + 3, v_m.size()));
    const auto [low, high] = std::minmax_element(from, to);
    const double slack_m = (*high - *low) / 8.0;
    Range range{*low - slack_m, *high + slack_m};
    if (least) range.low_m = std::max(range.low_m, least->si());
    return range;
}

bool within(const Range& range, double bay_m, double from_m, double to_m, EndSlopes slopes) {
    const double a = bay_m * slopes.from;
    const double b = bay_m * slopes.to;
    const double rise_m = to_m - from_m;
    // Derivative of the cubic in the fraction t: a + 2 p t + q t^2.
    const double p = 3.0 * rise_m - 2.0 * a - b;
    const double q = 3.0 * (a + b - 2.0 * rise_m);
    std::array<double, 2> turning{-1.0, -1.0};
    if (q != 0.0 && p * p >= q * a) {
        // The stable pair of roots of q t^2 + 2 p t + a.
        const double sum = -(p + std::copysign(std::sqrt(p * p - q * a), p));
        turning = {sum / q, sum != 0.0 ? a / sum : -1.0};
    } else if (q == 0.0 && p != 0.0) {
        turning[0] = -a / (2.0 * p);
    }
    return std::all_of(turning.begin(), turning.end(), [&](double t) {
        if (t <= 0.0 || t >= 1.0) return true;
        const double v_m = cubicAt(t, metres(bay_m), metres(from_m), metres(to_m), slopes).si();
        return v_m >= range.low_m && v_m <= range.high_m;
    });
}

}  // namespace

Length cubicAt(double fraction, Length bay, Length from, Length to, EndSlopes slopes) {
    const double t = fraction;
    const double s = 1.0 - t;
    return from + (to - from) * (t * t * (3.0 - 2.0 * t)) +
           bay * (t * s * (s * slopes.from - t * slopes.to));
}

std::vector<EndSlopes> slopesAlong(std::span<const Length> x, std::span<const Length> v,
                                   std::optional<Length> least) {
    Numbers x_m;
    Numbers v_m;
    for (std::size_t i = 0; i < x.size(); ++i) {
        x_m.push_back(x[i].si());
        v_m.push_back(v[i].si());
    }
    const std::size_t bays = x_m.size() - 1;
    Numbers straight;
    for (std::size_t bay = 0; bay < bays; ++bay) straight.push_back(chordSlope(x_m, v_m, bay));
    if (bays == 1) return {{straight[0], straight[0]}};

    Numbers slopes;
    Numbers careful;
    if (bays == 2) {
        slopes = parabolaSlopes(x_m, v_m);
        const bool turns = straight[0] * straight[1] <= 0.0;
        careful = {straight[0], turns ? 0.0 : 2.0 / (1.0 / straight[0] + 1.0 / straight[1]),
                   straight[1]};
    } else {
        slopes = splineSlopes<boost::math::interpolators::makima<Numbers>>(x_m, v_m);
        careful = splineSlopes<boost::math::interpolators::pchip<Numbers>>(x_m, v_m);
    }

    // Changing the slope at a station touches the bay on its other side too, so look again until
    // every bay keeps its range. Each pass makes at least one more station careful.
    std::vector<bool> isCareful(x_m.size(), false);
    for (bool changed = true; changed;) {
        changed = false;
        for (std::size_t bay = 0; bay < bays; ++bay) {
            if (isCareful[bay] && isCareful[bay + 1]) continue;
            if (within(allowed(v_m, bay, least), x_m[bay + 1] - x_m[bay], v_m[bay], v_m[bay + 1],
                       {slopes[bay], slopes[bay + 1]})) {
                continue;
            }
            for (const std::size_t i : {bay, bay + 1}) {
                slopes[i] = careful[i];
                isCareful[i] = true;
            }
            changed = true;
        }
    }
    std::vector<EndSlopes> result;
    for (std::size_t bay = 0; bay < bays; ++bay) result.push_back({slopes[bay], slopes[bay + 1]});
    return result;
}

}  // namespace fayline::detail
