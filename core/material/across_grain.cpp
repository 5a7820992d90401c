#include "material/across_grain.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "material/density.h"

namespace fayline {
namespace {

constexpr double shearInBendingTest = 1.1;

std::optional<Figure<double>> ratioAcross(const Wood& wood, AcrossGrain direction) {
    switch (direction) {
        case AcrossGrain::radial:
            return wood.modulusRatioRadial;
        case AcrossGrain::tangential:
            return wood.modulusRatioTangential;
        case AcrossGrain::unknown:
            break;
    }
    const auto& radial = wood.modulusRatioRadial;
    const auto& tangential = wood.modulusRatioTangential;
    if (radial && tangential) return radial->value < tangential->value ? radial : tangential;
    return radial ? radial : tangential;
}

Figure<Stress> estimated(double mpa, Standing input, const std::string& source) {
    return {
        megapascals(mpa), std::max(afterWorking(input), Standing::fromMemory),
        "estimated from specific gravity, about 25 % either way (Wood Handbook Table 5-11, from "
        "memory): " +
            source};
}

}  // namespace

std::optional<Figure<Stress>> modulusAcrossGrain(const Wood& wood, AcrossGrain direction,
                                                 WoodMoisture moisture) {
    const auto& along = wood.clear(moisture).modulusOfElasticity;
    const bool classOnly = !along && moisture == WoodMoisture::twelve;
    if (classOnly && wood.ec5.modulusPerpendicular) return wood.ec5.modulusPerpendicular;
    if (!along) return std::nullopt;
    if (const auto ratio = ratioAcross(wood, direction)) {
        const Standing standing = afterWorking(std::max(along->standing, ratio->standing));
        return Figure<Stress>{along->value * (shearInBendingTest * ratio->value), standing,
                              "ratio across the grain (" + ratio->source +
                                  ") x 1.1 x bending modulus (" + along->source + ")"};
    }
    const double part = wood.family == WoodFamily::softwood ? 30.0 : 15.0;
    return Figure<Stress>{along->value / part, afterWorking(along->standing),
                          "bending modulus / " + std::to_string(static_cast<int>(part)) +
                              " as in EN 338 (" + along->source + ")"};
}

Stress compressionPerpendicularEn338(WoodFamily family, CharacteristicDensity density,
                                     En338Edition edition) {
    const double kgPerM3 = inKilogramsPerCubicMetre(density.value);
    if (family == WoodFamily::softwood) return megapascals(0.007 * kgPerM3);
    const bool lower = edition == En338Edition::e2016 && kgPerM3 < 700.0;
    return megapascals((lower ? 0.010 : 0.015) * kgPerM3);
}

std::optional<Figure<Stress>> compressionPerpendicularEc5(const Wood& wood) {
    if (wood.ec5.compressionPerpendicular) return wood.ec5.compressionPerpendicular;
    const auto density = characteristicDensity(wood);
    if (!density) return std::nullopt;
    return Figure<Stress>{
        compressionPerpendicularEn338(wood.family, density->value, En338Edition::e2016),
        afterWorking(density->standing), "EN 338:2016 rule on density; " + density->source};
}

std::optional<Figure<Stress>> compressionPerpendicularUs(const Wood& wood) {
    if (wood.us.compressionPerpendicular) return wood.us.compressionPerpendicular;
    const auto& green = wood.green.compressionPerpendicular;
    if (!green) return std::nullopt;
    return Figure<Stress>{
        green->value, afterWorking(green->standing),
        "no assigned value; green mean at the proportional limit (" + green->source + ")"};
}

Figure<Stress> estimatedCompressionPerpendicularGreen(WoodFamily family,
                                                      const Figure<SpecificGravityGreen>& gravity) {
    const double g = gravity.value.value;
    const double mpa =
        family == WoodFamily::softwood ? 8.8 * std::pow(g, 1.53) : 18.5 * std::pow(g, 2.48);
    return estimated(mpa, gravity.standing, gravity.source);
}

Figure<Stress> estimatedCompressionPerpendicularTwelve(
    WoodFamily family, const Figure<SpecificGravityTwelve>& gravity) {
    const double g = gravity.value.value;
    const double mpa =
        family == WoodFamily::softwood ? 16.5 * std::pow(g, 1.57) : 21.6 * std::pow(g, 2.09);
    return estimated(mpa, gravity.standing, gravity.source);
}

}  // namespace fayline
