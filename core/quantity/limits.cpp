#include "quantity/limits.h"

namespace fayline {

std::string limitsText(const std::optional<std::string>& lo, bool loIncluded,
                       const std::optional<std::string>& hi, bool hiIncluded) {
    if (lo && hi && loIncluded && hiIncluded) return "from " + *lo + " to " + *hi;
    if (lo && hi) {
        return (loIncluded ? "at least " : "more than ") + *lo + " and " +
               (hiIncluded ? "at most " : "less than ") + *hi;
    }
    if (lo) return loIncluded ? *lo + " or more" : "more than " + *lo;
    if (hi) return hiIncluded ? *hi + " or less" : "less than " + *hi;
    return {};
}

}  // namespace fayline
