#pragma once

#include <map>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "derive/paper.h"
#include "materials.h"
#include "paper_text.h"
#include "sheet/bench.h"

namespace fayline {

/// What all sheets of one project share while they are made.
struct PaperContext {
    PaperContext(const Project& from, const Results& worked, const Catalogue& known,
                 const PaperOptions& asked);

    const Project& project;
    const Results& results;
    const Catalogue& catalogue;
    const PaperOptions& options;
    paper_text::Unit unit;
    Materials materials;
    std::unordered_map<std::string_view, std::vector<const Finding*>> findings;  ///< by hole
    std::unordered_map<std::string_view, const Check*> worst;  ///< by id, of the leading basis
    std::unordered_map<std::string_view, const Hole*> holes;   ///< by id

    /// A hole's mark as on paper; its id where there is no such hole.
    [[nodiscard]] std::string markOf(const std::string& id) const;

    /// The metal as read on paper; says when it is not decided.
    [[nodiscard]] std::string metalName(const std::string& metal) const;
    [[nodiscard]] const FramePlace* frame(const std::string& id) const;
    [[nodiscard]] const FrameCurve* curve(const std::string& frameId) const;
};

/// Units a project's paper speaks unless told otherwise.
UnitSystem paperUnits(const Project& project, const PaperOptions& options);

/// Which sheet a hole is drilled from: "F8", "F8.floor", "keel", "planks", "backbone".
std::string sheetOf(const Hole& hole);

/// The mark with side and frame: "P8-A3", "F8-T1" on the centreline; "K.5" and "J2.1" stand alone.
std::string paperMark(const Hole& hole);

/// Where the drill enters: the face of the timber, not the end of a rod that stands proud of it.
Point entryOf(const Hole& hole);

SheetHead headFor(const PaperContext& paper, const SheetName& name, const std::string& large);

/// A hole with its row, and what its group must say of face and edge.
struct BenchItem {
    const Hole* hole = nullptr;
    BenchHole row;
    std::string what;   ///< "heel", "floor to keel"
    std::string where;  ///< "Drill from the INNER face; edge = from the FORWARD edge."
};
/// Rows of one setting together, those right through both timbers first.
std::vector<BenchGroup> groupsOf(const PaperContext& paper, std::vector<BenchItem> items);

/// What is wrong with these holes, in the sheet's unit, and what their bits need.
/// `beside` are holes of other sheets that may be run into.
std::vector<std::string> warningsFor(const PaperContext& paper,
                                     const std::vector<const Hole*>& holes,
                                     const std::vector<const Hole*>& beside = {});

/// The worst of these holes' checks in one line.
std::string marginsFor(const PaperContext& paper, const std::vector<const Hole*>& holes);

}  // namespace fayline
