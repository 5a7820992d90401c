// Like fastenings under one load that need not pass through their middle.

#include "joint/group.h"
#include "result_parts.h"

namespace fayline {
namespace {

void explain(const JointGroup& group, const LimitState& one, const GroupResult& found,
             Trace& trace) {
    startTrace(trace, "Group under one load", "F = R / r, r the worst fastening's part of the load",
               found.state);
    trace.lines = {
        {"n", "fastenings", static_cast<int>(group.places.size()), "decision", std::nullopt},
        {"R", "design load sideways on one", one.working, std::string(one.clause), one.standing},
        {"r", "part of the load on fastening " + std::to_string(found.worst + 1), found.share,
         "elastic vector method on the places given", Standing::derived},
        {"F", "design load on the group, the worst one full", found.state.working, "",
         std::nullopt},
        {"F_p", "design load once all have yielded", found.plastic,
         "plastic limit, upper bound theorem", Standing::derived}};
    trace.notes.emplace_back(
        "The plastic load stands beside: it wants fastenings that yield far without splitting the "
        "wood, and is not what the margin rests on.");
}

}  // namespace

void addGroup(const Prepared& prepared, Basis basis, BasisResult& result, JointTraces* traces) {
    const auto& group = prepared.joint->group;
    if (!group) return;
    if (!result.lateral) {
        result.missing.push_back(
            {LimitStateKind::group, "the load sideways on one fastening is not worked out"});
        return;
    }
    const LimitState& one = result.lateral->state;
    const WorstShare worst = worstShare(*group);
    GroupResult& found = result.group.emplace();
    found.worst = worst.place;
    found.share = worst.share;
    LimitState& state = found.state;
    state.kind = LimitStateKind::group;
    state.basis = basis;
    state.reference = one.reference / worst.share;
    state.working = one.working / worst.share;
    if (one.gives) state.gives = Band{one.gives->low / worst.share, one.gives->high / worst.share};
    state.soft = one.soft;
    state.standing = one.standing;
    state.clause = "elastic vector method on true places; each fastening as under lateral";
    state.outside = one.outside;
    found.plastic = one.working * plasticLoad(*group);
    if (traces != nullptr)
        explain(*group, one, found, *traceOf(traces, basis, LimitStateKind::group));
}

}  // namespace fayline
