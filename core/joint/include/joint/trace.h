#pragma once

#include <string>
#include <variant>
#include <vector>

#include "material/standing.h"
#include "quantity/quantity.h"

namespace fayline {

using TraceValue =
    std::variant<double, int, std::string, Length, Area, Mass, Force, Moment, Stress, Density>;

/// One figure in a working: an input or something worked out on the way.
struct TraceLine {
    std::string symbol;   ///< "A", "k_mod"
    std::string meaning;  ///< "net area at the root, less corrosion"
    TraceValue value;
    std::string source;  ///< document and clause, or whose decision; empty when it follows from the
                         ///< lines above
    std::optional<Standing> standing;
};

/// The working of one result: enough to do it again by hand.
struct Trace {
    std::string title;
    std::string formula;
    std::vector<TraceLine> lines;
    std::string clause;  ///< where the formula stands
    Standing standing = Standing::derived;
    std::vector<std::string> notes;
    std::vector<std::string> outside;  ///< "outside the range it was made for: …"
};

}  // namespace fayline
