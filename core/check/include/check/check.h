#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "joint/limit_state.h"
#include "load/case.h"

namespace fayline {

/// Worst first: a total takes the first of these that occurs in its parts.
enum class Status { isShort, near, unknown, outside, ok, unloaded };
std::string_view nameOf(Status status);

/// What the loss of a fastening would mean; sets the target margin.
enum class ConsequenceClass { keel, hull, trim };
std::string_view nameOf(ConsequenceClass consequence);

/// Targets until the builder decides otherwise (judgement).
double usualTarget(ConsequenceClass consequence);

/// One limit state of one fastening in one case under one factor set.
struct Check {
    std::string id, frame, group;
    int stands = 1;  ///< how many like fastenings this one speaks for
    LoadCase loadCase = LoadCase::knockdownPort;
    Basis basis = Basis::metal;
    LimitStateKind limitState = LimitStateKind::metal;
    std::string moisture = "afloat";
    ConsequenceClass consequence = ConsequenceClass::keel;
    std::optional<Force> demand, working;
    std::optional<Band> gives, apart;
    std::optional<double> margin;  ///< none when unloaded or unknown
    Status status = Status::unknown;
    bool soft = true;
    std::string clause;
    Standing standing = Standing::derived;
    std::vector<std::string> outside;
    std::string why;  ///< plain words when there is no figure
    bool operator==(const Check&) const = default;
};

/// Compares a demand with a limit state. Nil demand: unloaded. Outside the formula's range: never
/// ok.
Check compare(Force demand, const LimitState& state, double target);

/// Worst status of many; unloaded when there are none but unloaded.
Status worstOf(const std::vector<Check>& checks);

/// Order for tables: status, then margin, then id, case, basis and limit state, so that equal
/// inputs list equally.
bool worseThan(const Check& a, const Check& b);

}  // namespace fayline
