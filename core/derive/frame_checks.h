#pragma once

#include <map>
#include <memory>
#include <string>
#include <unordered_map>
#include <vector>

#include "check/fastening.h"
#include "check/floor.h"
#include "derive/results.h"
#include "joint/joint_result.h"
#include "materials.h"
#include "plank_bend.h"
#include "project/project.h"

namespace fayline {

/// Joints worked out before, by what they say; thousands of plank crossings share a few.
class JointStore {
  public:
    /// The joint's result; null with the reason in `why` where it cannot be worked out.
    const JointResult* find(const Joint& joint, std::string& why);
    void clear() { known_.clear(); }

  private:
    struct Entry {
        std::shared_ptr<const JointResult> result;
        std::string why;
    };
    std::unordered_map<Joint, Entry, JointHash> known_;
};

/// The timbers all frames share, for their joints.
struct TimberContext {
    std::optional<Wood> plank, frame, keel;
    std::map<std::string, Metal> metals;  ///< those the holes name
    std::optional<double> metalFactor;
    Length planking;
    Stress seam, stiffness;  ///< of the wet planking: crushing of its side grain; along the grain
    double targetKeel = 1.5, targetHull = 1.25;
    bool operator==(const TimberContext&) const = default;
};

/// One frame's holes with what stands around them. Equal inputs give equal checks.
struct FrameChecksInput {
    std::string frame;
    std::shared_ptr<const FrameFastenings> fastenings;
    std::shared_ptr<const FrameFastenings> planking;  ///< butts, hood ends, garboard of the hull
    std::vector<const Hole*> plankingHere;            ///< those of them that belong to this frame
    std::shared_ptr<const FrameCurve> curve;
    std::shared_ptr<const TimberContext> context;
    std::vector<Length> seams;
    std::vector<PlankBend> bends;  ///< by strake, at an end of the hull
    Length sided, moulded, spacing;
    std::optional<Length> keelSided, keelMoulded;
    HeelDetail heelDetail = HeelDetail::beside;
    bool floorHere = false;
    std::optional<Length> floorSided, floorThroat;
    std::optional<Wood> floorWood;  ///< none: not decided, or metal
    bool metalFloor = false;
    bool straightGrain = true;          ///< floor sawn from straight plank
    std::optional<Length> ballastBolt;  ///< diameter of the bolt through the floor
    std::vector<FrameLoad> loads;       ///< by case
    bool operator==(const FrameChecksInput&) const = default;
};

FrameChecks checkFrame(const FrameChecksInput& input, JointStore& store);

/// Like fastenings of the backbone and, where they belong to no frame, of the planking.
FrameChecks checkLoose(const std::vector<Hole>& holes, const TimberContext& context);

}  // namespace fayline
