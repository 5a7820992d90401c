#include "unit_table.h"

#include <array>

#include "quantity/text.h"

namespace fayline {
namespace detail {
namespace {

constexpr Factor one{1, 1};
constexpr Factor thousand{1000, 1};
constexpr Factor million{1'000'000, 1};
constexpr Factor billion{1'000'000'000, 1};
constexpr Factor thousandth{1, 1000};
constexpr Factor hundredth{1, 100};
constexpr Factor inch{127, 5000};
constexpr Factor foot{381, 1250};
constexpr Factor squareInch{127 * 127, 5000 * 5000};
constexpr Factor squareFoot{381 * 381, 1250 * 1250};
constexpr Factor pound{45'359'237, 100'000'000};
constexpr Factor kilogramForce{980'665, 100'000};
/// pound × kilogramForce, reduced.
constexpr Factor poundForce{8'896'443'230'521, 2'000'000'000'000};
/// poundForce / squareInch, reduced; a thousand of them is a ksi.
constexpr Factor psi{8'896'443'230'521, 1'290'320'000};
constexpr Factor ksi{8'896'443'230'521, 1'290'320};
/// pound / foot^3 and pound / inch^3, reduced.
constexpr Factor poundPerCubicFoot{28'349'523'125, 1'769'802'912};
constexpr Factor poundPerCubicInch{56'699'046'250, 2'048'383};

constexpr bool isAnyCase = true;

constexpr std::array units{
    Unit{"mm", Kind::length, thousandth},
    Unit{"cm", Kind::length, hundredth},
    Unit{"m", Kind::length, one},
    Unit{"in", Kind::length, inch, isAnyCase},
    Unit{"ft", Kind::length, foot, isAnyCase},
    Unit{"\"", Kind::length, inch},
    Unit{"'", Kind::length, foot},
    Unit{"inch", Kind::length, inch, isAnyCase},
    Unit{"inches", Kind::length, inch, isAnyCase},
    Unit{"foot", Kind::length, foot, isAnyCase},
    Unit{"feet", Kind::length, foot, isAnyCase},
    Unit{"millimetre", Kind::length, thousandth, isAnyCase},
    Unit{"millimetres", Kind::length, thousandth, isAnyCase},
    Unit{"millimeter", Kind::length, thousandth, isAnyCase},
    Unit{"millimeters", Kind::length, thousandth, isAnyCase},
    Unit{"centimetre", Kind::length, hundredth, isAnyCase},
    Unit{"centimetres", Kind::length, hundredth, isAnyCase},
    Unit{"centimeter", Kind::length, hundredth, isAnyCase},
    Unit{"centimeters", Kind::length, hundredth, isAnyCase},
    Unit{"metre", Kind::length, one, isAnyCase},
    Unit{"metres", Kind::length, one, isAnyCase},
    Unit{"meter", Kind::length, one, isAnyCase},
    Unit{"meters", Kind::length, one, isAnyCase},
    Unit{"mm2", Kind::area, Factor{1, 1'000'000}},
    Unit{"cm2", Kind::area, Factor{1, 10'000}},
    Unit{"m2", Kind::area, one},
    Unit{"in2", Kind::area, squareInch, isAnyCase},
    Unit{"ft2", Kind::area, squareFoot, isAnyCase},
    Unit{"g", Kind::mass, thousandth},
    Unit{"kg", Kind::mass, one},
    Unit{"t", Kind::mass, thousand},
    Unit{"gram", Kind::mass, thousandth, isAnyCase},
    Unit{"grams", Kind::mass, thousandth, isAnyCase},
    Unit{"kilogram", Kind::mass, one, isAnyCase},
    Unit{"kilograms", Kind::mass, one, isAnyCase},
    Unit{"tonne", Kind::mass, thousand, isAnyCase},
    Unit{"tonnes", Kind::mass, thousand, isAnyCase},
    Unit{"lb", Kind::mass, pound, isAnyCase},
    Unit{"lbs", Kind::mass, pound, isAnyCase},
    Unit{"pound", Kind::mass, pound, isAnyCase},
    Unit{"pounds", Kind::mass, pound, isAnyCase},
    Unit{"lb", Kind::force, poundForce, isAnyCase},
    Unit{"lbs", Kind::force, poundForce, isAnyCase},
    Unit{"pound", Kind::force, poundForce, isAnyCase},
    Unit{"pounds", Kind::force, poundForce, isAnyCase},
    Unit{"lbf", Kind::force, poundForce, isAnyCase},
    Unit{"N", Kind::force, one},
    Unit{"kN", Kind::force, thousand},
    Unit{"newton", Kind::force, one, isAnyCase},
    Unit{"newtons", Kind::force, one, isAnyCase},
    Unit{"kgf", Kind::force, kilogramForce},
    Unit{"Pa", Kind::stress, one},
    Unit{"kPa", Kind::stress, thousand},
    Unit{"MPa", Kind::stress, million},
    Unit{"GPa", Kind::stress, billion},
    Unit{"N/mm2", Kind::stress, million},
    Unit{"kN/mm2", Kind::stress, billion},
    Unit{"N/m2", Kind::stress, one},
    Unit{"kN/m2", Kind::stress, thousand},
    Unit{"psi", Kind::stress, psi, isAnyCase},
    Unit{"ksi", Kind::stress, ksi, isAnyCase},
    Unit{"lb/in2", Kind::stress, psi, isAnyCase},
    Unit{"lbf/in2", Kind::stress, psi, isAnyCase},
    Unit{"kg/m3", Kind::density, one},
    Unit{"g/cm3", Kind::density, thousand},
    Unit{"g/cc", Kind::density, thousand},
    Unit{"t/m3", Kind::density, thousand},
    Unit{"lb/ft3", Kind::density, poundPerCubicFoot, isAnyCase},
    Unit{"lb/in3", Kind::density, poundPerCubicInch, isAnyCase},
    Unit{"pcf", Kind::density, poundPerCubicFoot, isAnyCase},
    Unit{"deg", Kind::angle, one, isAnyCase},
    Unit{"degree", Kind::angle, one, isAnyCase},
    Unit{"degrees", Kind::angle, one, isAnyCase},
    Unit{"%", Kind::number, hundredth},
};

bool isSpelled(const Unit& unit, std::string_view spelling) {
    return unit.spelling == spelling ||
           (unit.anyCase && lowered(unit.spelling) == lowered(spelling));
}

}  // namespace

std::string_view kindName(Kind kind) {
    switch (kind) {
        case Kind::number:
            return "a plain number";
        case Kind::length:
            return "a length";
        case Kind::area:
            return "an area";
        case Kind::mass:
            return "a mass";
        case Kind::force:
            return "a force";
        case Kind::stress:
            return "a stress";
        case Kind::density:
            return "a density";
        case Kind::angle:
            return "an angle";
        case Kind::gauge:
            return "a gauge";
    }
    return "a quantity";
}

std::string_view kindExample(Kind kind) {
    switch (kind) {
        case Kind::number:
            return "a number such as 0.5 or 1/2";
        case Kind::length:
            return "a length such as 38 mm, 1 1/2 in or 3' 4 5/8\"";
        case Kind::area:
            return "an area such as 50 mm2 or 0.08 in2";
        case Kind::mass:
            return "a mass such as 110 kg or 250 lb";
        case Kind::force:
            return "a force such as 1.2 kN, 120 kgf or 250 lb";
        case Kind::stress:
            return "a stress such as 310 MPa or 45 ksi";
        case Kind::density:
            return "a density such as 560 kg/m3 or 35 lb/ft3";
        case Kind::angle:
            return "an angle such as 12 deg";
        case Kind::gauge:
            return "a gauge such as No. 14";
    }
    return "a number and its unit";
}

const Unit* findUnit(std::string_view spelling, Kind wanted) {
    const Unit* found = nullptr;
    for (const auto& unit : units) {
        if (!isSpelled(unit, spelling)) continue;
        if (unit.kind == wanted) return &unit;
        if (found == nullptr) found = &unit;
    }
    return found;
}

std::optional<std::string> similarUnit(std::string_view spelling, Kind wanted) {
    std::vector<std::string> names;
    for (const auto& unit : units) {
        if (unit.kind != wanted) continue;
        // Only the case is wrong: surely this one, however short.
        if (lowered(unit.spelling) == lowered(spelling)) return std::string(unit.spelling);
        names.emplace_back(unit.spelling);
    }
    return didYouMean(spelling, names);
}

Factor factorOf(LengthUnit unit) {
    return unit == LengthUnit::feetInchesEighths ? inch
                                                 : findUnit(unitText(unit), Kind::length)->factor;
}
Factor factorOf(AreaUnit unit) {
    return findUnit(unitText(unit), Kind::area)->factor;
}
Factor factorOf(MassUnit unit) {
    return findUnit(unitText(unit), Kind::mass)->factor;
}
Factor factorOf(ForceUnit unit) {
    return findUnit(unitText(unit), Kind::force)->factor;
}
Factor factorOf(StressUnit unit) {
    return findUnit(unitText(unit), Kind::stress)->factor;
}
Factor factorOf(DensityUnit unit) {
    return findUnit(unitText(unit), Kind::density)->factor;
}

}  // namespace detail

std::string_view unitText(LengthUnit unit) {
    switch (unit) {
        case LengthUnit::mm:
            return "mm";
        case LengthUnit::cm:
            return "cm";
        case LengthUnit::m:
            return "m";
        case LengthUnit::in:
            return "in";
        case LengthUnit::ft:
            return "ft";
        case LengthUnit::feetInchesEighths:
            return "";
    }
    return "";
}
std::string_view unitText(AreaUnit unit) {
    switch (unit) {
        case AreaUnit::mm2:
            return "mm2";
        case AreaUnit::cm2:
            return "cm2";
        case AreaUnit::m2:
            return "m2";
        case AreaUnit::in2:
            return "in2";
        case AreaUnit::ft2:
            return "ft2";
    }
    return "";
}
std::string_view unitText(MassUnit unit) {
    switch (unit) {
        case MassUnit::g:
            return "g";
        case MassUnit::kg:
            return "kg";
        case MassUnit::t:
            return "t";
        case MassUnit::lb:
            return "lb";
    }
    return "";
}
std::string_view unitText(ForceUnit unit) {
    switch (unit) {
        case ForceUnit::n:
            return "N";
        case ForceUnit::kn:
            return "kN";
        case ForceUnit::lbf:
            return "lbf";
        case ForceUnit::kgf:
            return "kgf";
    }
    return "";
}
std::string_view unitText(StressUnit unit) {
    switch (unit) {
        case StressUnit::pa:
            return "Pa";
        case StressUnit::kpa:
            return "kPa";
        case StressUnit::mpa:
            return "MPa";
        case StressUnit::gpa:
            return "GPa";
        case StressUnit::psi:
            return "psi";
        case StressUnit::ksi:
            return "ksi";
    }
    return "";
}
std::string_view unitText(DensityUnit unit) {
    switch (unit) {
        case DensityUnit::kgPerM3:
            return "kg/m3";
        case DensityUnit::gPerCm3:
            return "g/cm3";
        case DensityUnit::lbPerFt3:
            return "lb/ft3";
        case DensityUnit::lbPerIn3:
            return "lb/in3";
    }
    return "";
}

}  // namespace fayline
