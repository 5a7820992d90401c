#include "table_builder.h"

namespace fayline::table {
namespace {

std::optional<Length>& pointLength(Project& p, const Address& a,
                                   std::optional<Length> OffsetPointDecisions::*member) {
    return p.offsets[a.place].points[a.index].*member;
}

std::function<void(Project&, const Address&, const Value*)> offsetSetter(
    std::optional<Length> OffsetPointDecisions::*member) {
    return [member](Project& p, const Address& a, const Value* value) {
        std::optional<Length>& slot = pointLength(p, a, member);
        if (value == nullptr) {
            slot.reset();
        } else {
            slot = std::get<Length>(*value);
        }
        auto& station = p.offsets[a.place];
        if (station.points[a.index] == OffsetPointDecisions{}) station.points.erase(a.index);
        if (station == OffsetStationDecisions{}) p.offsets.erase(a.place);
    };
}

}  // namespace

std::vector<Field> hullRows() {
    return {
        {"hull.name",
         ValueKind::text,
         0,
         0,
         "up to 60 letters",
         {},
         "hull",
         "name",
         "What the boat is called; printed on every sheet.",
         setter<std::string>([](Project & p, const Address&) -> auto& { return p.hull.name; })},
        {"hull.displacement",
         ValueKind::mass,
         10,
         500e3,
         "10 kg to 500 t",
         {},
         "hull",
         "displacement",
         "Mass of the boat afloat, everything aboard, as the designer states it.",
         setter<Mass>([](Project & p, const Address&) -> auto& { return p.hull.displacement; })},
        {"hull.waterline",
         ValueKind::length,
         -20,
         20,
         "-20 m to 20 m",
         {},
         "hull",
         "waterline",
         "Height of the load waterline above base.",
         setter<Length>([](Project & p, const Address&) -> auto& { return p.hull.waterline; })},
        {"hull.water_density",
         ValueKind::density,
         900,
         1100,
         "900 kg/m3 to 1100 kg/m3",
         {},
         "hull",
         "water density",
         "Salt water unless decided: 1025 kg/m3.",
         setter<Density>([](Project & p, const Address&) -> auto& { return p.hull.waterDensity; })},
        {"hull.units",
         ValueKind::choice,
         0,
         0,
         "",
         {"inches", "millimetres"},
         "hull",
         "units",
         "How lengths are shown on screen and paper.",
         setter<std::string>([](Project & p, const Address&) -> auto& { return p.hull.units; })},
        {"hull.basis",
         ValueKind::choice,
         0,
         0,
         "",
         {"us", "ec5"},
         "hull",
         "leading basis",
         "Which timber basis leads on screen; the other is always worked out too.",
         setter<std::string>([](Project & p, const Address&) -> auto& { return p.hull.basis; })},
        {"offsets.*.x",
         ValueKind::length,
         -200,
         200,
         "-200 m to 200 m",
         {},
         "offsets",
         "station",
         "Where the lofting station stands, measured aft.",
         entrySetter<Length, OffsetStationDecisions>(
             [](Project & p) -> auto& { return p.offsets; }, [](auto& s) -> auto& { return s.x; })},
        {"offsets.*.rabbet",
         ValueKind::count,
         1,
         1000,
         "1 to 1000",
         {},
         "offsets",
         "rabbet",
         "Which of the station's points, counted from the keel, lies on the rabbet line.",
         entrySetter<int, OffsetStationDecisions>(
             [](Project & p) -> auto& { return p.offsets; },
             [](auto& s) -> auto& { return s.rabbet; })},
        {"offsets.*.#.half_breadth",
         ValueKind::length,
         0,
         50,
         "0 mm to 50 m",
         {},
         "offsets",
         "half-breadth",
         "Distance out from the centreline.",
         offsetSetter(&OffsetPointDecisions::halfBreadth)},
        {"offsets.*.#.height",
         ValueKind::length,
         -50,
         50,
         "-50 m to 50 m",
         {},
         "offsets",
         "height",
         "Height above base.",
         offsetSetter(&OffsetPointDecisions::height)},
    };
}

}  // namespace fayline::table
