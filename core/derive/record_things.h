#pragma once

#include <string>
#include <vector>

#include "derive/record.h"

namespace fayline {

/// Everything that is checked and alike: one joint and all places it stands for.
struct RecordThing {
    std::string group;  ///< "ballast", "keel", "floor timber", "arm", "plank" …
    const SetCheckInput* set = nullptr;
    const BoltCheckInput* bolt = nullptr;
    const FloorCheckInput* floor = nullptr;
    std::vector<std::string> ids{};     ///< of the checks
    std::vector<std::string> frames{};  ///< in the hull's order, each once
    int fastenings = 0;
    std::vector<const Check*> worst{};  ///< of each limit state and basis, worst first
};

/// All distinct things with a check, in the order they hold the hull together. `frame`: only what
/// stands at it; empty: all. The results must outlive what is returned.
std::vector<RecordThing> thingsOf(const Results& results, const std::string& frame);

/// "F4 to F12, F14".
std::string frameRanges(const std::vector<std::string>& frames, const Results& results);

}  // namespace fayline
