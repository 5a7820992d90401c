#include "contour.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace fayline::detail {
namespace {

using Radians = double;

constexpr Radians degrees(double v) {
    return v * std::numbers::pi / 180.0;
}
constexpr Radians sharp = degrees(40.0);
constexpr Radians noticeable = degrees(10.0);
constexpr double sharperThanNeighbours = 3.0;
constexpr Radians mostEndBend = degrees(30.0);
constexpr double restOfWeight = 0.01;
constexpr int piecesPerChord = 12;

Radians wrapped(Radians angle) {
    return std::remainder(angle, 2.0 * std::numbers::pi);
}

struct Chord {
    Length length;
    Radians heading = 0.0;
};

Chord chordBetween(SectionPoint a, SectionPoint b) {
    const double dy_m = (b.y - a.y).si();
    const double dz_m = (b.z - a.z).si();
    return {Length::fromSi(std::hypot(dy_m, dz_m)), std::atan2(dz_m, dy_m)};
}

class Drawing {
  public:
    explicit Drawing(std::vector<SectionPoint> given) : given_(std::move(given)) {
        if (given_.front().y > Length{}) given_.insert(given_.begin(), {Length{}, given_[0].z});
        for (std::size_t i = 1; i < given_.size(); ++i) {
            chords_.push_back(chordBetween(given_[i - 1], given_[i]));
        }
        turns_.assign(given_.size(), 0.0);
        turns_[0] = wrapped(2.0 * chords_[0].heading);
        for (std::size_t i = 1; i < chords_.size(); ++i) {
            turns_[i] = wrapped(chords_[i].heading - chords_[i - 1].heading);
        }
        findCorners();
    }

    Contour draw() {
        contour_.points.push_back(given_.front());
        std::size_t start = 0;
        for (std::size_t i = 1; i < given_.size(); ++i) {
            if (i + 1 < given_.size() && !corner_[i]) continue;
            drawSmooth(start, i);
            if (i + 1 < given_.size()) {
                contour_.corners.push_back({contour_.points.size() - 1, turns_[i]});
            }
            start = i;
        }
        measure();
        return std::move(contour_);
    }

  private:
    void findCorners() {
        corner_.assign(given_.size(), false);
        for (std::size_t i = 0; i < chords_.size(); ++i) corner_[i] = std::abs(turns_[i]) >= sharp;
        const std::vector<bool> first = corner_;
        const auto smoothTurn = [&](std::size_t i) {
            return i < chords_.size() && !first[i] ? std::abs(turns_[i]) : 0.0;
        };
        for (std::size_t i = 0; i < chords_.size(); ++i) {
            const Radians turn = std::abs(turns_[i]);
            const Radians neighbour = std::max(smoothTurn(i == 0 ? 1 : i - 1), smoothTurn(i + 1));
            if (turn >= noticeable && turn >= sharperThanNeighbours * neighbour) corner_[i] = true;
        }
    }

    [[nodiscard]] double curvaturePerMetre(std::size_t i) const {
        return std::abs(turns_[i]) / (0.5 * (chords_[i - 1].length + chords_[i].length).si());
    }

    /// Direction at a point between two chords of one smooth stretch, first < i < last. On a circle
    /// it is the tangent; beside a straight stretch it is the straight's (after Akima's weights,
    /// taken on curvature so that the spacing of the points does not matter).
    [[nodiscard]] Radians headingAt(std::size_t i, std::size_t first, std::size_t last) const {
        const double here = curvaturePerMetre(i);
        std::optional<double> before;
        std::optional<double> after;
        if (i - 1 > first || (i == 1 && !corner_[0])) {
            before =
                i > 1 ? curvaturePerMetre(i - 1) : std::abs(turns_[0]) / chords_[0].length.si();
        }
        if (i + 1 < last) after = curvaturePerMetre(i + 1);
        const double left = before ? *before : after.value_or(here);
        const double right = after ? *after : left;
        const double onLeft = (right + restOfWeight * here) / chords_[i - 1].length.si();
        const double onRight = (left + restOfWeight * here) / chords_[i].length.si();
        const double sum = onLeft + onRight;
        const double share = sum > 0.0 ? onRight / sum : 0.5;
        return chords_[i - 1].heading + turns_[i] * share;
    }

    static Radians mirrored(Radians chord, Radians atOtherEnd) {
        return chord + std::clamp(wrapped(chord - atOtherEnd), -mostEndBend, mostEndBend);
    }

    void drawSmooth(std::size_t first, std::size_t last) {
        std::vector<Radians> heading(last - first + 1);
        for (std::size_t i = first + 1; i < last; ++i) {
            heading[i - first] = headingAt(i, first, last);
        }
        const bool levelStart = first == 0 && !corner_[0];
        if (last - first == 1) {
            heading.front() = levelStart ? 0.0 : chords_[first].heading;
            heading.back() = mirrored(chords_[first].heading, heading.front());
        } else {
            heading.front() = levelStart ? 0.0 : mirrored(chords_[first].heading, heading[1]);
            heading.back() = mirrored(chords_[last - 1].heading, heading[last - first - 1]);
        }
        for (std::size_t i = first; i < last; ++i) {
            drawChord(i, heading[i - first], heading[i - first + 1]);
        }
    }

    /// A cubic from given point i to the next. The length of its end tangents is the one that makes
    /// it follow a circle when both ends bend alike: chord / cos^2(a quarter of the whole turn).
    void drawChord(std::size_t i, Radians from, Radians to) {
        const SectionPoint a = given_[i];
        const SectionPoint b = given_[i + 1];
        const Radians bend = std::abs(wrapped(from - chords_[i].heading)) +
                             std::abs(wrapped(to - chords_[i].heading));
        if (bend > 1e-9) {
            const Length pull = chords_[i].length / std::pow(std::cos(bend / 4.0), 2);
            for (int k = 1; k < piecesPerChord; ++k) {
                const double t = static_cast<double>(k) / piecesPerChord;
                const double onB = t * t * (3.0 - 2.0 * t);
                const double onFrom = t * (1.0 - t) * (1.0 - t);
                const double onTo = -t * t * (1.0 - t);
                const Length y = a.y * (1.0 - onB) + b.y * onB +
                                 pull * (onFrom * std::cos(from) + onTo * std::cos(to));
                const Length z = a.z * (1.0 - onB) + b.z * onB +
                                 pull * (onFrom * std::sin(from) + onTo * std::sin(to));
                contour_.points.push_back({max(y, Length{}), z});
            }
        }
        contour_.points.push_back(b);
    }

    void measure() {
        const auto& points = contour_.points;
        contour_.girth.assign(points.size(), Length{});
        contour_.rise.assign(points.size(), Length{});
        for (std::size_t i = 1; i < points.size(); ++i) {
            const Length dz = points[i].z - points[i - 1].z;
            contour_.girth[i] =
                contour_.girth[i - 1] + chordBetween(points[i - 1], points[i]).length;
            contour_.rise[i] = contour_.rise[i - 1] + abs(dz);
        }
    }

    std::vector<SectionPoint> given_;
    std::vector<Chord> chords_;
    std::vector<Radians> turns_;
    std::vector<bool> corner_;
    Contour contour_;
};

}  // namespace

Contour contourThrough(std::vector<SectionPoint> points) {
    return Drawing(std::move(points)).draw();
}

}  // namespace fayline::detail
