#include "bench_fields.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include "words/values.h"

namespace fayline {
namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("BenchFields", words);
}

QString withoutBotanicalName(const std::string& name) {
    const auto bracket = name.rfind(" (");
    return asText(bracket == std::string::npos ? name : name.substr(0, bracket));
}

QString wordOf(const std::string& word) {
    return asText(word).replace(QLatin1Char('_'), QLatin1Char(' '));
}

}  // namespace

bool isChosen(BenchKind kind) {
    return kind == BenchKind::word || kind == BenchKind::wood || kind == BenchKind::metal ||
           kind == BenchKind::lead || kind == BenchKind::nut || kind == BenchKind::thread ||
           kind == BenchKind::yesNo;
}

std::vector<Choice> choicesFor(const BenchField& field, const Catalogue& catalogue) {
    std::vector<Choice> choices;
    switch (field.kind) {
        case BenchKind::word:
            for (const std::string& word : field.words) choices.push_back({word, wordOf(word)});
            break;
        case BenchKind::yesNo:
            choices = {{"yes", tr("yes")}, {"no", tr("no")}};
            break;
        case BenchKind::wood:
            for (const auto& [id, wood] : catalogue.woods)
                choices.push_back({id, withoutBotanicalName(wood.name.value)});
            break;
        case BenchKind::lead:
            for (const auto& [id, metal] : catalogue.metals) {
                if (metal.family == MetalFamily::lead)
                    choices.push_back({id, asText(metal.name.value)});
            }
            break;
        case BenchKind::nut:
            for (const auto& [id, nut] : catalogue.nuts) choices.push_back({id, wordOf(id)});
            break;
        case BenchKind::metal:
            for (const auto& [id, metal] : catalogue.metals)
                choices.push_back({id, asText(metal.name.value)});
            break;
        case BenchKind::thread:
            for (const auto& [id, thread] : catalogue.threads) choices.push_back({id, wordOf(id)});
            break;
        default:
            break;
    }
    return choices;
}

QString unitOf(const BenchField& field, UnitSystem units) {
    const bool inches = units == UnitSystem::inches;
    switch (field.kind) {
        case BenchKind::length:
            return inches ? QStringLiteral("in") : QStringLiteral("mm");
        case BenchKind::force:
            return inches ? QStringLiteral("lb") : QStringLiteral("N");
        case BenchKind::stress:
            return inches ? QStringLiteral("psi") : QStringLiteral("MPa");
        case BenchKind::density:
            return inches ? QStringLiteral("lb/ft3") : QStringLiteral("kg/m3");
        case BenchKind::area:
            return inches ? QStringLiteral("in2") : QStringLiteral("mm2");
        case BenchKind::degrees:
            return QStringLiteral("°");
        default:
            return {};
    }
}

std::string fileText(const BenchField& field, const QString& typed, UnitSystem units,
                     const Catalogue& catalogue) {
    const QString text = typed.trimmed();
    if (text.isEmpty()) return {};
    if (isChosen(field.kind)) return idForName(choicesFor(field, catalogue), text.toStdString());
    static const QRegularExpression bare(QStringLiteral("^-?[0-9 .,/⁄½¼¾⅛⅜⅝⅞-]+$"));
    static const QRegularExpression groups(QStringLiteral("^[0-9]+-[0-9]+-[0-9]+$"));
    const QString unit = unitOf(field, units);
    if (field.kind == BenchKind::degrees) return QString(text).remove(QChar(0x00B0)).toStdString();
    if (field.kind == BenchKind::gauge && bare.match(text).hasMatch())
        return "No. " + text.toStdString();
    if (!unit.isEmpty() && bare.match(text).hasMatch() && !groups.match(text).hasMatch())
        return (text + QLatin1Char(' ') + unit).toStdString();
    return text.toStdString();
}

QString shownText(const BenchField& field, const std::string& text, const Catalogue& catalogue) {
    if (isChosen(field.kind)) {
        for (const Choice& choice : choicesFor(field, catalogue)) {
            if (choice.id == text) return choice.name;
        }
    }
    return asText(text);
}

}  // namespace fayline
