#pragma once

#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "desk/desk.h"

namespace fayline {

/// One thing that holds at a frame, or is wrong with it.
struct Hold {
    QString title, size;
    QString verdict;              ///< "×0.84 short"; empty where nothing is checked
    QString why;                  ///< "rod, knocked down to port"
    QString dissent;              ///< when the other timber basis says otherwise by a status
    bool dissentMatters = false;  ///< the two stand at different statuses
    std::optional<Status> status;
    const Check* check = nullptr;  ///< into the results; its working can be shown
    Typed cure;                    ///< decisions that would put a finding right
    QString cureWords;
};

/// What holds at a frame: its ballast bolts, what is wrong with their places, the keel's bed, the
/// floor.
std::vector<Hold> holdsAt(const Desk& desk, const std::string& frame);

}  // namespace fayline
