#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "check/ballast.h"
#include "check/fastening.h"
#include "check/floor.h"
#include "hull/hydrostatics.h"
#include "hull/offsets.h"
#include "hull/rabbet.h"
#include "hull/structure.h"
#include "hull/surface.h"
#include "layout/ballast_bolts.h"
#include "layout/frame_fastenings.h"
#include "layout/planking.h"
#include "load/ballast.h"

namespace fayline {

/// A decision still to be made before something can be worked out, in the order a builder would
/// make them.
struct Missing {
    std::string what;  ///< the decision's name; a group of decisions ends in ".…"
    std::string says;
    bool operator==(const Missing&) const = default;
};

/// The lofted hull, or why there is none yet.
struct HullShape {
    Offsets offsets;
    std::shared_ptr<const LoftedSurface> surface;  ///< null when the offsets do not make a hull
    std::shared_ptr<const RabbetLine> rabbet;      ///< as the offsets give it; null: they do not
    Problems problems;
};

/// The hull afloat; computed, to set against what the builder states.
struct Afloat {
    Length waterline;
    Density water;
    std::optional<Hydrostatics> body;
    std::string why;  ///< when there is no figure
};

/// One frame with what stands on it.
struct FramePlace {
    std::string id;
    Length x;
    bool measured = false;  ///< its place is the builder's own, not the even spacing
    bool inHull = true;
    std::optional<Length> sided, moulded;
    std::optional<std::string> floorKind;  ///< not decided, none, or how it is made
    std::optional<std::string> floorTopology, floorWood;
    std::optional<Length> floorSided, floorThroat;
    std::optional<Length> floorTop;  ///< height of its upper face, where it stands on the keel
    std::optional<Length> floorX;    ///< middle of its siding
    bool operator==(const FramePlace&) const = default;
};

/// The ballast as decided, with what its shape gives.
struct BallastPlace {
    BallastShape shape;
    Mass fromShape;
    Mass mass;     ///< as stated; else from its shape
    Point centre;  ///< as stated; else from its shape
    Length centreBelow;
    Length jointHeight;  ///< of the joint of keel and ballast at the centre of gravity
    bool operator==(const BallastPlace&) const = default;
};

/// Where the timbers are.
struct Structure {
    std::vector<FramePlace> frames;
    std::optional<KeelTimber> keel;
    std::optional<BallastPlace> ballast;
    std::vector<JointSection> joint;  ///< keel and ballast along their joint
    std::vector<BedSlice> bed;
    std::vector<Missing> missing;
    Problems problems;  ///< sizes and places that cannot be, named by decision
    bool operator==(const Structure&) const = default;
};

/// Checks that were worked out together: of a frame's fastenings, of a ballast bolt in one case.
/// Never changed once made, so that what is worked out from one may be kept as long as it is there.
struct CheckSet {
    std::vector<Check> checks;  ///< worst first
    /// The first check of each thing under a leading timber basis, metal counted under either:
    /// places in `checks`, in their order.
    std::vector<std::size_t> worstUs, worstEc5;
    /// The frame of all of them; empty where they belong to none, or to several.
    std::string frame;

    CheckSet() = default;
    explicit CheckSet(std::vector<Check> found);
    [[nodiscard]] const std::vector<std::size_t>& worst(Basis leading) const {
        return leading == Basis::ec5 ? worstEc5 : worstUs;
    }
    bool operator==(const CheckSet&) const = default;
};

/// The checks of one frame's fastenings, or of those that belong to no frame, with what is behind
/// them.
struct FrameChecks {
    std::vector<SetCheckInput> sets;
    std::optional<FloorCheckInput> floor;
    std::vector<FrameLoad> loads;  ///< by case
    CheckSet found;
};

/// How often each stage really ran in the last derivation.
struct RunCounts {
    int loft = 0, hydrostatics = 0, structure = 0, layout = 0, loads = 0, checks = 0;
    int curves = 0, frames = 0;  ///< frame lines, and frames laid out
    int frameChecks = 0;         ///< frames whose fastenings were checked
    bool operator==(const RunCounts&) const = default;
};

/// Everything worked out from one project value. Nothing here is stored as truth.
struct Results {
    std::shared_ptr<const HullShape> hull;
    std::shared_ptr<const Afloat> afloat;
    std::shared_ptr<const Structure> structure;
    std::shared_ptr<const BallastBoltLayout> ballastBolts;
    std::vector<std::shared_ptr<const FrameCurve>> curves;  ///< by frame; null outside the hull
    std::vector<std::optional<RabbetPlace>> rabbets;        ///< by frame; none: no keel either
    std::shared_ptr<const PlankEnds> foreEnds, aftEnds;     ///< null where there is no shape
    std::vector<std::shared_ptr<const FrameFastenings>> frameFastenings;  ///< by frame
    std::shared_ptr<const FrameFastenings> planking;  ///< butts, hood ends, garboard to keel
    std::shared_ptr<const FrameFastenings> backbone;  ///< bolts and drifts of the backbone's joints
    std::vector<std::shared_ptr<const CaseLoads>> cases;
    std::vector<std::shared_ptr<const BoltCheckInput>>
        boltInputs;                       ///< in the order of the placed bolts
    std::optional<WasherInput> keelWood;  ///< the bed's wood
    std::vector<std::shared_ptr<const FrameChecks>> frameChecks;  ///< by frame, then the backbone's
    std::vector<std::shared_ptr<const CheckSet>> checkSets;
    std::vector<const Check*> worstFirst;  ///< into checkSets
    std::vector<Missing> missing;
    Problems problems;                  ///< of offsets, timbers and kept catalogue rows
    std::vector<std::string> cautions;  ///< what every screen and paper says
    RunCounts runs;
};

/// All checks of one fastening or timber, worst first.
std::vector<const Check*> checksOf(const Results& results, const std::string& id);
/// The sets with checks at one frame.
std::vector<const CheckSet*> setsAtFrame(const Results& results, const std::string& frame);
/// The worst check of each thing under a leading timber basis, metal counted under either.
std::vector<const Check*> worstOfEach(const Results& results, Basis leading);
/// The same by frame, of everything at it.
std::unordered_map<std::string_view, const Check*> worstByFrame(const Results& results,
                                                                Basis leading);

/// All holes, ballast bolts first, then frame by frame; and all findings in the same order.
std::vector<const Hole*> allHoles(const Results& results);
std::vector<const Finding*> allFindings(const Results& results);

/// The working behind one check.
std::optional<Trace> explain(const Results& results, const Check& check);

/// The standing cautions: a guide, not a certificate.
std::vector<std::string> standingCautions();

}  // namespace fayline
