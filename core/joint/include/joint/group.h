#pragma once

#include <vector>

#include "joint/joint.h"

namespace fayline {

/// One fastening's part of a group's load.
struct GroupShare {
    Force along, across;
    [[nodiscard]] Force size() const;
    bool operator==(const GroupShare&) const = default;
};

/// Elastic vector method: equal springs at the true places; an even part of the load and, for its
/// moment about their middle, a part square to each one's arm in proportion to it (statics;
/// Blodgett and every handbook). A load through the middle is shared evenly. Empty group: nothing.
std::vector<GroupShare> elasticShares(const JointGroup& group, Force load);

/// Largest part of the load on any one, as a ratio, and which place it is.
struct WorstShare {
    double share = 0.0;
    int place = 0;
    bool operator==(const WorstShare&) const = default;
};
WorstShare worstShare(const JointGroup& group);

/// Load on the group, in capacities of one fastening, once all of them yield alike in any
/// direction: the least over all motions of the plate of dissipation over the load's work (upper
/// bound theorem, exact for this). Between the elastic load and the number of fastenings.
double plasticLoad(const JointGroup& group);

}  // namespace fayline
