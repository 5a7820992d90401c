#pragma once

#include <string>
#include <vector>

#include "sheet/paper.h"

namespace fayline {

/// What stands at head and foot of every page of a sheet. `printed`, `lastChange` and `program` are
/// no part of the revision code.
struct SheetHead {
    std::string id;  ///< "F8"
    SheetKind kind = SheetKind::frame;
    std::string title;     ///< "Frame F8"
    std::string fileName;  ///< "F8.pdf"
    std::string name;      ///< in large letters: "F8"
    std::string unit;      ///< "inches" or "mm"
    std::string boat;
    std::string caution;     ///< the short one at the foot
    std::string printed;     ///< when
    std::string lastChange;  ///< in words
    std::string program;
    bool operator==(const SheetHead&) const = default;
};

}  // namespace fayline
