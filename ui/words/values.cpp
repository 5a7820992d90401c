#include "words/values.h"

#include <array>

#include "quantity/reading.h"
#include "quantity/text.h"

namespace fayline {
namespace {

bool isPlace(const Field& field) {
    static constexpr std::array<std::string_view, 14> ends = {
        ".x",         ".from",   ".to",           ".first",          ".centre_x",
        ".waterline", ".height", ".half_breadth", ".underside_fore", ".underside_aft",
        ".fore_x",    ".aft_x",  ".fore_height",  ".aft_height"};
    const std::string_view pattern = field.pattern;
    return std::any_of(ends.begin(), ends.end(), [&](std::string_view end) {
        return pattern.size() > end.size() && pattern.substr(pattern.size() - end.size()) == end;
    });
}

LengthStyle styleFor(bool place, UnitSystem units) {
    if (units == UnitSystem::millimetres) return LengthStyle::millimetres;
    return place ? LengthStyle::feetInches : LengthStyle::inchFractions;
}

/// What rounding to a 64th or half a millimetre would make something else of: a corrosion
/// allowance, a thin washer.
bool isFine(Length length, UnitSystem units) {
    constexpr Length leastInches = inches(1.0 / 16.0);
    constexpr Length leastMillimetres = millimetres(10.0);
    return length.si() != 0.0 &&
           abs(length) < (units == UnitSystem::inches ? leastInches : leastMillimetres);
}

QString fineLength(Length length, UnitSystem units, UnitMark mark) {
    const bool inch = units == UnitSystem::inches;
    QString shown =
        QString::number(inch ? inInches(length) : inMillimetres(length), 'f', inch ? 3 : 2);
    while (shown.endsWith(QLatin1Char('0'))) shown.chop(1);
    if (shown.endsWith(QLatin1Char('.'))) shown.chop(1);
    if (mark == UnitMark::leftOut) return shown;
    return shown + (inch ? QStringLiteral("\"") : QStringLiteral(" mm"));
}

/// Places are read off a tape; sizes are shown as finely as rods and drills are sold.
LengthStep stepFor(bool place) {
    return place ? LengthStep{16, 2} : LengthStep{};
}

/// Whether the text fails for want of a unit and reads once it has one.
bool wantsUnit(const Field& field, const std::string& typed, const std::string& complete) {
    const auto bare = readValue(field, typed, "");
    if (bare || bare.error().code != "unit.missing") return false;
    const auto read = readValue(field, complete, "");
    return read || read.error().code == "value.limits";
}

}  // namespace

Speech speechOf(const Project& project) {
    Speech speech;
    if (project.hull.units == "millimetres") speech.units = UnitSystem::millimetres;
    if (project.hull.basis == "ec5") speech.basis = Basis::ec5;
    return speech;
}

QString asText(const std::string& utf8) {
    return QString::fromStdString(utf8);
}
QString asText(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

QString counted(int number, const QString& one, const QString& many) {
    return number == 1 ? one : many.arg(number);
}

QString unitOf(const Field& field, UnitSystem units) {
    const bool inches = units == UnitSystem::inches;
    switch (field.kind) {
        case ValueKind::length:
            return inches ? QStringLiteral("in") : QStringLiteral("mm");
        case ValueKind::mass:
            return inches ? QStringLiteral("lb") : QStringLiteral("kg");
        case ValueKind::density:
            return inches ? QStringLiteral("lb/ft3") : QStringLiteral("kg/m3");
        case ValueKind::stress:
            return inches ? QStringLiteral("psi") : QStringLiteral("MPa");
        default:
            return {};
    }
}

std::string withUnit(const Field& field, const std::string& typed, UnitSystem units) {
    const QString unit = unitOf(field, units);
    std::string plain(trimmed(typed));
    if (unit.isEmpty() || plain.empty()) return plain;
    const std::string complete = plain + " " + unit.toStdString();
    return wantsUnit(field, plain, complete) ? complete : plain;
}

QString showLength(Length length, const Field& field, UnitSystem units, UnitMark mark) {
    const bool place = isPlace(field);
    if (!place && isFine(length, units)) return fineLength(length, units, mark);
    // Feet and inches without their marks cannot be read.
    const bool marked = place && units == UnitSystem::inches;
    return asText(displayLength(length, styleFor(place, units), marked ? UnitMark::shown : mark,
                                stepFor(place)));
}

QString showSize(Length length, UnitSystem units) {
    if (isFine(length, units)) return fineLength(length, units, UnitMark::shown);
    return asText(displayLength(length, styleFor(false, units)));
}
QString showPlace(Length length, UnitSystem units) {
    return asText(displayLength(length, styleFor(true, units), UnitMark::shown, stepFor(true)));
}

QString showValue(const Value& value, const Field& field, UnitSystem units, UnitMark mark) {
    struct Show {
        const Field& field;
        UnitSystem units;
        UnitMark mark;
        QString operator()(Length v) const { return showLength(v, field, units, mark); }
        QString operator()(Mass v) const { return asText(displayMass(v, units, 4)); }
        QString operator()(Density v) const { return asText(displayDensity(v, units, 4)); }
        QString operator()(Stress v) const { return asText(displayStress(v, units, 4)); }
        QString operator()(double v) const { return QString::number(v, 'g', 6); }
        QString operator()(int v) const {
            return field.kind == ValueKind::gauge ? QStringLiteral("No. %1").arg(v)
                                                  : QString::number(v);
        }
        QString operator()(const std::string& v) const { return asText(v); }
    };
    return std::visit(Show{field, units, mark}, value);
}

QString showTyped(const std::string& typed, const Field& field, UnitSystem units, UnitMark mark) {
    const auto value = readValue(field, typed, "");
    return value ? showValue(*value, field, units, mark) : asText(typed);
}

QString sentence(const Problem& problem) {
    QString line = asText(problem.what);
    if (!problem.allowed.empty()) line += QStringLiteral("; ") + asText(problem.allowed);
    if (line.isEmpty()) return line;
    line[0] = line[0].toUpper();
    if (!line.endsWith(QLatin1Char('.')) && !line.endsWith(QLatin1Char('?')))
        line += QLatin1Char('.');
    return line;
}

QString namedSentence(const Problem& problem) {
    if (problem.where.empty()) return sentence(problem);
    const QString place =
        findDecision(problem.where) ? asText(decisionTitle(problem.where)) : asText(problem.where);
    Problem bare = problem;
    bare.where.clear();
    QString rest = asText(bare.line());
    if (!rest.endsWith(QLatin1Char('.')) && !rest.endsWith(QLatin1Char('?')))
        rest += QLatin1Char('.');
    return place + QStringLiteral(": ") + rest;
}

}  // namespace fayline
