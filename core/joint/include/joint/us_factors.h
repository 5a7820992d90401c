#pragma once

#include <optional>

#include "joint/limit_state.h"
#include "joint/us_coefficients.h"
#include "material/wood.h"

namespace fayline {

/// C_D: 0.9 permanent, 1.0 ten years, 1.15 two months, 1.25 seven days, 1.6 ten minutes (NDS
/// 2.3.2). Never on metal nor on crushing across the grain.
double durationFactorUs(Duration duration);

/// The moisture timber had when the fastening was put in: up to 19 %, or wetter.
enum class Fitted { dry, wet };

/// C_M of lateral load (NDS Table 11.3.3). Fitted wet and dried in place is worst where several
/// rows hold the wood from shrinking: 0.4; small dowels 0.7; one fastening, or one row along the
/// grain, 1.0.
double moistureFactorLateralUs(Fitted fitted, Service service, Length diameter, bool singleRow);
/// C_M of wood screws in withdrawal and of heads pulled through.
double moistureFactorAxialUs(Service service);
/// C_eg: the fastening stands in end grain (NDS 12.5.2).
double endGrainFactorUs(bool endGrain);

/// One member as group action sees it: its whole section and stiffness.
struct GroupMember {
    Area area;
    Stress modulus;
    bool operator==(const GroupMember&) const = default;
};

/// C_g of a row of equal dowels along the load, wood to wood (NDS 11.3.6). 1 for one fastening or a
/// diameter below 1/4 in.
double groupFactorUs(int inRow, Length spacing, Length diameter, const GroupMember& main,
                     const GroupMember& side, const UsCoefficients& coefficients = usPublished);

/// How a fastening's load lies to the nearest end.
enum class EndLoad { along, towardEnd, across };

/// Where a fastening sits; what is not known is not judged.
struct Placement {
    std::optional<Length> end;          ///< to the end of the member
    EndLoad load = EndLoad::towardEnd;  ///< how the load lies to that end
    std::optional<Length> spacing;      ///< to the next in a row along the grain
    std::optional<Length> edge;         ///< to the loaded or nearer edge
    bool edgeLoadedAcross = false;      ///< load across the grain toward that edge
    bool operator==(const Placement&) const = default;
};

/// C_Δ with what lies below the standard's least distances.
struct GeometryFactor {
    double factor = 1.0;
    bool endTooNear = false, spacingTooNear = false, edgeTooNear = false;
    bool operator==(const GeometryFactor&) const = default;
};

/// NDS 12.5.1: the least of actual to full distances, between 0.5 and 1. Below 1/4 in the tables do
/// not apply and the factor is 1.
GeometryFactor geometryFactorUs(const Placement& placement, Length diameter, WoodFamily family);

}  // namespace fayline
