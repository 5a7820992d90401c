#pragma once

#include <map>
#include <memory>
#include <string>
#include <vector>

#include "catalogue/catalogue.h"
#include "derive/results.h"
#include "layout/frame_fastenings.h"
#include "project/project.h"

namespace fayline {

/// A group's decisions at one place: the nearest decision stands; "heel", then "F9.heel", then
/// "F9.P.heel".
FasteningDecisions fasteningAt(const Project& project,
                               const std::vector<std::string>& keysFromWidest);

/// Sizes of a group for layout; nothing when too little is decided to place it.
std::optional<FasteningChoice> choiceOf(const FasteningDecisions& decided,
                                        const Catalogue& catalogue);

/// Seams along a frame's curve: strakes of equal width there, those with a decided width narrowed
/// in the same proportion as the frame's girth stands to the greatest girth.
std::vector<Length> seamsAt(const Project& project, Length girth, Length greatestGirth);

/// The longest frame line, to which strakes' greatest widths belong.
Length greatestGirth(const Results& results);

/// How the frame's heels stand: its own decision, else that for all, else beside the keel.
HeelDetail heelDetailAt(const Project& project, const std::string& frame);

FrameFasteningInput frameFasteningInput(const Project& project, const Structure& structure,
                                        const FramePlace& frame,
                                        std::shared_ptr<const FrameCurve> curve,
                                        const std::optional<RabbetPlace>& rabbet,
                                        Length greatestGirth, const Catalogue& catalogue,
                                        bool hardwoodFrame, const std::vector<Hole>& ballastBolts);

}  // namespace fayline
