#include "material/density.h"

#include <string>

namespace fayline {
namespace {

constexpr double volumeShrinkagePerGravity = 0.265;
constexpr double shrunkAtTwelve = (0.30 - 0.12) / 0.30;
constexpr double waterKgPerM3 = 1000.0;
constexpr double withWaterAtTwelve = 1.12;
constexpr double meanToCharacteristic = 1.2;

template <typename To, typename From>
Figure<To> worked(To value, const Figure<From>& from, const std::string& what) {
    return {value, afterWorking(from.standing), what + ", worked out from: " + from.source};
}

double shrunk(double green, double part) {
    return green / (1.0 - volumeShrinkagePerGravity * part * green);
}
double swollen(double dry, double part) {
    return dry / (1.0 + volumeShrinkagePerGravity * part * dry);
}

std::optional<Figure<SpecificGravityGreen>> anyGreen(const Wood& wood) {
    if (wood.specificGravityGreen) return wood.specificGravityGreen;
    if (wood.specificGravityTwelve) return greenFromTwelve(*wood.specificGravityTwelve);
    if (wood.ec5.density) return greenFromTwelve(twelveFromCharacteristic(*wood.ec5.density));
    return std::nullopt;
}

}  // namespace

SpecificGravityOvenDry ovenDryFromGreen(SpecificGravityGreen gravity) {
    return {shrunk(gravity.value, 1.0)};
}
SpecificGravityTwelve twelveFromGreen(SpecificGravityGreen gravity) {
    return {shrunk(gravity.value, shrunkAtTwelve)};
}
SpecificGravityGreen greenFromTwelve(SpecificGravityTwelve gravity) {
    return {swollen(gravity.value, shrunkAtTwelve)};
}
SpecificGravityGreen greenFromOvenDry(SpecificGravityOvenDry gravity) {
    return {swollen(gravity.value, 1.0)};
}
CharacteristicDensity characteristicFromTwelve(SpecificGravityTwelve gravity) {
    const double meanKgPerM3 = gravity.value * waterKgPerM3 * withWaterAtTwelve;
    return {kilogramsPerCubicMetre(meanKgPerM3 / meanToCharacteristic)};
}
SpecificGravityTwelve twelveFromCharacteristic(CharacteristicDensity density) {
    const double meanKgPerM3 = inKilogramsPerCubicMetre(density.value) * meanToCharacteristic;
    return {meanKgPerM3 / waterKgPerM3 / withWaterAtTwelve};
}

Figure<SpecificGravityOvenDry> ovenDryFromGreen(const Figure<SpecificGravityGreen>& gravity) {
    return worked(ovenDryFromGreen(gravity.value), gravity, "specific gravity on oven-dry volume");
}

Figure<SpecificGravityTwelve> twelveFromGreen(const Figure<SpecificGravityGreen>& gravity) {
    return worked(twelveFromGreen(gravity.value), gravity, "specific gravity on volume at 12 %");
}

Figure<SpecificGravityGreen> greenFromTwelve(const Figure<SpecificGravityTwelve>& gravity) {
    return worked(greenFromTwelve(gravity.value), gravity, "specific gravity on green volume");
}

Figure<SpecificGravityGreen> greenFromOvenDry(const Figure<SpecificGravityOvenDry>& gravity) {
    return worked(greenFromOvenDry(gravity.value), gravity, "specific gravity on green volume");
}

Figure<CharacteristicDensity> characteristicFromTwelve(
    const Figure<SpecificGravityTwelve>& gravity) {
    return worked(characteristicFromTwelve(gravity.value), gravity,
                  "characteristic density, mean / 1.2");
}

Figure<SpecificGravityTwelve> twelveFromCharacteristic(
    const Figure<CharacteristicDensity>& density) {
    return worked(twelveFromCharacteristic(density.value), density,
                  "specific gravity on volume at 12 %, mean = 1.2 x characteristic");
}

std::optional<Figure<SpecificGravityOvenDry>> specificGravityOvenDry(const Wood& wood) {
    if (wood.us.specificGravity) return wood.us.specificGravity;
    if (const auto green = anyGreen(wood)) return ovenDryFromGreen(*green);
    return std::nullopt;
}

std::optional<Figure<SpecificGravityTwelve>> specificGravityTwelve(const Wood& wood) {
    if (wood.specificGravityTwelve) return wood.specificGravityTwelve;
    if (wood.specificGravityGreen) return twelveFromGreen(*wood.specificGravityGreen);
    if (wood.ec5.density) return twelveFromCharacteristic(*wood.ec5.density);
    if (wood.us.specificGravity) return twelveFromGreen(greenFromOvenDry(*wood.us.specificGravity));
    return std::nullopt;
}

std::optional<Figure<CharacteristicDensity>> characteristicDensity(const Wood& wood) {
    if (wood.ec5.density) return wood.ec5.density;
    if (const auto twelve = specificGravityTwelve(wood)) return characteristicFromTwelve(*twelve);
    return std::nullopt;
}

}  // namespace fayline
