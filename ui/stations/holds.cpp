#include "holds.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <map>
#include <utility>

#include "theme/status.h"
#include "words/checks.h"
#include "words/fastenings.h"
#include "words/materials.h"
#include "words/things.h"
#include "words/values.h"

namespace fayline {
namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("Holds", words);
}

/// Bases further apart than this are said to differ, whatever their statuses.
constexpr double muchApart = 1.5;
constexpr std::size_t mostFindings = 12;

/// What a check belongs to in the list: a ballast bolt by itself, other fastenings with their
/// group, timbers by themselves.
std::string holderOf(const Check& check) {
    if (check.group == "ballast") return check.id;
    if (check.id == check.frame + ".floor") return "timber.floor";
    if (check.id == check.frame + ".P" || check.id == check.frame + ".S" || check.id == check.frame)
        return "timber.frame";
    return check.group;
}

/// The worst of everything checked at one frame, found in one go.
class Judge {
  public:
    Judge(const Results& results, const std::string& frame, Basis leading) : leading_(leading) {
        const auto keepWorse = [](auto& map, auto key, const Check& check) {
            const auto [known, isNew] = map.try_emplace(std::move(key), &check);
            if (!isNew && worseThan(check, *known->second)) known->second = &check;
        };
        for (const auto& set : results.checkSets) {
            const bool here = set->frame == frame || set->frame.empty();
            if (!here) continue;
            for (const Check& check : set->checks) {
                if (check.frame != frame && check.id != "keel") continue;
                const std::string holder = check.id == "keel" ? check.id : holderOf(check);
                if (counts(check, leading)) keepWorse(worst_, holder, check);
                keepWorse(byBasis_, std::pair{holder, check.basis}, check);
            }
        }
    }

    [[nodiscard]] bool knows(const std::string& holder) const { return worst_.count(holder) > 0; }

    void judge(Hold& hold, const std::string& holder) const {
        const auto worst = worst_.find(holder);
        if (worst == worst_.end()) return;
        hold.check = worst->second;
        const Check& check = *hold.check;
        hold.status = check.status;
        hold.verdict = check.margin
                           ? marginWords(check) + QLatin1Char(' ') + statusWord(check.status)
                           : statusWord(check.status);
        hold.why = check.margin
                       ? stateWords(check) + QStringLiteral(", ") + asText(titleOf(check.loadCase))
                       : asText(check.why);
        dissent(hold, holder);
    }

  private:
    [[nodiscard]] const Check* under(const std::string& holder, Basis basis) const {
        const auto found = byBasis_.find({holder, basis});
        return found == byBasis_.end() ? nullptr : found->second;
    }

    void dissent(Hold& hold, const std::string& holder) const {
        const Basis second = leading_ == Basis::us ? Basis::ec5 : Basis::us;
        const Check* first = under(holder, leading_);
        const Check* other = under(holder, second);
        if (first == nullptr || other == nullptr || !first->margin || !other->margin) return;
        const double ratio = *first->margin / *other->margin;
        if (first->status == other->status && ratio < muchApart && ratio > 1.0 / muchApart) return;
        hold.dissentMatters = first->status != other->status;
        hold.dissent = tr("The bases differ: %1 %2 %3, %4 %5 %6 (%7).")
                           .arg(basisWords(leading_), marginWords(*first),
                                statusWord(first->status), basisWords(second), marginWords(*other),
                                statusWord(other->status), stateWords(*other));
    }

    Basis leading_;
    std::map<std::string, const Check*> worst_;
    std::map<std::pair<std::string, Basis>, const Check*> byBasis_;
};

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

Hold floorHold(const Desk& desk, const FramePlace& place, UnitSystem units, const Judge& judge) {
    Hold hold;
    hold.title = tr("Floor timber");
    QStringList parts{kindWords(*place.floorKind)};
    if (place.floorSided && place.floorThroat)
        parts.append(tr("%1 × %2").arg(showSize(*place.floorSided, units),
                                       showSize(*place.floorThroat, units)));
    if (place.floorWood) {
        if (const auto target = findDecision("floors.wood"))
            parts.append(shownName(*target->field, *place.floorWood, desk.catalogue()));
    }
    hold.size = parts.join(QStringLiteral(" · "));
    judge.judge(hold, "timber.floor");
    if (hold.check != nullptr) return hold;
    hold.verdict = tr("not checked");
    hold.why = tr("its own strength is not worked out");
    return hold;
}

