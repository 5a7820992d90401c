#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "fastener/bolt.h"
#include "quantity/result.h"

namespace fayline {

/// How the hole in timber is made against the rod. Holes of metal fits (ISO 273, ASME B18.2.8) are
/// looser and meant for metal on metal.
enum class HoleFit {
    driven,  ///< 0.4 mm under: watertight or strength-critical (boat-design handbook BDB-401-02)
    snug,   ///< the rod's own size (Wood Handbook ch. 8; binds when the timber dries after fitting)
    easy,   ///< 1/32 in over: the least of the US design standard's 1/32 to 1/16 in
    plate,  ///< 1 mm over: through steel plate (common practice)
};

/// "driven", "snug", "easy", "plate".
std::string_view holeFitText(HoleFit fit);
std::optional<HoleFit> holeFitFromText(std::string_view text);

/// Hole minus rod; negative = hole under size.
Length holeAllowance(HoleFit fit);
/// Where the allowance comes from, and its standing.
std::string_view holeAllowanceSource(HoleFit fit);
Standing holeAllowanceStanding(HoleFit fit);

enum class HoleEnd { head, point };

struct DrillStep {
    Length bit;
    std::optional<Length> depth;  ///< missing = right through
    HoleEnd from = HoleEnd::head;
    std::string what;

    bool operator==(const DrillStep&) const = default;
};

/// A recess that lets washer and nut below the surface.
struct Recess {
    Length diameter;
    Length depth;

    bool operator==(const Recess&) const = default;
};

struct BoltHoleWish {
    Length rod;   ///< diameter of the rod
    Length grip;  ///< timber and ballast between the washers, recesses not counted
    HoleFit fit = HoleFit::snug;
    HoleEnd boredFrom = HoleEnd::head;  ///< the end where the drill can stand
    std::optional<Recess> headRecess;
    std::optional<Recess> pointRecess;
};

struct BoltHole {
    Length diameter;
    std::vector<DrillStep> steps;  ///< in the order of work
    Standing standing = Standing::judgement;
    std::string source;

    bool operator==(const BoltHole&) const = default;
};

/// Steps for a through rod in a thick stack of timber: recess at the end the drill starts from
/// while there is wood to guide it, pilot right through to a string or template, ream to size
/// following the pilot, then the far recess guided by the hole. The pilot is half the hole
/// (judgement: long thin bits wander, thick ones cannot be corrected) and not less than 6 mm, or
/// the hole itself if that is smaller. Refused: sizes that are not positive, a recess narrower than
/// the hole.
Result<BoltHole> boltHole(const BoltHoleWish& wish);

}  // namespace fayline
