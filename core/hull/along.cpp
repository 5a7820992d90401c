#include "along.h"

#include <math.h>  // NOLINT(modernize-deprecated-headers): Boost 1.74's pchip.hpp calls ::isnan

#include <algorithm>
#include <array>
#include <boost/math/interpolators/makima.hpp>
#include <boost/math/interpolators/pchip.hpp>
#include <cmath>
#include <numbers>

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

Range allowed(const Numbers& v_m, std::size_t bay) {
    const auto from = v_m.begin() + static_cast<std::ptrdiff_t>(bay == 0 ? 0 : bay - 1);
    const auto to = v_m.begin() + static_cast<std::ptrdiff_t>(std::min(bay + 3, v_m.size()));
    const auto [low, high] = std::minmax_element(from, to);
    const double slack_m = (*high - *low) / 8.0;
    return {*low - slack_m, *high + slack_m};
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

namespace {

/// Blends two sets of slopes, station by station.
double blended(double careful, double free, double share) {
    return careful + share * (free - careful);
}

/// Slopes of one smooth stretch. Where the free spline leaves a bay's range it is drawn towards the
/// careful one, no further than needed, so that neighbouring lines are treated alike.
Numbers smoothSlopes(const Numbers& x_m, const Numbers& v_m) {
    const std::size_t bays = x_m.size() - 1;
    Numbers straight;
    for (std::size_t bay = 0; bay < bays; ++bay) straight.push_back(chordSlope(x_m, v_m, bay));
    if (bays == 1) return {straight[0], straight[0]};

    Numbers free;
    Numbers careful;
    if (bays == 2) {
        free = parabolaSlopes(x_m, v_m);
        const bool turns = straight[0] * straight[1] <= 0.0;
        careful = {straight[0], turns ? 0.0 : 2.0 / (1.0 / straight[0] + 1.0 / straight[1]),
                   straight[1]};
    } else {
        free = splineSlopes<boost::math::interpolators::makima<Numbers>>(x_m, v_m);
        careful = splineSlopes<boost::math::interpolators::pchip<Numbers>>(x_m, v_m);
    }

    Numbers share(x_m.size(), 1.0);
    const auto keepsRange = [&](std::size_t bay, double factor) {
        const EndSlopes slopes{blended(careful[bay], free[bay], factor * share[bay]),
                               blended(careful[bay + 1], free[bay + 1], factor * share[bay + 1])};
        return within(allowed(v_m, bay), x_m[bay + 1] - x_m[bay], v_m[bay], v_m[bay + 1], slopes);
    };
    // A station's share touches both bays beside it, so look again; after a few rounds, bays that
    // still leave their range go by the careful slopes alone, which never do.
    constexpr int rounds = 4;
    for (int round = 0; round < rounds; ++round) {
        for (std::size_t bay = 0; bay < bays; ++bay) {
            if (keepsRange(bay, 1.0)) continue;
            double low = 0.0;
            double high = 1.0;
            for (int step = 0; step < 20; ++step) {
                const double middle = 0.5 * (low + high);
                (keepsRange(bay, middle) ? low : high) = middle;
            }
            share[bay] *= low;
            share[bay + 1] *= low;
        }
    }
    for (bool changed = true; changed;) {
        changed = false;
        for (std::size_t bay = 0; bay < bays; ++bay) {
            if ((share[bay] == 0.0 && share[bay + 1] == 0.0) || keepsRange(bay, 1.0)) continue;
            share[bay] = share[bay + 1] = 0.0;
            changed = true;
        }
    }
    for (std::size_t i = 0; i < free.size(); ++i) free[i] = blended(careful[i], free[i], share[i]);
    return free;
}

/// How far a value has come from `none` to `all`, 0 to 1.
double ramp(double value, double none, double all) {
    return std::clamp((value - none) / (all - none), 0.0, 1.0);
}

/// How much of a knuckle the line has at each place, 0 to 1: all of one where it turns by 20
/// degrees and four times as much as at either neighbour, none below 10 degrees or twice as much.
Numbers knucklesOf(const Numbers& x_m, const Numbers& v_m) {
    constexpr double degree = std::numbers::pi / 180.0;
    Numbers turn(x_m.size(), 0.0);
    for (std::size_t i = 1; i + 1 < x_m.size(); ++i) {
        turn[i] =
            std::abs(std::atan(chordSlope(x_m, v_m, i)) - std::atan(chordSlope(x_m, v_m, i - 1)));
    }
    Numbers knuckle(x_m.size(), 0.0);
    for (std::size_t i = 1; i + 1 < x_m.size(); ++i) {
        const double beside = std::max(turn[i - 1], turn[i + 1]);
        knuckle[i] = ramp(turn[i], 10.0 * degree, 20.0 * degree) *
                     (beside > 0.0 ? ramp(turn[i] / beside, 2.0, 4.0) : 1.0);
    }
    return knuckle;
}

std::vector<EndSlopes> brokenSlopes(const Numbers& x_m, const Numbers& v_m,
                                    const Numbers& knuckle) {
    std::vector<EndSlopes> result;
    std::ptrdiff_t from = 0;
    for (std::size_t i = 1; i < x_m.size(); ++i) {
        if (i + 1 < x_m.size() && knuckle[i] <= 0.0) continue;
        const auto to = static_cast<std::ptrdiff_t>(i) + 1;
        const Numbers part = smoothSlopes({x_m.begin() + from, x_m.begin() + to},
                                          {v_m.begin() + from, v_m.begin() + to});
        for (std::size_t k = 1; k < part.size(); ++k) result.push_back({part[k - 1], part[k]});
        from = to - 1;
    }
    return result;
}

}  // namespace

std::vector<EndSlopes> slopesAlong(std::span<const Length> x, std::span<const Length> v) {
    Numbers x_m;
    Numbers v_m;
    for (std::size_t i = 0; i < x.size(); ++i) {
        x_m.push_back(x[i].si());
        v_m.push_back(v[i].si());
    }
    const Numbers knuckle = knucklesOf(x_m, v_m);
    auto result = brokenSlopes(x_m, v_m, Numbers(x_m.size(), 0.0));
    if (*std::max_element(knuckle.begin(), knuckle.end()) <= 0.0) return result;

    // A knuckle is felt two stations away, as far as the splines look.
    const auto broken = brokenSlopes(x_m, v_m, knuckle);
    const auto shareAt = [&](std::size_t i) {
        const std::size_t from = i < 2 ? 0 : i - 2;
        const std::size_t to = std::min(i + 3, knuckle.size());
        return *std::max_element(knuckle.begin() + static_cast<std::ptrdiff_t>(from),
                                 knuckle.begin() + static_cast<std::ptrdiff_t>(to));
    };
    for (std::size_t bay = 0; bay < result.size(); ++bay) {
        result[bay].from = blended(result[bay].from, broken[bay].from, shareAt(bay));
        result[bay].to = blended(result[bay].to, broken[bay].to, shareAt(bay + 1));
    }
    return result;
}

}  // namespace fayline::detail
