#include "hull/surface.h"

#include <algorithm>

#include "along.h"

namespace fayline {
namespace {

constexpr int piecesPerBay = 8;  ///< of the lines for drawing

}  // namespace

SectionPoint LoftedSurface::Strand::at(double fraction, Length bay) const {
    const Length y = detail::cubicAt(fraction, bay, from.y, to.y, {yFrom, yTo});
    const Length z = detail::cubicAt(fraction, bay, from.z, to.z, {zFrom, zTo});
    return {max(y, Length{}), z};
}

std::size_t LoftedSurface::bayAt(Length x) const {
    const auto behind = std::upper_bound(stations_.begin(), stations_.end(), x,
                                         [](Length at, const Station& s) { return at < s.x; });
    const auto station = static_cast<std::size_t>(behind - stations_.begin());
    return std::clamp<std::size_t>(station, 1, bays_.size()) - 1;
}

double LoftedSurface::fractionOf(std::size_t bay, Length x) const {
    const Length fore = stations_[bay].x;
    return std::clamp((x - fore) / (stations_[bay + 1].x - fore), 0.0, 1.0);
}

Section LoftedSurface::sectionIn(std::size_t bay, double fraction) const {
    const Length fore = stations_[bay].x;
    const Length length = stations_[bay + 1].x - fore;
    Section section;
    section.x = fore + length * fraction;
    section.points.reserve(bays_[bay].size());
    for (const auto& strand : bays_[bay]) section.points.push_back(strand.at(fraction, length));
    return section;
}

Section LoftedSurface::sectionAt(Length x) const {
    const std::size_t bay = bayAt(x);
    Section section = sectionIn(bay, fractionOf(bay, x));
    section.x = max(foreEnd(), min(x, afterEnd()));
    return section;
}

Length LoftedSurface::lowestAt(Length x) const {
    return sectionAt(x).lowest();
}

Length LoftedSurface::sheerHeightAt(Length x) const {
    const std::size_t bay = bayAt(x);
    return bays_[bay].back().at(fractionOf(bay, x), stations_[bay + 1].x - stations_[bay].x).z;
}

std::vector<Point> LoftedSurface::profileLine() const {
    std::vector<Point> line;
    for (std::size_t bay = 0; bay < bays_.size(); ++bay) {
        for (int k = bay == 0 ? 0 : 1; k <= piecesPerBay; ++k) {
            const Section section = sectionIn(bay, static_cast<double>(k) / piecesPerBay);
            line.push_back({section.x, Length{}, section.lowest()});
        }
    }
    return line;
}

std::vector<Point> LoftedSurface::sheerLine() const {
    std::vector<Point> line;
    for (std::size_t bay = 0; bay < bays_.size(); ++bay) {
        const Length fore = stations_[bay].x;
        const Length length = stations_[bay + 1].x - fore;
        for (int k = bay == 0 ? 0 : 1; k <= piecesPerBay; ++k) {
            const double fraction = static_cast<double>(k) / piecesPerBay;
            const SectionPoint top = bays_[bay].back().at(fraction, length);
            line.push_back({fore + length * fraction, top.y, top.z});
        }
    }
    return line;
}

}  // namespace fayline
