#pragma once

#include <string>

#include "prepared.h"

namespace fayline {

/// Its own name, else "a member".
std::string nameOfMember(const PreparedMember& member);

/// Title, formula, and what the working takes from the result.
void startTrace(Trace& trace, std::string title, std::string formula, const LimitState& state);
/// Figures of one member that the basis uses.
void explainMember(const PreparedMember& member, Basis basis, Trace& trace);
void explainMembers(const Prepared& prepared, Basis basis, Trace& trace);
/// Length of screw thread or drift that holds.
void explainHold(const Prepared& prepared, Trace& trace);
/// A note with both ends of a band; nothing without one.
void explainBand(const std::optional<Band>& band, const std::string& what, Trace& trace);
/// A line for a size that has its source with it.
TraceLine lineOf(std::string symbol, std::string meaning, const SourcedLength& size);

/// The least trusted of the members' densities under a basis.
Standing worstOf(const Prepared& prepared, Basis basis);

/// The least axial capacity among those of a basis, and what it is.
struct LeastAxial {
    Force working, reference;
    LimitStateKind kind = LimitStateKind::withdrawal;
    Standing standing = Standing::derived;
};
std::optional<LeastAxial> leastAxial(const BasisResult& basis);

/// Kind, bands, softness, standing and cautions of a combined state; nothing when the load is nil,
/// pushes, or pulls on what has no axial capacity.
std::optional<LimitState> combinedFrame(const JointLoad& load, const LateralResult& lateral,
                                        const std::optional<LeastAxial>& axial);
void explainCombined(const JointLoad& load, const LimitState& side,
                     const std::optional<LeastAxial>& axial, const LimitState& state,
                     const std::string& formula, Trace& trace);

/// The metal's states into a basis.
void addEnds(const MetalStates& metal, BasisResult& result);
/// The wood the hole leaves, splitting across the grain and along a row.
void addMembers(const Prepared& prepared, Basis basis, BasisResult& result, JointTraces* traces);
/// The group, from the lateral state.
void addGroup(const Prepared& prepared, Basis basis, BasisResult& result, JointTraces* traces);

/// k_mod and γ_M of the joint.
void explainEc5Factors(const Prepared& prepared, Trace& trace);
/// k_mod/γ_M of the joint.
double ec5Share(const Prepared& prepared);
/// Characteristic capacity along the fastening that ropes its planes; nil where not known.
Force ec5AxialForRope(const Prepared& prepared, const BasisResult& result);

void usLateralState(const Prepared& prepared, const Bands& bands, BasisResult& result,
                    JointTraces* traces);
void ec5LateralState(const Prepared& prepared, const Bands& bands, BasisResult& result,
                     JointTraces* traces);

}  // namespace fayline
