#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "material/figure.h"
#include "quantity/quantity.h"

namespace fayline {

enum class WoodFamily { softwood, hardwood };

/// "softwood", "hardwood".
std::string_view woodFamilyText(WoodFamily family);
std::optional<WoodFamily> woodFamilyFromText(std::string_view text);

/// The moisture at which a strength was measured: green (cell walls soaked, as under water) or 12 %
/// of the oven-dry mass (a shed).
enum class WoodMoisture { green, twelve };

/// "green", "12 %".
std::string_view woodMoistureText(WoodMoisture moisture);
std::optional<WoodMoisture> woodMoistureFromText(std::string_view text);

/// Averages of small clear straight-grained pieces. Never working stresses.
struct ClearWood {
    std::optional<Figure<Stress>> modulusOfRupture;
    std::optional<Figure<Stress>> modulusOfElasticity;       ///< from bending, span 14 depths
    std::optional<Figure<Stress>> compressionParallel;       ///< crushing along the grain
    std::optional<Figure<Stress>> compressionPerpendicular;  ///< at the proportional limit
    std::optional<Figure<Stress>> shear;                     ///< along the grain

    bool operator==(const ClearWood&) const = default;
};

/// Design values of the US standard: ten years' load, dry.
struct WoodUs {
    std::optional<Figure<SpecificGravityOvenDry>> specificGravity;  ///< as assigned to the species
    std::optional<Figure<Stress>> compressionPerpendicular;
    std::optional<Figure<Stress>> shear;

    bool operator==(const WoodUs&) const = default;
};

/// Characteristic values of the strength class (EN 338) the species is put in.
struct WoodEc5 {
    std::optional<Figure<std::string>> strengthClass;  ///< "D30"
    std::optional<Figure<CharacteristicDensity>> density;
    std::optional<Figure<Stress>> bending;
    std::optional<Figure<Stress>> compressionParallel;
    std::optional<Figure<Stress>> compressionPerpendicular;
    std::optional<Figure<Stress>> shear;
    std::optional<Figure<Stress>> modulusParallel;       ///< mean
    std::optional<Figure<Stress>> modulusPerpendicular;  ///< mean

    bool operator==(const WoodEc5&) const = default;
};

/// A species as the catalogue knows it. What is not published for it is missing.
struct Wood {
    std::string id;  ///< "white_oak"
    Figure<std::string> name;
    WoodFamily family = WoodFamily::softwood;
    std::optional<Figure<SpecificGravityTwelve>> specificGravityTwelve;
    std::optional<Figure<SpecificGravityGreen>> specificGravityGreen;
    ClearWood green;
    ClearWood twelve;
    WoodUs us;
    WoodEc5 ec5;
    std::optional<Figure<double>> modulusRatioTangential;  ///< E_T / E_L at about 12 %
    std::optional<Figure<double>> modulusRatioRadial;      ///< E_R / E_L at about 12 %
    std::optional<Figure<double>> shrinkageRadial;      ///< green to oven-dry, part of green size
    std::optional<Figure<double>> shrinkageTangential;  ///< green to oven-dry, part of green size

    [[nodiscard]] const ClearWood& clear(WoodMoisture moisture) const {
        return moisture == WoodMoisture::green ? green : twelve;
    }
    bool operator==(const Wood&) const = default;
};

}  // namespace fayline
