#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "derive/results.h"
#include "project/project.h"
#include "project/step.h"
#include "quantity/display.h"
#include "sheet/paper.h"
#include "shop/takeoff.h"

namespace fayline {

struct Catalogue;

/// How sheets are made. Nothing in it but the units changes a sheet's revision code.
struct PaperOptions {
    PaperSize paper = PaperSize::a4;
    std::optional<UnitSystem> units;  ///< none: the project's
    std::string printed;              ///< when, as it is to stand on the sheet
    std::string program;              ///< "fayline 0.1.0"
    /// The journal's steps, oldest first, for "last change"; not needed for anything else. Must
    /// outlive the call.
    const std::vector<Step>* steps = nullptr;
};

/// A sheet that can be had, without making it.
struct SheetName {
    std::string id;  ///< "F8", "F8.floor", "keel", "planks", "backbone"
    SheetKind kind = SheetKind::frame;
    std::string title, fileName;
    std::string frame;  ///< empty for sheets of the whole hull
    bool empty = false;
    bool operator==(const SheetName&) const = default;
};

/// Makes the sheets of one state of the project, one by one; what they share is found once.
/// Project, results, catalogue and the options' steps must outlive it unchanged.
class SheetMaker {
  public:
    SheetMaker(const Project& project, const Results& results, const Catalogue& catalogue,
               const PaperOptions& options);
    ~SheetMaker();
    SheetMaker(const SheetMaker&) = delete;
    SheetMaker& operator=(const SheetMaker&) = delete;

    /// Every sheet there is, in order: per frame its own and its floor's, then keel, planks,
    /// backbone.
    [[nodiscard]] const std::vector<SheetName>& names() const;
    /// One sheet by its id; nothing when there is none of that id.
    [[nodiscard]] std::optional<Sheet> sheet(const std::string& id) const;

  private:
    struct Parts;
    std::unique_ptr<const Parts> parts_;
};

/// Every sheet there is, in order: per frame its own and its floor's, then keel, planks, backbone.
std::vector<SheetName> sheetNames(const Project& project, const Results& results);

/// One sheet by its id; nothing when there is none of that id.
std::optional<Sheet> sheetNamed(const std::string& id, const Project& project,
                                const Results& results, const Catalogue& catalogue,
                                const PaperOptions& options);

/// All sheets, in the order of sheetNames(). Every hole of the hull is drilled from exactly one
/// page.
std::vector<Sheet> sheetsOf(const Project& project, const Results& results,
                            const Catalogue& catalogue, const PaperOptions& options);

/// What to order for all holes of the hull.
TakeOff takeOffOf(const Project& project, const Results& results, const Catalogue& catalogue);

}  // namespace fayline
