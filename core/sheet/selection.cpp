#include "sheet/selection.h"

#include <algorithm>

#include "sheet/font_metrics.h"
#include "sheet/parts.h"

namespace fayline {

std::vector<DrawItem> selectionOf(const Drawing& drawing, const std::string& id, SizeMm letter) {
    RectMm box;
    RectMm names;
    for (const DrawItem& item : drawing.items) {
        if (id.empty() || item.id != id) continue;
        RectMm& part = std::holds_alternative<shape::Text>(item.shape) ? names : box;
        part = united(part, boundsOf(item));
    }
    if (box.empty()) box = names;
    if (box.empty()) return {};

    const double letter_mm = letter.height;
    const double margin_mm = 0.35 * letter_mm;
    const double lacking_mm = std::max(0.0, 1.3 * letter_mm - box.width()) / 2.0;
    box = {box.left - margin_mm - lacking_mm, box.top - margin_mm,
           box.right + margin_mm + lacking_mm, box.bottom + margin_mm};

    std::vector<DrawItem> items;
    items.push_back({Role::selection, id,
                     shape::Polygon{roundedRectangle(box, {0.6 * letter_mm, 0.6 * letter_mm}),
                                    false, Stroke{0.4, LineStyle::solid}}});
    if (drawing.namesAll) return items;
    shape::Text name;
    name.text = id;
    name.letterMm = letter_mm;
    name.weight = shape::Weight::bold;
    name.across = shape::Across::centre;
    name.cleared = true;
    const double half_mm = textSize(name).width / 2.0 + margin_mm;
    name.anchor.x = (box.left + box.right) / 2.0;
    if (drawing.size.width > 2.0 * half_mm) {
        name.anchor.x = std::clamp(name.anchor.x, half_mm, drawing.size.width - half_mm);
    }
    name.anchor.y = std::max(box.top - 0.55 * letter_mm, 1.2 * letter_mm);
    items.push_back({Role::selection, id, name});
    return items;
}

}  // namespace fayline
