#pragma once

#include <optional>

#include "material/wood.h"

namespace fayline {

// The four bases of density, one worked out from another. Every result says so in its source and is
// never better than derived; a screen that uses one shows the caution.
// Between the gravities: shrinkage in volume taken as 26.5 % of basic specific gravity, spread
// evenly over the 30 % of moisture below fibre saturation (ASTM D2395 appendix; from memory, agrees
// with Wood Handbook Tables 5-3 to about 0.02).

SpecificGravityOvenDry ovenDryFromGreen(SpecificGravityGreen gravity);
SpecificGravityTwelve twelveFromGreen(SpecificGravityGreen gravity);
SpecificGravityGreen greenFromTwelve(SpecificGravityTwelve gravity);
SpecificGravityGreen greenFromOvenDry(SpecificGravityOvenDry gravity);
CharacteristicDensity characteristicFromTwelve(SpecificGravityTwelve gravity);
SpecificGravityTwelve twelveFromCharacteristic(CharacteristicDensity density);

Figure<SpecificGravityOvenDry> ovenDryFromGreen(const Figure<SpecificGravityGreen>& gravity);
Figure<SpecificGravityTwelve> twelveFromGreen(const Figure<SpecificGravityGreen>& gravity);
Figure<SpecificGravityGreen> greenFromTwelve(const Figure<SpecificGravityTwelve>& gravity);
Figure<SpecificGravityGreen> greenFromOvenDry(const Figure<SpecificGravityOvenDry>& gravity);

/// Mean density with its 12 % of water, divided by 1.2: the step from mean to characteristic in
/// every row of EN 338:2016 Tables 1 and 3 within rounding.
Figure<CharacteristicDensity> characteristicFromTwelve(
    const Figure<SpecificGravityTwelve>& gravity);
Figure<SpecificGravityTwelve> twelveFromCharacteristic(
    const Figure<CharacteristicDensity>& density);

/// The gravity for the US basis: the assigned one; else worked out from the green, the 12 % or the
/// characteristic one, in this order. Nothing when the wood has none of them.
std::optional<Figure<SpecificGravityOvenDry>> specificGravityOvenDry(const Wood& wood);

/// The gravity at 12 %: the published one; else worked out as above.
std::optional<Figure<SpecificGravityTwelve>> specificGravityTwelve(const Wood& wood);

/// The density for Eurocode 5: the class's own; else worked out from the gravity at 12 %.
std::optional<Figure<CharacteristicDensity>> characteristicDensity(const Wood& wood);

}  // namespace fayline
