#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "quantity/result.h"

namespace fayline {

/// The values a quantity may have. An end left out is open.
template <class Q>
struct Limits {
    std::optional<Q> lo;
    std::optional<Q> hi;
    bool loIncluded = true;
    bool hiIncluded = true;

    [[nodiscard]] bool hold(Q value) const {
        const bool above = !lo || value > *lo || (loIncluded && value == *lo);
        const bool below = !hi || value < *hi || (hiIncluded && value == *hi);
        return value == value && above && below;  // never NaN
    }
};

/// "0 mm or more", "more than 0 mm and at most 12 mm", "from 1 to 12": limits in words, for
/// Problem::allowed. Empty without any limit.
std::string limitsText(const std::optional<std::string>& lo, bool loIncluded,
                       const std::optional<std::string>& hi, bool hiIncluded);

/// The value, or the problem "WHERE: NAME is VALUE; LIMITS" (code number.out_of_limits). asText
/// prints one Q; the value itself is shown as `typed` where that is given.
template <class Q, class AsText>
Result<Q> within(Q value, const Limits<Q>& limits, std::string_view where, std::string_view name,
                 AsText asText, std::string_view typed = {}) {
    if (limits.hold(value)) return value;
    std::optional<std::string> lo;
    std::optional<std::string> hi;
    if (limits.lo) lo = asText(*limits.lo);
    if (limits.hi) hi = asText(*limits.hi);
    const std::string shown = typed.empty() ? std::string(asText(value)) : std::string(typed);
    return tl::unexpected(Problem{"number.out_of_limits", std::string(where),
                                  std::string(name) + " is " + shown,
                                  limitsText(lo, limits.loIncluded, hi, limits.hiIncluded)});
}

}  // namespace fayline
