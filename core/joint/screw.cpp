#include "joint/screw.h"

#include <array>

namespace fayline {
namespace {

struct Root {
    int gauge;
    double root_in;
    Standing standing;
};

constexpr std::string_view averages = "averages of wood screws as sold, l-36.com screw pilot table";
constexpr std::string_view codeTable = "ANSI/AWC NDS Appendix L";
constexpr std::string_view measuredHere = "measured by the builder";

constexpr std::array<Root, 13> measured{{
    {4, 0.075, Standing::read},
    {5, 0.085, Standing::fromMemory},
    {6, 0.094, Standing::read},
    {7, 0.102, Standing::fromMemory},
    {8, 0.112, Standing::read},
    {9, 0.122, Standing::fromMemory},
    {10, 0.130, Standing::read},
    {12, 0.148, Standing::read},
    {14, 0.166, Standing::derived},  // halfway between its neighbours
    {16, 0.184, Standing::read},
    {18, 0.204, Standing::read},
    {20, 0.223, Standing::read},
    {24, 0.260, Standing::fromMemory},
}};
constexpr std::array<Root, 11> code{{
    {6, 0.113, Standing::fromMemory},
    {7, 0.122, Standing::fromMemory},
    {8, 0.131, Standing::fromMemory},
    {9, 0.142, Standing::fromMemory},
    {10, 0.152, Standing::fromMemory},
    {12, 0.171, Standing::fromMemory},
    {14, 0.196, Standing::fromMemory},
    {16, 0.209, Standing::fromMemory},
    {18, 0.232, Standing::fromMemory},
    {20, 0.255, Standing::fromMemory},
    {24, 0.298, Standing::fromMemory},
}};

template <std::size_t N>
std::optional<SourcedLength> rootIn(const std::array<Root, N>& table, Gauge gauge,
                                    std::string_view source) {
    for (const Root& row : table) {
        if (row.gauge == gauge.number())
            return SourcedLength{inches(row.root_in), row.standing, source};
    }
    return std::nullopt;
}

std::optional<Figure<Length>> asFigure(const std::optional<SourcedLength>& size) {
    if (!size) return std::nullopt;
    return Figure<Length>{size->value, size->standing, std::string(size->source)};
}

SourcedLength measuredOr(const std::optional<Length>& measurement, const SourcedLength& rule) {
    if (measurement) return {*measurement, Standing::read, measuredHere};
    return rule;
}

}  // namespace

Length screwBody(Gauge gauge) {
    return inches(0.060 + 0.013 * gauge.number());
}

std::optional<Figure<Length>> screwRootMeasured(Gauge gauge) {
    return asFigure(rootIn(measured, gauge, averages));
}

std::optional<Figure<Length>> screwRootCode(Gauge gauge) {
    return asFigure(rootIn(code, gauge, codeTable));
}

ScrewShape screwShape(const JointFastener& fastener) {
    ScrewShape shape;
    shape.body = fastener.diameter.si() > 0.0 || !fastener.gauge
                     ? SourcedLength{fastener.diameter, Standing::read, "as given"}
                     : SourcedLength{screwBody(*fastener.gauge), Standing::read,
                                     "ASME B18.6.1: 0.060 in + 0.013 in for each gauge"};
    const Length body = shape.body.value;
    SourcedLength root{body * (2.0 / 3.0), Standing::read,
                       "Wood Handbook ch. 8: root about two thirds of the shank"};
    if (fastener.gauge) {
        const auto average = rootIn(measured, *fastener.gauge, averages);
        const auto table = rootIn(code, *fastener.gauge, codeTable);
        const bool wantsCode = fastener.roots == ScrewRoots::code;
        const auto& first = wantsCode ? table : average;
        const auto& second = wantsCode ? average : table;
        if (first) {
            root = *first;
        } else if (second) {
            root = *second;
        }
    }
    shape.root = measuredOr(fastener.root, root);
    shape.thread =
        measuredOr(fastener.threadLength,
                   {fastener.length * (2.0 / 3.0), Standing::read,
                    "wood screws: thread two thirds of the length (Merritt & Ricketts)"});
    shape.tip =
        measuredOr(fastener.tip, {body * 2.0, Standing::judgement, "taper taken as two diameters"});
    shape.head = measuredOr(
        fastener.headDiameter,
        {body * 2.0, Standing::read, "flat head about twice the body (British joinery text)"});
    return shape;
}

}  // namespace fayline
