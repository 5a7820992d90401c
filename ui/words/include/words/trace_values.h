#pragma once

#include <QString>

#include "joint/trace.h"
#include "quantity/display.h"

namespace fayline {

/// A figure of a working in the builder's units, four digits.
QString showTraceValue(const TraceValue& value, UnitSystem units);
QString showArea(Area area, UnitSystem units);
QString showMoment(Moment moment, UnitSystem units);

/// "read", "derived", "common practice", "from memory", "judgement".
QString standingWords(Standing standing);

}  // namespace fayline
