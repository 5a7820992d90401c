#include "sheet/scale_bar.h"

#include <algorithm>

#include "sheet/font_metrics.h"

namespace fayline {

namespace {

struct Choice {
    double count;
    const char* unit;
    int parts;
};

Length lengthOf(const Choice& choice) {
    const std::string unit = choice.unit;
    if (unit == "in") return inches(choice.count);
    if (unit == "ft") return inches(12.0 * choice.count);
    if (unit == "mm") return millimetres(choice.count);
    return metres(choice.count);
}

constexpr Choice inchChoices[] = {{1, "in", 4},  {2, "in", 2},  {3, "in", 3},  {6, "in", 6},
                                  {1, "ft", 4},  {2, "ft", 4},  {3, "ft", 3},  {5, "ft", 5},
                                  {10, "ft", 5}, {20, "ft", 4}, {50, "ft", 5}, {100, "ft", 5}};
constexpr Choice metricChoices[] = {{10, "mm", 5},  {20, "mm", 4},  {50, "mm", 5}, {100, "mm", 5},
                                    {200, "mm", 4}, {500, "mm", 5}, {1, "m", 5},   {2, "m", 4},
                                    {5, "m", 5},    {10, "m", 5},   {20, "m", 4},  {50, "m", 5}};

ScaleLength described(const Choice& choice) {
    return {lengthOf(choice), std::to_string(static_cast<int>(choice.count)) + " " + choice.unit,
            choice.parts};
}

template <std::size_t n>
ScaleLength longest(const Choice (&choices)[n], const DrawScale& scale, double room_mm) {
    const Choice* best = &choices[0];
    for (const Choice& choice : choices) {
        if (scale.sizeMm(lengthOf(choice)) <= room_mm) best = &choice;
    }
    return described(*best);
}

}  // namespace

ScaleLength scaleLength(const DrawScale& scale, SizeMm room, UnitSystem units) {
    if (units == UnitSystem::inches) return longest(inchChoices, scale, room.width);
    return longest(metricChoices, scale, room.width);
}

std::vector<DrawItem> scaleBar(const DrawScale& scale, PointMm rightEnd, SizeMm room, SizeMm letter,
                               UnitSystem units) {
    shape::Text figure;
    figure.letterMm = letter.height;
    figure.upright = shape::Upright::middle;
    figure.across = shape::Across::right;
    const double space_mm = 0.5 * letter.height;
    const double figures_mm =
        (advanceInEms("0") + advanceInEms("500 mm")) * letter.height / capitalHeightInEms() +
        2.0 * space_mm;
    const ScaleLength chosen =
        scaleLength(scale, {std::max(0.0, room.width - figures_mm), room.height}, units);

    std::vector<DrawItem> items;
    figure.text = chosen.text;
    figure.anchor = rightEnd;
    const double right = rightEnd.x - textSize(figure).width - space_mm;
    const double left = right - scale.sizeMm(chosen.length);
    const double half_mm = 0.25 * letter.height;
    const Stroke edge{0.18, LineStyle::solid};
    for (int i = 0; i < chosen.parts; ++i) {
        const double a = left + (right - left) * i / chosen.parts;
        const double b = left + (right - left) * (i + 1) / chosen.parts;
        items.push_back({Role::label,
                         {},
                         shape::Polygon{{{a, rightEnd.y - half_mm},
                                         {b, rightEnd.y - half_mm},
                                         {b, rightEnd.y + half_mm},
                                         {a, rightEnd.y + half_mm}},
                                        i % 2 == 0,
                                        edge}});
    }
    items.push_back({Role::label, {}, figure});
    figure.text = std::string("0");
    figure.anchor.x = left - space_mm;
    items.push_back({Role::label, {}, figure});
    return items;
}

}  // namespace fayline
