#pragma once

#include "joint/limit_state.h"

namespace fayline {

/// A threaded rod in tension and shear, as the metal set sees it.
struct RodInput {
    Length root;             ///< diameter at the thread's root
    Length corrosion;        ///< allowance off the radius
    Stress yield, ultimate;  ///< least values of the stock
    std::optional<Stress> yieldTypical, ultimateTypical;
    double factor = 2.5;  ///< on the smaller of yield and half the ultimate
    Standing strengthStanding = Standing::read;
    std::string strengthSource;
    std::string factorSource;
    Standing factorStanding = Standing::fromMemory;
    bool operator==(const RodInput&) const = default;
};

/// Area left at the root once the corrosion allowance is gone; nil when nothing is left.
Area netArea(const RodInput& rod);

/// Tension at the thread root: min(f_y, f_u/2)·A/factor. Starts to give at yield, comes apart at
/// ultimate.
LimitState rodTension(const RodInput& rod, Trace* trace = nullptr);

/// Tension T with shear V: √(T² + 3V²) against the same capacity (von Mises on the net area).
/// Capacities are sizes of the load given, along its own direction. No load: no result.
std::optional<LimitState> rodCombined(const RodInput& rod, Force tension, Force shear,
                                      Trace* trace = nullptr);

}  // namespace fayline
