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

Figure<SpecificGravityOvenDry> ovenDryFromGreen(const Figure<SpecificGravityGreen>& gravity) {
    return worked(SpecificGravityOvenDry{shrunk(gravity.value.value, 1.0)}, gravity,
                  "specific gravity on oven-dry volume");
}

Figure<SpecificGravityTwelve> twelveFromGreen(const Figure<SpecificGravityGreen>& gravity) {
    return worked(SpecificGravityTwelve{shrunk(gravity.value.value, shrunkAtTwelve)}, gravity,
                  "specific gravity on volume at 12 %");
}

Figure<SpecificGravityGreen> greenFromTwelve(const Figure<SpecificGravityTwelve>& gravity) {
    return worked(SpecificGravityGreen{swollen(gravity.value.value, shrunkAtTwelve)}, gravity,
                  "specific gravity on green volume");
}

Figure<SpecificGravityGreen> greenFromOvenDry(const Figure<SpecificGravityOvenDry>& gravity) {
    return worked(SpecificGravityGreen{swollen(gravity.value.value, 1.0)}, gravity,
                  "specific gravity on green volume");
}

Figure<CharacteristicDensity> characteristicFromTwelve(
    const Figure<SpecificGravityTwelve>& gravity) {
    const double meanKgPerM3 = gravity.value.value * waterKgPerM3 * withWaterAtTwelve;
    return worked(CharacteristicDensity{kilogramsPerCubicMetre(meanKgPerM3 / meanToCharacteristic)},
                  gravity, "characteristic density, mean / 1.2");
}

Figure<SpecificGravityTwelve> twelveFromCharacteristic(
    const Figure<CharacteristicDensity>& density) {
    const double meanKgPerM3 = inKilogramsPerCubicMetre(density.value.value) * meanToCharacteristic;
    return worked(SpecificGravityTwelve{meanKgPerM3 / waterKgPerM3 / withWaterAtTwelve}, density,
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
