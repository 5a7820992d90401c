#include "table_builder.h"

namespace fayline::table {
namespace {

constexpr Span none{0, 0, ""};
constexpr Span name{0, 0, "a metal of the catalogue"};
constexpr Span washer{0.004, 0.3, "4 mm to 300 mm"};

/// Where a group's decisions stand: in front of its name, and the section a form shows them in.
struct Level {
    std::string prefix;   ///< "", "F#.", "F#.P.", "strake#."
    std::string section;  ///< "heel" for the set, "heel at" for one place
};

/// The entry of the map a decision belongs to: "heel", "F9.heel", "F9.P.heel", "strake4.plank".
std::string keyOf(const Level& level, const std::string& group, const Address& address) {
    if (level.prefix.empty()) return group;
    const std::string side = level.prefix == "F#.P." ? ".P" : level.prefix == "F#.S." ? ".S" : "";
    return address.place + side + "." + group;
}

template <typename T>
void add(std::vector<Field>& rows, const Level& level, const std::string& group, const char* field,
         ValueKind kind, Span span, std::vector<std::string> choices, const char* label,
         const char* help, std::optional<T> FasteningDecisions::*member) {
    rows.push_back({level.prefix + group + "." + field, kind, span.low, span.high, span.words,
                    std::move(choices), level.section, label, help,
                    [level, group, member](Project& p, const Address& address, const Value* value) {
                        const std::string key = keyOf(level, group, address);
                        std::optional<T>& slot = p.fastening[key].*member;
                        if (value == nullptr) {
                            slot.reset();
                        } else {
                            slot = std::get<T>(*value);
                        }
                        if (p.fastening[key] == FasteningDecisions{}) p.fastening.erase(key);
                    }});
}

void addGroup(std::vector<Field>& rows, const Level& level, const std::string& group, int most) {
    using F = FasteningDecisions;
    const std::string upTo = "0 to " + std::to_string(most);
    add<std::string>(rows, level, group, "kind", ValueKind::choice, none,
                     {"wood_screw", "bolt", "drift", "rivet"}, "kind",
                     "Screw, bolt, drift or rivet.", &F::kind);
    add<int>(rows, level, group, "count", ValueKind::count, Span{0, static_cast<double>(most), ""},
             {}, "number", "How many on each side, arm, crossing or end.", &F::count);
    add<int>(rows, level, group, "gauge", ValueKind::gauge, Span{0, 30, "No. 0 to No. 30"}, {},
             "screw gauge", "Gauge of the screw.", &F::gauge);
    add<Length>(rows, level, group, "diameter", ValueKind::length,
                Span{0.0015, 0.06, "1.5 mm to 60 mm"}, {}, "diameter",
                "Body of a bolt, drift or round rivet; side of a square one.", &F::diameter);
    add<std::string>(rows, level, group, "section", ValueKind::choice, none, {"round", "square"},
                     "section", "Round or square, of a rivet.", &F::section);
    add<Length>(rows, level, group, "length", ValueKind::length, Span{0.005, 2, "5 mm to 2 m"}, {},
                "length", "Length of a screw, over its head; of a drift.", &F::length);
    add<std::string>(rows, level, group, "metal", ValueKind::metalName, name, {}, "metal",
                     "What it is made of.", &F::metal);
    add<Length>(rows, level, group, "washer_diameter", ValueKind::length, washer, {},
                "washer or rove diameter", "Outer diameter of washer, ring or rove.",
                &F::washerDiameter);
    add<Length>(rows, level, group, "washer_thickness", ValueKind::length,
                Span{0.0003, 0.03, "0.3 mm to 30 mm"}, {}, "washer or rove thickness",
                "Thickness of washer, ring or rove.", &F::washerThickness);
    add<Length>(rows, level, group, "counterbore", ValueKind::length,
                Span{0, 0.2, "0 mm to 200 mm"}, {}, "counterbore depth",
                "How deep the head is sunk under its bung.", &F::counterbore);
    add<std::string>(rows, level, group, "reason", ValueKind::text, Span{0, 0, "up to 400 letters"},
                     {}, "reason", "Why, in the builder's words.", &F::reason);
}

template <typename T>
Field backboneField(const char* field, ValueKind kind, Span span, std::vector<std::string> choices,
                    const char* label, const char* help,
                    std::optional<T> BackboneDecisions::*member) {
    return {std::string("B.*.") + field,
            kind,
            span.low,
            span.high,
            span.words,
            std::move(choices),
            "backbone",
            label,
            help,
            entrySetter<T, BackboneDecisions>(
                [](Project & p) -> auto& { return p.backbone; },
                [member](auto& b) -> auto& { return b.*member; })};
}

void addBackbone(std::vector<Field>& rows) {
    using B = BackboneDecisions;
    constexpr Span place{-200, 200, "-200 m to 200 m"};
    rows.push_back(backboneField<std::string>("kind", ValueKind::choice, none, {"bolt", "drift"},
                                              "kind", "Bolts or drifts.", &B::kind));
    rows.push_back(backboneField<int>("count", ValueKind::count, Span{0, 40, ""}, {}, "number",
                                      "How many in the joint.", &B::count));
    rows.push_back(backboneField<Length>("diameter", ValueKind::length,
                                         Span{0.004, 0.06, "4 mm to 60 mm"}, {}, "diameter",
                                         "Body of bolt or drift.", &B::diameter));
    rows.push_back(backboneField<Length>("length", ValueKind::length, Span{0.02, 4, "20 mm to 4 m"},
                                         {}, "length", "Length of each bolt or drift in the wood.",
                                         &B::length));
    rows.push_back(backboneField<std::string>("metal", ValueKind::metalName, name, {}, "metal",
                                              "What it is made of.", &B::metal));
    rows.push_back(backboneField<Length>("fore_x", ValueKind::length, place, {}, "fore end, aft",
                                         "Fore end of the joint's line, measured aft.", &B::foreX));
    rows.push_back(backboneField<Length>("fore_height", ValueKind::length, place, {},
                                         "fore end, height", "Its height above base.",
                                         &B::foreHeight));
    rows.push_back(backboneField<Length>("aft_x", ValueKind::length, place, {}, "after end, aft",
                                         "After end of the joint's line, measured aft.", &B::aftX));
    rows.push_back(backboneField<Length>("aft_height", ValueKind::length, place, {},
                                         "after end, height", "Its height above base.",
                                         &B::aftHeight));
    rows.push_back(backboneField<std::string>("upper", ValueKind::text,
                                              Span{0, 0, "up to 400 letters"}, {}, "upper member",
                                              "The timber on the head side.", &B::upper));
    rows.push_back(backboneField<std::string>("lower", ValueKind::text,
                                              Span{0, 0, "up to 400 letters"}, {}, "lower member",
                                              "The timber on the point side.", &B::lower));
    rows.push_back(backboneField<std::string>("reason", ValueKind::text,
                                              Span{0, 0, "up to 400 letters"}, {}, "reason",
                                              "Why, in the builder's words.", &B::reason));
}

}  // namespace

std::vector<Field> fasteningRows() {
    std::vector<Field> rows{
        {"planking.wood",
         ValueKind::woodName,
         0,
         0,
         "a wood of the catalogue",
         {},
         "planking",
         "wood",
         "Wood of the planking.",
         setter<std::string>([](Project & p, const Address&) -> auto& { return p.planking.wood; })},
        {"planking.thickness",
         ValueKind::length,
         0.004,
         0.2,
         "4 mm to 200 mm",
         {},
         "planking",
         "thickness",
         "Planking as finished.",
         setter<Length>([](Project & p, const Address&) -> auto& { return p.planking.thickness; })},
        {"planking.strakes",
         ValueKind::count,
         1,
         60,
         "1 to 60",
         {},
         "planking",
         "number of strakes",
         "On each side, garboard and sheer strake included.",
         setter<int>([](Project & p, const Address&) -> auto& { return p.planking.strakes; })},
        {"planking.longest",
         ValueKind::length,
         0.5,
         30,
         "500 mm to 30 m",
         {},
         "planking",
         "longest plank",
         "Longest plank to be had; strakes longer than this get butts.",
         setter<Length>([](Project & p, const Address&) -> auto& { return p.planking.longest; })},
        {"planking.butt_block",
         ValueKind::length,
         0.004,
         0.2,
         "4 mm to 200 mm",
         {},
         "planking",
         "butt blocks",
         "Thickness of the blocks behind butts; else as the planking.",
         setter<Length>([](Project & p, const Address&) -> auto& { return p.planking.buttBlock; })},
        {"strake#.width",
         ValueKind::length,
         0.02,
         0.6,
         "20 mm to 600 mm",
         {},
         "strake",
         "width",
         "Greatest width of this strake.",
         [](Project& p, const Address& a, const Value* value) {
             if (value == nullptr) {
                 p.strakeWidth.erase(a.place);
             } else {
                 p.strakeWidth[a.place] = std::get<Length>(*value);
             }
         }},
    };
    for (const char* group : {"heel", "arm", "floor_bolt"}) {
        const int most = 12;
        addGroup(rows, {"", group}, group, most);
        addGroup(rows, {"F#.", std::string(group) + " at"}, group, most);
        if (std::string(group) == "floor_bolt") continue;
        addGroup(rows, {"F#.P.", std::string(group) + " at"}, group, most);
        addGroup(rows, {"F#.S.", std::string(group) + " at"}, group, most);
    }
    addGroup(rows, {"", "plank"}, "plank", 6);
    addGroup(rows, {"F#.", "plank at"}, "plank", 6);
    addGroup(rows, {"strake#.", "plank at"}, "plank", 6);
    for (const char* group : {"butt", "hood", "garboard"}) addGroup(rows, {"", group}, group, 24);
    addBackbone(rows);
    return rows;
}

}  // namespace fayline::table
