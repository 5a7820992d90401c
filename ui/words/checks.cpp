#include "words/checks.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "quantity/text.h"
#include "theme/status.h"

namespace fayline {
namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("Checks", words);
}

}  // namespace

QString limitStateWords(LimitStateKind kind) {
    switch (kind) {
        case LimitStateKind::lateral:
            return tr("sideways");
        case LimitStateKind::withdrawal:
            return tr("withdrawal");
        case LimitStateKind::pullThrough:
            return tr("pull-through");
        case LimitStateKind::washer:
            return tr("washer");
        case LimitStateKind::metal:
            return tr("rod");
        case LimitStateKind::combined:
            return tr("rod, pull and shear");
        case LimitStateKind::headShear:
            return tr("head");
        case LimitStateKind::threadStrip:
            return tr("thread");
        case LimitStateKind::crushing:
            return tr("timber crushed");
        case LimitStateKind::punching:
            return tr("punching");
        case LimitStateKind::netSection:
            return tr("net section");
        case LimitStateKind::splitting:
            return tr("splitting");
        case LimitStateKind::group:
            return tr("group");
        case LimitStateKind::driving:
            return tr("driving");
        case LimitStateKind::floorBending:
            return tr("floor bending");
        case LimitStateKind::floorShear:
            return tr("floor shear");
        case LimitStateKind::floorSplitting:
            return tr("floor splitting");
        case LimitStateKind::frameBending:
            return tr("frame bending");
    }
    return {};
}

QString basisWords(Basis basis) {
    switch (basis) {
        case Basis::us:
            return tr("US");
        case Basis::ec5:
            return tr("Eurocode 5");
        case Basis::metal:
            return tr("metal");
    }
    return {};
}

QString marginWords(const Check& check) {
    if (check.margin) return asText(marginText(*check.margin));
    return statusWord(check.status);
}

QString checkLine(const Check& check) {
    return tr("%1 %2, %3")
        .arg(marginWords(check), stateWords(check), asText(titleOf(check.loadCase)));
}

QString caseShort(LoadCase loadCase) {
    QString words = asText(nameOf(loadCase));
    words.replace(QLatin1Char('_'), QLatin1Char(' '));
    return words.replace(QLatin1String("starboard"), tr("stbd"));
}

QString stateWords(const Check& check) {
    if (check.limitState == LimitStateKind::metal && check.group != "ballast") return tr("metal");
    if (check.limitState == LimitStateKind::combined && check.group != "ballast")
        return tr("pull and sideways");
    return limitStateWords(check.limitState);
}

QString shortCheckLine(const Check& check) {
    const QString state = check.limitState == LimitStateKind::combined
                              ? (check.group == "ballast" ? tr("rod + shear") : tr("pull + side"))
                              : stateWords(check);
    return tr("%1 %2, %3").arg(marginWords(check), state, caseShort(check.loadCase));
}

QString plainSentence(const Check& check, UnitSystem units) {
    if (check.status == Status::unloaded) return tr("This case puts no load on it.");
    if (!check.margin || !check.demand || !check.working) {
        return check.why.empty() ? tr("This cannot be worked out yet.")
                                 : tr("This cannot be worked out: %1.").arg(asText(check.why));
    }
    const QString figures = tr("It must carry %1 and can carry %2.")
                                .arg(asText(displayForce(*check.demand, units)),
                                     asText(displayForce(*check.working, units)));
    switch (check.status) {
        case Status::isShort:
            return figures + QLatin1Char(' ') + tr("That is too little.");
        case Status::near:
            return figures + QLatin1Char(' ') +
                   tr("That holds, with less in hand than the target for its class.");
        case Status::outside:
            return figures + QLatin1Char(' ') +
                   tr("The formula was not made for these sizes: do not rely on the figure.");
        default:
            return figures + QLatin1Char(' ') + tr("That reaches the target for its class.");
    }
}

bool counts(const Check& check, Basis leading) {
    return check.basis == Basis::metal || check.basis == leading;
}

const Check* worstOf(const Results& results, const std::vector<std::string>& ids, Basis leading) {
    const auto found =
        std::find_if(results.worstFirst.begin(), results.worstFirst.end(), [&](const Check* check) {
            return counts(*check, leading) &&
                   std::find(ids.begin(), ids.end(), check->id) != ids.end();
        });
    return found == results.worstFirst.end() ? nullptr : *found;
}

const Check* worstAtFrame(const Results& results, const std::string& frame, Basis leading) {
    const Check* worst = nullptr;
    for (const CheckSet* set : setsAtFrame(results, frame)) {
        for (const std::size_t place : set->worst(leading)) {
            const Check& check = set->checks[place];
            if (check.frame != frame) continue;
            if (worst == nullptr || worseThan(check, *worst)) worst = &check;
            break;
        }
    }
    return worst;
}

const Check* otherBasis(const Results& results, const Check& check) {
    if (check.basis == Basis::metal) return nullptr;
    const auto found =
        std::find_if(results.worstFirst.begin(), results.worstFirst.end(), [&](const Check* other) {
            return other->id == check.id && other->loadCase == check.loadCase &&
                   other->limitState == check.limitState && other->basis != check.basis &&
                   other->moisture == check.moisture;
        });
    return found == results.worstFirst.end() ? nullptr : *found;
}

std::map<Status, int> statusCounts(const Results& results, Basis leading) {
    std::map<Status, int> counted;
    for (const Check* check : worstOfEach(results, leading)) ++counted[check->status];
    return counted;
}

QString countsLine(const std::map<Status, int>& counted) {
    if (counted.empty()) return tr("nothing checked yet");
    QStringList parts;
    for (const Status status : {Status::isShort, Status::near, Status::unknown, Status::outside}) {
        const auto found = counted.find(status);
        if (found != counted.end())
            parts.append(QStringLiteral("%1 %2").arg(found->second).arg(statusWord(status)));
    }
    if (parts.isEmpty()) return tr("all ok");
    return parts.join(QStringLiteral(" · "));
}

}  // namespace fayline
