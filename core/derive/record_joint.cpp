// The record of one joint by itself.

#include "record_joint.h"

#include <algorithm>

#include "check/fastening.h"
#include "joint/work_joint.h"
#include "record_values.h"

namespace fayline {
namespace {

using namespace record_values;
using Rows = std::vector<std::vector<std::string>>;

std::string plainName(std::string_view name) {
    std::string text(name);
    std::replace(text.begin(), text.end(), '_', ' ');
    return text;
}

/// One row for each limit state, the two timber bases beside each other.
void addCapacities(std::vector<record::Block>& blocks, const NamedJoint& joint,
                   const JointResult& result) {
    const UnitSystem u = joint.units;
    record::Table table;
    table.heads = {"limit state",   "US reference",   "US can carry", "EC5 characteristic",
                   "EC5 can carry", "starts to give", "comes apart",  "goes"};
    const auto us = result.us.states(), ec5 = result.ec5.states();
    std::vector<LimitStateKind> kinds;
    for (const auto* states : {&us, &ec5}) {
        for (const LimitState& state : *states) {
            if (std::find(kinds.begin(), kinds.end(), state.kind) == kinds.end())
                kinds.push_back(state.kind);
        }
    }
    const auto of = [](const std::vector<LimitState>& states, LimitStateKind kind) {
        const auto found = std::find_if(states.begin(), states.end(),
                                        [&](const LimitState& s) { return s.kind == kind; });
        return found == states.end() ? nullptr : &*found;
    };
    for (const LimitStateKind kind : kinds) {
        const LimitState *a = of(us, kind), *b = of(ec5, kind);
        const LimitState& any = a != nullptr ? *a : *b;
        const auto cell = [&](const LimitState* state, Force LimitState::*figure) {
            return state == nullptr ? std::string() : displayForce(state->*figure, u, 4);
        };
        std::string name = state(kind);
        if (any.basis == Basis::metal && kind != LimitStateKind::metal) name += " (metal)";
        table.rows.push_back({name, cell(a, &LimitState::reference), cell(a, &LimitState::working),
                              cell(b, &LimitState::reference), cell(b, &LimitState::working),
                              show(any.gives, u), show(any.apart, u),
                              any.soft ? "slowly" : "suddenly"});
    }
    blocks.emplace_back(std::move(table));
    for (const auto& [basisResult, name] :
         {std::pair{&result.us, "US"}, std::pair{&result.ec5, "Eurocode 5"}}) {
        for (const MissingState& missing : basisResult->missing)
            blocks.emplace_back(record::Paragraph{
                "Not worked out",
                std::string(name) + ", " + state(missing.kind) + ": " + std::string(missing.why),
                true});
    }
}

void addMargins(std::vector<record::Block>& blocks, const NamedJoint& joint,
                const JointResult& result) {
    if (!joint.joint.load) return;
    record::Table table;
    table.heads = {"limit state", "basis", "must carry", "can carry", "margin", ""};
    for (const auto* basisResult : {&result.us, &result.ec5}) {
        for (const LimitState& one : basisResult->states()) {
            if (one.basis == Basis::metal && basisResult == &result.ec5) continue;
            const auto demand = demandFor(one.kind, *joint.joint.load);
            if (!demand) continue;
            const Check check = compare(*demand, one, 1.0);
            table.rows.push_back(
                {state(one.kind), basis(one.basis), displayForce(*demand, joint.units, 4),
                 displayForce(one.working, joint.units, 4),
                 check.margin ? marginText(*check.margin) : "", std::string(nameOf(check.status))});
            table.heavy.push_back(check.status == Status::isShort);
        }
    }
    if (table.rows.empty()) return;
    blocks.emplace_back(record::Heading{2, "Margins against the load given"});
    blocks.emplace_back(std::move(table));
    blocks.emplace_back(record::Paragraph{
        "Note",
        "The load is set against both bases as it was given. For Eurocode 5 it is to be the design "
        "load: the action times its partial factor.",
        false});
}

void addOrder(std::vector<record::Block>& blocks, const NamedJoint& joint,
              const JointResult& result) {
    const BasisResult& chosen = joint.basis == Basis::us ? result.us : result.ec5;
    record::Table table;
    table.heads = {"", "limit state", "starts to give", "comes apart", "goes", ""};
    int place = 0;
    for (const FirstToGo& entry : firstToGo(chosen, joint.joint.load)) {
        table.rows.push_back({std::to_string(++place) + ".", state(entry.kind),
                              show(entry.gives, joint.units), show(entry.apart, joint.units),
                              entry.soft ? "slowly" : "suddenly",
                              entry.tooClose ? "too close to call against its neighbour" : ""});
    }
    if (table.rows.empty()) return;
    blocks.emplace_back(record::Heading{
        2, std::string("What lets go first, ") + basis(joint.basis) +
               (joint.joint.load ? ", sizes of the load along its direction" : "")});
    blocks.emplace_back(std::move(table));
}

void addGeometry(std::vector<record::Block>& blocks, const NamedJoint& joint,
                 const JointResult& result) {
    if (result.geometry.empty()) return;
    record::Table table;
    table.heads = {"size", "", "has", "needs", "standing", "says"};
    for (const GeometryFinding& finding : result.geometry) {
        table.rows.push_back({plainName(std::string(finding.what)), finding.met ? "ok" : "SHORT",
                              size(finding.has, joint.units),
                              (finding.atMost ? "at most " : "") + size(finding.needs, joint.units),
                              standing(finding.standing), finding.says()});
        table.heavy.push_back(!finding.met);
    }
    blocks.emplace_back(record::Heading{2, "Sizes"});
    blocks.emplace_back(std::move(table));
}

void addMoisture(std::vector<record::Block>& blocks, const NamedJoint& joint) {
    const auto rows = moistureRows(joint.joint, joint.zone);
    if (!rows || rows->empty()) return;
    record::Table table;
    table.heads = {"limit state", "basis"};
    for (const MoistureState each : moistureStates) table.heads.push_back(plainName(nameOf(each)));
    table.heads.emplace_back("governs");
    for (const MoistureRow& row : *rows) {
        table.rows.push_back({state(row.kind), basis(row.basis)});
        for (const Force force : row.working)
            table.rows.back().push_back(displayForce(force, joint.units, 4));
        table.rows.back().push_back(plainName(nameOf(row.governs)));
    }
    blocks.emplace_back(record::Heading{
        2, "The four states of moisture, " + std::string(nameOf(joint.zone)) + ": can carry"});
    blocks.emplace_back(std::move(table));
}

/// Driving, slip, and design loads above what starts to give.
void addRest(std::vector<record::Block>& blocks, const NamedJoint& joint,
             const JointResult& result) {
    const auto torque = [&](Moment moment) { return show(TraceValue(moment), joint.units); };
    if (const auto& driving = result.driving) {
        std::string text = "the root starts to yield at " + torque(driving->gives) +
                           " and twists off at " + torque(driving->apart);
        if (driving->dry && driving->waxed)
            text += "; the last turn takes about " + torque(*driving->dry) + " dry and " +
                    torque(*driving->waxed) + " waxed (judgement)";
        blocks.emplace_back(record::Paragraph{"Driving", text + ".", false});
    }
    for (std::size_t i = 0; i < result.slip.size(); ++i) {
        const PlaneSlip& slip = result.slip[i];
        blocks.emplace_back(record::Paragraph{"Slip, plane " + std::to_string(i + 1),
                                              digits(inNewtonsPerMillimetre(slip.soft), 4) +
                                                  " to " +
                                                  digits(inNewtonsPerMillimetre(slip.stiff), 4) +
                                                  " N/mm; " + std::string(sourceOf(slip)),
                                              false});
    }
    for (const Basis under : {Basis::us, Basis::ec5}) {
        std::string kinds;
        for (const LimitState& one : (under == Basis::us ? result.us : result.ec5).states()) {
            if (one.basis == under && worksAboveGiving(one))
                kinds += (kinds.empty() ? "" : ", ") + state(one.kind);
        }
        if (!kinds.empty())
            blocks.emplace_back(
                record::Paragraph{basis(under),
                                  kinds + ": the design load stands above what starts to give. " +
                                      std::string(whyAboveGiving(under)),
                                  false});
    }
}

/// "can carry 88.2 lb (392.3 N), reference 55.1 lb (245.2 N)".
std::string resultOf(const JointResult& result, Basis under, LimitStateKind kind,
                     UnitSystem units) {
    const BasisResult& from = under == Basis::ec5 ? result.ec5 : result.us;
    for (const LimitState& state : from.states()) {
        if (state.kind != kind) continue;
        return "can carry " + both(state.working, units) + "; " +
               (under == Basis::ec5 ? "characteristic " : "reference ") +
               both(state.reference, units);
    }
    return {};
}

}  // namespace

Record jointRecord(const NamedJoint& joint, const JointResult& result, const JointTraces& traces,
                   const RecordOptions& options) {
    Record made;
    made.id = "joint";
    made.title = "Calculation record: " + fastenerWords(joint);
    made.fileName = "record-joint.pdf";
    made.subject = options.subject;
    made.printed = options.printed;
    made.program = options.program;
    const auto cautions = standingCautions();
    made.caution = cautions.front();
    auto& blocks = made.blocks;
    blocks.emplace_back(record::Heading{1, "What was put in"});
    addJointInput(blocks, joint);
    blocks.emplace_back(record::Heading{1, "What it can carry"});
    addCapacities(blocks, joint, result);
    addMargins(blocks, joint, result);
    addOrder(blocks, joint, result);
    addGeometry(blocks, joint, result);
    addMoisture(blocks, joint);
    addRest(blocks, joint, result);
    for (const std::string& caution : jointCautions(joint.joint))
        blocks.emplace_back(record::Paragraph{"Take care", caution, false});
    blocks.emplace_back(record::Heading{1, "Workings"});
    bool us = false, ec5 = false;
    for (const auto& [key, trace] : traces) {
        blocks.emplace_back(
            working(trace, joint.units, resultOf(result, key.first, key.second, joint.units)));
        us = us || (key.first == Basis::us && key.second == LimitStateKind::lateral);
        ec5 = ec5 || (key.first == Basis::ec5 && key.second == LimitStateKind::lateral);
    }
    addEquations(blocks, us, ec5);
    blocks.emplace_back(record::Heading{1, "Factor sets"});
    addFactorSets(blocks);
    addReading(blocks, joint.units);
    for (std::size_t i = 1; i < cautions.size(); ++i)
        blocks.emplace_back(record::Paragraph{"Caution", cautions[i], false});
    return made;
}

}  // namespace fayline
