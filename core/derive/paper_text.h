#pragma once

#include <string>

#include "check/check.h"
#include "layout/hole.h"
#include "quantity/display.h"
#include "quantity/quantity.h"

/// How paper speaks: one unit, no unit marks, no decimals.
namespace fayline::paper_text {

struct Unit {
    UnitSystem system = UnitSystem::inches;

    /// A figure to set out by: sixteenths of an inch, or whole millimetres.
    [[nodiscard]] std::string setOut(Length length) const;
    /// To eighths of an inch, or whole millimetres: along a plank's edge.
    [[nodiscard]] std::string coarse(Length length) const;
    /// A size: 64ths of an inch, or half millimetres as "4½".
    [[nodiscard]] std::string size(Length length) const;
    /// "inches" or "mm".
    [[nodiscard]] std::string name() const;
};

/// "wood screw No. 14 × 3", "bolt 3/8 × 6-1/2", "square rivet 1/4 × 3-1/2".
std::string fastening(const Hole& hole, const Unit& unit);
/// "wood_screw" → "wood screw".
std::string plain(std::string_view name);
/// With its first letter large.
std::string capital(std::string text);
/// "×0.84 metal, knocked down to port": a check in a few words, worst word first.
std::string checkWords(const Check& check);
/// "1 bolt", "3 bolts".
std::string counted(std::size_t count, const std::string& thing);
/// Whole degrees.
int degrees(double radians);

}  // namespace fayline::paper_text
