#pragma once

#include <string>
#include <utility>
#include <vector>

#include "sheet/sheet_head.h"

namespace fayline {

/// One bolt that holds the ballast on, as texts in the sheet's unit.
struct KeelBolt {
    std::string id, frame;
    std::string along;                 ///< aft of the datum, on the joint
    std::string offsetTop, offsetEnd;  ///< off the string line, at the floor and at the lower nut
    std::string grip;
    std::string angles;  ///< off plumb, and off square to the keel's top; empty: as most
    std::string margin;  ///< worst, with its case
    bool heavy = false;  ///< short or unknown: printed so that it cannot be passed over
    bool operator==(const KeelBolt&) const = default;
};

/// Everything that holds the ballast keel on, on one page as far as it goes.
struct KeelSheet {
    SheetHead head;
    std::string seen;
    std::vector<std::pair<std::string, std::string>> notes;
    /// Rod, washer, socket and bits, with the bolts they are for.
    std::vector<std::pair<std::string, std::string>> settings;
    std::vector<KeelBolt> bolts;
    std::string cases;  ///< every load case with the worst it does
    std::vector<std::string> warnings;
    std::vector<std::string> cautions;  ///< besides the one at the foot
    std::string nothing;
    bool operator==(const KeelSheet&) const = default;
};

std::string revisionOf(const KeelSheet& sheet);
Sheet layOut(const KeelSheet& sheet, PaperSize paper);

}  // namespace fayline
