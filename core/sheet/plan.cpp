#include "plan.h"

#include <algorithm>
#include <cmath>
#include <sstream>

#include "sheet/font_metrics.h"

namespace fayline::plan {

void Extent::add(PlanePoint p) {
    if (!isFinite(p.across) || !isFinite(p.up)) return;
    left_ = empty_ ? p.across : min(left_, p.across);
    right_ = empty_ ? p.across : max(right_, p.across);
    bottom_ = empty_ ? p.up : min(bottom_, p.up);
    top_ = empty_ ? p.up : max(top_, p.up);
    empty_ = false;
}

double mmPerMetre(const Extent& extent, SizeMm room, const DrawFormat& format) {
    if (format.mmPerMetre && *format.mmPerMetre > 0.0) return *format.mmPerMetre;
    // A lone point or line still has to be shown at some scale: as if it were a metre long.
    const bool flat = extent.width() <= Length{} && extent.height() <= Length{};
    const double width_m = flat ? 1.0 : extent.width().si();
    const double height_m = flat ? 1.0 : extent.height().si();
    const double room_mm = std::max(room.width, 5.0);
    const double tall_mm = std::max(room.height, 5.0);
    if (width_m <= 0.0) return tall_mm / height_m;
    if (height_m <= 0.0) return room_mm / width_m;
    return std::min(room_mm / width_m, tall_mm / height_m);
}

shape::Text note(std::string text, PointMm at, const DrawFormat& format) {
    shape::Text made;
    made.anchor = at;
    made.text = std::move(text);
    made.letterMm = format.letterMm;
    made.upright = shape::Upright::middle;
    return made;
}

double widthMm(const std::string& text, const DrawFormat& format, shape::Weight weight) {
    return advanceInEms(text, weight) * format.letterMm / capitalHeightInEms();
}

Drawing emptyDrawing(const std::string& says, const DrawFormat& format) {
    Drawing drawing;
    drawing.size = format.size;
    std::vector<std::string> lines;
    std::istringstream words(says);
    for (std::string word; words >> word;) {
        const double room_mm = format.size.width - 4.0 * format.letterMm;
        if (!lines.empty() && widthMm(lines.back() + " " + word, format) <= room_mm) {
            lines.back() += " " + word;
        } else {
            lines.push_back(word);
        }
    }
    const double pitch_mm = 2.2 * format.letterMm;
    double y =
        format.size.height / 2.0 - pitch_mm * (static_cast<double>(lines.size()) - 1.0) / 2.0;
    for (std::string& line : lines) {
        shape::Text text = note(std::move(line), {format.size.width / 2.0, y}, format);
        text.across = shape::Across::centre;
        drawing.items.push_back({Role::muted, {}, text});
        y += pitch_mm;
    }
    return drawing;
}

void addRod(Drawing& drawing, const Rod& rod, Role role, const std::string& id) {
    const double dx = rod.to.x - rod.from.x;
    const double dy = rod.to.y - rod.from.y;
    const double length_mm = std::hypot(dx, dy);
    const PointMm d = length_mm > 0.0 ? PointMm{dx / length_mm, dy / length_mm} : PointMm{0.0, 1.0};
    const auto at = [&](PointMm p, double along_mm, double aside_mm) {
        return PointMm{p.x + d.x * along_mm - d.y * aside_mm,
                       p.y + d.y * along_mm + d.x * aside_mm};
    };
    const auto bar = [&](PointMm p, double from_mm, double to_mm, double half_mm) {
        drawing.items.push_back({role, id,
                                 shape::Polygon{{at(p, from_mm, -half_mm), at(p, from_mm, half_mm),
                                                 at(p, to_mm, half_mm), at(p, to_mm, -half_mm)},
                                                true,
                                                std::nullopt}});
    };
    if (rod.breadthMm > rod.strokeMm) {
        bar(rod.from, 0.0, length_mm, rod.breadthMm / 2.0);
    } else {
        drawing.items.push_back({role, id, shape::Line{rod.from, rod.to, {rod.strokeMm, {}}}});
    }
    const double thick_mm = std::max(0.35 * rod.nutBreadthMm, 0.4);
    bar(rod.from, 0.0, thick_mm, rod.nutBreadthMm / 2.0);
    bar(rod.to, -thick_mm, 0.0, rod.nutBreadthMm / 2.0);
}

}  // namespace fayline::plan