/// One group of fastenings at a frame, both sides together.
Hold groupHold(const Desk& desk, const std::string& frame, const std::string& group, int holes,
               UnitSystem units, const Judge& judge) {
    Hold hold;
    hold.title = groupWords(group);
    const std::string decided = group == "floor" ? "floor_bolt" : group;
    const auto at = [&](const char* side) {
        return standingAt(desk.project(), decided, frame, side);
    };
    const FasteningDecisions port = at("P");
    const QString there = summaryWords(port, units);
    const QString starboard = summaryWords(at("S"), units);
    QStringList parts;
    if (!there.isEmpty() || !starboard.isEmpty())
        parts.append(there == starboard ? there : there + QStringLiteral(" | ") + starboard);
    if (port.metal) {
        if (const auto target = findDecision("heel.metal"))
            parts.append(shownName(*target->field, *port.metal, desk.catalogue()));
    }
    if (holes > 0) parts.append(tr("%1 in all").arg(holes));
    hold.size = parts.join(QStringLiteral(" · "));
    judge.judge(hold, group);
    if (hold.check != nullptr) return hold;
    QStringList open;
    for (const std::string& name : undecidedOf(port)) {
        if (const auto target = findDecision(decided + "." + name))
            open.append(asText(target->field->label));
    }
    if (port.count == 0) {
        hold.verdict = tr("none");
    } else if (!open.isEmpty()) {
        hold.verdict = tr("not decided");
        hold.why = tr("still to decide: %1").arg(open.join(QStringLiteral(", ")));
    } else {
        hold.verdict = tr("not checked");
        if (holes == 0) hold.why = tr("there is no place for it here");
    }
    return hold;
}

void addFindings(std::vector<Hold>& holds, const std::vector<Finding>& findings, const Desk& desk) {
    for (std::size_t i = 0; i < findings.size(); ++i) {
        if (i == mostFindings) {
            Hold more;
            more.title = tr("Layout");
            more.why = tr("and %1 more findings").arg(findings.size() - mostFindings);
            more.status = Status::isShort;
            holds.push_back(std::move(more));
            return;
        }
        holds.push_back(findingHold(findings[i], desk));
    }
}

}  // namespace

std::vector<Hold> holdsAt(const Desk& desk, const std::string& frame) {
    const Results& results = *desk.results();
    const Speech speech = speechOf(desk.project());
    const Judge judge(results, frame, speech.basis);
    std::vector<Hold> holds;
    std::vector<std::string> here;
    for (const PlacedBolt& placed : results.ballastBolts->placed) {
        if (placed.frame != frame) continue;
        here.push_back(placed.id);
        Hold hold;
        hold.title = tr("Ballast bolt %1").arg(asText(placed.id));
        hold.size = boltSize(desk, placed, speech.units);
        judge.judge(hold, placed.id);
        holds.push_back(std::move(hold));
    }
    for (const Finding& finding : results.ballastBolts->findings) {
        const bool concerns =
            std::any_of(finding.holes.begin(), finding.holes.end(), [&](const std::string& id) {
                return std::find(here.begin(), here.end(), id) != here.end();
            });
        if (concerns) holds.push_back(findingHold(finding, desk));
    }
    if (!here.empty() && judge.knows("keel")) {
        Hold hold;
        hold.title = tr("Keel timber on the ballast");
        hold.size = tr("over its whole length");
        judge.judge(hold, "keel");
        holds.push_back(std::move(hold));
    }
    const auto& frames = results.structure->frames;
    const auto place = std::find_if(frames.begin(), frames.end(),
                                    [&](const FramePlace& f) { return f.id == frame; });
    if (place == frames.end()) return holds;
    const auto number = static_cast<std::size_t>(place - frames.begin());
    const FrameFastenings* fastenings =
        number < results.frameFastenings.size() ? results.frameFastenings[number].get() : nullptr;
    std::map<std::string, int> holes;
    if (fastenings != nullptr) {
        for (const Hole& hole : fastenings->holes) ++holes[hole.group];
    }
    const bool floor = place->floorKind && *place->floorKind != "none";
    if (floor) holds.push_back(floorHold(desk, *place, speech.units, judge));
    for (const char* group : {"heel", "arm", "floor", "plank"}) {
        const std::string name = group;
        if ((name == "arm" || name == "floor") && !floor && holes[name] == 0) continue;
        holds.push_back(groupHold(desk, frame, name, holes[name], speech.units, judge));
    }
    if (judge.knows("timber.frame")) {
        Hold hold;
        hold.title = tr("Frame");
        judge.judge(hold, "timber.frame");
        holds.push_back(std::move(hold));
    }
    if (fastenings != nullptr) addFindings(holds, fastenings->findings, desk);
    return holds;
}

}  // namespace fayline
