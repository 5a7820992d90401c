#include "record_loads.h"

#include <algorithm>

#include "record_values.h"

namespace fayline {
namespace {

using namespace record_values;

std::string parts(const ForceVector& force, UnitSystem units) {
    std::string text;
    const auto add = [&](Force value, const char* positive, const char* negative) {
        if (value == Force{}) return;
        text += (text.empty() ? "" : ", ") + displayForce(abs(value), units, 4) + " " +
                (value > Force{} ? positive : negative);
    };
    add(force.x, "aft", "forward");
    add(force.y, "to starboard", "to port");
    add(force.z, "up", "down");
    return text.empty() ? "none" : text;
}

std::string balance(const CaseLoads& loads) {
    if (!loads.carried) return "NOT CARRIED: " + loads.why;
    if (!loads.settled) return "NO BALANCE: " + loads.why;
    // Sixteen digits leave a rest of their own.
    return loads.residual.relative < 1e-9 ? std::string("balanced")
                                          : digits(loads.residual.relative, 2) + " left over";
}

std::string plainName(LoadCase loadCase) {
    std::string text(nameOf(loadCase));
    std::replace(text.begin(), text.end(), '_', ' ');
    return text;
}

bool pulls(const CaseLoads& loads) {
    for (const BoltForces& bolt : loads.bolts) {
        if (bolt.demandAxial > Force{} || bolt.demandLateral > Force{}) return true;
    }
    return false;
}

}  // namespace

void addCases(std::vector<record::Block>& blocks, const Results& results, UnitSystem units) {
    blocks.emplace_back(record::Heading{1, "Loads by case"});
    record::Table table;
    table.heads = {"case",           "load ×",          "EC5 ×",
                   "duration, kind", "on the keel",     "moment about the keel",
                   "balance",        "source, standing"};
    for (const auto& loads : results.cases) {
        const CaseSettings& s = loads->settings;
        table.rows.push_back(
            {std::string(titleOf(loads->loadCase)), digits(s.factor, 3), digits(s.ec5Factor, 3),
             std::string(nameOf(s.duration)) + ", " + std::string(nameOf(s.kind)),
             parts(loads->total, units), show(TraceValue(loads->totalMoment.x), units),
             balance(*loads), s.source + (s.source.empty() ? "" : ", ") + standing(s.standing)});
        table.heavy.push_back(!loads->carried || !loads->settled);
    }
    if (table.rows.empty()) {
        blocks.emplace_back(record::Paragraph{"", "No case is worked out yet.", true});
        return;
    }
    blocks.emplace_back(std::move(table));
    blocks.emplace_back(record::Paragraph{
        "Note",
        "The load's own factor is in the figures already; the Eurocode 5 factor is put on demands "
        "of that basis only. Moments are about the fore-and-aft line at the joint of keel and "
        "ballast, positive to starboard.",
        false});
}

void addShares(std::vector<record::Block>& blocks, const Results& results, const std::string& frame,
               UnitSystem units) {
    blocks.emplace_back(record::Heading{1, "Shares"});
    blocks.emplace_back(record::Paragraph{
        "",
        "Tributary: the mass of ballast nearest each support. Rigid: a stiff ballast on equal "
        "springs. Each bolt is checked for what the cracked section or the other methods named "
        "with its working give, times its envelope: the larger share over an even one. The keel "
        "beam and the station ring are not worked out; the heels' part of a frame's load is a "
        "judgement.",
        false});
    record::Table frames;
    if (frame.empty()) {
        frames.heads = {"frame", "tributary", "rigid"};
        for (const auto& loads : results.cases) {
            if (!loadsTheKeel(loads->loadCase)) continue;
            for (const FrameShare& share : loads->frames)
                frames.rows.push_back(
                    {share.frame, digits(share.tributary, 3), digits(share.rigid, 3)});
            break;  // shares are those of the ballast's shape, whatever the case
        }
    } else {
        frames.heads = {"case", "tributary", "rigid", "moment about the keel", "sideways", "up"};
        for (const auto& loads : results.cases) {
            for (const FrameShare& share : loads->frames) {
                if (share.frame != frame || !loadsTheKeel(loads->loadCase)) continue;
                frames.rows.push_back({std::string(titleOf(loads->loadCase)),
                                       digits(share.tributary, 3), digits(share.rigid, 3),
                                       show(TraceValue(share.keelMoment), units),
                                       displayForce(share.lateral, units, 4),
                                       displayForce(share.vertical, units, 4)});
            }
        }
    }
    if (!frames.rows.empty()) blocks.emplace_back(std::move(frames));
    record::Table bolts;
    bolts.heads = {"bolt",    "case",    "equal force",        "windward only",
                   "elastic", "cracked", "share trib., rigid", "envelope",
                   "pull",    "shear"};
    for (const auto& loads : results.cases) {
        if (!loadsTheKeel(loads->loadCase) || !pulls(*loads)) continue;
        for (const BoltForces& b : loads->bolts) {
            if (!frame.empty() && b.frame != frame) continue;
            const auto force = [&](Force value) { return displayForce(value, units, 3); };
            bolts.rows.push_back({b.id, plainName(loads->loadCase), force(b.equalForce),
                                  force(b.windwardOnly), force(b.elastic), force(b.cracked),
                                  digits(b.shareTributary, 3) + ", " + digits(b.shareRigid, 3),
                                  digits(b.envelope, 3), force(b.demandAxial),
                                  force(b.demandLateral)});
        }
    }
    if (bolts.rows.empty()) return;
    blocks.emplace_back(
        record::Heading{2, "Ballast bolts: pull by each method, and what is asked"});
    blocks.emplace_back(std::move(bolts));
}

}  // namespace fayline
