#include <algorithm>

#include "fastening_stages.h"
#include "planking_stage.h"
#include "quantity/text.h"

namespace fayline {
namespace {

/// A decision's field, and how a sentence calls it.
struct Lack {
    const char *field, *says;
    bool operator==(const Lack&) const = default;
};

/// What a group's holes, and the metal to be bought, cannot do without.
std::vector<Lack> lacksOf(const FasteningDecisions& decided) {
    if (decided.count == 0) return {};
    if (!decided.kind) return {{"kind", "kind"}};
    std::vector<Lack> lacks;
    const bool screw = decided.kind == "wood_screw";
    if (!decided.count) lacks.push_back({"count", "number"});
    if (screw && !decided.gauge) lacks.push_back({"gauge", "gauge"});
    if (!screw && !decided.diameter) lacks.push_back({"diameter", "diameter"});
    if ((screw || decided.kind == "drift") && !decided.length)
        lacks.push_back({"length", "length"});
    if (!decided.metal) lacks.push_back({"metal", "metal"});
    return lacks;
}

struct Group {
    const char *name, *holds, *each;
};
constexpr Group groups[] = {
    {"heel", "what holds the frames' heels to the keel", "the heel fastenings'"},
    {"arm", "what holds the floors' arms to the frames", "the arm fastenings'"},
    {"floor_bolt", "what holds the floors to the keel", "the floor bolts'"},
    {"plank", "what holds the planks to the frames", "the plank fastenings'"},
    {"butt", "what holds the planks' butts", "the butt fastenings'"},
    {"hood", "what holds the planks' ends", "the plank ends' fastenings'"},
    {"garboard", "what holds the garboard to the keel", "the garboard fastenings'"},
};

/// Decisions at single places, "F9.P.arm" or "strake4.plank", in their order along the hull.
std::vector<std::string> placesOf(const Project& project, const std::string& group) {
    std::vector<std::string> places;
    for (const auto& [key, decided] : project.fastening) {
        if (key.size() > group.size() && key.ends_with("." + group)) places.push_back(key);
    }
    std::sort(places.begin(), places.end(), NaturalLess{});
    return places;
}

/// "heel", "F9.heel", "F9.P.heel": a place's key and the wider ones it stands on.
std::vector<std::string> keysTo(const std::string& place, const std::string& group) {
    std::vector<std::string> keys{group};
    const std::string where = place.substr(0, place.size() - group.size() - 1);
    if (const auto dot = where.find('.'); dot != std::string::npos)
        keys.push_back(where.substr(0, dot) + "." + group);
    keys.push_back(place);
    return keys;
}

void missingOfGroup(const Project& project, const Group& group, std::vector<Missing>& missing) {
    const std::string name = group.name;
    const auto places = placesOf(project, name);
    const bool forAll = project.fastening.contains(name);
    if (!forAll && places.empty()) {
        missing.push_back({name + ".kind", group.holds});
        return;
    }
    std::vector<Lack> wide;
    if (forAll) wide = lacksOf(project.fastening.at(name));
    for (const Lack& lack : wide)
        missing.push_back({name + "." + lack.field, std::string(group.each) + " " + lack.says});
    for (const std::string& place : places) {
        for (const Lack& lack : lacksOf(fasteningAt(project, keysTo(place, name)))) {
            // Said once for the whole hull already.
            const bool said = std::any_of(wide.begin(), wide.end(), [&](const Lack& known) {
                return std::string_view(known.field) == lack.field;
            });
            if (said) continue;
            missing.push_back(
                {place + "." + lack.field, std::string(group.each) + " " + lack.says + " at " +
                                               place.substr(0, place.size() - name.size() - 1)});
        }
    }
}

void missingOfJoint(const std::string& name, const BackboneDecisions& decided,
                    std::vector<Missing>& missing) {
    if (decided.count == 0) return;
    const std::string place = "B." + name;
    const auto need = [&](bool there, const char* field, const char* says) {
        if (!there) missing.push_back({place + "." + field, place + ": " + says});
    };
    need(decided.kind.has_value(), "kind", "what holds this joint");
    need(decided.count.has_value(), "count", "how many");
    need(decided.diameter.has_value(), "diameter", "their diameter");
    need(decided.length.has_value(), "length", "how much timber they go through");
    need(decided.metal.has_value(), "metal", "their metal");
    need(decided.foreX && decided.foreHeight, decided.foreX ? "fore_height" : "fore_x",
         "where the joint begins");
    need(decided.aftX && decided.aftHeight, decided.aftX ? "aft_height" : "aft_x",
         "where the joint ends");
}

}  // namespace

std::vector<Missing> missingFastenings(const Project& project) {
    std::vector<Missing> missing;
    if (!project.planking.thickness)
        missing.push_back({"planking.thickness", "the planking's thickness"});
    if (!project.planking.strakes)
        missing.push_back({"planking.strakes", "how many strakes there are on a side"});
    if (!project.planking.wood) missing.push_back({"planking.wood", "the planking's wood"});
    for (const Group& group : groups) {
        if (group.name == std::string_view("butt") && !project.planking.longest) {
            // Strakes in one piece have no butts; fastenings for them want to know how long.
            if (project.fastening.contains("butt"))
                missing.push_back({"planking.longest", "the longest plank to be had"});
            else
                continue;
        }
        missingOfGroup(project, group, missing);
    }
    for (const auto& [name, decided] : project.backbone) missingOfJoint(name, decided, missing);
    return missing;
}

}  // namespace fayline
