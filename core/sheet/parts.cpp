#include "sheet/parts.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "sheet/font_metrics.h"

namespace fayline {

namespace {

struct Direction {
    double x = 1.0, y = 0.0;
};

PointMm along(PointMm p, Direction d, double by_mm) {
    return {p.x + d.x * by_mm, p.y + d.y * by_mm};
}

DrawItem item(Shape shape) {
    return {Role::dimension, {}, std::move(shape)};
}

/// A slim filled head, its tip at a place, pointing along d.
DrawItem arrowHead(PointMm tip, Direction d, double length_mm) {
    const Direction side{-d.y, d.x};
    const PointMm foot = along(tip, d, -length_mm);
    return item(shape::Polygon{
        {tip, along(foot, side, length_mm / 6.0), along(foot, side, -length_mm / 6.0)}, true, {}});
}

/// The angle at which text along a line reads from below or from the right of the sheet.
double readingAngleDeg(Direction d) {
    double angle = std::atan2(-d.y, d.x) * 180.0 / std::numbers::pi;
    if (angle > 90.0 + 1e-9) angle -= 180.0;
    if (angle <= -90.0 + 1e-9) angle += 180.0;
    return angle;
}

}  // namespace

std::vector<shape::Line> linesOf(const shape::Hatch& hatch) {
    std::vector<shape::Line> lines;
    if (hatch.points.size() < 3 || !(hatch.spacingMm > 0.0)) return lines;
    const double angle = hatch.angleDeg * std::numbers::pi / 180.0;
    const Direction d{std::cos(angle), -std::sin(angle)};
    const Direction normal{-d.y, d.x};
    const auto level = [&](PointMm p) { return p.x * normal.x + p.y * normal.y; };
    const auto place = [&](PointMm p) { return p.x * d.x + p.y * d.y; };
    double least = level(hatch.points.front());
    double most = least;
    for (const PointMm& p : hatch.points) {
        least = std::min(least, level(p));
        most = std::max(most, level(p));
    }
    const auto first = static_cast<long>(std::ceil(least / hatch.spacingMm));
    const auto last = static_cast<long>(std::floor(most / hatch.spacingMm));
    std::vector<double> crossings;
    for (long i = first; i <= last; ++i) {
        const double at = static_cast<double>(i) * hatch.spacingMm;
        crossings.clear();
        for (std::size_t k = 0; k < hatch.points.size(); ++k) {
            const PointMm& a = hatch.points[k];
            const PointMm& b = hatch.points[(k + 1) % hatch.points.size()];
            // Half open, so that a corner on the line counts once.
            if ((level(a) <= at) == (level(b) <= at)) continue;
            const double t = (at - level(a)) / (level(b) - level(a));
            crossings.push_back(place(a) + t * (place(b) - place(a)));
        }
        std::sort(crossings.begin(), crossings.end());
        for (std::size_t k = 0; k + 1 < crossings.size(); k += 2) {
            const PointMm foot{normal.x * at, normal.y * at};
            lines.push_back(
                {along(foot, d, crossings[k]), along(foot, d, crossings[k + 1]), hatch.stroke});
        }
    }
    return lines;
}

std::vector<DrawItem> partsOf(const shape::Dimension& dimension) {
    std::vector<DrawItem> parts;
    const double dx = dimension.to.x - dimension.from.x;
    const double dy = dimension.to.y - dimension.from.y;
    const double length_mm = std::hypot(dx, dy);
    const Direction d = length_mm > 0.0 ? Direction{dx / length_mm, dy / length_mm} : Direction{};
    const Direction left{d.y, -d.x};
    const PointMm from = along(dimension.from, left, dimension.offsetMm);
    const PointMm to = along(dimension.to, left, dimension.offsetMm);
    const double letter_mm = dimension.letterMm;
    const Stroke thin{0.25, LineStyle::solid};

    if (dimension.offsetMm != 0.0) {
        const double sign = dimension.offsetMm < 0.0 ? -1.0 : 1.0;
        const double gap_mm = std::min(0.4 * letter_mm, std::abs(dimension.offsetMm) / 2.0);
        const double past_mm = 0.5 * letter_mm;
        for (const auto& [foot, end] : {std::pair{dimension.from, from}, {dimension.to, to}}) {
            parts.push_back(item(shape::Line{along(foot, left, sign * gap_mm),
                                             along(end, left, sign * past_mm), thin}));
        }
    }
    parts.push_back(item(shape::Line{from, to, thin}));

    const double head_mm = std::min(letter_mm, length_mm / 2.0);
    const bool running = dimension.kind == shape::DimensionKind::running;
    if (head_mm > 0.0) {
        parts.push_back(arrowHead(to, d, head_mm));
        if (!running) parts.push_back(arrowHead(from, {-d.x, -d.y}, head_mm));
    }
    if (running) {
        parts.push_back(
            item(shape::Mark{from, shape::MarkKind::circle, 0.7 * letter_mm, false, thin}));
    }

    shape::Text figure;
    figure.text = dimension.kind == shape::DimensionKind::auxiliary ? "(" + dimension.text + ")"
                                                                    : dimension.text;
    figure.letterMm = letter_mm;
    figure.across = shape::Across::centre;
    figure.angleDeg = readingAngleDeg(d);
    const double angle = figure.angleDeg * std::numbers::pi / 180.0;
    const Direction up{-std::sin(angle), -std::cos(angle)};
    const PointMm middle{(from.x + to.x) / 2.0, (from.y + to.y) / 2.0};
    figure.anchor = along(running ? to : middle, up, 0.45 * letter_mm);
    parts.push_back(item(figure));
    return parts;
}

std::vector<PointMm> roundedRectangle(const RectMm& rect, SizeMm corner) {
    std::vector<PointMm> points;
    const double rx = std::min(corner.width, rect.width() / 2.0);
    const double ry = std::min(corner.height, rect.height() / 2.0);
    const struct {
        double x, y, start;
    } corners[] = {{rect.right - rx, rect.top + ry, -90.0},
                   {rect.right - rx, rect.bottom - ry, 0.0},
                   {rect.left + rx, rect.bottom - ry, 90.0},
                   {rect.left + rx, rect.top + ry, 180.0}};
    constexpr int steps = 4;
    for (const auto& c : corners) {
        for (int i = 0; i <= steps; ++i) {
            const double angle = (c.start + 90.0 * i / steps) * std::numbers::pi / 180.0;
            points.push_back({c.x + rx * std::cos(angle), c.y + ry * std::sin(angle)});
        }
    }
    return points;
}

}  // namespace fayline
