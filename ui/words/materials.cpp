#include "words/materials.h"

#include <QCoreApplication>
#include <algorithm>

#include "project/decide.h"
#include "quantity/text.h"
#include "words/values.h"

namespace fayline {
namespace {

QString withoutBotanicalName(const std::string& name) {
    const auto bracket = name.rfind(" (");
    return asText(bracket == std::string::npos ? name : name.substr(0, bracket));
}

/// Words of files that a builder would not write so.
QString choiceWords(const std::string& word) {
    if (word == "us") return QCoreApplication::translate("Choices", "US");
    if (word == "ec5") return QCoreApplication::translate("Choices", "Eurocode 5");
    QString words = asText(word);
    return words.replace(QLatin1Char('_'), QLatin1Char(' '));
}

bool isCastOnly(const Metal& metal) {
    return metal.family == MetalFamily::lead || metal.id == "cast_iron_grey";
}

bool offered(const Field& field, const Metal& metal) {
    if (field.section == "ballast")
        return metal.family == MetalFamily::lead || metal.family == MetalFamily::iron;
    return !isCastOnly(metal);
}

}  // namespace

std::vector<Choice> choicesFor(const Field& field, const Catalogue& catalogue,
                               const Project& project) {
    std::vector<Choice> choices;
    const auto own = [&](const std::string& id) {
        const bool known = std::any_of(choices.begin(), choices.end(),
                                       [&](const Choice& c) { return c.id == id; });
        if (!known) choices.push_back({id, asText(id)});
    };
    switch (field.kind) {
        case ValueKind::choice:
            for (const std::string& word : field.choices)
                choices.push_back({word, choiceWords(word)});
            return choices;
        case ValueKind::woodName:
            for (const auto& [id, wood] : catalogue.woods)
                choices.push_back({id, withoutBotanicalName(wood.name.value)});
            for (const auto& [id, wood] : project.wood) own(id);
            break;
        case ValueKind::metalName:
            for (const auto& [id, metal] : catalogue.metals) {
                if (offered(field, metal)) choices.push_back({id, asText(metal.name.value)});
            }
            for (const auto& [id, metal] : project.metal) own(id);
            break;
        default:
            return choices;
    }
    std::sort(choices.begin(), choices.end(), [](const Choice& a, const Choice& b) {
        return a.name.localeAwareCompare(b.name) < 0;
    });
    return choices;
}

QString shownName(const Field& field, const std::string& typed, const Catalogue& catalogue) {
    if (field.kind == ValueKind::choice) return choiceWords(typed);
    const std::string id = materialId(typed);
    if (field.kind == ValueKind::woodName) {
        const auto found = catalogue.woods.find(id);
        if (found != catalogue.woods.end()) return withoutBotanicalName(found->second.name.value);
    }
    if (field.kind == ValueKind::metalName) {
        const auto found = catalogue.metals.find(id);
        if (found != catalogue.metals.end()) return asText(found->second.name.value);
    }
    return asText(typed);
}

std::string idForName(const std::vector<Choice>& choices, const std::string& typed) {
    const QString wanted = asText(trimmed(typed));
    const auto found = std::find_if(choices.begin(), choices.end(), [&](const Choice& c) {
        return c.name.compare(wanted, Qt::CaseInsensitive) == 0;
    });
    return found == choices.end() ? std::string(trimmed(typed)) : found->id;
}

}  // namespace fayline
