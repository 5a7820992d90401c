#include "by_kind.h"

#include <map>

#include "quantity/reading.h"

namespace fayline {
namespace {

template <class Unit>
using Names = std::map<std::string, Unit>;

template <class Unit>
std::optional<Unit> unitNamed(const Names<Unit>& names, const std::string& bare) {
    const auto found = names.find(bare);
    if (found == names.end()) return std::nullopt;
    return found->second;
}

}  // namespace

std::optional<Result<double>> readByKind(const std::string& kind, const std::string& text,
                                         const std::string& bare) {
    const auto read = [&](auto reader, const auto& names) -> std::optional<Result<double>> {
        const auto unit = unitNamed(names, bare);
        if (!unit && !bare.empty()) return std::nullopt;
        return reader(text, "t.csv:1", unit).map([](auto q) { return q.si(); });
    };
    if (kind == "length") {
        return read(readLength,
                    Names<LengthUnit>{{"mm", LengthUnit::mm},
                                      {"cm", LengthUnit::cm},
                                      {"m", LengthUnit::m},
                                      {"in", LengthUnit::in},
                                      {"ft", LengthUnit::ft},
                                      {"feetInchesEighths", LengthUnit::feetInchesEighths}});
    }
    if (kind == "area") return read(readArea, Names<AreaUnit>{{"in2", AreaUnit::in2}});
    if (kind == "mass") {
        return read(readMass, Names<MassUnit>{{"kg", MassUnit::kg}, {"lb", MassUnit::lb}});
    }
    if (kind == "force") {
        return read(readForce, Names<ForceUnit>{{"kn", ForceUnit::kn}, {"kgf", ForceUnit::kgf}});
    }
    if (kind == "stress") return read(readStress, Names<StressUnit>{{"mpa", StressUnit::mpa}});
    if (kind == "density") {
        return read(readDensity, Names<DensityUnit>{{"kgPerM3", DensityUnit::kgPerM3},
                                                    {"lbPerIn3", DensityUnit::lbPerIn3}});
    }
    if (kind == "angle") {
        return readAngle(text, "t.csv:1").map([](Angle a) { return a.inDegrees(); });
    }
    if (kind == "ratio") return readRatio(text, "t.csv:1");
    if (kind == "gauge") {
        return readGauge(text, "t.csv:1").map([](Gauge g) { return double(g.number()); });
    }
    if (kind == "count") {
        return readCount(text, "t.csv:1", 1, 12).map([](int n) { return double(n); });
    }
    return std::nullopt;
}

}  // namespace fayline
