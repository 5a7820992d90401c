#include "words/trace_values.h"

#include <QCoreApplication>
#include <cmath>

#include "words/values.h"

namespace fayline {
namespace {

QString digits(double value, int significant) {
    if (value == 0.0) return QStringLiteral("0");
    const int whole = static_cast<int>(std::floor(std::log10(std::abs(value)))) + 1;
    QString shown = QString::number(value, 'f', std::max(0, significant - whole));
    if (shown.contains(QLatin1Char('.'))) {
        while (shown.endsWith(QLatin1Char('0'))) shown.chop(1);
        if (shown.endsWith(QLatin1Char('.'))) shown.chop(1);
    }
    return shown;
}

}  // namespace

QString showArea(Area area, UnitSystem units) {
    constexpr double squareMillimetresPerSquareInch = 645.16;
    const double mm2 = inSquareMillimetres(area);
    if (units == UnitSystem::inches)
        return digits(mm2 / squareMillimetresPerSquareInch, 4) + QStringLiteral(" in²");
    return digits(mm2, 4) + QStringLiteral(" mm²");
}

QString showMoment(Moment moment, UnitSystem units) {
    constexpr double newtonMetresPerFootPound = 1.3558179483314004;
    const double newtonMetres_Nm = inNewtonMetres(moment);
    if (units == UnitSystem::inches)
        return digits(newtonMetres_Nm / newtonMetresPerFootPound, 4) + QStringLiteral(" ft·lb");
    return std::abs(newtonMetres_Nm) >= 1000.0
               ? digits(newtonMetres_Nm / 1000.0, 4) + QStringLiteral(" kN·m")
               : digits(newtonMetres_Nm, 4) + QStringLiteral(" N·m");
}

QString showTraceValue(const TraceValue& value, UnitSystem units) {
    struct Show {
        UnitSystem units;
        QString operator()(double v) const { return digits(v, 4); }
        QString operator()(int v) const { return QString::number(v); }
        QString operator()(const std::string& v) const { return asText(v); }
        QString operator()(Length v) const {
            constexpr double millimetresPerInch = 25.4;
            const double mm = inMillimetres(v);
            return units == UnitSystem::inches
                       ? digits(mm / millimetresPerInch, 4) + QStringLiteral(" in")
                       : digits(mm, 4) + QStringLiteral(" mm");
        }
        QString operator()(Area v) const { return showArea(v, units); }
        QString operator()(Mass v) const { return asText(displayMass(v, units, 4)); }
        QString operator()(Force v) const { return asText(displayForce(v, units, 4)); }
        QString operator()(Moment v) const { return showMoment(v, units); }
        QString operator()(Stress v) const { return asText(displayStress(v, units, 4)); }
        QString operator()(Density v) const { return asText(displayDensity(v, units, 4)); }
    };
    return std::visit(Show{units}, value);
}

QString standingWords(Standing standing) {
    switch (standing) {
        case Standing::read:
            return QCoreApplication::translate("Standing", "read");
        case Standing::derived:
            return QCoreApplication::translate("Standing", "derived");
        case Standing::commonPractice:
            return QCoreApplication::translate("Standing", "common practice");
        case Standing::fromMemory:
            return QCoreApplication::translate("Standing", "from memory");
        case Standing::judgement:
            return QCoreApplication::translate("Standing", "judgement");
    }
    return {};
}

}  // namespace fayline
