#pragma once

#include <QString>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "derive/results.h"

namespace fayline {

/// Which checks are listed; what is empty lets everything through.
struct MarginFilter {
    std::string group;
    std::optional<LoadCase> loadCase;
    std::optional<Status> status;
    std::optional<Basis> basis;  ///< this timber basis and metal
    QString text;                ///< in the thing's name, the limit state, the case or the basis
    bool operator==(const MarginFilter&) const = default;
};

using CheckList = std::vector<const Check*>;

/// What one line of the margins stands for: the checks of a joint, of one thing in it, or a single
/// check; the worst, which governs, first.
struct MarginEntry {
    std::string key;  ///< tells it from the others beside it, and stays through an edit
    std::shared_ptr<const CheckList> checks;

    [[nodiscard]] const Check& governing() const { return *checks->front(); }
};

/// The joint a check belongs to: a group of fastenings at a frame on both sides, a ballast bolt, a
/// joint of the backbone, a floor timber, the keel on the ballast.
std::string jointOf(const Check& check);
/// "Heels at F9", "Ballast bolt K.4", "Stem scarph".
QString jointTitle(const Check& check);

/// Lists the joints of results, worst first. Remembers what it found in each set of checks: after
/// an edit only new sets are looked through.
class JointLister {
  public:
    std::vector<MarginEntry> list(const Results& results, const MarginFilter& filter);
    /// Sets that the last list looked through.
    [[nodiscard]] int looked() const { return looked_; }

  private:
    struct Known {
        std::shared_ptr<const CheckSet> set;
        std::vector<MarginEntry> joints;
    };
    std::unordered_map<const CheckSet*, Known> known_;
    std::map<std::string, MarginEntry> joined_;  ///< joints of several sets
    MarginFilter filter_;
    int looked_ = 0;
};

/// The lines below one: a joint's things, or the checks of its only thing; a thing's checks; none
/// below a check.
std::vector<MarginEntry> within(const MarginEntry& entry);

}  // namespace fayline
