#include "words/rule_texts.h"

#include <QCoreApplication>
#include <algorithm>

#include "project/fields.h"
#include "quantity/text.h"
#include "words/materials.h"
#include "words/values.h"

namespace fayline {
namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("RuleText", words);
}

struct Asked {
    const Project& project;
    const Results& results;
    const Catalogue& catalogue;
    UnitSystem units;
    UnitMark mark;
    const Field& field;
    std::string place;
    std::string name;  ///< the last part of the pattern
};

RuleText length(const Asked& asked, const std::optional<Length>& value, const char* from) {
    if (!value) return {};
    return {showLength(*value, asked.field, asked.units, asked.mark), tr(from)};
}
RuleText word(const std::optional<std::string>& value, const char* from) {
    if (!value) return {};
    return {asText(*value), tr(from)};
}

RuleText hullRule(const Asked& asked) {
    const Afloat& afloat = *asked.results.afloat;
    if (asked.name == "water_density")
        return {asText(displayDensity(afloat.water, asked.units, 4)), tr("sea water")};
    if (asked.name == "waterline" && asked.results.hull->surface)
        return length(asked, afloat.waterline, "lowest of the stations' tops");
    if (asked.name == "displacement" && afloat.body) {
        return {asText(displayMass(afloat.body->displacement, asked.units, 4)),
                tr("what floats at the waterline")};
    }
    if (asked.name == "units") return {tr("inches"), tr("until decided")};
    if (asked.name == "basis") return {tr("US"), tr("until decided")};
    return {};
}

RuleText ballastRule(const Asked& asked) {
    if (!asked.results.structure->ballast) return {};
    const BallastPlace& ballast = *asked.results.structure->ballast;
    const BallastShape& shape = ballast.shape;
    if (asked.name == "mass")
        return {asText(displayMass(ballast.fromShape, asked.units, 4)),
                tr("worked out from its shape")};
    if (asked.name == "centre_x")
        return length(asked, ballast.centre.x, "worked out from its shape");
    if (asked.name == "centre_below")
        return length(asked, ballast.centreBelow, "worked out from its shape");
    if (asked.name == "breadth_middle")
        return length(asked, shape.topBreadthMiddle, "as the keel's siding");
    if (asked.name == "breadth_fore")
        return length(asked, shape.topBreadthFore, "as in the middle");
    if (asked.name == "breadth_aft") return length(asked, shape.topBreadthAft, "as in the middle");
    if (asked.name == "bottom_breadth") return length(asked, shape.bottomBreadth, "as its top");
    if (asked.name == "depth_fore") return length(asked, shape.depthFore, "as in the middle");
    if (asked.name == "depth_aft") return length(asked, shape.depthAft, "as in the middle");
    return {};
}

RuleText frameRule(const Asked& asked) {
    const auto& frames = asked.results.structure->frames;
    const auto frame = std::find_if(frames.begin(), frames.end(),
                                    [&](const FramePlace& f) { return f.id == asked.place; });
    if (frame == frames.end()) return {};
    if (asked.field.section == "frame") {
        if (asked.name == "x") return length(asked, frame->x, "by even spacing");
        if (asked.name == "sided") return length(asked, frame->sided, "as for all frames");
        if (asked.name == "moulded") return length(asked, frame->moulded, "as for all frames");
        return {};
    }
    if (asked.name == "kind") return word(frame->floorKind, "as for all floors");
    if (asked.name == "topology") return word(frame->floorTopology, "as for all floors");
    if (asked.name == "throat") return length(asked, frame->floorThroat, "as for all floors");
    if (asked.name == "wood" && frame->floorWood) {
        return {shownName(asked.field, *frame->floorWood, asked.catalogue),
                tr("as for all floors")};
    }
    if (asked.name == "sided")
        return length(asked, frame->floorSided,
                      asked.project.floors.sided ? "as for all floors" : "as its frame");
    return {};
}

const BoltCheckInput* checkInputOf(const Asked& asked) {
    for (const auto& input : asked.results.boltInputs) {
        if (asked.place.empty() || input->id == asked.place) return input.get();
    }
    return nullptr;
}

/// The words of a class rule of the catalogue, for what it decides for all bolts.
RuleText classRule(const Asked& asked, const char* id) {
    const auto rule = asked.catalogue.rules.find(id);
    if (rule == asked.catalogue.rules.end() || !rule->second.factor) return {};
    return {tr("%1 × the bolt's diameter").arg(*rule->second.factor), asText(rule->second.source)};
}

/// Where the layout has put a bolt's lower nut.
RuleText recessRule(const Asked& asked) {
    if (asked.place.empty()) return {tr("by each bolt's diameter"), tr("until decided")};
    for (const Hole& hole : asked.results.ballastBolts->holes) {
        const auto section = sectionAt(asked.results.structure->joint, hole.end.x);
        if (hole.id != asked.place || !section) continue;
        const Length proud = (hole.length - hole.grip) / 2.0;
        return length(asked, hole.end.z + proud - section->ballastBottom, "until decided");
    }
    return {};
}

