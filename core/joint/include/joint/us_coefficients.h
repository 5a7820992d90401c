#pragma once

namespace fayline {

/// Coefficients of the US design standard (ANSI/AWC NDS 2018, chapter 12 and 11) and of the Wood
/// Handbook (FPL-GTR-190, chapter 8). Their units are pounds and inches, as published. One place,
/// so that tests can move each of them and watch a published figure go wrong.
struct UsCoefficients {
    // NDS Table 12.3.3: dowel bearing strength, psi, G on oven-dry mass and volume.
    double bearingParallel_psi = 11200.0;  ///< · G, D of 1/4 in and more
    double bearingAcross_psi = 6100.0;     ///< · G^1.45 / √D
    double bearingAcrossExponent = 1.45;   ///< of G
    double bearingSmall_psi = 16600.0;     ///< · G^1.84, D below 1/4 in, any direction
    double bearingSmallExponent = 1.84;    ///< of G

    // NDS Table 12.3.1B: reduction from yield to ten years' allowable load.
    double reductionBearing = 4.0;   ///< modes Im, Is
    double reductionTurning = 3.6;   ///< mode II
    double reductionBending = 3.2;   ///< modes IIIm, IIIs, IV
    double grainRise = 0.25;         ///< K_θ = 1 + grainRise · θ/90°
    double smallReduction = 2.2;     ///< K_D up to 0.17 in
    double smallSlope_perIn = 10.0;  ///< K_D = slope · D + offset up to 1/4 in
    double smallOffset = 0.5;

    // NDS 12.2: allowable withdrawal per length, G on oven-dry mass and volume.
    double lagWithdrawal = 1800.0;  ///< · G^1.5 · D^0.75, lb/in (12.2-1)
    double lagGravityExponent = 1.5;
    double lagDiameterExponent = 0.75;
    double screwWithdrawal_psi = 2850.0;  ///< · G² · D (12.2-2)
    double nailWithdrawal_psi = 1380.0;   ///< · G^2.5 · D (12.2-3)
    double nailGravityExponent = 2.5;

    // NDS 12.2.5: head pull-through.
    double pullThroughThin_psi = 690.0;    ///< · π · D_H · G² · t up to t = 2.5 D_H
    double pullThroughThick_psi = 1725.0;  ///< · π · D_H² · G² above

    // Wood Handbook: mean ultimate withdrawal per length, G on oven-dry mass, volume at 12 %.
    double screwUltimate_psi = 15700.0;  ///< · G² · D (8-10)
    double driftUltimate_psi = 6600.0;   ///< · G² · D (8-9)
    double driftSafety = 5.5;            ///< ultimate to working load: the ratio of wood screws

    // NDS 11.3.6: load/slip modulus of one dowel, lb/in, for group action.
    double groupModulus = 180000.0;  ///< · D^1.5, wood to wood
};

/// As published.
inline constexpr UsCoefficients usPublished{};

}  // namespace fayline
