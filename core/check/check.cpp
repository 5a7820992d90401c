#include "check/check.h"

#include <algorithm>
#include <tuple>

#include "quantity/text.h"

namespace fayline {

std::string_view nameOf(Status status) {
    switch (status) {
        case Status::isShort:
            return "short";
        case Status::near:
            return "near";
        case Status::unknown:
            return "unknown";
        case Status::outside:
            return "outside";
        case Status::ok:
            return "ok";
        case Status::unloaded:
            return "unloaded";
    }
    return "";
}

std::string_view nameOf(ConsequenceClass consequence) {
    switch (consequence) {
        case ConsequenceClass::keel:
            return "keel";
        case ConsequenceClass::hull:
            return "hull";
        case ConsequenceClass::trim:
            return "trim";
    }
    return "";
}

double usualTarget(ConsequenceClass consequence) {
    switch (consequence) {
        case ConsequenceClass::keel:
            return 1.5;
        case ConsequenceClass::hull:
            return 1.25;
        case ConsequenceClass::trim:
            return 1.0;
    }
    return 1.5;
}

Check compare(Force demand, const LimitState& state, double target) {
    Check check;
    check.basis = state.basis;
    check.limitState = state.kind;
    check.demand = demand;
    check.working = state.working;
    check.gives = state.gives;
    check.apart = state.apart;
    check.soft = state.soft;
    check.clause = clauseOf(state);
    check.standing = state.standing;
    check.outside = sentencesOf(state.outside);
    if (demand.si() <= 0) {
        check.status = Status::unloaded;
        check.why = "this case does not load it";
        return check;
    }
    check.margin = state.working / demand;
    if (*check.margin < 1.0) {
        check.status = Status::isShort;
    } else if (*check.margin < target) {
        check.status = Status::near;
    } else {
        check.status = state.outside.empty() ? Status::ok : Status::outside;
    }
    return check;
}

Status worstOf(const std::vector<Check>& checks) {
    Status worst = Status::unloaded;
    for (const Check& check : checks) worst = std::min(worst, check.status);
    return worst;
}

bool worseThan(const Check& a, const Check& b) {
    if (a.status != b.status) return a.status < b.status;
    const double marginA = a.margin.value_or(1e9);
    const double marginB = b.margin.value_or(1e9);
    if (marginA != marginB) return marginA < marginB;
    if (a.id != b.id) return naturalOrder(a.id, b.id) < 0;
    return std::tie(a.loadCase, a.limitState, a.basis, a.moisture) <
           std::tie(b.loadCase, b.limitState, b.basis, b.moisture);
}

}  // namespace fayline
