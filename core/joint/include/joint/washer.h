#pragma once

#include "joint/limit_state.h"

namespace fayline {

/// A round washer or plate bearing on wood across the grain.
struct WasherInput {
    Length diameter, thickness, hole, bolt;
    /// Width of the timber under it; the part that overhangs bears on nothing.
    std::optional<Length> timberWidth;
    /// US allowable compression across the grain, dry, before adjustment.
    std::optional<Stress> usAllowable;
    std::string usSource;
    Standing usStanding = Standing::fromMemory;
    /// Eurocode 5 characteristic compression across the grain.
    std::optional<Stress> ec5Characteristic;
    std::string ec5Source;
    Standing ec5Standing = Standing::derived;
    /// Mean crushing (proportional limit) across the grain, wet; where known.
    std::optional<Stress> meanWet;
    Service service = Service::wet;
    Duration duration = Duration::tenMinutes;
    KindOfLoad kindOfLoad = KindOfLoad::variable;
    bool operator==(const WasherInput&) const = default;
};

/// Area of wood under the washer: the disc, less the hole, less what overhangs the timber's two
/// sides.
Area bearingArea(const WasherInput& washer);

/// US: F_c⊥·C_M·C_b on the bearing area (ANSI/AWC NDS 3.10: no duration factor; wet service 0.67;
/// C_b = (l_b + 3/8 in)/l_b for bearing shorter than 6 in). No allowable for the wood: no result.
std::optional<LimitState> washerUs(const WasherInput& washer, Trace* trace = nullptr);

/// Eurocode 5: 3.0·f_c,90,k·k_mod/γ_M on the bearing area (EN 1995-1-1 8.5.2(2)). No strength for
/// the wood: no result.
std::optional<LimitState> washerEc5(const WasherInput& washer, Trace* trace = nullptr);

/// Wood crushed across the grain over a long bed: the highest pressure against the design stress.
/// The capacities are sizes of the whole contact force, its pattern kept.
struct BedInput {
    Force contact;     ///< resultant
    Stress highest;    ///< highest pressure under that resultant
    WasherInput wood;  ///< strengths, service, duration (its sizes are not used)
    bool operator==(const BedInput&) const = default;
};
std::optional<LimitState> bedUs(const BedInput& bed, Trace* trace = nullptr);
std::optional<LimitState> bedEc5(const BedInput& bed, Trace* trace = nullptr);

}  // namespace fayline
