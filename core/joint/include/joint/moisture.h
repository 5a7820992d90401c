#pragma once

#include <array>
#include <optional>
#include <string_view>
#include <vector>

#include "joint/joint.h"
#include "joint/limit_state.h"
#include "quantity/result.h"

namespace fayline {

/// The four states a hull's timber goes through. Each has its own wetness, and what governs is
/// named.
enum class MoistureState { asFitted, shedDry, afloat, winterAshore };
inline constexpr std::array moistureStates{MoistureState::asFitted, MoistureState::shedDry,
                                           MoistureState::afloat, MoistureState::winterAshore};

/// Where in the hull: bilge and backbone, soaked the year round; topsides, wet afloat and dry
/// ashore; clamp and beams, drier. Judgement.
enum class MoistureZone { soaked, cycling, drier };

/// "as_fitted", "shed_dry", "afloat", "winter_ashore"; "soaked", "cycling", "drier".
std::string_view nameOf(MoistureState state);
std::string_view nameOf(MoistureZone zone);
std::optional<MoistureZone> moistureZoneNamed(std::string_view name);

/// Above 19 % of moisture in that state and zone, or not.
Service serviceIn(MoistureState state, MoistureZone zone, Fitted fitted);

/// One limit state in all four.
struct MoistureRow {
    Basis basis = Basis::us;
    LimitStateKind kind = LimitStateKind::lateral;
    std::array<Force, 4> working;  ///< in the order of moistureStates
    MoistureState governs = MoistureState::afloat;
    bool operator==(const MoistureRow&) const = default;
};

/// Every timber limit state worked in each of the four states, its own duration and load kept; the
/// metal knows no moisture. A joint fitted wet keeps, once it has dried, the published factor for
/// that when it is wetted again (ANSI/AWC NDS Table 11.3.3; that it does not recover is judgement).
/// Equal states: afloat is named before winter ashore, the shed and fitting. Refused as workJoint.
Result<std::vector<MoistureRow>> moistureRows(const Joint& joint, MoistureZone zone);

}  // namespace fayline
