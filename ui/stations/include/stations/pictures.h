#pragma once

#include <string>

#include "desk/desk.h"
#include "sheet/profile.h"
#include "sheet/section.h"

namespace fayline {

/// What the side profile of the project on the desk shows; the words beneath say what is still
/// wanted where there is no hull.
ProfileInput profileOf(const Desk& desk);

/// What the section at a frame shows.
SectionInput sectionOf(const Desk& desk, const std::string& frame);

}  // namespace fayline
