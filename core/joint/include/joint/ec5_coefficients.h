#pragma once

namespace fayline {

/// Coefficients of EN 1995-1-1:2004+A1:2008 section 8, in newtons and millimetres as published. One
/// place, so that tests can move each of them and watch a published figure go wrong.
struct Ec5Coefficients {
    // 8.15, 8.16, 8.31–8.33: embedment strength, density in kg/m3.
    double embedment = 0.082;
    double undrilledExponent = -0.3;  ///< of the diameter, not predrilled (8.15)
    double diameterSlope = 0.01;      ///< 1 - slope · d, predrilled (8.16, 8.32)
    double acrossSoftwood = 1.35;     ///< k_90 = this + acrossSlope · d (8.33)
    double acrossHardwood = 0.90;
    double acrossSlope = 0.015;

    // 8.14, 8.30: yield moment.
    double yieldRound = 0.3;
    double yieldSquare = 0.45;
    double yieldExponent = 2.6;

    // 8.6, 8.7: modes with one and with two hinges.
    double oneHinge = 1.05;
    double twoHinges = 1.15;

    // 8.38–8.41: screws along their axis.
    double withdrawal = 0.52;
    double withdrawalDiameterExponent = -0.5;
    double withdrawalLengthExponent = -0.1;
    double densityExponent = 0.8;
    double fullDiameter_mm = 8.0;  ///< k_d = d / this, at most 1
    double rowExponent = 0.9;      ///< n_ef = n^0.9 (8.34, 8.41)

    // 8.3.2: smooth nails.
    double nailHead = 70.0e-6;  ///< · ρ²

    // 8.34: bolts in a row along the grain.
    double rowSpacing = 13.0;  ///< diameters at which the spacing term is 1

    double slipDivisor = 23.0;  ///< slip modulus ρ^1.5·d/this (Table 7.1)

    double splitting = 14.0;  ///< N, mm: load across the grain (8.4)

    double rootToEffective = 1.1;  ///< d_ef of a thread from its root (8.7.1)
};

/// As published.
inline constexpr Ec5Coefficients ec5Published{};

}  // namespace fayline
