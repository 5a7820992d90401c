#pragma once

#include <optional>
#include <vector>

#include "hull/offsets.h"
#include "hull/section.h"
#include "quantity/quantity.h"

namespace fayline {

/// The rabbet's outer line, where the planking's outside meets keel, stem and sternpost, as a table
/// of offsets gives it: through its points by the curve the hull is lofted with.
class RabbetLine {
  public:
    /// Nothing when fewer than two stations say which of their points lies on it.
    static std::optional<RabbetLine> through(const Offsets& offsets);

    /// Nothing forward of its first point and aft of its last.
    [[nodiscard]] std::optional<SectionPoint> at(Length x) const;

  private:
    RabbetLine() = default;
    std::vector<Length> x_, y_, z_;
};

/// Where planking begins on one section.
struct RabbetPlace {
    SectionPoint at;
    bool derived = false;  ///< by the rule below, not from the table of offsets
    bool operator==(const RabbetPlace&) const = default;
};

/// Where no rabbet is given: the lowest place whose planking stands with its inside clear of the
/// backbone's side, `halfSiding` out from the centreline. The sheer where the section is too narrow
/// for that: all stem there. `lowest`: not below this height (a ballast bulb is no planking).
/// Derived from the section, siding and planking; no published source.
SectionPoint rabbetByRule(const Section& section, Length halfSiding, Length planking,
                          std::optional<Length> lowest);

}  // namespace fayline
