// The record of a hull, or of one station: rolled up, one working for each distinct joint.

#include <algorithm>
#include <map>

#include "catalogue/catalogue.h"
#include "derive/record.h"
#include "paper_text.h"
#include "project/decide.h"
#include "record_joint.h"
#include "record_loads.h"
#include "record_things.h"
#include "record_values.h"
#include "stages.h"

namespace fayline {
namespace {

using namespace record_values;

struct Context {
    const Results& results;
    const Catalogue& catalogue;
    UnitSystem units;
    Basis basis;
};

std::string groupTitle(const std::string& group) {
    static const std::map<std::string, std::string> titles{{"ballast", "Ballast bolts"},
                                                           {"keel", "Keel timber on the ballast"},
                                                           {"floor timber", "Floor timbers"},
                                                           {"arm", "Floor arms"},
                                                           {"heel", "Heels"},
                                                           {"floor", "Floor to keel"},
                                                           {"plank", "Planks"},
                                                           {"butt", "Butts"},
                                                           {"hood", "Hood ends"},
                                                           {"garboard", "Garboard to keel"},
                                                           {"backbone", "Backbone"}};
    const auto found = titles.find(group);
    return found == titles.end() ? paper_text::capital(paper_text::plain(group)) : found->second;
}

std::string titleOf(const RecordThing& thing, const Context& in) {
    if (thing.set != nullptr && thing.set->joint) {
        const NamedJoint named =
            namedJoint(*thing.set->joint, thing.set->metal, in.catalogue, in.basis, in.units);
        std::string text = fastenerWords(named);
        for (std::size_t i = 0; i < named.joint.members.size(); ++i) {
            const JointMember& m = named.joint.members[i];
            text += (i == 0 ? "; " : " to ") + size(m.thickness, in.units) + " " + m.name;
        }
        return text;
    }
    if (thing.bolt != nullptr) {
        const auto& washer = thing.bolt->washer;
        const auto& rod = thing.bolt->rod;
        std::string text = washer ? size(washer->bolt, in.units) + " rod" : std::string("rod");
        if (rod) text += ", root " + show(TraceValue(rod->root), in.units);
        if (washer) text += ", washer " + size(washer->diameter, in.units);
        return text;
    }
    if (thing.floor != nullptr)
        return size(thing.floor->sided, in.units) + " sided, " +
               size(thing.floor->throat, in.units) + " throat";
    return thing.ids.front();
}

void addRodInput(std::vector<record::Block>& blocks, const BoltCheckInput& bolt, UnitSystem u) {
    record::Table table;
    table.heads = {"", "figure", "or", "standing", "from"};
    if (bolt.rod) {
        const RodInput& rod = *bolt.rod;
        table.rows.push_back(inputRow("root", rod.root, "", std::nullopt, u));
        table.rows.push_back(
            inputRow("corrosion off the radius", rod.corrosion, "decision", std::nullopt, u));
        table.rows.push_back(
            inputRow("yield, least", rod.yield, rod.strengthSource, rod.strengthStanding, u));
        table.rows.push_back(
            inputRow("ultimate, least", rod.ultimate, rod.strengthSource, rod.strengthStanding, u));
        table.rows.push_back(
            inputRow("factor on metal", rod.factor, rod.factorSource, rod.factorStanding, u));
    } else {
        blocks.emplace_back(record::Paragraph{"No rod", bolt.whyNoRod, true});
    }
    if (bolt.washer) {
        const WasherInput& washer = *bolt.washer;
        table.rows.push_back(inputRow("washer", washer.diameter, "decision", std::nullopt, u));
        table.rows.push_back(
            inputRow("washer, thickness", washer.thickness, "decision", std::nullopt, u));
        table.rows.push_back(inputRow("hole under it", washer.hole, "", std::nullopt, u));
        if (washer.usAllowable)
            table.rows.push_back(inputRow("across the grain, US allowable", *washer.usAllowable,
                                          washer.usSource, washer.usStanding, u));
        if (washer.ec5Characteristic)
            table.rows.push_back(inputRow("across the grain, characteristic",
                                          *washer.ec5Characteristic, washer.ec5Source,
                                          washer.ec5Standing, u));
    } else {
        blocks.emplace_back(record::Paragraph{"No washer", bolt.whyNoWasher, true});
    }
    blocks.emplace_back(std::move(table));
}

void addFloorInput(std::vector<record::Block>& blocks, const FloorCheckInput& floor, UnitSystem u) {
    record::Table table;
    table.heads = {"", "figure", "or", "standing", "from"};
    const std::pair<const char*, Length> sizes[] = {{"sided", floor.sided},
                                                    {"throat", floor.throat},
                                                    {"bored off the siding", floor.bored},
                                                    {"between the arms' fastenings", floor.spread},
                                                    {"keel, sided", floor.keelSided},
                                                    {"mid-throat above the keel axis", floor.rise}};
    for (const auto& [what, length] : sizes)
        table.rows.push_back(inputRow(what, length, "", std::nullopt, u));
    table.rows.push_back(
        {"wood", floor.wood ? floor.wood->name.value : "not decided", "", "", "decision"});
    blocks.emplace_back(std::move(table));
}

std::string marginOf(const Check& check) {
    return check.margin                       ? marginText(*check.margin)
           : check.status == Status::unloaded ? "no load"
                                              : "not known";
}

void addChecks(std::vector<record::Block>& blocks, const RecordThing& thing, const Context& in) {
    record::Table table;
    table.heads = {"limit state", "basis",          "worst case",  "at",     "must carry",
                   "can carry",   "starts to give", "comes apart", "margin", ""};
    for (const Check* check : thing.worst) {
        table.rows.push_back(
            {state(check->limitState), basis(check->basis),
             paper_text::plain(nameOf(check->loadCase)), check->id,
             check->demand ? displayForce(*check->demand, in.units, 4) : "not known",
             check->working ? displayForce(*check->working, in.units, 4) : "not known",
             check->gives ? show(check->gives, in.units) : "no figure",
             check->apart ? show(check->apart, in.units) : "no figure", marginOf(*check),
             std::string(nameOf(check->status))});
        table.heavy.push_back(check->status == Status::isShort || check->status == Status::unknown);
    }
    blocks.emplace_back(std::move(table));
    for (const Check* check : thing.worst) {
        if (!check->why.empty())
            blocks.emplace_back(
                record::Paragraph{check->status == Status::unknown ? "Not worked out" : "Note",
                                  check->id + ", " + state(check->limitState) + ": " + check->why,
                                  check->status == Status::unknown});
    }
}

void addThing(std::vector<record::Block>& blocks, const RecordThing& thing, const Context& in,
              std::pair<bool, bool>& lateral) {
    std::string title = titleOf(thing, in);
    if (!thing.frames.empty()) title += ", at " + frameRanges(thing.frames, in.results);
    blocks.emplace_back(record::Heading{2, std::move(title)});
    if (!thing.frames.empty())
        blocks.emplace_back(record::Paragraph{
            "Stands for",
            (thing.floor != nullptr
                 ? paper_text::counted(thing.ids.size(), "floor")
                 : paper_text::counted(static_cast<std::size_t>(thing.fastenings), "fastening") +
                       " in " + paper_text::counted(thing.ids.size(), "place")) +
                " at " + frameRanges(thing.frames, in.results),
            false});
    if (thing.set != nullptr) {
        if (thing.set->joint) {
            Joint joint = *thing.set->joint;
            addJointInput(blocks,
                          namedJoint(joint, thing.set->metal, in.catalogue, in.basis, in.units));
        } else {
            blocks.emplace_back(record::Paragraph{"No joint", thing.set->whyNoJoint, true});
        }
    }
    if (thing.bolt != nullptr) addRodInput(blocks, *thing.bolt, in.units);
    if (thing.floor != nullptr) addFloorInput(blocks, *thing.floor, in.units);
    addChecks(blocks, thing, in);
    for (const Check* check : thing.worst) {
        if (!check->working) continue;
        const auto trace = explain(in.results, *check);
        if (!trace) continue;
        record::Working made =
            working(*trace, in.units,
                    check->id + ", " + paper_text::plain(nameOf(check->loadCase)) + ": can carry " +
                        both(*check->working, in.units) +
                        (check->demand ? ", must carry " + both(*check->demand, in.units) : "") +
                        (check->margin ? ", margin " + marginText(*check->margin) : "") + ", " +
                        std::string(nameOf(check->status)));
        // The caution stands on every page.
        made.notes.erase(std::remove_if(made.notes.begin(), made.notes.end(),
                                        [](const std::string& note) {
                                            return note.rfind("A guide, not a certificate", 0) == 0;
                                        }),
                         made.notes.end());
        blocks.emplace_back(std::move(made));
        if (check->limitState == LimitStateKind::lateral) {
            lateral.first = lateral.first || check->basis == Basis::us;
            lateral.second = lateral.second || check->basis == Basis::ec5;
        }
    }
}

void addThings(std::vector<record::Block>& blocks, const std::vector<RecordThing>& things,
               const Context& in) {
    std::string group;
    std::pair<bool, bool> lateral{false, false};
    for (const RecordThing& thing : things) {
        if (thing.group != group) blocks.emplace_back(record::Heading{1, groupTitle(thing.group)});
        group = thing.group;
        addThing(blocks, thing, in, lateral);
    }
    if (!lateral.first && !lateral.second) return;
    blocks.emplace_back(record::Heading{1, "Equations"});
    addEquations(blocks, lateral.first, lateral.second);
}

/// The worst of every group, first thing on the first page.
void addSummary(Record& made, const std::vector<RecordThing>& things, const Context& in) {
    record::Table table;
    table.heads = {"",           "worst at",  "limit state", "basis", "case",
                   "must carry", "can carry", "margin",      ""};
    std::string group;
    for (const RecordThing& thing : things) {
        if (thing.group == group) continue;
        group = thing.group;
        const Check& check = *thing.worst.front();
        table.rows.push_back(
            {groupTitle(group), check.id, state(check.limitState), basis(check.basis),
             paper_text::plain(nameOf(check.loadCase)),
             check.demand ? displayForce(*check.demand, in.units, 4) : "not known",
             check.working ? displayForce(*check.working, in.units, 4) : "not known",
             marginOf(check), std::string(nameOf(check.status))});
        table.heavy.push_back(check.status == Status::isShort || check.status == Status::unknown);
    }
    if (table.rows.empty()) {
        made.opening.emplace_back(record::Paragraph{"", "Nothing is checked yet.", true});
    } else {
        made.opening.emplace_back(std::move(table));
    }
    std::string open;
    for (const Missing& missing : in.results.missing)
        open += (open.empty() ? "" : "; ") + missing.says + " (" + missing.what + ")";
    if (!open.empty())
        made.opening.emplace_back(record::Paragraph{"Still to be decided", open + ".", false});
}

Record startRecord(const Project& project, const RecordOptions& options, const Context& in) {
    Record made;
    made.subject = options.subject;
    made.printed = options.printed;
    made.program = options.program;
    made.contents = true;
    const auto cautions = standingCautions();
    made.caution = cautions.front();
    made.opening.emplace_back(record::Paragraph{
        "",
        "For whoever reviews it: everything that was put in and every working, so that each figure "
        "can be done again by hand. Joints that are alike are worked out once, for the fastening "
        "that has the least margin. Leading basis: " +
            basis(in.basis) + "; both are shown.",
        false});
    addReading(made.opening, in.units);
    for (std::size_t i = 1; i < cautions.size(); ++i)
        made.opening.emplace_back(record::Paragraph{"Caution", cautions[i], false});
    made.blocks.emplace_back(record::Heading{1, "Factor sets"});
    addFactorSets(made.blocks);
    std::string targets;
    for (const ConsequenceClass each :
         {ConsequenceClass::keel, ConsequenceClass::hull, ConsequenceClass::trim}) {
        targets += (targets.empty() ? "" : ", ") + std::string(nameOf(each)) + " ×" +
                   digits(targetOf(project, each), 3);
    }
    made.blocks.emplace_back(record::Paragraph{
        "Targets", targets + " (judgement). Below its target a margin is near, below 1 short.",
        false});
    return made;
}

Context contextOf(const Project& project, const Results& results, const Catalogue& catalogue) {
    return {results, catalogue,
            project.hull.units == "millimetres" ? UnitSystem::millimetres : UnitSystem::inches,
            project.hull.basis == "ec5" ? Basis::ec5 : Basis::us};
}

/// All decisions in force but offsets and kept catalogue rows, two beside each other.
void addDecisions(std::vector<record::Block>& blocks,
                  const std::vector<std::pair<std::string, std::string>>& decided) {
    record::Table table;
    table.heads = {"decision", "as typed", "decision", "as typed"};
    std::vector<std::string> row;
    for (const auto& [what, text] : decided) {
        if (what.rfind("offsets.", 0) == 0 || what.rfind("kept.", 0) == 0 || text.size() > 120)
            continue;
        row.push_back(what);
        row.push_back(text);
        if (row.size() == 4) table.rows.push_back(std::exchange(row, {}));
    }
    if (!row.empty()) {
        row.resize(4);
        table.rows.push_back(std::move(row));
    }
    if (table.rows.empty()) return;
    blocks.emplace_back(record::Heading{1, "Decisions in force"});
    blocks.emplace_back(std::move(table));
}

}  // namespace

NamedJoint namedJoint(const Joint& joint, const std::string& metal, const Catalogue& catalogue,
                      Basis basis, UnitSystem units) {
    NamedJoint named;
    named.joint = joint;
    named.basis = basis;
    named.units = units;
    for (const JointMember& member : joint.members) {
        std::optional<std::string> id;
        for (const auto& [name, wood] : catalogue.woods) {
            JointMember same = jointMember(wood);
            same.name = member.name;
            same.thickness = member.thickness;
            same.counterbore = member.counterbore;
            same.gap = member.gap;
            same.grain = member.grain;
            same.endGrain = member.endGrain;
            if (same == member) id = name;
        }
        named.woods.push_back(id);
    }
    if (const auto found = catalogue.metals.find(materialId(metal));
        found != catalogue.metals.end()) {
        FastenerMetal same = fastenerMetal(found->second);
        same.factor = joint.fastener.metal.factor;
        same.factorSource = joint.fastener.metal.factorSource;
        if (same == joint.fastener.metal) named.metal = found->first;
    }
    return named;
}

Record hullRecord(const Project& project, const Results& results, const Catalogue& catalogue,
                  const std::vector<std::pair<std::string, std::string>>& decided,
                  const RecordOptions& options) {
    const Context in = contextOf(project, results, catalogue);
    const auto things = thingsOf(results, {});
    Record made = startRecord(project, options, in);
    made.id = "hull";
    made.title = "Calculation record: whole hull";
    made.fileName = "record-hull.pdf";
    addSummary(made, things, in);
    addCases(made.blocks, results, in.units);
    addShares(made.blocks, results, {}, in.units);
    addThings(made.blocks, things, in);
    addDecisions(made.blocks, decided);
    return made;
}

std::optional<Record> stationRecord(const std::string& frame, const Project& project,
                                    const Results& results, const Catalogue& catalogue,
                                    const RecordOptions& options) {
    const auto& frames = results.structure->frames;
    if (std::none_of(frames.begin(), frames.end(),
                     [&](const FramePlace& place) { return place.id == frame; }))
        return std::nullopt;
    const Context in = contextOf(project, results, catalogue);
    const auto things = thingsOf(results, frame);
    Record made = startRecord(project, options, in);
    made.id = frame;
    made.title = "Calculation record: station " + frame;
    made.fileName = "record-" + frame + ".pdf";
    addSummary(made, things, in);
    addCases(made.blocks, results, in.units);
    addShares(made.blocks, results, frame, in.units);
    addThings(made.blocks, things, in);
    return made;
}

}  // namespace fayline
