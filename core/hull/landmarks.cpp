#include "landmarks.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace fayline::detail {
namespace {

constexpr double sameLevel = 1e-9;
constexpr double farthestPair = 0.25;  ///< of level plus share of the greatest half-breadth

/// One knuckle: where it stands at the stations first, first + 1, …
struct Knuckle {
    std::size_t first = 0;
    std::vector<Length> girth;
    std::vector<double> level;
    double key = 0.0;

    [[nodiscard]] std::size_t end() const { return first + girth.size(); }
    [[nodiscard]] bool livesAt(std::size_t station) const {
        return station >= first && station < end();
    }
};

struct Pairs {
    std::vector<std::optional<std::size_t>> partner;  ///< of each corner of the fore station
};

double levelAt(const MatchedStation& station, const Contour::Corner& corner) {
    return std::max(0.0, station.level[corner.at]);
}

double pairCost(const MatchedStation& a, const Contour::Corner& ca, const MatchedStation& b,
                const Contour::Corner& cb, Length breadth) {
    if (ca.outward != cb.outward) return std::numeric_limits<double>::infinity();
    double cost = std::abs(levelAt(a, ca) - levelAt(b, cb));
    if (breadth > Length{}) {
        cost += abs(a.contour->points[ca.at].y - b.contour->points[cb.at].y) / breadth;
    }
    return cost;
}

/// The pairing, in order, with the least sum of costs, where a corner left alone costs half of the
/// farthest pair.
Pairs pairUp(const MatchedStation& a, const MatchedStation& b, Length breadth) {
    const auto& ca = a.contour->corners;
    const auto& cb = b.contour->corners;
    const std::size_t columns = cb.size() + 1;
    constexpr double alone = farthestPair / 2.0;
    std::vector<double> least((ca.size() + 1) * columns);
    const auto at = [&](std::size_t i, std::size_t j) -> double& { return least[i * columns + j]; };
    for (std::size_t i = 0; i <= ca.size(); ++i) {
        for (std::size_t j = 0; j <= cb.size(); ++j) {
            double best = i == 0 && j == 0 ? 0.0 : std::numeric_limits<double>::infinity();
            if (i > 0) best = std::min(best, at(i - 1, j) + alone);
            if (j > 0) best = std::min(best, at(i, j - 1) + alone);
            if (i > 0 && j > 0) {
                best = std::min(best,
                                at(i - 1, j - 1) + pairCost(a, ca[i - 1], b, cb[j - 1], breadth));
            }
            at(i, j) = best;
        }
    }
    Pairs pairs{std::vector<std::optional<std::size_t>>(ca.size())};
    std::size_t i = ca.size();
    std::size_t j = cb.size();
    while (i > 0 && j > 0) {
        const double paired = at(i - 1, j - 1) + pairCost(a, ca[i - 1], b, cb[j - 1], breadth);
        if (paired <= at(i - 1, j) + alone && paired <= at(i, j - 1) + alone) {
            pairs.partner[--i] = --j;
        } else if (at(i - 1, j) <= at(i, j - 1)) {
            --i;
        } else {
            --j;
        }
    }
    return pairs;
}

void grow(Knuckle& knuckle, const MatchedStation& station, std::size_t corner) {
    const auto& place = station.contour->corners[corner];
    knuckle.girth.push_back(station.contour->girth[place.at]);
    knuckle.level.push_back(levelAt(station, place));
}

std::vector<Knuckle> chains(std::span<const MatchedStation> stations) {
    Length breadth;
    for (const auto& station : stations) {
        for (const auto& point : station.contour->points) breadth = max(breadth, point.y);
    }
    std::vector<Knuckle> done;
    std::vector<Knuckle> open;  // one for each corner of the station before
    for (std::size_t s = 0; s < stations.size(); ++s) {
        std::vector<Knuckle> next(stations[s].contour->corners.size(), Knuckle{s, {}, {}, 0.0});
        if (s > 0) {
            const Pairs pairs = pairUp(stations[s - 1], stations[s], breadth);
            for (std::size_t c = 0; c < open.size(); ++c) {
                auto& target = pairs.partner[c] ? next[*pairs.partner[c]] : done.emplace_back();
                target = std::move(open[c]);
            }
        }
        for (std::size_t c = 0; c < next.size(); ++c) grow(next[c], stations[s], c);
        open = std::move(next);
    }
    for (auto& knuckle : open) done.push_back(std::move(knuckle));
    return done;
}

/// The girth at the top end of what lies at a level.
Length girthAtLevel(const MatchedStation& station, double level) {
    const auto& levels = station.level;
    const auto above = std::upper_bound(levels.begin(), levels.end(), level + sameLevel);
    if (above == levels.end()) return station.contour->girth.back();
    if (above == levels.begin()) return Length{};
    const auto i = static_cast<std::size_t>(above - levels.begin());
    const double share =
        std::clamp((level - levels[i - 1]) / (levels[i] - levels[i - 1]), 0.0, 1.0);
    const auto& girth = station.contour->girth;
    return girth[i - 1] + (girth[i] - girth[i - 1]) * share;
}

Knuckle footOf(std::span<const MatchedStation> stations) {
    Knuckle foot;
    for (const auto& station : stations) {
        foot.girth.push_back(girthAtLevel(station, 0.0));
        foot.level.push_back(0.0);
    }
    return foot;
}

void setKey(Knuckle& knuckle, std::span<const MatchedStation> stations) {
    double sum = 0.0;
    for (std::size_t k = 0; k < knuckle.girth.size(); ++k) {
        const Length whole = stations[knuckle.first + k].contour->girth.back();
        sum += 0.5 * (knuckle.girth[k] / whole + knuckle.level[k]);
    }
    knuckle.key = sum / static_cast<double>(knuckle.girth.size());
}

/// Puts a knuckle into the common order. False when its neighbours contradict each other about it.
bool insert(std::vector<Knuckle>& ordered, const Knuckle& knuckle) {
    std::size_t low = 0;
    std::size_t high = ordered.size();
    for (std::size_t k = 0; k < ordered.size(); ++k) {
        const Knuckle& other = ordered[k];
        const std::size_t end = std::min(knuckle.end(), other.end());
        for (std::size_t s = std::max(knuckle.first, other.first); s < end; ++s) {
            const Length mine = knuckle.girth[s - knuckle.first];
            const Length its = other.girth[s - other.first];
            if (mine > its) low = std::max(low, k + 1);
            if (mine < its) high = std::min(high, k);
        }
    }
    if (low > high) return false;
    while (low < high && ordered[low].key < knuckle.key) ++low;
    ordered.insert(ordered.begin() + static_cast<std::ptrdiff_t>(low), knuckle);
    return true;
}

std::vector<Knuckle> inCommonOrder(std::vector<Knuckle> knuckles,
                                   std::span<const MatchedStation> stations) {
    for (auto& knuckle : knuckles) setKey(knuckle, stations);
    std::stable_sort(knuckles.begin(), knuckles.end(), [](const Knuckle& a, const Knuckle& b) {
        return a.girth.size() != b.girth.size() ? a.girth.size() > b.girth.size() : a.key < b.key;
    });
    std::vector<Knuckle> ordered;
    std::vector<Knuckle> single;
    for (const auto& knuckle : knuckles) {
        if (insert(ordered, knuckle)) continue;
        for (std::size_t k = 0; k < knuckle.girth.size(); ++k) {
            single.push_back(
                {knuckle.first + k, {knuckle.girth[k]}, {knuckle.level[k]}, knuckle.key});
        }
    }
    // A knuckle of one station always finds its place: the order there is already settled.
    for (const auto& knuckle : single) insert(ordered, knuckle);
    return ordered;
}

}  // namespace

