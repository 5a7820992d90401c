#include <nlohmann/json.hpp>

#include "derive/results.h"
#include "joint/screw.h"
#include "joint/work_joint.h"
#include "joint_report.h"
#include "json.h"
#include "quantity/display.h"
#include "quantity/printing.h"

namespace fayline::cli {
namespace {

template <typename T>
Json megapascal(const std::optional<Figure<T>>& figure) {
    return figure ? Json(numberIn(figure->value, StressUnit::mpa)) : Json(nullptr);
}

Json idOrNull(const std::optional<std::string>& id) {
    return id ? Json(*id) : Json(nullptr);
}

Json memberJson(const JointMember& member, const std::optional<std::string>& wood) {
    Json json;
    json["name"] = member.name;
    json["wood"] = idOrNull(wood);
    json["family"] = woodFamilyText(member.family);
    json["specific_gravity"] = member.gravity ? Json(member.gravity->value.value) : Json(nullptr);
    json["specific_gravity_twelve"] =
        member.gravityTwelve ? Json(member.gravityTwelve->value.value) : Json(nullptr);
    json["density_kg_per_m3"] = member.density
                                    ? Json(inKilogramsPerCubicMetre(member.density->value.value))
                                    : Json(nullptr);
    json["bearing_us_MPa"] = megapascal(member.bearingUs);
    json["embedment_ec5_MPa"] = megapascal(member.embedmentEc5);
    json["across_us_MPa"] = megapascal(member.acrossUs);
    json["across_ec5_MPa"] = megapascal(member.acrossEc5);
    json["across_mean_MPa"] = megapascal(member.acrossMean);
    json["tension_us_MPa"] = megapascal(member.tensionUs);
    json["tension_ec5_MPa"] = megapascal(member.tensionEc5);
    json["shear_us_MPa"] = megapascal(member.shearUs);
    json["lead_MPa"] = megapascal(member.lead);
    json["thickness_mm"] = mm(member.thickness);
    json["width_mm"] = mm(member.width);
    json["grain_slope"] = number(member.grainSlope);
    json["counterbore_mm"] = mm(member.counterbore);
    json["gap_mm"] = mm(member.gap);
    json["grain_deg"] = member.grain.inDegrees();
    json["end_grain"] = member.endGrain;
    return json;
}

Json bearingJson(const std::optional<EndBearing>& bearing) {
    if (!bearing) return nullptr;
    return {{"diameter_mm", mm(bearing->diameter)}, {"thickness_mm", mm(bearing->thickness)}};
}

Json metalJson(const JointFile& file) {
    const FastenerMetal& metal = file.joint.fastener.metal;
    return {{"metal", idOrNull(file.metal)},
            {"yield_MPa", megapascal(metal.yield)},
            {"ultimate_MPa", megapascal(metal.ultimate)},
            {"yield_typical_MPa", megapascal(metal.yieldTypical)},
            {"ultimate_typical_MPa", megapascal(metal.ultimateTypical)},
            {"shear_MPa", megapascal(metal.shear)},
            {"bending_yield_MPa", megapascal(metal.bendingYield)},
            {"metal_factor", metal.factor}};
}

Json fastenerJson(const JointFile& file) {
    const JointFastener& f = file.joint.fastener;
    const bool screw = f.kind == FastenerKind::woodScrew;
    const ScrewShape shape = screw ? screwShape(f) : ScrewShape{};
    const auto orRule = [&](const std::optional<Length>& given, const SourcedLength& rule) {
        return screw ? mm(rule.value) : mm(given);
    };
    Json json;
    json["kind"] = nameOf(f.kind);
    json["section"] = f.section == DowelSection::round ? "round" : "square";
    json["gauge"] = f.gauge ? Json(f.gauge->number()) : Json(nullptr);
    json["diameter_mm"] = screw ? mm(shape.body.value) : mm(f.diameter);
    json["thread"] = idOrNull(file.thread);
    json["root_mm"] = orRule(f.root, shape.root);
    json["length_mm"] = f.length.si() > 0.0 ? mm(f.length) : Json(nullptr);
    json["thread_length_mm"] = orRule(f.threadLength, shape.thread);
    json["tip_mm"] = orRule(f.tip, shape.tip);
    json["thread_bears"] = f.threadBears;
    json["ends"] = {{"head", nameOf(f.head)}, {"point", nameOf(f.point)}};
    json["head_diameter_mm"] = orRule(f.headDiameter, shape.head);
    json["head_height_mm"] = mm(f.headHeight);
    json["head_strength_MPa"] = megapascal(f.headStrengthEc5);
    json["head_washer"] = bearingJson(f.headBearing);
    json["point_washer"] = bearingJson(f.pointBearing);
    json["pitch_mm"] = mm(f.pitch);
    json["nut_height_mm"] = mm(f.nutHeight);
    json["nut_shear_MPa"] = megapascal(f.nutShear);
    json["peen_height_mm"] = mm(f.peenHeight);
    json["slant_deg"] = f.slant ? Json(f.slant->inDegrees()) : Json(nullptr);
    json["yield_moment_Nm"] = f.yieldMoment ? newtonMetre(f.yieldMoment->value) : Json(nullptr);
    json["corrosion_mm"] = mm(f.corrosion);
    json["metal"] = metalJson(file);
    return json;
}

Json sectionJson(const std::optional<GroupMember>& section) {
    if (!section) return nullptr;
    return {{"area_mm2", numberIn(section->area, AreaUnit::mm2)},
            {"modulus_MPa", numberIn(section->modulus, StressUnit::mpa)}};
}

Json placementJson(const std::optional<Placement>& placement) {
    if (!placement) return nullptr;
    return {{"end_mm", mm(placement->end)},
            {"load", placement->load == EndLoad::along    ? "along"
                     : placement->load == EndLoad::across ? "across"
                                                          : "toward_end"},
            {"spacing_mm", mm(placement->spacing)},
            {"edge_mm", mm(placement->edge)},
            {"edge_loaded_across", placement->edgeLoadedAcross}};
}

Json holeJson(const JointFastener& fastener) {
    const ScrewHole& hole = fastener.screwHole;
    return {{"diameter_mm", mm(fastener.hole)},  {"bung_mm", mm(fastener.bung)},
            {"slip_fit_mm", mm(hole.slipFit)},   {"pilot_mm", mm(hole.pilot)},
            {"pilot_tip_mm", mm(hole.pilotTip)}, {"bit_mm", mm(hole.bit)},
            {"collar_mm", mm(hole.collar)}};
}

Json placeJson(const GroupPlace& place) {
    return {{"along_mm", mm(place.along)}, {"across_mm", mm(place.across)}};
}

Json groupJson(const std::optional<JointGroup>& group) {
    if (!group) return nullptr;
    Json json;
    json["places"] = Json::array();
    for (const GroupPlace& place : group->places) json["places"].push_back(placeJson(place));
    json["load_at"] = placeJson(group->loadAt);
    json["direction_deg"] = group->direction.inDegrees();
    return json;
}

Json inputJson(const JointFile& file) {
    const Joint& joint = file.joint;
    Json json;
    json["members"] = Json::array();
    for (std::size_t i = 0; i < joint.members.size(); ++i)
        json["members"].push_back(memberJson(joint.members[i], file.woods[i]));
    json["fastener"] = fastenerJson(file);
    json["hole"] = holeJson(joint.fastener);
    json["zone"] = nameOf(file.zone);
    json["heel"] = joint.heel;
    json["group"] = groupJson(joint.group);
    json["service"] = joint.service == Service::dry ? "dry" : "wet";
    json["fitted"] = joint.fitted == Fitted::dry ? "dry" : "wet";
    json["duration"] = nameOf(joint.duration);
    json["kind_of_load"] = nameOf(joint.kindOfLoad);
    json["row"] = nullptr;
    if (joint.row) {
        json["row"] = {{"count", joint.row->count},
                       {"spacing_mm", mm(joint.row->spacing)},
                       {"main", sectionJson(joint.row->main)},
                       {"side", sectionJson(joint.row->side)}};
    }
    json["placement"] = placementJson(joint.placement);
    json["demand"] = nullptr;
    if (joint.load) {
        json["demand"] = {{"lateral_N", newton(joint.load->lateral)},
                          {"axial_N", newton(joint.load->axial)}};
    }
    return json;
}

void addState(Json& json, const LimitState& state) {
    json["reference_N"] = newton(state.reference);
    json["working_N"] = newton(state.working);
    json["gives_N"] = band(state.gives);
    json["apart_N"] = band(state.apart);
    json["clause"] = clauseOf(state);
    json["soft"] = state.soft;
    json["standing"] = standingText(state.standing);
    json["outside"] = textsOf(state.outside);
}

Json lateralJson(const LateralResult& lateral, Basis basis) {
    Json json;
    json["planes"] = lateral.planes;
    json["modes_N"] = Json::object();
    for (const ModeLoad& mode : lateral.modes) json["modes_N"][mode.name] = newton(mode.load);
    json["rope_N"] = basis == Basis::ec5 ? newton(lateral.rope) : Json(nullptr);
    json["governs"] = lateral.governs;
    addState(json, lateral.state);
    return json;
}

Json basisJson(const BasisResult& result, Basis basis,
               const std::optional<DrivingResult>& driving) {
    Json json = Json::object();
    json["combined"] = nullptr;
    result.each([&](const LimitState& state) {
        const std::string name(nameOf(state.kind));
        if (state.kind == LimitStateKind::lateral) {
            json[name] = lateralJson(*result.lateral, basis);
            return;
        }
        Json one = Json::object();
        if (state.kind == LimitStateKind::withdrawal) {
            one["reference_N_per_mm"] =
                inNewtonsPerMillimetre(result.withdrawal->referencePerLength);
            one["holds_mm"] = mm(result.withdrawal->holds);
        }
        if (state.kind == LimitStateKind::group) {
            one["plastic_N"] = newton(result.group->plastic);
            one["worst"] = result.group->worst;
            one["share"] = result.group->share;
        }
        addState(one, state);
        json[name] = one;
    });
    if (driving) {
        const auto torque = [](const std::optional<Moment>& moment) {
            return moment ? newtonMetre(*moment) : Json(nullptr);
        };
        json["driving"] = {{"gives_Nm", newtonMetre(driving->gives)},
                           {"apart_Nm", newtonMetre(driving->apart)},
                           {"dry_Nm", torque(driving->dry)},
                           {"waxed_Nm", torque(driving->waxed)}};
    }
    json["missing"] = Json::array();
    for (const MissingState& missing : result.missing)
        json["missing"].push_back({{"limit_state", nameOf(missing.kind)}, {"why", missing.why}});
    return json;
}

Json moistureJson(MoistureZone zone, const std::vector<MoistureRow>& rows) {
    Json json;
    json["zone"] = nameOf(zone);
    json["states"] = Json::array();
    for (const MoistureState state : moistureStates) json["states"].push_back(nameOf(state));
    json["limit_states"] = Json::array();
    for (const MoistureRow& row : rows) {
        Json working = Json::array();
        for (const Force force : row.working) working.push_back(newton(force));
        json["limit_states"].push_back({{"basis", nameOf(row.basis)},
                                        {"limit_state", nameOf(row.kind)},
                                        {"working_N", working},
                                        {"governs", nameOf(row.governs)}});
    }
    return json;
}

}  // namespace

std::string jointJson(const JointFile& file, const JointResult& result,
                      const std::vector<MoistureRow>& moisture) {
    Json json = jsonHead("fayline.joint/1", nullptr);
    json["joint"] = inputJson(file);
    json["basis"] = nameOf(file.basis);
    json["us"] = basisJson(result.us, Basis::us, result.driving);
    json["ec5"] = basisJson(result.ec5, Basis::ec5, result.driving);
    json["geometry"] = Json::array();
    for (const GeometryFinding& finding : result.geometry) {
        json["geometry"].push_back({{"what", finding.what},
                                    {"has", bothUnits(finding.has)},
                                    {"needs", bothUnits(finding.needs)},
                                    {"has_mm", mm(finding.has)},
                                    {"needs_mm", mm(finding.needs)},
                                    {"met", finding.met},
                                    {"says", finding.says()},
                                    {"standing", standingText(finding.standing)}});
    }
    json["first_to_go"] = Json::array();
    const BasisResult& chosen = file.basis == Basis::us ? result.us : result.ec5;
    for (const FirstToGo& entry : firstToGo(chosen, file.joint.load)) {
        json["first_to_go"].push_back({{"limit_state", nameOf(entry.kind)},
                                       {"gives_N", band(entry.gives)},
                                       {"apart_N", band(entry.apart)},
                                       {"soft", entry.soft},
                                       {"too_close", entry.tooClose}});
    }
    json["moisture"] = moistureJson(file.zone, moisture);
    json["slip"] = Json::array();
    for (const PlaneSlip& slip : result.slip)
        json["slip"].push_back({{"soft_N_per_mm", inNewtonsPerMillimetre(slip.soft)},
                                {"stiff_N_per_mm", inNewtonsPerMillimetre(slip.stiff)},
                                {"why", sourceOf(slip)}});
    json["cautions"] = jointCautions(file.joint);
    if (const std::string above = aboveGivingText(result); !above.empty())
        json["cautions"].push_back(above);
    for (const std::string& caution : standingCautions()) json["cautions"].push_back(caution);
    return jsonText(json);
}

}  // namespace fayline::cli
