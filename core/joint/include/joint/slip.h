#pragma once

#include "joint/joint.h"
#include "material/figure.h"

namespace fayline {

/// Slip modulus of one plane of one bolt, dowel, screw or nail in a bored hole, dry wood, steel
/// fastening, tight hole: ρ_m^1.5·d/23 in N/mm, ρ_m = √(ρ_1·ρ_2) of the mean densities
/// (EN 1995-1-1 Table 7.1, 7.1).
ForcePerLength slipModulusEc5(Density mean1, Density mean2, Length diameter);

/// The same of a nail driven without a hole: ρ_m^1.5·d^0.8/30.
ForcePerLength slipModulusDriven(Density mean1, Density mean2, Length diameter);

/// Two slip moduli between which a joint is taken to lie.
struct SlipBracket {
    Figure<ForcePerLength> soft, stiff;
    std::string why;  ///< what the soft side contains
    bool operator==(const SlipBracket&) const = default;
};

/// Stiff: Table 7.1 as published. Soft: two thirds of it, as for strength (2.1), and in wet wood
/// 0.7 of that, the US factor for wet lateral load taken over (judgement: no slip modulus is
/// published for wet wood or for bronze and copper). Slack in a bolt's hole is not in it. One
/// plane, between members i and i + 1; nothing where a density is missing or there is no such
/// plane.
std::optional<SlipBracket> slipBracket(const Joint& joint, std::size_t plane);

}  // namespace fayline