RuleText boltRule(const Asked& asked) {
    if (asked.name == "washer_diameter" && asked.place.empty())
        return classRule(asked, "lr_keel_washer_diameter");
    if (asked.name == "washer_thickness" && asked.place.empty())
        return classRule(asked, "lr_keel_washer_thickness");
    const BoltCheckInput* input = checkInputOf(asked);
    if (asked.name == "washer_diameter" && input != nullptr && input->washer)
        return length(asked, input->washer->diameter, "by the class rule");
    if (asked.name == "washer_thickness" && input != nullptr && input->washer)
        return length(asked, input->washer->thickness, "by the class rule");
    if (asked.name == "corrosion" && input != nullptr && input->rod)
        return length(asked, input->rod->corrosion, "until decided");
    if (asked.name == "recess") return recessRule(asked);
    if (asked.name == "through") return {tr("floor"), tr("until decided")};
    if (asked.name == "offset" && asked.place.empty())
        return length(asked, Length{}, "on the centreline");
    const auto& placed = asked.results.ballastBolts->placed;
    const auto bolt = std::find_if(placed.begin(), placed.end(),
                                   [&](const PlacedBolt& p) { return p.id == asked.place; });
    if (bolt == placed.end()) return {};
    if (asked.name == "x") return length(asked, bolt->joint.x, "spread over the floors");
    if (asked.name == "offset") return length(asked, bolt->joint.y, "alternate sides");
    return {};
}

/// The decision for all of a kind that stands behind one for a single place.
std::optional<std::string> generalOf(const Field& field, const std::string& name) {
    if (field.section == "bolt") return "bolts." + name;
    if (field.section == "floor") return "floors." + name;
    if (field.section == "frame") return "frames." + name;
    return std::nullopt;
}

/// What stands for a fastening's decision at one frame or side: the nearest wider one.
RuleText fasteningRule(const Asked& asked, const Journal& journal) {
    const std::string& section = asked.field.section;
    if (section.size() < 4 || section.compare(section.size() - 3, 3, " at") != 0) return {};
    const std::string group = section.substr(0, section.size() - 3);
    const bool sided =
        asked.field.pattern.rfind("F#.P.", 0) == 0 || asked.field.pattern.rfind("F#.S.", 0) == 0;
    std::vector<std::pair<std::string, QString>> wider;
    if (sided)
        wider.emplace_back(asked.place + "." + group + "." + asked.name, tr("as for both sides"));
    wider.emplace_back(group + "." + asked.name, tr("as for the whole hull"));
    for (const auto& [what, from] : wider) {
        const auto decided = journal.decided().find(what);
        if (decided == journal.decided().end()) continue;
        const bool named =
            asked.field.kind == ValueKind::metalName || asked.field.kind == ValueKind::choice;
        return {named ? shownName(asked.field, decided->second, asked.catalogue)
                      : showTyped(decided->second, asked.field, asked.units, asked.mark),
                from};
    }
    return {};
}

}  // namespace

RuleText ruleText(const std::string& what, const Project& project, const Journal& journal,
                  const Results& results, const Catalogue& catalogue, UnitMark mark) {
    const auto target = findDecision(what);
    if (!target) return {};
    const Field& field = *target->field;
    const Asked asked{project,
                      results,
                      catalogue,
                      speechOf(project).units,
                      mark,
                      field,
                      target->address.place,
                      field.pattern.substr(field.pattern.rfind('.') + 1)};

    if (const RuleText wider = fasteningRule(asked, journal); !wider.value.isEmpty()) return wider;
    // A bolt's offset for all is a distance to alternate sides, not a place of its own.
    const bool ownSide = field.section == "bolt" && asked.name == "offset";
    if (const auto general = generalOf(field, asked.name); general && !ownSide) {
        const auto decided = journal.decided().find(*general);
        if (decided != journal.decided().end()) {
            const bool named = field.kind == ValueKind::woodName ||
                               field.kind == ValueKind::metalName ||
                               field.kind == ValueKind::choice;
            const QString value = named ? shownName(field, decided->second, catalogue)
                                        : showTyped(decided->second, field, asked.units, mark);
            return {value, tr("as for all %1")
                               .arg(field.section == "bolt"    ? tr("bolts")
                                    : field.section == "floor" ? tr("floors")
                                                               : tr("frames"))};
        }
    }
    if (field.section == "hull") return hullRule(asked);
    if (field.section == "ballast") return ballastRule(asked);
    if (field.section == "frame" || field.section == "floor") return frameRule(asked);
    if (field.section == "bolt" || field.section == "bolts") return boltRule(asked);
    if (what == "floors.topology") return word(std::string("beside"), "until decided");
    if (what == "floors.sided") return {tr("as each frame"), tr("until decided")};
    return {};
}

}  // namespace fayline
