#include "hull/rabbet.h"

#include <algorithm>

#include "along.h"
#include "hull/frame_curve.h"

namespace fayline {

std::optional<RabbetLine> RabbetLine::through(const Offsets& offsets) {
    RabbetLine line;
    for (const OffsetStation& station : offsets.stations) {
        if (!station.rabbet || *station.rabbet < 1 ||
            *station.rabbet > static_cast<int>(station.points.size()))
            continue;
        const OffsetPoint& point = station.points[static_cast<std::size_t>(*station.rabbet) - 1];
        line.x_.push_back(station.x);
        line.y_.push_back(point.halfBreadth);
        line.z_.push_back(point.height);
    }
    if (line.x_.size() < 2) return std::nullopt;
    return line;
}

std::optional<SectionPoint> RabbetLine::at(Length x) const {
    if (x < x_.front() || x > x_.back()) return std::nullopt;
    const auto after = std::upper_bound(x_.begin() + 1, x_.end() - 1, x);
    const auto to = static_cast<std::size_t>(after - x_.begin());
    const std::size_t from = to - 1;
    const Length bay = x_[to] - x_[from];
    const double fraction = bay > Length{} ? (x - x_[from]) / bay : 0.0;
    const auto value = [&](const std::vector<Length>& v) {
        return detail::cubicAt(fraction, bay, v[from], v[to], detail::slopesAlong(x_, v)[from]);
    };
    return SectionPoint{max(Length{}, value(y_)), value(z_)};
}

SectionPoint rabbetByRule(const Section& section, Length halfSiding, Length planking,
                          std::optional<Length> lowest) {
    constexpr int steps = 400;
    const auto curve = FrameCurve::above(section, std::nullopt);
    if (!curve) return section.points.back();
    const auto clear = [&](Length along) {
        if (lowest && curve->at(along).z < *lowest) return false;
        return curve->inside(along, planking).y >= halfSiding;
    };
    Length below, above;
    int step = 0;
    for (; step <= steps; ++step) {
        above = curve->girth() * (static_cast<double>(step) / steps);
        if (clear(above)) break;
        below = above;
    }
    if (step > steps) return section.points.back();
    for (int i = 0; i < 20 && below < above; ++i) {
        const Length middle = (below + above) / 2.0;
        (clear(middle) ? above : below) = middle;
    }
    const CurvePoint found = curve->at(above);
    return {found.y, found.z};
}

}  // namespace fayline
