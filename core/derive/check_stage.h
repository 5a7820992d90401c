#pragma once

#include "derive/memo.h"
#include "frame_checks.h"

namespace fayline {

/// What the checks of everything but the ballast bolts remember.
struct CheckMemory {
    Memo<int, TimberContext, TimberContext> context;
    Memo<std::string, FrameChecksInput, FrameChecks> frames;
    JointStore joints;
    std::shared_ptr<const TimberContext> jointsOf;  ///< whose joints those are

    void nextGeneration();
};

/// Demand and margins of every group's fastenings, frame by frame, into `results`.
void checkFrames(const Project& project, const Materials& materials, CheckMemory& memory,
                 Results& results);

/// The working behind a check of one of these.
std::optional<Trace> explainAtFrame(const Results& results, const Check& check);

}  // namespace fayline
