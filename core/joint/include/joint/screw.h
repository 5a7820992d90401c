#pragma once

#include <optional>
#include <string_view>

#include "joint/joint.h"
#include "material/figure.h"
#include "quantity/quantity.h"

namespace fayline {

/// Body of a wood screw, 0.060 in + 0.013 in for each gauge (US series; the British differs).
Length screwBody(Gauge gauge);

/// Root of a wood screw of this gauge as sold, the average along the thread; nothing where no
/// average is known.
std::optional<Figure<Length>> screwRootMeasured(Gauge gauge);
/// Root in the US standard's Appendix L; nothing outside its gauges.
std::optional<Figure<Length>> screwRootCode(Gauge gauge);

/// A size with where it comes from; the text is of static storage.
struct SourcedLength {
    Length value;
    Standing standing = Standing::judgement;
    std::string_view source;
    bool operator==(const SourcedLength&) const = default;
};

/// The sizes of a wood screw that count.
struct ScrewShape {
    SourcedLength body, root, thread, tip, head;
    bool operator==(const ScrewShape&) const = default;
};

/// Measured sizes first; then the gauge's averages (or the code's table if asked for); last the
/// general rules: root two thirds of the body, thread two thirds of the length, head twice the
/// body, tip two bodies.
ScrewShape screwShape(const JointFastener& fastener);

}  // namespace fayline
