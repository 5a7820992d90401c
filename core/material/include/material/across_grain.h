#pragma once

#include <optional>

#include "material/wood.h"

namespace fayline {

/// Which way the load runs across the grain; `unknown` takes the softer.
enum class AcrossGrain { radial, tangential, unknown };

/// Modulus of elasticity across the grain: ratio (Wood Handbook Table 5-1, near 12 %) times 1.1
/// times the bending modulus of this moisture (the handbook's allowance for shear in the bending
/// test). The ratio is taken as the same in green wood, so timber of a wet hull uses the green
/// modulus. Without a ratio: bending modulus / 30 for softwood, / 15 for hardwood, as EN 338 does.
/// Nothing without a modulus along the grain.
std::optional<Figure<Stress>> modulusAcrossGrain(const Wood& wood, AcrossGrain direction,
                                                 WoodMoisture moisture);

/// The edition whose rule gives compression strength across the grain in a strength class.
enum class En338Edition { e2009, e2016 };

/// f_c,90,k as the class tables print it: 0.007 rho_k for softwood; for hardwood 0.015 rho_k in
/// 2009, and in 2016 0.010 rho_k below 700 kg/m3 and 0.015 rho_k from there (EN 384). Two thirds of
/// the 2009 value for oak: say which edition was used. The rules reproduce the printed tables.
Stress compressionPerpendicularEn338(WoodFamily family, CharacteristicDensity density,
                                     En338Edition edition);

/// The class's own f_c,90,k; else worked out from the characteristic density by the 2016 rule.
std::optional<Figure<Stress>> compressionPerpendicularEc5(const Wood& wood);

/// US allowable compression across the grain (dry): the assigned one; else the green mean at the
/// proportional limit, which lies below the assigned value for every wood of the catalogue that has
/// both. Nothing without either.
std::optional<Figure<Stress>> compressionPerpendicularUs(const Wood& wood);

/// Mean compression across the grain at the proportional limit, estimated from specific gravity
/// (Wood Handbook Table 5-11, from memory; about 25 % either way). For woods nobody has published.
Figure<Stress> estimatedCompressionPerpendicularGreen(WoodFamily family,
                                                      const Figure<SpecificGravityGreen>& gravity);
Figure<Stress> estimatedCompressionPerpendicularTwelve(
    WoodFamily family, const Figure<SpecificGravityTwelve>& gravity);

}  // namespace fayline
