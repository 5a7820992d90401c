#include "joint_file.h"

#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "joint_parts.h"

namespace fayline::cli {
namespace {

constexpr std::uintmax_t largestFile = 1U << 20U;

void readRow(const Json& json, JointFile& file, Problems& problems) {
    const JointObject row(json, "row", {"count", "spacing", "main", "side"}, problems);
    JointRow made;
    if (!row.has("count")) row.refuse("count", "is missing", "how many stand in the row");
    made.count = row.count("count", 1, 1000).value_or(1);
    made.spacing = row.size("spacing").value_or(Length{});
    for (const auto& [key, slot] : {std::pair{"main", &made.main}, {"side", &made.side}}) {
        const Json* part = row.find(key);
        if (part == nullptr) continue;
        const JointObject section(*part, row.pathOf(key), {"area", "modulus"}, problems);
        const auto area = section.area("area");
        const auto modulus = section.stress("modulus");
        if (!section.has("area")) section.refuse("area", "is missing", "such as \"40 in2\"");
        if (!section.has("modulus"))
            section.refuse("modulus", "is missing", "such as \"1400 ksi\"");
        if (area && modulus) *slot = GroupMember{*area, *modulus};
    }
    file.joint.row = made;
}

void readPlacement(const Json& json, JointFile& file, Problems& problems) {
    const JointObject place(json, "placement",
                            {"end", "load", "spacing", "edge", "edge_loaded_across"}, problems);
    Placement made;
    made.end = place.size("end");
    made.spacing = place.size("spacing");
    made.edge = place.size("edge");
    made.edgeLoadedAcross = place.yes("edge_loaded_across").value_or(false);
    const auto load = place.word("load", {"along", "toward_end", "across"}, "direction of load");
    if (load) {
        made.load = *load == "along"    ? EndLoad::along
                    : *load == "across" ? EndLoad::across
                                        : EndLoad::towardEnd;
    }
    file.joint.placement = made;
}

GroupPlace placeOf(const Json& json, const std::string& path, Problems& problems) {
    const JointObject place(json, path, {"along", "across"}, problems);
    return {place.place("along").value_or(Length{}), place.place("across").value_or(Length{})};
}

void readGroup(const Json& json, JointFile& file, Problems& problems) {
    const JointObject group(json, "group", {"places", "load_at", "direction"}, problems);
    JointGroup made;
    made.direction = group.angle("direction").value_or(Angle{});
    if (const Json* at = group.find("load_at")) {
        made.loadAt = placeOf(*at, "group.load_at", problems);
    } else {
        group.refuse("load_at", "is missing", "a point on the load's line, along and across");
    }
    const Json* places = group.find("places");
    if (places == nullptr || !places->is_array()) {
        group.refuse("places", places == nullptr ? "is missing" : "is no list",
                     "a list of places, each with along and across");
        return;
    }
    for (std::size_t i = 0; i < places->size() && i < 1001; ++i)
        made.places.push_back(
            placeOf((*places)[i], "group.places[" + std::to_string(i) + "]", problems));
    file.joint.group = std::move(made);
}

/// `shear` says again how many planes there are. Double shear of two members: the first stands on
/// the far side as well.
void readShear(const JointObject& top, JointFile& file) {
    const auto word = top.word("shear", {"single", "double"}, "shear");
    if (!word) return;
    auto& members = file.joint.members;
    const bool twice = *word == "double";
    if (twice && members.size() == 2) {
        JointMember far = members[0];
        members[1].gap = members[0].gap;
        far.gap = Length{};
        members.push_back(far);
        file.woods.push_back(file.woods.front());
    } else if (!members.empty() && members.size() != (twice ? 3U : 2U)) {
        top.refuse("shear", "is " + *word + " with " + std::to_string(members.size()) + " members",
                   twice ? "two members, the first on both sides, or three" : "two members");
    }
}

void readDemand(const Json& json, const char* key, JointFile& file, Problems& problems) {
    const JointObject demand(json, key, {"lateral", "axial"}, problems);
    file.joint.load = JointLoad{demand.force("lateral").value_or(Force{}),
                                demand.force("axial").value_or(Force{})};
}

void readService(const JointObject& top, JointFile& file) {
    Joint& joint = file.joint;
    const std::vector<std::string> moistures{"dry", "wet"};
    if (const auto word = top.word("service", moistures, "service"))
        joint.service = *word == "dry" ? Service::dry : Service::wet;
    if (const auto word = top.word("fitted", moistures, "moisture"))
        joint.fitted = *word == "dry" ? Fitted::dry : Fitted::wet;
    std::vector<std::string> durations;
    for (const auto duration : {Duration::permanent, Duration::tenYears, Duration::twoMonths,
                                Duration::sevenDays, Duration::tenMinutes})
        durations.emplace_back(nameOf(duration));
    if (const auto word = top.word("duration", durations, "duration"))
        joint.duration = *durationNamed(*word);
    if (const auto word =
            top.word("kind_of_load", {"permanent", "variable", "accidental"}, "kind of load"))
        joint.kindOfLoad = *kindOfLoadNamed(*word);
    std::vector<std::string> zones;
    for (const auto zone : {MoistureZone::soaked, MoistureZone::cycling, MoistureZone::drier})
        zones.emplace_back(nameOf(zone));
    file.zone = joint.service == Service::dry ? MoistureZone::drier : MoistureZone::soaked;
    if (const auto word = top.word("zone", zones, "zone")) file.zone = *moistureZoneNamed(*word);
    joint.heel = top.yes("heel").value_or(false);
    if (const auto word = top.word("basis", {"us", "ec5"}, "basis"))
        file.basis = *word == "us" ? Basis::us : Basis::ec5;
    if (const auto word = top.word("units", {"inches", "millimetres"}, "system of units"))
        file.units = *word == "inches" ? UnitSystem::inches : UnitSystem::millimetres;
}

void readMembers(const JointObject& top, const Catalogue& catalogue, JointFile& file,
                 Problems& problems) {
    const Json* members = top.find("members");
    if (members == nullptr || !members->is_array()) {
        top.refuse("members", members == nullptr ? "is missing" : "is no list",
                   "a list of 2 to 20 members, head side first");
        return;
    }
    if (members->size() < 2 || members->size() > 20) {
        top.refuse("members", "are " + std::to_string(members->size()),
                   "2 to 20 members, head side first");
        return;
    }
    for (std::size_t i = 0; i < members->size(); ++i)
        readJointMember((*members)[i], "members[" + std::to_string(i) + "]", catalogue, file,
                        problems);
}

/// A problem of the joint with the file's word for its place.
Problem inTheFile(Problem problem, bool demand) {
    if (demand && problem.where.rfind("load.", 0) == 0) problem.where.replace(0, 5, "demand.");
    return problem;
}

}  // namespace

ResultAll<JointFile> readJointText(const std::string& text, const std::string& name,
                                   const Catalogue& catalogue) {
    const Result<Json> json = readJson(text, name);
    if (!json) return tl::unexpected(Problems{json.error()});
    JointFile file;
    Problems problems;
    const JointObject top(
        *json, "",
        {"members", "fastener", "hole", "service", "fitted", "duration", "kind_of_load", "zone",
         "shear", "row", "placement", "group", "heel", "demand", "load", "basis", "units"},
        problems);
    if (!json->is_object()) return tl::unexpected(problems);
    readService(top, file);
    readMembers(top, catalogue, file, problems);
    if (const Json* part = top.find("fastener")) {
        readJointFastener(*part, catalogue, file, problems);
    } else {
        top.refuse("fastener", "is missing", "an object with kind, sizes and metal");
    }
    if (const Json* part = top.find("hole")) readJointHole(*part, file, problems);
    if (const Json* part = top.find("row")) readRow(*part, file, problems);
    if (const Json* part = top.find("placement")) readPlacement(*part, file, problems);
    if (const Json* part = top.find("group")) readGroup(*part, file, problems);
    if (top.has("demand") && top.has("load"))
        top.refuse("load", "is given beside demand, which is the same", "one of the two");
    for (const char* key : {"demand", "load"}) {
        if (const Json* part = top.find(key)) readDemand(*part, key, file, problems);
    }
    readShear(top, file);
    if (problems.empty()) {
        if (auto wrong = problemOf(file.joint))
            problems.push_back(inTheFile(*std::move(wrong), top.has("demand")));
    }
    if (!problems.empty()) return tl::unexpected(problems);
    return file;
}

ResultAll<JointFile> readJointFile(const std::filesystem::path& path, const Catalogue& catalogue) {
    const auto refused = [&](const char* code, const char* what, const char* allowed) {
        return tl::unexpected(Problems{{code, path.string(), what, allowed}});
    };
    std::error_code error;
    if (!std::filesystem::exists(path, error))
        return refused("file.missing", "there is no such file", "the name of a joint file");
    if (!std::filesystem::is_regular_file(path, error))
        return refused("file.kind", "it is not a plain file", "a JSON file");
    if (std::filesystem::file_size(path, error) > largestFile)
        return refused("file.large", "it is over 1 MB", "the description of one joint");
    std::ifstream stream(path, std::ios::binary);
    std::ostringstream text;
    text << stream.rdbuf();
    if (!stream) return refused("file.read", "it cannot be read", "a file you may read");
    return readJointText(text.str(), path.string(), catalogue);
}

}  // namespace fayline::cli
