#include "landmarks.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <optional>

#include "stretch.h"

namespace fayline::detail {
namespace {

constexpr double sameLevel = 1e-9;
constexpr double farthestPair = 0.6;  ///< unlikeness beyond which two corners are strangers

Length greatestBreadth(std::span<const MatchedStation> stations) {
    Length breadth;
    for (const auto& station : stations) {
        for (const auto& point : station.contour->points) breadth = max(breadth, point.y);
    }
    return breadth;
}

/// A place on a station's contour: its level, and its half-breadth as a share of the greatest.
struct Place {
    double level = 0.0;
    double out = 0.0;
    Length girth;
};

/// How unlike two places are.
double unlikeness(const Place& a, const Place& b) {
    return std::hypot(a.level - b.level, a.out - b.out);
}

/// One knuckle: where it stands at the stations first, first + 1, …
struct Knuckle {
    std::size_t first = 0;
    std::vector<Place> places;
    double key = 0.0;

    [[nodiscard]] std::size_t end() const { return first + places.size(); }
    [[nodiscard]] bool livesAt(std::size_t station) const {
        return station >= first && station < end();
    }
    [[nodiscard]] Length girthAt(std::size_t station) const {
        return places[station - first].girth;
    }
};

struct Pairs {
    std::vector<std::optional<std::size_t>> partner;  ///< of each corner of the fore station
};

Place placeAt(const MatchedStation& station, std::size_t i, Length breadth) {
    const Length y = station.contour->points[i].y;
    return {std::max(0.0, station.level[i]), breadth > Length{} ? y / breadth : 0.0,
            station.contour->girth[i]};
}

double pairCost(const MatchedStation& a, const Contour::Corner& ca, const MatchedStation& b,
                const Contour::Corner& cb, Length breadth) {
    if ((ca.turn > 0.0) != (cb.turn > 0.0)) return std::numeric_limits<double>::infinity();
    return unlikeness(placeAt(a, ca.at, breadth), placeAt(b, cb.at, breadth)) +
           std::abs(ca.turn - cb.turn) / (std::numbers::pi / 2.0);
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

std::vector<Knuckle> chains(std::span<const MatchedStation> stations, Length breadth) {
    std::vector<Knuckle> done;
    std::vector<Knuckle> open;  // one for each corner of the station before
    for (std::size_t s = 0; s < stations.size(); ++s) {
        std::vector<Knuckle> next(stations[s].contour->corners.size(), Knuckle{s, {}, 0.0});
        if (s > 0) {
            const Pairs pairs = pairUp(stations[s - 1], stations[s], breadth);
            for (std::size_t c = 0; c < open.size(); ++c) {
                auto& target = pairs.partner[c] ? next[*pairs.partner[c]] : done.emplace_back();
                target = std::move(open[c]);
            }
        }
        for (std::size_t c = 0; c < next.size(); ++c) {
            next[c].places.push_back(
                placeAt(stations[s], stations[s].contour->corners[c].at, breadth));
        }
        open = std::move(next);
    }
    for (auto& knuckle : open) done.push_back(std::move(knuckle));
    return done;
}

/// The girth at the top end of what lies at level nil.
Length footGirth(const MatchedStation& station) {
    const auto& levels = station.level;
    const auto above = std::upper_bound(levels.begin(), levels.end(), sameLevel);
    if (above == levels.end()) return station.contour->girth.back();
    if (above == levels.begin()) return Length{};
    const auto i = static_cast<std::size_t>(above - levels.begin());
    const double share = std::clamp(-levels[i - 1] / (levels[i] - levels[i - 1]), 0.0, 1.0);
    const auto& girth = station.contour->girth;
    return girth[i - 1] + (girth[i] - girth[i - 1]) * share;
}

Knuckle footOf(std::span<const MatchedStation> stations) {
    Knuckle foot;
    for (const auto& station : stations) foot.places.push_back({0.0, 0.0, footGirth(station)});
    return foot;
}

/// Where a knuckle that has ended goes on: the place most like its last one.
Length mostAlike(const MatchedStation& station, const Place& last, Length breadth) {
    Place best = placeAt(station, 0, breadth);
    for (std::size_t i = 1; i < station.level.size(); ++i) {
        const Place a = placeAt(station, i - 1, breadth);
        const Place b = placeAt(station, i, breadth);
        const double up = b.level - a.level;
        const double out = b.out - a.out;
        const double length2 = up * up + out * out;
        if (!(length2 > 0.0)) continue;
        const double share = std::clamp(
            ((last.level - a.level) * up + (last.out - a.out) * out) / length2, 0.0, 1.0);
        const Place nearest{a.level + up * share, a.out + out * share,
                            a.girth + (b.girth - a.girth) * share};
        if (unlikeness(nearest, last) < unlikeness(best, last)) best = nearest;
    }
    return best.girth;
}

void setKey(Knuckle& knuckle, std::span<const MatchedStation> stations) {
    double sum = 0.0;
    for (std::size_t s = knuckle.first; s < knuckle.end(); ++s) {
        const Place& place = knuckle.places[s - knuckle.first];
        sum += 0.5 * (place.girth / stations[s].contour->girth.back() + place.level);
    }
    knuckle.key = sum / static_cast<double>(knuckle.places.size());
}

/// Puts a knuckle into the common order. False when its neighbours contradict each other about it.
bool insert(std::vector<Knuckle>& ordered, const Knuckle& knuckle) {
    std::size_t low = 0;
    std::size_t high = ordered.size();
    for (std::size_t k = 0; k < ordered.size(); ++k) {
        const Knuckle& other = ordered[k];
        const std::size_t end = std::min(knuckle.end(), other.end());
        for (std::size_t s = std::max(knuckle.first, other.first); s < end; ++s) {
            const Length mine = knuckle.girthAt(s);
            const Length its = other.girthAt(s);
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
        return a.places.size() != b.places.size() ? a.places.size() > b.places.size()
                                                  : a.key < b.key;
    });
    std::vector<Knuckle> ordered;
    std::vector<Knuckle> single;
    for (const auto& knuckle : knuckles) {
        if (insert(ordered, knuckle)) continue;
        for (std::size_t k = 0; k < knuckle.places.size(); ++k) {
            single.push_back({knuckle.first + k, {knuckle.places[k]}, knuckle.key});
        }
    }
    // A knuckle of one station always finds its place: the order there is already settled.
    for (const auto& knuckle : single) insert(ordered, knuckle);
    return ordered;
}

/// Girths of all knuckles, in their common order, at every station: where they live, then outward
/// station by station.
class Spreading {
  public:
    Spreading(std::span<const MatchedStation> stations, const std::vector<Knuckle>& ordered,
              Length breadth)
        : stations_(stations), ordered_(ordered), breadth_(breadth) {
        for (const auto& station : stations_) {
            std::vector<Length> girth(ordered_.size() + 2);
            girth.back() = station.contour->girth.back();
            girths_.push_back(std::move(girth));
        }
        for (std::size_t k = 0; k < ordered_.size(); ++k) {
            for (std::size_t s = ordered_[k].first; s < ordered_[k].end(); ++s) {
                girths_[s][k + 1] = ordered_[k].girthAt(s);
            }
        }
    }

    Landmarks run() {
        for (std::size_t k = 0; k < ordered_.size(); ++k) {
            for (std::size_t s = ordered_[k].first; s-- > 0;) goOn(k, s + 1, s);
            for (std::size_t s = ordered_[k].end(); s < stations_.size(); ++s) goOn(k, s - 1, s);
        }
        for (std::size_t s = 0; s < stations_.size(); ++s) keepOrder(s);
        return std::move(girths_);
    }

  private:
    /// Whether the landmark (0 the first, then the knuckles, then the last) lives at a station.
    [[nodiscard]] bool lives(std::size_t landmark, std::size_t s) const {
        return landmark == 0 || landmark > ordered_.size() || ordered_[landmark - 1].livesAt(s);
    }

    /// From one station to the next outward: first to the place most like the last one, and then at
    /// the same share between the landmarks that live at both, like any other line of the surface.
    void goOn(std::size_t k, std::size_t known, std::size_t s) {
        const Knuckle& knuckle = ordered_[k];
        if (knuckle.livesAt(known)) {
            const Place& last = knuckle.places[known - knuckle.first];
            girths_[s][k + 1] = mostAlike(stations_[s], last, breadth_);
            return;
        }
        std::size_t below = k;
        while (!lives(below, known) || !lives(below, s)) --below;
        std::size_t above = k + 2;
        while (!lives(above, known) || !lives(above, s)) ++above;
        const Stretch there(*stations_[known].contour, girths_[known][below],
                            girths_[known][above]);
        const Stretch here(*stations_[s].contour, girths_[s][below], girths_[s][above]);
        girths_[s][k + 1] = here.girthAt(there.shareAt(girths_[known][k + 1]));
    }

    /// Knuckles that live are where they are; the others make way for them and for each other.
    void keepOrder(std::size_t s) {
        auto& girth = girths_[s];
        Length ceiling = girth.back();
        for (std::size_t l = girth.size() - 1; l-- > 1;) {
            if (lives(l, s)) ceiling = girth[l];
            girth[l] = min(girth[l], ceiling);
        }
        for (std::size_t l = 1; l < girth.size(); ++l) girth[l] = max(girth[l], girth[l - 1]);
    }

    std::span<const MatchedStation> stations_;
    const std::vector<Knuckle>& ordered_;
    Length breadth_;
    Landmarks girths_;
};

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
    const Length breadth = greatestBreadth(stations);
    auto ordered = inCommonOrder(chains(stations, breadth), stations);
    // Where the foot contradicts a knuckle, the knuckle is the better guide.
    if (holdFoot) insert(ordered, footOf(stations));
    return Spreading(stations, ordered, breadth).run();
}

}  // namespace fayline::detail
