#pragma once

#include <optional>

#include "quantity/quantity.h"
#include "quantity/result.h"

namespace fayline {

/// The keel timber: straight, of one siding and moulding, its moulding measured upright.
struct KeelTimber {
    Length from, to;                     ///< its ends, x
    Length undersideFore, undersideAft;  ///< height of its lower face there
    Length sided;                        ///< breadth
    Length moulded;                      ///< depth
    bool operator==(const KeelTimber&) const = default;
};

/// Empty when all is well. Limits: `from` before `to`; sided and moulded 5 mm to 2 m; everything
/// finite and within 200 m. `where` is "keel.FIELD".
Problems checkKeel(const KeelTimber& keel);

/// Height of its lower face at x; nothing beyond its ends.
std::optional<Length> keelUndersideAt(const KeelTimber& keel, Length x);
/// Height of its upper face at x; nothing beyond its ends.
std::optional<Length> keelTopAt(const KeelTimber& keel, Length x);

}  // namespace fayline
