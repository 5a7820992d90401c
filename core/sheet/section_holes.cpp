#include "section_holes.h"

#include <algorithm>
#include <cmath>

#include "sheet/marks.h"

namespace fayline::plan {

namespace {

constexpr double leastStroke_mm = 0.35;
constexpr double leastCircle_mm = 0.9;

Role roleOf(const SectionHole& hole) {
    return hole.status ? boltRole(*hole.status) : Role::bolt;
}

bool isQuiet(const SectionHole& hole) {
    return hole.small || !hole.status || *hole.status == Status::ok ||
           *hole.status == Status::unloaded;
}

}  // namespace

void addSectionHoles(Drawing& drawing, const SectionInput& input, const DrawFormat& format) {
    const DrawScale& scale = *drawing.scale;
    std::vector<DrawStop> row;
    for (const SectionHole& hole : input.holes) {
        const PointMm from = scale.toDrawing({hole.start.y, hole.start.z});
        const PointMm to = scale.toDrawing({hole.end.y, hole.end.z});
        const double long_mm = std::hypot(to.x - from.x, to.y - from.y);
        const double thick_mm = scale.sizeMm(hole.diameter);
        const Role role = roleOf(hole);
        if (long_mm < 1.5 * thick_mm) {
            drawing.items.push_back({role, hole.id,
                                     shape::Mark{from,
                                                 shape::MarkKind::circle,
                                                 std::max(thick_mm, leastCircle_mm),
                                                 true,
                                                 {leastStroke_mm, {}}}});
        } else {
            const double stroke_mm = std::max(thick_mm, hole.small ? 0.25 : leastStroke_mm);
            drawing.items.push_back(
                {role, hole.id, shape::Line{from, to, {stroke_mm, LineStyle::solid}}});
            const double head_mm = 1.2 * std::max(thick_mm, 2.0 * leastStroke_mm);
            const PointMm across{-(to.y - from.y) / long_mm * head_mm,
                                 (to.x - from.x) / long_mm * head_mm};
            drawing.items.push_back({role, hole.id,
                                     shape::Line{{from.x - across.x, from.y - across.y},
                                                 {from.x + across.x, from.y + across.y},
                                                 {leastStroke_mm, LineStyle::solid}}});
        }
        if (!hole.small) row.push_back({hole.id, from});
        if (isQuiet(hole)) continue;
        const double letter_mm = 0.8 * format.letterMm;
        for (DrawItem& item : statusMark(*hole.status, {from.x, from.y - letter_mm},
                                         {letter_mm, letter_mm}, hole.id))
            drawing.items.push_back(std::move(item));
    }
    std::stable_sort(row.begin(), row.end(),
                     [](const DrawStop& a, const DrawStop& b) { return a.at.x < b.at.x; });
    if (!row.empty()) drawing.rows.push_back(std::move(row));
}

}  // namespace fayline::plan