std::vector<double> risenShare(const Contour& contour) {
    std::vector<double> level(contour.rise.size(), 0.0);
    const Length whole = contour.rise.back();
    if (whole > Length{}) {
        for (std::size_t i = 0; i < level.size(); ++i) level[i] = contour.rise[i] / whole;
    }
    return level;
}

std::vector<double> risenShareAbove(const Contour& contour, Length lowestOfOther) {
    std::vector<double> level(contour.rise.size(), 0.0);
    const auto foot = std::find_if(contour.points.begin(), contour.points.end(),
                                   [&](SectionPoint p) { return p.z >= lowestOfOther; });
    if (foot == contour.points.end()) return level;
    const auto i = static_cast<std::size_t>(foot - contour.points.begin());
    const Length below = contour.rise[i] - (foot->z - lowestOfOther);
    const Length whole = contour.rise.back() - below;
    if (!(whole > Length{})) return level;
    for (std::size_t k = 0; k < level.size(); ++k) level[k] = (contour.rise[k] - below) / whole;
    return level;
}

Landmarks landmarksOf(std::span<const MatchedStation> stations, bool holdFoot) {
    auto knuckles = chains(stations);
    if (holdFoot) knuckles.push_back(footOf(stations));
    const auto ordered = inCommonOrder(std::move(knuckles), stations);

    Landmarks landmarks;
    for (std::size_t s = 0; s < stations.size(); ++s) {
        const Length whole = stations[s].contour->girth.back();
        std::vector<Length> here{Length{}};
        for (std::size_t k = 0; k < ordered.size(); ++k) {
            const Knuckle& knuckle = ordered[k];
            if (knuckle.livesAt(s)) {
                here.push_back(knuckle.girth[s - knuckle.first]);
                continue;
            }
            Length ceiling = whole;
            for (std::size_t up = ordered.size(); up-- > k + 1;) {
                if (ordered[up].livesAt(s)) ceiling = ordered[up].girth[s - ordered[up].first];
            }
            const double level = s < knuckle.first ? knuckle.level.front() : knuckle.level.back();
            here.push_back(max(here.back(), min(girthAtLevel(stations[s], level), ceiling)));
        }
        here.push_back(whole);
        landmarks.push_back(std::move(here));
    }
    return landmarks;
}

}  // namespace fayline::detail
