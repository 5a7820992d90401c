#include "table_builder.h"

namespace fayline::table {
namespace {

/// Every load case there is to be; the builder's own are called own.NAME.
const std::vector<std::string>& caseNames() {
    static const std::vector<std::string> names{"knockdown_port",
                                                "knockdown_starboard",
                                                "sailing_port",
                                                "sailing_starboard",
                                                "grounding_up",
                                                "grounding_aft",
                                                "grounding_forward",
                                                "grounding_port",
                                                "grounding_starboard",
                                                "pounding_fore",
                                                "pounding_aft",
                                                "sea_bottom",
                                                "sea_side",
                                                "rig",
                                                "swelling",
                                                "springback",
                                                "slings",
                                                "on_keel",
                                                "own.*"};
    return names;
}

template <typename T>
Field caseField(const char* name, ValueKind kind, Span span, std::vector<std::string> choices,
                const char* label, const char* help, std::optional<T> CaseDecisions::*member) {
    return {std::string("case.*.") + name,
            kind,
            span.low,
            span.high,
            span.words,
            std::move(choices),
            "cases",
            label,
            help,
            entrySetter<T, CaseDecisions>(
                [](Project & p) -> auto& { return p.cases; },
                [member](auto& c) -> auto& { return c.*member; }),
            caseNames()};
}

template <typename T>
Field woodField(const char* name, ValueKind kind, Span span, const char* label, const char* help,
                std::optional<T> WoodDecisions::*member) {
    return {std::string("wood.*.") + name,
            kind,
            span.low,
            span.high,
            span.words,
            {},
            "wood",
            label,
            help,
            entrySetter<T, WoodDecisions>(
                [](Project & p) -> auto& { return p.wood; },
                [member](auto& w) -> auto& { return w.*member; })};
}

template <typename T>
Field metalField(const char* name, ValueKind kind, Span span, const char* label, const char* help,
                 std::optional<T> MetalDecisions::*member) {
    return {std::string("metal.*.") + name,
            kind,
            span.low,
            span.high,
            span.words,
            {},
            "metal",
            label,
            help,
            entrySetter<T, MetalDecisions>(
                [](Project & p) -> auto& { return p.metal; },
                [member](auto& m) -> auto& { return m.*member; })};
}

}  // namespace

std::vector<Field> figureRows() {
    std::vector<Field> rows{
        caseField<double>("factor", ValueKind::ratio, Span{0, 20, "0 to 20"}, {}, "load factor",
                          "Multiplies the load of this case under every basis.",
                          &CaseDecisions::factor),
        caseField<double>("ec5_factor", ValueKind::ratio, Span{0.5, 5, "0.5 to 5"}, {},
                          "Eurocode 5 demand factor",
                          "Partial factor on the demand, Eurocode 5 side.",
                          &CaseDecisions::ec5Factor),
        caseField<std::string>(
            "duration", ValueKind::choice, Span{0, 0, ""},
            {"permanent", "ten years", "two months", "seven days", "ten minutes"}, "duration",
            "How long the load lasts.", &CaseDecisions::duration),
        caseField<std::string>("kind", ValueKind::choice, Span{0, 0, ""},
                               {"permanent", "variable", "accidental"}, "kind of load",
                               "Decides the Eurocode 5 factors.", &CaseDecisions::kind),
        {"class.*.target",
         ValueKind::ratio,
         1,
         10,
         "1 to 10",
         {},
         "targets",
         "target margin",
         "Below this margin a fastening of the class is called near.",
         [](Project& p, const Address& a, const Value* value) {
             if (value == nullptr) {
                 p.classTarget.erase(a.place);
             } else {
                 p.classTarget[a.place] = std::get<double>(*value);
             }
         },
         {"keel", "hull", "trim"}},
        {"metal_set.factor",
         ValueKind::ratio,
         1,
         20,
         "1 to 20",
         {},
         "targets",
         "metal factor",
         "On the smaller of yield and half the ultimate of a rod; 2.5 unless decided.",
         setter<double>([](Project & p, const Address&) -> auto& { return p.metalFactor; })},
        woodField<Density>("density", ValueKind::density,
                           Span{100, 1500, "100 kg/m3 to 1500 kg/m3"}, "characteristic density",
                           "Mass and volume at 12 % moisture, fifth percentile.",
                           &WoodDecisions::density),
        woodField<double>("specific_gravity", ValueKind::ratio, Span{0.1, 1.4, "0.1 to 1.4"},
                          "specific gravity", "Oven-dry mass and volume.",
                          &WoodDecisions::specificGravity),
        woodField<Stress>("across_grain", ValueKind::stress, Span{0.1e6, 60e6, "0.1 MPa to 60 MPa"},
                          "allowable bearing across the grain", "US allowable, dry.",
                          &WoodDecisions::acrossGrain),
        metalField<Stress>("yield", ValueKind::stress, Span{1e6, 3000e6, "1 MPa to 3000 MPa"},
                           "yield", "From the certificate of the stock in hand.",
                           &MetalDecisions::yield),
        metalField<Stress>("ultimate", ValueKind::stress, Span{1e6, 3000e6, "1 MPa to 3000 MPa"},
                           "ultimate", "From the certificate of the stock in hand.",
                           &MetalDecisions::ultimate),
        metalField<Density>("density", ValueKind::density,
                            Span{1000, 23000, "1000 kg/m3 to 23000 kg/m3"}, "density",
                            "As weighed.", &MetalDecisions::density),
        {"catalogue.*",
         ValueKind::keptRow,
         0,
         0,
         "rows of a catalogue file",
         {},
         "catalogue",
         "catalogue row kept",
         "The figures this project was worked out with.",
         [](Project& p, const Address& a, const Value* value) {
             if (value == nullptr) {
                 p.kept.erase(a.place);
             } else {
                 p.kept[a.place] = std::get<std::string>(*value);
             }
         }},
    };
    return rows;
}

}  // namespace fayline::table
