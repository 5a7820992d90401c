#pragma once

#include <QString>
#include <string>

#include "joint/limit_state.h"
#include "project/fields.h"
#include "project/project.h"
#include "quantity/display.h"
#include "quantity/result.h"

namespace fayline {

/// How a project is spoken of: the builder's units, and the timber basis that leads.
struct Speech {
    UnitSystem units = UnitSystem::inches;
    Basis basis = Basis::us;
    bool operator==(const Speech&) const = default;
};
Speech speechOf(const Project& project);

QString asText(const std::string& utf8);
QString asText(std::string_view utf8);

/// `one` for one, else `many` with the number in place of %1.
QString counted(int number, const QString& one, const QString& many);

/// The unit a bare number takes in a field, as it is written behind a number; empty for fields
/// without one.
QString unitOf(const Field& field, UnitSystem units);

/// A typed text with its unit put behind a bare number: "7/8" becomes "7/8 in". Any other text as
/// it is.
std::string withUnit(const Field& field, const std::string& typed, UnitSystem units);

/// Places along and up the hull read as feet and inches, sizes as inches and fractions; millimetres
/// as they are.
QString showLength(Length length, const Field& field, UnitSystem units, UnitMark mark);
QString showSize(Length length, UnitSystem units);
QString showPlace(Length length, UnitSystem units);

/// A value of the decision table, rounded for the screen.
QString showValue(const Value& value, const Field& field, UnitSystem units, UnitMark mark);

/// A typed text the same way; as typed where it does not read.
QString showTyped(const std::string& typed, const Field& field, UnitSystem units, UnitMark mark);

/// One sentence of a problem for a place that shows already which field it is about: "diameter is 7
/// furlongs; 6 mm to 80 mm". With its first letter large and a stop.
QString sentence(const Problem& problem);
/// The same with the decision's plain name in front.
QString namedSentence(const Problem& problem);

}  // namespace fayline
