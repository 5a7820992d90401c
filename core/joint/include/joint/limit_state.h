#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "joint/remark.h"
#include "joint/trace.h"
#include "quantity/quantity.h"

namespace fayline {

/// The factor set a capacity belongs to. Metal limit states stand under either timber basis.
enum class Basis { us, ec5, metal };

enum class LimitStateKind {
    lateral,
    withdrawal,
    pullThrough,
    washer,
    metal,
    combined,
    headShear,
    threadStrip,
    crushing,
    punching,
    netSection,
    splitting,
    group,
    driving,
    floorBending,
    floorShear,
    floorSplitting,
    frameBending
};

/// How long a load lasts; the same five steps under both timber bases.
enum class Duration { permanent, tenYears, twoMonths, sevenDays, tenMinutes };
enum class KindOfLoad { permanent, variable, accidental };

/// Loaded along the fastening, not sideways; combined, driving and groups are neither.
bool isAxial(LimitStateKind kind);

/// Names as files and the command line write them.
std::string_view nameOf(Basis basis);
std::string_view nameOf(LimitStateKind kind);
std::string_view nameOf(Duration duration);
std::string_view nameOf(KindOfLoad kind);
std::optional<Duration> durationNamed(std::string_view name);
std::optional<KindOfLoad> kindOfLoadNamed(std::string_view name);

/// A physical load between two values.
struct Band {
    Force low, high;
    bool operator==(const Band&) const = default;
};

/// What one limit state of a fastening can carry under one factor set.
struct LimitState {
    LimitStateKind kind = LimitStateKind::metal;
    Basis basis = Basis::metal;
    Force reference;  ///< before adjustment (US), characteristic (Eurocode 5), unfactored (metal)
    Force working;    ///< design capacity
    std::optional<Band> gives;  ///< starts to give; none where no source exists
    std::optional<Band> apart;  ///< comes apart; none where no source exists
    bool soft = true;           ///< gives slowly (wood crushes, metal bends) rather than suddenly
    Standing standing = Standing::derived;
    std::string_view clause;  ///< where the formula stands; of static storage
    std::string_view place;   ///< "head end" where only one end is meant; of static storage
    std::vector<Remark> outside;
    bool operator==(const LimitState&) const = default;
};

/// Clause, and the end it is about.
std::string clauseOf(const LimitState& state);

/// Whether the design load stands above what the wood starts to give at, and why that may be so
/// under each timber basis.
bool worksAboveGiving(const LimitState& state);
std::string_view whyAboveGiving(Basis basis);

/// Where a timber joint stands, for the moisture factors.
enum class Service { dry, wet };

/// Eurocode 5 modification factor for solid timber (EN 1995-1-1 Table 3.1): service class 1–2 dry,
/// 3 wet.
double kMod(Duration duration, Service service);
/// Eurocode 5 partial factor for connections and for solid timber alike (EN 1995-1-1 Table 2.3):
/// 1.3; 1.0 for accidental loads.
double gammaM(KindOfLoad kind);

}  // namespace fayline
