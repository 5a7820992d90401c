#include "table_builder.h"

namespace fayline::table {
namespace {

constexpr Span place{-200, 200, "-200 m to 200 m"};
constexpr Span body{0.01, 5, "10 mm to 5 m"};
constexpr Span none{0, 0, ""};

Field ballastLength(const char* name, Span span, const char* label, const char* help,
                    std::optional<Length> BallastDecisions::*member) {
    return {std::string("ballast.") + name,
            ValueKind::length,
            span.low,
            span.high,
            span.words,
            {},
            "ballast",
            label,
            help,
            setter<Length>([member](Project & p, const Address&) -> auto& {
                return p.ballast.*member;
            })};
}

template <typename T>
Field allBolts(const char* name, ValueKind kind, Span span, std::vector<std::string> choices,
               const char* label, const char* help, std::optional<T> BoltDecisions::*member) {
    return {
        std::string("bolts.") + name,
        kind,
        span.low,
        span.high,
        span.words,
        std::move(choices),
        "bolts",
        label,
        help,
        setter<T>([member](Project & p, const Address&) -> auto& { return p.bolts.all.*member; })};
}

template <typename T>
Field oneBolt(const char* name, ValueKind kind, Span span, std::vector<std::string> choices,
              const char* label, const char* help, std::optional<T> BoltDecisions::*member) {
    return {std::string("K.#.") + name,
            kind,
            span.low,
            span.high,
            span.words,
            std::move(choices),
            "bolt",
            label,
            help,
            entrySetter<T, BoltDecisions>(
                [](Project & p) -> auto& { return p.bolt; },
                [member](auto& b) -> auto& { return b.*member; })};
}

template <typename T>
void both(std::vector<Field>& rows, const char* name, ValueKind kind, Span span,
          const std::vector<std::string>& choices, const char* label, const char* help,
          std::optional<T> BoltDecisions::*member) {
    rows.push_back(allBolts(name, kind, span, choices, label, help, member));
    rows.push_back(oneBolt(name, kind, span, choices, label, help, member));
}

}  // namespace

std::vector<Field> ballastRows() {
    std::vector<Field> rows{
        {"ballast.metal",
         ValueKind::metalName,
         0,
         0,
         "a lead or iron of the catalogue",
         {},
         "ballast",
         "metal",
         "What the ballast keel is cast of.",
         setter<std::string>([](Project & p, const Address&) -> auto& { return p.ballast.metal; })},
        {"ballast.mass",
         ValueKind::mass,
         1,
         200e3,
         "1 kg to 200 t",
         {},
         "ballast",
         "mass",
         "As weighed or as ordered; not decided: worked out from its shape.",
         setter<Mass>([](Project & p, const Address&) -> auto& { return p.ballast.mass; })},
        ballastLength("from", place, "fore end",
                      "Fore end of the ballast's top face, measured aft.", &BallastDecisions::from),
        ballastLength("to", place, "after end",
                      "After end of the ballast's top face, measured aft.", &BallastDecisions::to),
        ballastLength("breadth_fore", body, "top breadth, fore end",
                      "Breadth of its top face at the fore end.", &BallastDecisions::breadthFore),
        ballastLength("breadth_middle", body, "top breadth, middle",
                      "Breadth of its top face at mid-length.", &BallastDecisions::breadthMiddle),
        ballastLength("breadth_aft", body, "top breadth, after end",
                      "Breadth of its top face at the after end.", &BallastDecisions::breadthAft),
        ballastLength("bottom_breadth", body, "bottom breadth", "Breadth of its lower face.",
                      &BallastDecisions::bottomBreadth),
        ballastLength("depth_fore", body, "depth, fore end",
                      "Depth below the keel timber at the fore end.", &BallastDecisions::depthFore),
        ballastLength("depth_middle", body, "depth, middle",
                      "Depth below the keel timber at mid-length.", &BallastDecisions::depthMiddle),
        ballastLength("depth_aft", body, "depth, after end",
                      "Depth below the keel timber at the after end.", &BallastDecisions::depthAft),
        ballastLength("centre_x", place, "centre of gravity, aft",
                      "Where its centre of gravity lies fore and aft; not decided: from its shape.",
                      &BallastDecisions::centreX),
        ballastLength(
            "centre_below", body, "centre of gravity, below top",
            "How far its centre of gravity lies below its top face; not decided: from its shape.",
            &BallastDecisions::centreBelow),
        {"bolts.count",
         ValueKind::count,
         0,
         80,
         "0 to 80",
         {},
         "bolts",
         "number of bolts",
         "How many bolts hold the ballast, counted from forward.",
         setter<int>([](Project & p, const Address&) -> auto& { return p.bolts.count; })},
        oneBolt<Length>("x", ValueKind::length, place, {}, "place",
                        "Where this bolt stands, measured aft.", &BoltDecisions::x),
    };
    both<Length>(rows, "offset", ValueKind::length, Span{-1, 1, "-1 m to 1 m"}, {},
                 "off the centreline",
                 "For all: this far off, alternate sides. For one bolt: to starboard, or to port "
                 "with a minus.",
                 &BoltDecisions::offset);
    both<Length>(rows, "diameter", ValueKind::length, Span{0.006, 0.08, "6 mm to 80 mm"}, {},
                 "diameter", "Size of the rod over its thread.", &BoltDecisions::diameter);
    both<std::string>(rows, "metal", ValueKind::metalName, Span{0, 0, "a metal of the catalogue"},
                      {}, "metal", "What the rod is made of.", &BoltDecisions::metal);
    both<Length>(rows, "washer_diameter", ValueKind::length, Span{0.01, 0.6, "10 mm to 600 mm"}, {},
                 "washer diameter", "Outer diameter of the plate washer on the wood.",
                 &BoltDecisions::washerDiameter);
    both<Length>(rows, "washer_thickness", ValueKind::length, Span{0.0005, 0.06, "0.5 mm to 60 mm"},
                 {}, "washer thickness", "Thickness of the plate washer on the wood.",
                 &BoltDecisions::washerThickness);
    both<std::string>(rows, "through", ValueKind::choice, none, {"floor", "between"},
                      "goes through",
                      "Through a floor timber, or between two floors through the keel alone.",
                      &BoltDecisions::through);
    both<Length>(rows, "corrosion", ValueKind::length, Span{0, 0.02, "0 mm to 20 mm"}, {},
                 "corrosion allowance",
                 "Taken off the rod's radius before its strength is worked out.",
                 &BoltDecisions::corrosion);
    both<Length>(rows, "recess", ValueKind::length, Span{0, 3, "0 mm to 3 m"}, {},
                 "lower nut above bottom",
                 "How far the lower nut's pocket reaches up from the ballast's bottom.",
                 &BoltDecisions::recess);
    both<std::string>(rows, "reason", ValueKind::text, Span{0, 0, "up to 400 letters"}, {},
                      "reason", "Why, in the builder's words.", &BoltDecisions::reason);
    return rows;
}

}  // namespace fayline::table
