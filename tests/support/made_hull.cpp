#include "made_hull.h"

#include <cmath>

namespace fayline::test {
namespace {

constexpr double room_mm = 230;
constexpr int stations = 21;
constexpr int points = 9;

std::string mm(double value_mm) {
    return std::to_string(static_cast<long>(std::lround(value_mm))) + " mm";
}

/// Full amidships, fine at the ends: 0 at the ends, 1 in the middle.
double fullness(double along) {
    return std::pow(std::sin(3.14159265358979 * along), 0.6);
}

void offsets(Decisions& d, double length_mm) {
    for (int s = 0; s < stations; ++s) {
        const double along = static_cast<double>(s) / (stations - 1);
        const std::string id = "offsets." + std::to_string(s);
        d.emplace_back(id + ".x", mm(along * length_mm));
        const double greatest_mm = 120 + 1300 * fullness(0.03 + 0.94 * along);
        const double sheer_mm = 2300 + 400 * (2 * along - 1) * (2 * along - 1);
        for (int p = 0; p < points; ++p) {
            const double up = static_cast<double>(p) / (points - 1);
            const std::string place = id + "." + std::to_string(p + 1);
            d.emplace_back(place + ".half_breadth",
                           mm(90 + (greatest_mm - 90) * up * (2 - up) + p));
            d.emplace_back(place + ".height", mm(700 + (sheer_mm - 700) * up));
        }
    }
}

void fastenings(Decisions& d, int strakes, int eachCrossing) {
    const Decisions all{{"heel.kind", "bolt"},
                        {"heel.count", "2"},
                        {"heel.diameter", "1/2 in"},
                        {"heel.length", "5 in"},
                        {"heel.metal", "c65500_h02"},
                        {"arm.kind", "bolt"},
                        {"arm.count", "3"},
                        {"arm.diameter", "1/2 in"},
                        {"arm.metal", "c65500_h02"},
                        {"floor_bolt.kind", "bolt"},
                        {"floor_bolt.count", "2"},
                        {"floor_bolt.diameter", "5/8 in"},
                        {"plank.kind", "wood_screw"},
                        {"plank.count", std::to_string(eachCrossing)},
                        {"plank.gauge", "No. 14"},
                        {"plank.length", "2 in"},
                        {"plank.metal", "c65100_h02"},
                        {"planking.wood", "iroko"},
                        {"planking.thickness", "28 mm"},
                        {"planking.strakes", std::to_string(strakes)}};
    d.insert(d.end(), all.begin(), all.end());
}

}  // namespace

Decisions madeHull(int frames, int strakes, int eachCrossing) {
    const double length_mm = (frames + 3) * room_mm;
    const int fore = frames / 3 + 1, aft = 2 * frames / 3 + 1;
    const double from_mm = fore * room_mm, to_mm = (aft + 2.5) * room_mm;
    Decisions d{{"hull.name", "Made of " + std::to_string(frames)}, {"hull.waterline", "1400 mm"}};
    offsets(d, length_mm);
    const Decisions timbers{
        {"keel.wood", "white_oak"},
        {"keel.from", mm(from_mm - room_mm)},
        {"keel.to", mm(to_mm + room_mm)},
        {"keel.underside_fore", "600 mm"},
        {"keel.underside_aft", "560 mm"},
        {"keel.sided", "210 mm"},
        {"keel.moulded", "150 mm"},
        {"frames.first", mm(2 * room_mm)},
        {"frames.spacing", mm(room_mm)},
        {"frames.count", std::to_string(frames)},
        {"frames.sided", "44 mm"},
        {"frames.moulded", "64 mm"},
        {"frames.wood", "white_oak"},
        {"floors.wood", "white_oak"},
        {"floors.sided", "75 mm"},
        {"floors.throat", "180 mm"},
        {"floors.kind", "none"},
        {"F" + std::to_string(fore) + "-F" + std::to_string(aft) + ".floor.kind", "sawn"},
        {"ballast.metal", "lead_antimony_3"},
        {"ballast.from", mm(from_mm)},
        {"ballast.to", mm(to_mm)},
        {"ballast.breadth_middle", "210 mm"},
        {"ballast.bottom_breadth", "120 mm"},
        {"ballast.depth_middle", "500 mm"},
        {"bolts.count", std::to_string((aft - fore) / 2 + 1)},
        {"bolts.diameter", "7/8 in"},
        {"bolts.metal", "c65500_h02"},
        {"bolts.offset", "30 mm"},
        {"bolts.washer_diameter", "90 mm"},
        {"bolts.washer_thickness", "6 mm"}};
    d.insert(d.end(), timbers.begin(), timbers.end());
    fastenings(d, strakes, eachCrossing);
    return d;
}

}  // namespace fayline::test
