#include "holds.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "theme/status.h"
#include "words/checks.h"
#include "words/materials.h"
#include "words/values.h"

namespace fayline {
namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("Holds", words);
}

/// Bases further apart than this are said to differ, whatever their statuses.
constexpr double muchApart = 1.5;

const Check* worstTimber(const Results& results, const std::string& id, Basis basis) {
    const auto checks = checksOf(results, id);
    const auto found = std::find_if(checks.begin(), checks.end(),
                                    [&](const Check* check) { return check->basis == basis; });
    return found == checks.end() ? nullptr : *found;
}

void judge(Hold& hold, const Results& results, const std::string& id, Basis leading) {
    hold.check = worstOf(results, {id}, leading);
    if (hold.check == nullptr) return;
    const Check& check = *hold.check;
    hold.status = check.status;
    hold.verdict = check.margin ? marginWords(check) + QLatin1Char(' ') + statusWord(check.status)
                                : statusWord(check.status);
    hold.why = check.margin ? limitStateWords(check.limitState) + QStringLiteral(", ") +
                                  asText(titleOf(check.loadCase))
                            : asText(check.why);

    const Basis second = leading == Basis::us ? Basis::ec5 : Basis::us;
    const Check* first = worstTimber(results, id, leading);
    const Check* other = worstTimber(results, id, second);
    if (first == nullptr || other == nullptr || !first->margin || !other->margin) return;
    const double ratio = *first->margin / *other->margin;
    if (first->status == other->status && ratio < muchApart && ratio > 1.0 / muchApart) return;
    hold.dissentMatters = first->status != other->status;
    hold.dissent = tr("The bases differ: %1 %2 %3, %4 %5 %6 (%7).")
                       .arg(basisWords(leading), marginWords(*first), statusWord(first->status),
                            basisWords(second), marginWords(*other), statusWord(other->status),
                            limitStateWords(other->limitState));
}

QString boltSize(const Desk& desk, const PlacedBolt& placed, UnitSystem units) {
    QStringList parts;
    const Results& results = *desk.results();
    for (const Hole& hole : results.ballastBolts->holes) {
        if (hole.id != placed.id) continue;
        parts.append(
            tr("%1 through %2").arg(showSize(hole.diameter, units), showSize(hole.grip, units)));
    }
    const std::string what = placed.id + ".metal";
    const auto& decided = desk.journal().decided();
    auto metal = decided.find(what);
    if (metal == decided.end()) metal = decided.find("bolts.metal");
    if (metal != decided.end()) {
        if (const auto target = findDecision(what))
            parts.append(shownName(*target->field, metal->second, desk.catalogue()));
    } else {
        parts.append(tr("metal not decided"));
    }
    for (const auto& input : results.boltInputs) {
        if (input->id != placed.id || !input->washer) continue;
        parts.append(tr("washer %1 × %2")
                         .arg(showSize(input->washer->diameter, units),
                              showSize(input->washer->thickness, units)));
    }
    return parts.join(QStringLiteral(" · "));
}

QString findingTitle(const std::string& kind) {
    if (kind == "rule") return tr("Class rule");
    if (kind == "edge") return tr("Edge distance");
    if (kind == "end") return tr("End distance");
    if (kind == "spacing") return tr("Spacing");
    if (kind == "clash") return tr("Clash");
    if (kind == "grip") return tr("Grip");
    if (kind == "floor") return tr("Floor");
    return tr("Layout");
}

Hold findingHold(const Finding& finding, const Desk& desk) {
    Hold hold;
    hold.title = findingTitle(finding.kind);
    hold.why = asText(finding.says);
    hold.status = Status::isShort;
    hold.verdict = tr("layout");
    for (const std::string& cure : finding.cure) {
        const auto equals = cure.find('=');
        if (equals == std::string::npos || equals + 1 == cure.size()) continue;
        const Typed typed{{cure.substr(0, equals), cure.substr(equals + 1)}};
        if (!desk.wouldTake(typed)) continue;
        hold.cure = typed;
        hold.cureWords =
            tr("set %1 to %2 ›")
                .arg(asText(decisionTitle(typed.front().first)), asText(typed.front().second));
        break;
    }
    return hold;
}

Hold floorHold(const Desk& desk, const FramePlace& place, UnitSystem units) {
    Hold hold;
    hold.title = tr("Floor timber");
    QStringList parts{asText(*place.floorKind)};
    if (place.floorSided && place.floorThroat)
        parts.append(tr("%1 × %2").arg(showSize(*place.floorSided, units),
                                       showSize(*place.floorThroat, units)));
    if (place.floorWood) {
        if (const auto target = findDecision("floors.wood"))
            parts.append(shownName(*target->field, *place.floorWood, desk.catalogue()));
    }
    hold.size = parts.join(QStringLiteral(" · "));
    hold.verdict = tr("not checked");
    hold.why = tr("its own strength is not worked out");
    return hold;
}

}  // namespace

std::vector<Hold> holdsAt(const Desk& desk, const std::string& frame) {
    const Results& results = *desk.results();
    const Speech speech = speechOf(desk.project());
    std::vector<Hold> holds;
    std::vector<std::string> here;
    for (const PlacedBolt& placed : results.ballastBolts->placed) {
        if (placed.frame != frame) continue;
        here.push_back(placed.id);
        Hold hold;
        hold.title = tr("Ballast bolt %1").arg(asText(placed.id));
        hold.size = boltSize(desk, placed, speech.units);
        judge(hold, results, placed.id, speech.basis);
        holds.push_back(std::move(hold));
    }
    for (const Finding& finding : results.ballastBolts->findings) {
        const bool concerns =
            std::any_of(finding.holes.begin(), finding.holes.end(), [&](const std::string& id) {
                return std::find(here.begin(), here.end(), id) != here.end();
            });
        if (concerns) holds.push_back(findingHold(finding, desk));
    }
    if (!here.empty() && worstOf(results, {"keel"}, speech.basis) != nullptr) {
        Hold hold;
        hold.title = tr("Keel timber on the ballast");
        hold.size = tr("over its whole length");
        judge(hold, results, "keel", speech.basis);
        holds.push_back(std::move(hold));
    }
    const auto& frames = results.structure->frames;
    const auto place = std::find_if(frames.begin(), frames.end(),
                                    [&](const FramePlace& f) { return f.id == frame; });
    if (place != frames.end() && place->floorKind && *place->floorKind != "none")
        holds.push_back(floorHold(desk, *place, speech.units));
    return holds;
}

}  // namespace fayline
