#include <algorithm>
#include <cmath>

#include "along.h"
#include "contour.h"
#include "hull/surface.h"
#include "landmarks.h"
#include "stretch.h"

namespace fayline {
namespace {

using detail::Contour;
using detail::Landmarks;
using detail::MatchedStation;

constexpr double steepStep = 1.0;         ///< height over length of a step's bay
constexpr double steeperThanBoth = 4.0;   ///< than the bays before and behind it
constexpr double pointsPerSection = 128;  ///< about; more where knuckles divide it
constexpr std::size_t fewestPieces = 2;

using Lines = std::vector<std::vector<SectionPoint>>;  ///< per station, as many points in each

/// Points of one stretch at equal shares passed; the first end is left out.
void divide(const Contour& contour, Length from, Length to, std::size_t pieces,
            std::vector<SectionPoint>& out) {
    const detail::Stretch stretch(contour, from, to);
    for (std::size_t k = 1; k < pieces; ++k) {
        const double share = static_cast<double>(k) / static_cast<double>(pieces);
        out.push_back(pointAt(contour, stretch.girthAt(share)));
    }
    out.push_back(pointAt(contour, to));
}

Lines linesThrough(std::span<const MatchedStation> stations, const Landmarks& landmarks) {
    Lines lines(stations.size());
    for (std::size_t s = 0; s < stations.size(); ++s) {
        lines[s].push_back(stations[s].contour->points.front());
    }
    for (std::size_t k = 1; k < landmarks.front().size(); ++k) {
        double share = 0.0;
        for (std::size_t s = 0; s < stations.size(); ++s) {
            const Length whole = stations[s].contour->girth.back();
            share = std::max(share, (landmarks[s][k] - landmarks[s][k - 1]) / whole);
        }
        if (share <= 0.0) continue;
        const auto pieces =
            std::max(fewestPieces, static_cast<std::size_t>(std::ceil(share * pointsPerSection)));
        for (std::size_t s = 0; s < stations.size(); ++s) {
            divide(*stations[s].contour, landmarks[s][k - 1], landmarks[s][k], pieces, lines[s]);
        }
    }
    return lines;
}

Length lowestOf(const Contour& contour) {
    return std::min_element(contour.points.begin(), contour.points.end(),
                            [](const auto& a, const auto& b) { return a.z < b.z; })
        ->z;
}

std::vector<bool> findSteps(const std::vector<Length>& x, const std::vector<Length>& lowest) {
    std::vector<double> slope;
    for (std::size_t i = 0; i + 1 < x.size(); ++i) {
        slope.push_back(std::abs((lowest[i + 1] - lowest[i]) / (x[i + 1] - x[i])));
    }
    std::vector<bool> step(slope.size(), false);
    for (std::size_t i = 1; i + 1 < slope.size(); ++i) {
        step[i] = slope[i] > steepStep &&
                  slope[i] > steeperThanBoth * std::max(slope[i - 1], slope[i + 1]);
    }
    return step;
}

}  // namespace

/// Builds the bays of a surface.
class Loft {
  public:
    explicit Loft(const Offsets& offsets) {
        for (const auto& station : offsets.stations) {
            std::vector<SectionPoint> points;
            for (const auto& point : station.points) {
                points.push_back({point.halfBreadth, point.height});
            }
            contours_.push_back(detail::contourThrough(std::move(points)));
            x_.push_back(station.x);
            lowest_.push_back(lowestOf(contours_.back()));
            surface_.stations_.push_back({station.id, station.x});
        }
        surface_.bays_.resize(x_.size() - 1);
    }

    LoftedSurface build() {
        const auto step = findSteps(x_, lowest_);
        std::size_t first = 0;
        for (std::size_t bay = 0; bay < step.size(); ++bay) {
            if (!step[bay]) continue;
            buildRun(first, bay);
            buildStep(bay);
            first = bay + 1;
        }
        buildRun(first, x_.size() - 1);
        return std::move(surface_);
    }

  private:
    void buildRun(std::size_t first, std::size_t last) {
        if (first == last) return;
        std::vector<MatchedStation> stations;
        for (std::size_t s = first; s <= last; ++s) {
            stations.push_back({&contours_[s], detail::risenShare(contours_[s])});
        }
        const Lines lines = linesThrough(stations, detail::landmarksOf(stations, false));
        const std::span<const Length> x(&x_[first], stations.size());
        std::vector<Length> y(stations.size());
        std::vector<Length> z(stations.size());
        for (std::size_t k = 0; k < lines.front().size(); ++k) {
            for (std::size_t s = 0; s < stations.size(); ++s) {
                y[s] = lines[s][k].y;
                z[s] = lines[s][k].z;
            }
            const auto ySlopes = detail::slopesAlong(x, y);
            const auto zSlopes = detail::slopesAlong(x, z);
            for (std::size_t bay = 0; bay + 1 < stations.size(); ++bay) {
                surface_.bays_[first + bay].push_back({lines[bay][k], lines[bay + 1][k],
                                                       ySlopes[bay].from, ySlopes[bay].to,
                                                       zSlopes[bay].from, zSlopes[bay].to});
            }
        }
    }

    void buildStep(std::size_t bay) {
        const auto level = [&](std::size_t s, std::size_t other) {
            return lowest_[s] < lowest_[other]
                       ? detail::risenShareAbove(contours_[s], lowest_[other])
                       : detail::risenShare(contours_[s]);
        };
        const std::vector<MatchedStation> stations{{&contours_[bay], level(bay, bay + 1)},
                                                   {&contours_[bay + 1], level(bay + 1, bay)}};
        const Lines lines = linesThrough(stations, detail::landmarksOf(stations, true));
        const Length length = x_[bay + 1] - x_[bay];
        for (std::size_t k = 0; k < lines.front().size(); ++k) {
            const double ySlope = (lines[1][k].y - lines[0][k].y) / length;
            const double zSlope = (lines[1][k].z - lines[0][k].z) / length;
            surface_.bays_[bay].push_back(
                {lines[0][k], lines[1][k], ySlope, ySlope, zSlope, zSlope});
        }
    }

    std::vector<Contour> contours_;
    std::vector<Length> x_;
    std::vector<Length> lowest_;
    LoftedSurface surface_;
};

ResultAll<LoftedSurface> loft(const Offsets& offsets) {
    if (auto problems = checkOffsets(offsets); !problems.empty()) {
        return tl::unexpected(std::move(problems));
    }
    return Loft(offsets).build();
}

}  // namespace fayline
