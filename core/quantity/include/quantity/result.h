#pragma once

#include <string>
#include <tl/expected.hpp>
#include <vector>

namespace fayline {

/// Why something was refused, in plain English. Printed as "WHERE: WHAT; ALLOWED".
struct Problem {
    std::string code;     ///< short and stable, for programs: "unit.missing", "file.not_ours"
    std::string where;    ///< file:line, JSON path, decision name or option
    std::string what;     ///< what is wrong, with the offending value and its unit
    std::string allowed;  ///< what would be accepted

    [[nodiscard]] std::string line() const {
        std::string text = where.empty() ? what : where + ": " + what;
        if (!allowed.empty()) text += "; " + allowed;
        return text;
    }
    bool operator==(const Problem&) const = default;
};

using Problems = std::vector<Problem>;

/// A value, or the one problem that stopped it.
template <typename T>
using Result = tl::expected<T, Problem>;

/// A value, or every problem found (for readers of whole files).
template <typename T>
using ResultAll = tl::expected<T, Problems>;

}  // namespace fayline
