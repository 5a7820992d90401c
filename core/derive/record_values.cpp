#include "record_values.h"

#include <algorithm>
#include <cmath>

namespace fayline::record_values {
namespace {

struct Show {
    UnitSystem units;
    [[nodiscard]] bool inches() const { return units == UnitSystem::inches; }

    std::string operator()(double value) const { return digits(value, 4); }
    std::string operator()(int value) const { return std::to_string(value); }
    std::string operator()(const std::string& value) const { return value; }
    std::string operator()(Length value) const {
        constexpr double millimetresPerInch = 25.4;
        const double mm = inMillimetres(value);
        return inches() ? digits(mm / millimetresPerInch, 4) + " in" : digits(mm, 4) + " mm";
    }
    std::string operator()(Area value) const {
        constexpr double squareMillimetresPerSquareInch = 645.16;
        const double mm2 = inSquareMillimetres(value);
        return inches() ? digits(mm2 / squareMillimetresPerSquareInch, 4) + " in²"
                        : digits(mm2, 4) + " mm²";
    }
    std::string operator()(Mass value) const { return displayMass(value, units, 4); }
    std::string operator()(Force value) const { return displayForce(value, units, 4); }
    std::string operator()(Moment value) const {
        constexpr double newtonMetresPerFootPound = 1.3558179483314004;
        const double nm = inNewtonMetres(value);
        if (inches()) return digits(nm / newtonMetresPerFootPound, 4) + " ft·lb";
        return std::abs(nm) >= 1000.0 ? digits(nm / 1000.0, 4) + " kN·m" : digits(nm, 4) + " N·m";
    }
    std::string operator()(Stress value) const { return displayStress(value, units, 4); }
    std::string operator()(Density value) const { return displayDensity(value, units, 4); }
};

std::string plain(std::string_view name) {
    std::string text(name);
    std::replace(text.begin(), text.end(), '_', ' ');
    return text;
}

}  // namespace

std::string digits(double value, int significant) {
    if (value == 0.0 || !std::isfinite(value)) return value == 0.0 ? "0" : "not known";
    const int whole = static_cast<int>(std::floor(std::log10(std::abs(value)))) + 1;
    std::string shown = rounded(value, std::max(0, significant - whole));
    if (shown.find('.') != std::string::npos) {
        shown.erase(shown.find_last_not_of('0') + 1);
        if (shown.back() == '.') shown.pop_back();
    }
    return shown;
}

std::string show(const TraceValue& value, UnitSystem units) {
    return std::visit(Show{units}, value);
}

std::string show(const std::optional<Force>& value, UnitSystem units) {
    return value ? displayForce(*value, units, 4) : std::string("not known");
}

std::string show(const std::optional<Band>& value, UnitSystem units) {
    if (!value) return "no figure";
    if (value->low == value->high) return displayForce(value->low, units, 3);
    return displayForce(value->low, units, 3) + " to " + displayForce(value->high, units, 3);
}

std::string both(Force value, UnitSystem units) {
    return displayForce(value, units, 4) + " (" + displayForce(value, otherOf(units), 4) + ")";
}

std::string size(Length value, UnitSystem units) {
    if (value == Length{}) return {};
    return displayLength(
        value, units == UnitSystem::inches ? LengthStyle::inchFractions : LengthStyle::millimetres);
}

std::string standing(Standing standing) {
    return plain(standingText(standing));
}

std::string state(LimitStateKind kind) {
    return plain(nameOf(kind));
}

std::string basis(Basis basis) {
    switch (basis) {
        case Basis::us:
            return "US";
        case Basis::ec5:
            return "Eurocode 5";
        case Basis::metal:
            break;
    }
    return "metal";
}

record::Working working(const Trace& trace, UnitSystem units, std::string result) {
    record::Working made;
    made.title = trace.title;
    made.formula = trace.formula;
    made.clause = trace.clause;
    made.standing = standing(trace.standing);
    made.result = std::move(result);
    for (const TraceLine& line : trace.lines) {
        record::Figure figure;
        figure.symbol = line.symbol;
        figure.value = show(line.value, units);
        figure.other = show(line.value, otherOf(units));
        if (figure.other == figure.value) figure.other.clear();
        figure.meaning = line.meaning;
        figure.source = line.source;
        if (line.standing) figure.standing = standing(*line.standing);
        made.figures.push_back(std::move(figure));
    }
    made.notes = trace.notes;
    made.outside = trace.outside;
    return made;
}

std::vector<std::string> inputRow(const std::string& what, const TraceValue& value,
                                  const std::string& source, const std::optional<Standing>& stands,
                                  UnitSystem units) {
    std::string first = show(value, units), other = show(value, otherOf(units));
    if (other == first) other.clear();
    return {what, first, other, stands ? standing(*stands) : std::string(), source};
}

}  // namespace fayline::record_values
