#pragma once

#include <optional>
#include <string_view>

#include "joint/ec5_coefficients.h"
#include "quantity/quantity.h"

namespace fayline {

struct Joint;

/// Slip modulus of one plane of one bolt, dowel, screw or nail in a bored hole, dry wood, steel
/// fastening, tight hole: ρ_m^1.5·d/23 in N/mm, ρ_m = √(ρ_1·ρ_2) of the mean densities
/// (EN 1995-1-1 Table 7.1, 7.1).
ForcePerLength slipModulusEc5(Density mean1, Density mean2, Length diameter,
                              const Ec5Coefficients& coefficients = ec5Published);

/// The same of a nail driven without a hole: ρ_m^1.5·d^0.8/30.
ForcePerLength slipModulusDriven(Density mean1, Density mean2, Length diameter);

/// Two slip moduli between which a plane is taken to lie.
struct PlaneSlip {
    ForcePerLength soft, stiff;
    bool wet = false;
    bool operator==(const PlaneSlip&) const = default;
};

/// Stiff: Table 7.1 as published (from memory). Soft: two thirds of it, as for strength (2.1), and
/// in wet wood 0.7 of that, the US factor for wet lateral load taken over (judgement: no slip
/// modulus is published for wet wood or for bronze and copper). Slack in a bolt's hole is not in
/// it. One plane, between members i and i + 1; nothing where a density is missing or there is no
/// such plane.
std::optional<PlaneSlip> slipBracket(const Joint& joint, std::size_t plane);

/// What the soft side contains.
std::string_view sourceOf(const PlaneSlip& slip);

}  // namespace fayline
