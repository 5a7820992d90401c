#pragma once

#include "derive/results.h"
#include "materials.h"
#include "project/project.h"

namespace fayline {

// The stages of the road, each a pure function of a value.

struct LoftInput {
    std::map<std::string, OffsetStationDecisions> offsets;
    bool operator==(const LoftInput&) const = default;
};
HullShape loftStage(const LoftInput& input);

struct AfloatInput {
    std::shared_ptr<const HullShape> hull;
    std::optional<Length> waterline;
    Density water;
    bool operator==(const AfloatInput&) const = default;
};
Afloat afloatStage(const AfloatInput& input);

struct StructureInput {
    std::shared_ptr<const HullShape> hull;
    KeelDecisions keel;
    FrameSetDecisions frames;
    std::map<std::string, FrameDecisions> frame;
    FloorDecisions floors;
    std::map<std::string, FloorDecisions> floor;
    BallastDecisions ballast;
    std::optional<Density> ballastDensity;
    bool operator==(const StructureInput&) const = default;
};
Structure structureStage(const StructureInput& input);

/// The bolts as decided, rules filled in; what cannot be worked out without is named in `missing`.
struct BoltPlan {
    BallastBoltInput layout;
    std::vector<Missing> missing;
};
BoltPlan planBolts(const Project& project, const Structure& structure, const Catalogue& catalogue);

/// One bolt's decisions with those for all bolts beneath.
BoltDecisions boltDecisions(const Project& project, const std::string& id);
/// One frame's floor decisions with those for all floors beneath.
FloorDecisions floorDecisions(const FloorDecisions& all,
                              const std::map<std::string, FloorDecisions>& own,
                              const std::string& frame);

/// The thread of a rod of exactly this diameter.
const Thread* threadOf(const Catalogue& catalogue, Length diameter);

BallastLoadInput ballastLoadInput(const Project& project, const Structure& structure,
                                  const BallastBoltLayout& layout, const Materials& materials,
                                  Mass boat);
CaseSettings caseSettings(const Project& project, LoadCase loadCase);
BoltCheckInput boltCheckInput(const Project& project, const Structure& structure,
                              const PlacedBolt& bolt, const Materials& materials,
                              const Catalogue& catalogue);
double targetOf(const Project& project, ConsequenceClass consequence);

}  // namespace fayline
