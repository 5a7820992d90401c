#include <algorithm>

#include "quantity/text.h"
#include "stages.h"

namespace fayline {

HullShape loftStage(const LoftInput& input) {
    HullShape shape;
    if (input.offsets.empty()) return shape;
    for (const auto& [id, decided] : input.offsets) {
        OffsetStation station;
        station.id = id;
        if (!decided.x) {
            shape.problems.push_back({"offsets.x", "offsets." + id + ".x",
                                      "the station's place is not decided",
                                      "a length measured aft"});
            continue;
        }
        station.x = *decided.x;
        for (const auto& [index, point] : decided.points) {
            if (!point.halfBreadth || !point.height) {
                shape.problems.push_back(
                    {"offsets.point", "offsets." + id + "." + std::to_string(index),
                     "the point has only one of half-breadth and height", "both, or neither"});
                continue;
            }
            // Its place among those that are there: numbers may leave gaps.
            if (decided.rabbet == index)
                station.rabbet = static_cast<int>(station.points.size()) + 1;
            station.points.push_back({*point.halfBreadth, *point.height, "", ""});
        }
        if (decided.rabbet && !station.rabbet)
            shape.problems.push_back({"offsets.rabbet", "offsets." + id + ".rabbet",
                                      "point " + std::to_string(*decided.rabbet) + " is not there",
                                      "the number of one of the station's points"});
        shape.offsets.stations.push_back(std::move(station));
    }
    std::stable_sort(shape.offsets.stations.begin(), shape.offsets.stations.end(),
                     [](const OffsetStation& a, const OffsetStation& b) {
                         return a.x != b.x ? a.x < b.x : naturalOrder(a.id, b.id) < 0;
                     });
    if (!shape.problems.empty()) return shape;
    auto lofted = loft(shape.offsets);
    if (lofted) {
        shape.surface = std::make_shared<const LoftedSurface>(std::move(*lofted));
        if (auto rabbet = RabbetLine::through(shape.offsets))
            shape.rabbet = std::make_shared<const RabbetLine>(std::move(*rabbet));
    } else {
        shape.problems = std::move(lofted.error());
    }
    return shape;
}

Afloat afloatStage(const AfloatInput& input) {
    Afloat afloat;
    afloat.water = input.water;
    if (!input.hull->surface) {
        afloat.why = "no offsets that make a hull";
        return afloat;
    }
    afloat.waterline = input.waterline.value_or(waterlineOf(input.hull->offsets));
    auto worked = hydrostatics(*input.hull->surface, afloat.waterline, input.water);
    if (worked) {
        afloat.body = *worked;
    } else {
        afloat.why = worked.error().line();
    }
    return afloat;
}

}  // namespace fayline
