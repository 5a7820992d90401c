#include "joint_parts.h"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "fastener/thread.h"
#include "project/decide.h"

namespace fayline::cli {
namespace {

/// An id of the catalogue; refused with the nearest one.
template <typename Map>
const typename Map::mapped_type* named(const JointObject& object, const char* key, const Map& map,
                                       const char* what, std::optional<std::string>& id) {
    const auto text = object.text(key);
    if (!text) return nullptr;
    const auto found = map.find(materialId(*text));
    if (found == map.end()) {
        object.word(key, idsOf(map), what);
        return nullptr;
    }
    id = found->first;
    return &found->second;
}

std::optional<EndBearing> bearing(const JointObject& fastener, const char* key,
                                  Problems& problems) {
    const Json* json = fastener.find(key);
    if (json == nullptr) return std::nullopt;
    const JointObject washer(*json, fastener.pathOf(key), {"diameter", "thickness"}, problems);
    if (!washer.has("diameter"))
        washer.refuse("diameter", "is missing", "the diameter of washer, ring, rove or head");
    return EndBearing{washer.size("diameter").value_or(Length{}),
                      washer.depth("thickness").value_or(Length{})};
}

void readKind(const JointObject& fastener, JointFastener& made) {
    if (const auto word =
            fastener.word("kind", {"wood_screw", "bolt", "drift", "rivet"}, "kind of fastening"))
        made.kind = *fastenerKindNamed(*word);
    if (!fastener.has("kind"))
        fastener.refuse("kind", "is missing", "wood_screw, bolt, drift or rivet");
    const bool blind = made.kind == FastenerKind::woodScrew || made.kind == FastenerKind::drift;
    made.head = made.kind == FastenerKind::woodScrew ? FastenerEnd::countersunk : FastenerEnd::head;
    made.point = blind                              ? FastenerEnd::blind
                 : made.kind == FastenerKind::rivet ? FastenerEnd::rove
                                                    : FastenerEnd::nut;
    if (const auto word = fastener.word("section", {"round", "square"}, "section"))
        made.section = *word == "square" ? DowelSection::square : DowelSection::round;
}

void readEnds(const JointObject& fastener, JointFastener& made, Problems& problems) {
    const Json* json = fastener.find("ends");
    if (json == nullptr) return;
    const JointObject ends(*json, fastener.pathOf("ends"), {"head", "point"}, problems);
    const std::vector<std::string> heads{"head", "nut",    "formed_head", "clench_ring",
                                         "rove", "peened", "countersunk"};
    std::vector<std::string> points = heads;
    points.insert(points.end(), {"thread", "blind"});
    if (const auto word = ends.word("head", heads, "head")) made.head = *fastenerEndNamed(*word);
    if (const auto word = ends.word("point", points, "end")) made.point = *fastenerEndNamed(*word);
}

/// `side` is the side of a square one.
void readSide(const JointObject& fastener, JointFastener& made) {
    if (!fastener.has("side")) return;
    if (fastener.has("diameter"))
        fastener.refuse("side", "is given beside diameter", "one of the two");
    if (made.kind == FastenerKind::woodScrew)
        fastener.refuse("side", "is given for a wood_screw",
                        "bolts, drifts and rivets of square bar");
    made.diameter = fastener.size("side").value_or(Length{});
    made.section = DowelSection::square;
}

void readSizes(const JointObject& fastener, JointFastener& made) {
    made.gauge = fastener.gauge("gauge");
    made.diameter = fastener.size("diameter").value_or(Length{});
    readSide(fastener, made);
    const bool screw = made.kind == FastenerKind::woodScrew;
    if (fastener.has("kind") && !fastener.has("diameter") && !fastener.has("side") &&
        !(screw && fastener.has("gauge")))
        fastener.refuse("diameter", "is missing",
                        screw ? "gauge, such as \"No. 14\", or diameter" : "such as \"1/2 in\"");
    if ((screw || made.kind == FastenerKind::drift) && !fastener.has("length"))
        fastener.refuse("length", "is missing", "such as \"2 1/2 in\"");
    made.length = fastener.size("length").value_or(Length{});
    made.root = fastener.size("root");
    made.threadLength = fastener.depth("thread_length");
    made.tip = fastener.depth("tip");
    made.threadBears = fastener.yes("thread_bears").value_or(false);
    if (const auto word = fastener.word("roots", {"measured", "code"}, "set of roots"))
        made.roots = *word == "code" ? ScrewRoots::code : ScrewRoots::measuredAverage;
    made.headDiameter = fastener.size("head_diameter");
    made.headHeight = fastener.size("head_height");
    made.peenHeight = fastener.size("peen_height");
    made.slant = fastener.angle("slant");
    made.corrosion = fastener.depth("corrosion").value_or(Length{});
    if (auto moment = fastener.moment("yield_moment"))
        made.yieldMoment = Figure<Moment>{*moment, Standing::judgement, jointFileFigure};
    if (auto strength = fastener.stress("head_strength")) putFigure(made.headStrengthEc5, strength);
}

void readNut(const JointObject& fastener, const Catalogue& catalogue, JointFastener& made) {
    std::optional<std::string> id;
    if (const Nut* nut = named(fastener, "nut", catalogue.nuts, "nut", id))
        made.nutHeight = nut->height;
    if (auto own = fastener.size("nut_height")) made.nutHeight = own;
    if (auto own = fastener.size("pitch")) made.pitch = own;
    putFigure(made.nutShear, fastener.stress("nut_shear"));
}

void readMetal(const JointObject& fastener, const Catalogue& catalogue, JointFile& file) {
    FastenerMetal& metal = file.joint.fastener.metal;
    if (const Metal* known = named(fastener, "metal", catalogue.metals, "metal", file.metal))
        metal = fastenerMetal(*known);
    if (fastener.has("tensile") && fastener.has("ultimate"))
        fastener.refuse("tensile", "is given beside ultimate", "one of the two");
    const bool strong = fastener.has("ultimate") || fastener.has("tensile");
    if (!fastener.has("metal") && !(fastener.has("yield") && strong))
        fastener.refuse("metal", "is missing",
                        "a metal of the catalogue, or yield and ultimate strength");
    putFigure(metal.yield, fastener.stress("yield"));
    putFigure(metal.ultimate, fastener.stress("ultimate"));
    putFigure(metal.ultimate, fastener.stress("tensile"));
    putFigure(metal.yieldTypical, fastener.stress("yield_typical"));
    putFigure(metal.ultimateTypical, fastener.stress("ultimate_typical"));
    putFigure(metal.shear, fastener.stress("shear"));
    if (const auto own = fastener.stress("bending_yield")) {
        putFigure(metal.bendingYield, own);
    } else if (fastener.has("yield") || strong) {
        metal.bendingYield.reset();  // follows from the figures given
    }
    if (metal.yield && metal.ultimate && metal.yield->value > metal.ultimate->value)
        fastener.refuse("yield", "lies above the ultimate strength", "at most the ultimate");
    if (const auto factor = fastener.ratio("metal_factor")) {
        metal.factor = *factor;
        metal.factorSource = jointFileFigure;
    }
}

}  // namespace

void readJointMember(const Json& json, const std::string& path, const Catalogue& catalogue,
                     JointFile& file, Problems& problems) {
    const JointObject object(json, path, {"name",
                                          "wood",
                                          "family",
                                          "specific_gravity",
                                          "specific_gravity_twelve",
                                          "density",
                                          "bearing_us",
                                          "dowel_bearing",
                                          "embedment_ec5",
                                          "across_us",
                                          "across_ec5",
                                          "across_mean",
                                          "tension_us",
                                          "tension_ec5",
                                          "shear_us",
                                          "lead",
                                          "thickness",
                                          "width",
                                          "counterbore",
                                          "gap",
                                          "grain",
                                          "grain_slope",
                                          "end_grain"},
                             problems);
    if (!json.is_object()) return;
    std::optional<std::string> id;
    JointMember member;
    if (const Wood* wood = named(object, "wood", catalogue.woods, "wood", id))
        member = jointMember(*wood);
    std::optional<std::string> lead;
    if (const Metal* metal = named(object, "lead", catalogue.metals, "metal", lead)) {
        member = leadMember(*metal);
        if (metal->family != MetalFamily::lead)
            object.refuse("lead", "is " + *lead + ", no lead", "a lead of the catalogue");
        if (object.has("wood")) object.refuse("lead", "is given beside wood", "one of the two");
    }
    const bool figures = object.has("specific_gravity") || object.has("density") ||
                         object.has("specific_gravity_twelve");
    if (!object.has("wood") && !object.has("lead") && !figures)
        object.refuse("wood", "is missing",
                      "a wood of the catalogue, or specific_gravity or density");
    if (!object.has("wood") && !object.has("lead") && !object.has("family"))
        object.refuse("family", "is missing where no wood is named", "softwood or hardwood");
    if (const auto word = object.word("family", {"softwood", "hardwood"}, "family"))
        member.family = *woodFamilyFromText(*word);
    if (figures) {
        member.gravity.reset();
        member.gravityTwelve.reset();
        member.density.reset();
    }
    putFigure(member.gravity, object.ratio("specific_gravity"));
    putFigure(member.gravityTwelve, object.ratio("specific_gravity_twelve"));
    putFigure(member.density, object.density("density"));
    if (object.has("dowel_bearing") && object.has("bearing_us"))
        object.refuse("dowel_bearing", "is given beside bearing_us", "one of the two");
    putFigure(member.bearingUs, object.stress("bearing_us"));
    putFigure(member.bearingUs, object.stress("dowel_bearing"));
    putFigure(member.embedmentEc5, object.stress("embedment_ec5"));
    putFigure(member.acrossUs, object.stress("across_us"));
    putFigure(member.acrossEc5, object.stress("across_ec5"));
    putFigure(member.acrossMean, object.stress("across_mean"));
    putFigure(member.tensionUs, object.stress("tension_us"));
    putFigure(member.tensionEc5, object.stress("tension_ec5"));
    putFigure(member.shearUs, object.stress("shear_us"));
    member.width = object.size("width");
    member.grainSlope = object.ratio("grain_slope");
    if (!object.has("thickness")) object.refuse("thickness", "is missing", "such as \"1 1/8 in\"");
    member.thickness = object.size("thickness").value_or(Length{});
    member.counterbore = object.depth("counterbore").value_or(Length{});
    member.gap = object.depth("gap").value_or(Length{});
    member.grain = object.angle("grain").value_or(Angle{});
    member.endGrain = object.yes("end_grain").value_or(false);
    const std::size_t number = file.joint.members.size() + 1;
    member.name = object.text("name").value_or("member " + std::to_string(number));
    file.joint.members.push_back(std::move(member));
    file.woods.push_back(id);
}

void readJointFastener(const Json& json, const Catalogue& catalogue, JointFile& file,
                       Problems& problems) {
    const JointObject fastener(json, "fastener",
                               {"kind",          "section",       "gauge",
                                "diameter",      "side",          "thread",
                                "pitch",         "nut",           "nut_height",
                                "nut_shear",     "peen_height",   "slant",
                                "yield_moment",  "tensile",       "washer",
                                "root",          "roots",         "length",
                                "thread_length", "tip",           "thread_bears",
                                "ends",          "head_diameter", "head_height",
                                "head_strength", "head_washer",   "point_washer",
                                "corrosion",     "metal",         "yield",
                                "ultimate",      "yield_typical", "ultimate_typical",
                                "shear",         "bending_yield", "metal_factor"},
                               problems);
    if (!json.is_object()) return;
    JointFastener& made = file.joint.fastener;
    readKind(fastener, made);
    readEnds(fastener, made, problems);
    readSizes(fastener, made);
    if (const Thread* thread =
            named(fastener, "thread", catalogue.threads, "thread", file.thread)) {
        if (made.kind != FastenerKind::bolt)
            fastener.refuse("thread", "is given for a " + std::string(nameOf(made.kind)),
                            "threads of nuts are of bolts");
        if (!made.root) made.root = rootDiameter(*thread);
        made.pitch = thread->pitch;
    }
    readNut(fastener, catalogue, made);
    made.headBearing = made.pointBearing = bearing(fastener, "washer", problems);
    if (auto own = bearing(fastener, "head_washer", problems)) made.headBearing = own;
    if (auto own = bearing(fastener, "point_washer", problems)) made.pointBearing = own;
    readMetal(fastener, catalogue, file);
}

void readJointHole(const Json& json, JointFile& file, Problems& problems) {
    const JointObject hole(json, "hole",
                           {"diameter", "bung", "slip_fit", "pilot", "pilot_tip", "bit", "collar"},
                           problems);
    JointFastener& fastener = file.joint.fastener;
    fastener.hole = hole.size("diameter");
    fastener.bung = hole.size("bung");
    fastener.screwHole = {hole.size("slip_fit"), hole.size("pilot"), hole.size("pilot_tip"),
                          hole.size("bit"), hole.size("collar")};
}

}  // namespace fayline::cli
