#pragma once

#include <memory>
#include <optional>

#include "derive/results.h"
#include "hull/keel.h"
#include "project/project.h"

namespace fayline {

/// Where planking begins at one place, and its line from there to the sheer.
struct PlankingLine {
    std::optional<RabbetPlace> rabbet;
    std::optional<FrameCurve> curve;
};

/// What the rule for a rabbet that is not given goes by.
struct RabbetRule {
    std::optional<KeelTimber> keel;  ///< none: no rule, planking begins at the section's foot
    Length planking;
    bool operator==(const RabbetRule&) const = default;
};

struct CurveInput {
    std::shared_ptr<const HullShape> hull;
    Length x;
    std::optional<RabbetRule> rule;  ///< none where the offsets give the rabbet
    bool operator==(const CurveInput&) const = default;
};

/// The input at a place: with the rule only where the rabbet is not given there.
CurveInput curveInput(std::shared_ptr<const HullShape> hull, Length x, const RabbetRule& rule);

/// What the rule goes by in this project.
RabbetRule rabbetRule(const Project& project, const Structure& structure);

/// The rabbet as given; else derived: over the keel timber from its siding, elsewhere from the
/// section's own foot where that is narrower, as the stem's or sternpost's face.
PlankingLine curveStage(const CurveInput& input);

}  // namespace fayline
