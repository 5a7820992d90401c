#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "material/figure.h"
#include "quantity/quantity.h"

namespace fayline {

enum class MetalFamily { bronze, copper, nickel, steel, stainless, iron, lead };

/// "bronze", "copper", "nickel", "steel", "stainless", "iron", "lead".
std::string_view metalFamilyText(MetalFamily family);
std::optional<MetalFamily> metalFamilyFromText(std::string_view text);

/// An alloy in one temper and, where strength falls with size, one band of sizes.
struct Metal {
    std::string id;  ///< "c65500_h02"
    Figure<std::string> name;
    MetalFamily family = MetalFamily::bronze;
    std::optional<Figure<Stress>> yieldMin;  ///< guaranteed (bronze: at 0.5 % extension)
    std::optional<Figure<Stress>> yieldTypical;
    std::optional<Figure<Stress>> ultimateMin;  ///< guaranteed
    std::optional<Figure<Stress>> ultimateTypical;
    std::optional<Figure<Stress>> shear;  ///< ultimate, as published
    std::optional<Figure<Stress>> modulus;
    std::optional<Figure<Density>> density;
    std::optional<Figure<double>> elongation;  ///< least, as a fraction
    std::optional<Figure<std::string>> corrosion;

    bool operator==(const Metal&) const = default;
};

/// Yield for design: the guaranteed one; else the typical one, which the result's source says.
std::optional<Figure<Stress>> designYield(const Metal& metal);
/// Ultimate strength for design: guaranteed, else typical.
std::optional<Figure<Stress>> designUltimate(const Metal& metal);
/// Ultimate shear: as published; else 0.6 of the design ultimate (published pairs of copper and its
/// alloys lie between 0.56 and 0.69).
std::optional<Figure<Stress>> designShear(const Metal& metal);
/// Bending yield of a dowel: the mean of yield and ultimate (US design standard, appendix I).
/// Nothing when either is missing.
std::optional<Figure<Stress>> bendingYield(const Metal& metal);

}  // namespace fayline
