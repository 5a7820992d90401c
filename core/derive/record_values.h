#pragma once

#include <optional>
#include <string>

#include "joint/limit_state.h"
#include "joint/trace.h"
#include "quantity/display.h"
#include "sheet/record.h"

/// How a calculation record speaks: four digits, the record's own units and the other system
/// beside them, so that either code's formula can be followed in the units it was published in.
namespace fayline::record_values {

constexpr UnitSystem otherOf(UnitSystem units) {
    return units == UnitSystem::inches ? UnitSystem::millimetres : UnitSystem::inches;
}

/// So many significant digits, trailing zeros left out.
std::string digits(double value, int significant);
std::string show(const TraceValue& value, UnitSystem units);
std::string show(const std::optional<Force>& value, UnitSystem units);
std::string show(const std::optional<Band>& value, UnitSystem units);
/// "88.2 lb (392.3 N)".
std::string both(Force value, UnitSystem units);
/// A length as a builder reads it, 1-1/8" or 28.5 mm; empty when nil.
std::string size(Length value, UnitSystem units);
/// "from memory", "common practice".
std::string standing(Standing standing);
/// "lateral", "pull through"; "US", "Eurocode 5", "metal".
std::string state(LimitStateKind kind);
std::string basis(Basis basis);

record::Working working(const Trace& trace, UnitSystem units, std::string result);
/// A row of figures for a table of inputs: what, figure, the other system, standing, source.
std::vector<std::string> inputRow(const std::string& what, const TraceValue& value,
                                  const std::string& source,
                                  const std::optional<Standing>& standing, UnitSystem units);

}  // namespace fayline::record_values
