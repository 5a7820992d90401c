#include "pinned.h"

#include "sheet/font_metrics.h"
#include "sheet/labels.h"

namespace fayline {

std::vector<DrawItem> pinnedNames(const Drawing& drawing, const PaintMap& map, QSize view,
                                  SizeMm letter) {
    if (drawing.namesAll || drawing.rows.empty() || drawing.rows.front().empty()) return {};
    const double width_mm = view.width() / map.perMm;
    const double height_mm = view.height() / map.perMm;
    const double band_mm = 2.0 * letter.height;
    const double edge_mm = 0.5 * letter.height;
    const PointMm corner = map.unmap({0.0, 0.0});
    // The names stand a little below their stops.
    const double namesAt_mm = drawing.rows.front().front().at.y - corner.y + 2.5 * letter.height;
    if (namesAt_mm > 0.0 && namesAt_mm < height_mm) return {};

    shape::Text name;
    name.letterMm = letter.height;
    name.across = shape::Across::centre;
    name.upright = shape::Upright::middle;
    std::vector<LabelWish> row;
    for (const DrawStop& stop : drawing.rows.front()) {
        const double at_mm = stop.at.x - corner.x;
        name.text = stop.id;
        const double half_mm = textSize(name).width / 2.0;
        if (at_mm - half_mm < edge_mm || at_mm + half_mm > width_mm - edge_mm) continue;
        row.push_back({stop.id, at_mm, 2.0 * half_mm, 0});
    }
    if (row.empty()) return {};

    std::vector<DrawItem> items;
    const double top_mm = height_mm - band_mm;
    items.push_back(
        {Role::paper,
         {},
         shape::Polygon{
             {{0.0, top_mm}, {width_mm, top_mm}, {width_mm, height_mm}, {0.0, height_mm}},
             true,
             std::nullopt}});
    items.push_back({Role::grid, {}, shape::Line{{0.0, top_mm}, {width_mm, top_mm}, {}}});
    for (const std::size_t i : labelsThatFit(row, {letter.height})) {
        name.text = row[i].text;
        name.anchor = {row[i].atMm, top_mm + band_mm / 2.0};
        items.push_back({Role::muted, {}, name});
    }
    return items;
}

}  // namespace fayline
