#include "paper_text.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fayline::paper_text {

std::string Unit::setOut(Length length) const {
    return system == UnitSystem::inches
               ? displayLength(length, LengthStyle::inchFractions, UnitMark::leftOut, {16, 1})
               : displayLength(length, LengthStyle::millimetres, UnitMark::leftOut, {16, 1});
}

std::string Unit::coarse(Length length) const {
    return system == UnitSystem::inches
               ? displayLength(length, LengthStyle::inchFractions, UnitMark::leftOut, {8, 1})
               : setOut(length);
}

std::string Unit::size(Length length) const {
    if (system == UnitSystem::inches)
        return displayLength(length, LengthStyle::inchFractions, UnitMark::leftOut);
    const auto halves = std::llround(inMillimetres(length) * 2.0);
    std::string text = halves / 2 == 0 && halves % 2 != 0 ? "" : std::to_string(halves / 2);
    if (halves % 2 != 0) text += "½";
    return text;
}

std::string Unit::name() const {
    return system == UnitSystem::inches ? "inches" : "mm";
}

std::string plain(std::string_view name) {
    std::string text(name);
    std::replace(text.begin(), text.end(), '_', ' ');
    return text;
}

std::string capital(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

std::string fastening(const Hole& hole, const Unit& unit) {
    if (hole.gauge)
        return "screw No. " + std::to_string(*hole.gauge) + " × " + unit.size(hole.length);
    const Length across = hole.square ? hole.diameter / std::numbers::sqrt2 : hole.diameter;
    return (hole.square ? "square " : "") + plain(hole.kind) + " " + unit.size(across) + " × " +
           unit.setOut(hole.length);
}

std::string checkWords(const Check& check) {
    std::string words = check.margin                       ? marginText(*check.margin)
                        : check.status == Status::unloaded ? "no load,"
                                                           : "not known,";
    words += " " + plain(nameOf(check.limitState));
    if (check.basis != Basis::metal) words += check.basis == Basis::us ? " (US)" : " (Eurocode 5)";
    return words + ", " + plain(nameOf(check.loadCase));
}

std::string counted(std::size_t count, const std::string& thing) {
    return std::to_string(count) + " " + thing + (count == 1 ? "" : "s");
}

int degrees(double radians) {
    return static_cast<int>(std::lround(radians * 180.0 / std::numbers::pi));
}

}  // namespace fayline::paper_text
