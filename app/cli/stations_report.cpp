#include "stations_report.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <unordered_map>

namespace fayline::cli {
namespace {

Json boltJson(const BoltForces& bolt) {
    Json json;
    json["id"] = bolt.id;
    json["group"] = "ballast";
    json["point_mm"] = mm(bolt.point);
    json["force_N"] = newton(bolt.force);
    json["axial_N"] = newton(bolt.force.z);
    json["lateral_N"] = newton(bolt.lateral);
    json["moment_Nm"] = newtonMetre(MomentVector{});
    json["by_method"] = {{"equal_force_N", newton(bolt.equalForce)},
                         {"windward_only_N", newton(bolt.windwardOnly)},
                         {"elastic_N", newton(bolt.elastic)},
                         {"cracked_section_N", newton(bolt.cracked)}};
    json["share"] = {{"tributary", bolt.shareTributary},
                     {"rigid", bolt.shareRigid},
                     {"envelope", bolt.envelope}};
    json["demand"] = {{"axial_N", newton(bolt.demandAxial)},
                      {"lateral_N", newton(bolt.demandLateral)}};
    json["known"] = true;
    json["why"] = nullptr;
    return json;
}

/// One fastening of a set: what the set's worst one is checked for. Which way each of them pulls is
/// not worked out, so no force vector is given.
Json setJson(const Hole& hole, const SetDemand& demand) {
    Json json;
    json["id"] = hole.id;
    json["group"] = hole.group;
    json["point_mm"] = mm(hole.end);
    for (const char* later : {"force_N", "axial_N", "lateral_N", "moment_Nm", "by_method", "share"})
        json[later] = nullptr;
    json["demand"] = {{"axial_N", demand.known ? newton(demand.axial) : Json(nullptr)},
                      {"lateral_N", demand.known ? newton(demand.lateral) : Json(nullptr)}};
    json["known"] = demand.known;
    json["why"] = textOrNull(demand.why);
    return json;
}

/// "F9.P.arm" of "F9.P.arm.2".
std::string_view setName(std::string_view id) {
    return id.substr(0, id.rfind('.'));
}

bool standsAtStation(const std::string& group) {
    return group == "arm" || group == "heel" || group == "floor";
}

/// The frame's load is passed on by its heels and by its floor beside each other: a band, a
/// judgement until stiffness is worked out. What passes the floor goes through arms and floor
/// bolts.
Json groupShare(const FrameChecks& checks) {
    bool heel = false, arm = false, floor = false;
    for (const SetCheckInput& set : checks.sets) {
        heel = heel || set.set.group == "heel";
        arm = arm || set.set.group == "arm";
        floor = floor || set.set.group == "floor";
    }
    if (!heel && !arm && !floor) return nullptr;
    const bool beside = heel && arm;
    const auto band = [](bool there, double low, double high) {
        return there ? Json::array({low, high}) : Json(nullptr);
    };
    return {{"heel", band(heel, beside ? 0.05 : 1.0, beside ? 0.5 : 1.0)},
            {"arm", band(arm, beside ? 0.5 : 1.0, beside ? 0.95 : 1.0)},
            {"floor", band(floor, beside ? 0.5 : 1.0, beside ? 0.95 : 1.0)}};
}

struct Station {
    const FrameChecks* checks = nullptr;
    std::vector<const Hole*> holes;  ///< of arms, heels, floor to keel
    std::unordered_map<std::string_view, const SetCheckInput*> sets;
};

Json stationCaseJson(const CaseLoads& loads, const FrameShare& frame, const Station& station) {
    Json json;
    json["case"] = nameOf(loads.loadCase);
    json["keel_moment_Nm"] = newtonMetre(frame.keelMoment);
    json["keel_lateral_N"] = newton(frame.lateral);
    json["keel_vertical_N"] = newton(frame.vertical);
    json["share"] = {{"tributary", frame.tributary}, {"rigid", frame.rigid}, {"beam", nullptr}};
    json["fastenings"] = Json::array();
    for (const BoltForces& bolt : loads.bolts) {
        if (bolt.frame == frame.frame) json["fastenings"].push_back(boltJson(bolt));
    }
    const FrameLoad* load = nullptr;
    if (station.checks != nullptr) {
        for (const FrameLoad& one : station.checks->loads) {
            if (one.loadCase == loads.loadCase) load = &one;
        }
    }
    if (load != nullptr) {
        std::unordered_map<std::string_view, SetDemand> demands;
        for (const auto& [name, set] : station.sets)
            demands.emplace(name, demandOn(set->set, *load));
        for (const Hole* hole : station.holes) {
            const auto demand = demands.find(setName(hole->id));
            if (demand != demands.end())
                json["fastenings"].push_back(setJson(*hole, demand->second));
        }
    }
    json["group_share"] = load != nullptr && load->bears ? groupShare(*station.checks) : nullptr;
    for (const char* later :
         {"after_slip", "keel_roll_mrad", "garboard_opening_mm", "reactions", "residual"}) {
        json[later] = nullptr;
    }
    json["why"] =
        "the station ring and the keel beam are not worked out; shares are tributary and rigid, "
        "and the heels' part of a frame's load is a judgement";
    json["carried"] = loads.carried;
    return json;
}

}  // namespace

Json stationsJson(const Results& results) {
    Json stations = Json::array();
    if (results.cases.empty()) return stations;
    std::unordered_map<std::string_view, Station> at;
    for (std::size_t i = 0; i < results.structure->frames.size(); ++i) {
        Station& station = at[results.structure->frames[i].id];
        if (i < results.frameChecks.size()) station.checks = results.frameChecks[i].get();
        if (i < results.frameFastenings.size()) {
            for (const Hole& hole : results.frameFastenings[i]->holes) {
                if (standsAtStation(hole.group)) station.holes.push_back(&hole);
            }
        }
        if (station.checks == nullptr) continue;
        for (const SetCheckInput& set : station.checks->sets) {
            if (standsAtStation(set.set.group)) station.sets.emplace(setName(set.set.id), &set);
        }
    }
    for (std::size_t i = 0; i < results.cases.front()->frames.size(); ++i) {
        const FrameShare& first = results.cases.front()->frames[i];
        Json station;
        station["frame"] = first.frame;
        station["x_mm"] = mm(first.x);
        station["cases"] = Json::array();
        for (const auto& loads : results.cases)
            station["cases"].push_back(stationCaseJson(*loads, loads->frames[i], at[first.frame]));
        stations.push_back(std::move(station));
    }
    return stations;
}

}  // namespace fayline::cli
