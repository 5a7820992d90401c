#pragma once

#include <QStringList>
#include <memory>
#include <set>
#include <string>
#include <vector>

#include "rows.h"

namespace fayline {

/// Gathers what was decided since the rows were last made, and tells which of them it can change.
/// A decision for one frame or bolt changes the rows of that frame or bolt; any other may change
/// every row.
class Touched {
  public:
    void add(const QStringList& whats);
    /// Every row may be another.
    void addAll() { all_ = true; }

    /// Brings rows made of older results up to what is on the desk, for the same frames. Returns
    /// how many were made anew; others had at most their worst margin written again.
    int bring(std::vector<StationRow>& rows, const Desk& desk);
    /// The rows are those of what is on the desk now.
    void settle(const Desk& desk);

  private:
    [[nodiscard]] std::set<std::string> dirty(const Results& before, const Results& now) const;

    bool all_ = true;
    std::set<std::string> frames_, bolts_;
    std::shared_ptr<const Results> made_;  ///< what the rows were made of
    Speech speech_;
};

}  // namespace fayline
