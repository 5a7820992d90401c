#include <string>

#include "joint/joint.h"
#include "joint/screw.h"
#include "quantity/display.h"

namespace fayline {
namespace {

std::string millimetreText(Length value) {
    return displayLength(value, LengthStyle::millimetres);
}

Problem problem(std::string where, std::string what, std::string allowed) {
    return {"joint.value", std::move(where), std::move(what), std::move(allowed)};
}

/// Refuses what is not above nil, and what is too large to be a timber or its fastening.
std::optional<Problem> sizeProblem(const char* where, Length value, Length most) {
    if (isFinite(value) && value.si() > 0.0 && value <= most) return std::nullopt;
    return problem(where, "is " + millimetreText(value),
                   "more than 0 and at most " + millimetreText(most));
}

template <typename T>
std::optional<Problem> gravityProblem(const char* where, const std::optional<Figure<T>>& gravity) {
    if (!gravity || (gravity->value.value >= 0.05 && gravity->value.value <= 1.5))
        return std::nullopt;
    return problem(where, "is " + rounded(gravity->value.value, 3), "0.05 to 1.5");
}

std::optional<Problem> memberProblem(const JointMember& member, bool outer) {
    if (auto wrong = sizeProblem("thickness", member.thickness, metres(3))) return wrong;
    if (!(member.counterbore.si() >= 0.0 && member.counterbore < member.thickness)) {
        return problem(
            "counterbore", "is " + millimetreText(member.counterbore),
            "0 or more and less than the thickness, " + millimetreText(member.thickness));
    }
    if (!outer && member.counterbore.si() > 0.0)
        return problem("counterbore", "stands on a member between others",
                       "only the first and the last member");
    if (!(member.gap.si() >= 0.0 && member.gap <= metres(0.1))) {
        return problem("gap", "is " + millimetreText(member.gap), "0 to 100 mm");
    }
    if (member.width) {
        if (auto wrong = sizeProblem("width", *member.width, metres(3))) return wrong;
    }
    if (member.grainSlope && !(*member.grainSlope >= 0.5 && *member.grainSlope <= 1000.0))
        return problem("grain_slope", "is 1 in " + rounded(*member.grainSlope, 3),
                       "1 in 0.5 to 1 in 1000");
    const double degrees = member.grain.inDegrees();
    if (!(degrees >= 0.0 && degrees <= 90.0))
        return problem("grain", "is " + displayAngle(member.grain), "0 to 90 degrees");
    if (auto wrong = gravityProblem("specific_gravity", member.gravity)) return wrong;
    if (auto wrong = gravityProblem("specific_gravity_twelve", member.gravityTwelve)) return wrong;
    if (member.density) {
        const double density_kgPerM3 = inKilogramsPerCubicMetre(member.density->value.value);
        if (!(density_kgPerM3 >= 50.0 && density_kgPerM3 <= 1500.0)) {
            return problem(
                "density",
                "is " + displayDensity(member.density->value.value, UnitSystem::millimetres),
                "50 to 1500 kg/m3");
        }
    }
    return std::nullopt;
}

std::optional<Problem> driven(const Joint& joint) {
    const JointFastener& fastener = joint.fastener;
    if (auto wrong = sizeProblem("fastener.length", fastener.length, metres(5))) return wrong;
    Length outer;
    for (std::size_t i = 0; i + 1 < joint.members.size(); ++i) {
        const JointMember& member = joint.members[i];
        outer += member.thickness - member.counterbore + member.gap;
    }
    if (fastener.length <= outer) {
        return problem(
            "fastener.length", "is " + millimetreText(fastener.length),
            "more than the " + millimetreText(outer) + " it passes before the last member");
    }
    if (joint.members.back().counterbore.si() > 0.0) {
        return problem("members[" + std::to_string(joint.members.size() - 1) + "].counterbore",
                       "is " + millimetreText(joint.members.back().counterbore),
                       "0 where the point ends in the member");
    }
    return std::nullopt;
}

/// A strength that is no figure, nil or below.
std::optional<Problem> strengthProblem(const char* where,
                                       const std::optional<Figure<Stress>>& strength) {
    if (!strength || (isFinite(strength->value) && strength->value.si() > 0.0)) return std::nullopt;
    return problem(where, "is no strength", "more than 0");
}

std::optional<Problem> metalProblem(const JointFastener& fastener) {
    const FastenerMetal& metal = fastener.metal;
    const std::pair<const char*, const std::optional<Figure<Stress>>*> strengths[] = {
        {"fastener.yield", &metal.yield},
        {"fastener.ultimate", &metal.ultimate},
        {"fastener.shear", &metal.shear},
        {"fastener.bending_yield", &metal.bendingYield},
        {"fastener.nut_shear", &fastener.nutShear}};
    for (const auto& [where, strength] : strengths) {
        if (auto wrong = strengthProblem(where, *strength)) return wrong;
    }
    if (!(fastener.corrosion.si() >= 0.0 && fastener.corrosion <= metres(0.1)))
        return problem("fastener.corrosion", "is " + millimetreText(fastener.corrosion),
                       "0 to 100 mm");
    return std::nullopt;
}

std::optional<Problem> optionalSizes(const JointFastener& fastener) {
    const ScrewHole& hole = fastener.screwHole;
    const std::pair<const char*, const std::optional<Length>*> sizes[] = {
        {"fastener.pitch", &fastener.pitch},
        {"fastener.nut_height", &fastener.nutHeight},
        {"fastener.peen_height", &fastener.peenHeight},
        {"fastener.head_diameter", &fastener.headDiameter},
        {"fastener.head_height", &fastener.headHeight},
        {"hole.diameter", &fastener.hole},
        {"hole.bung", &fastener.bung},
        {"hole.slip_fit", &hole.slipFit},
        {"hole.pilot", &hole.pilot},
        {"hole.pilot_tip", &hole.pilotTip},
        {"hole.bit", &hole.bit},
        {"hole.collar", &hole.collar}};
    for (const auto& [where, size] : sizes) {
        if (!*size) continue;
        if (auto wrong = sizeProblem(where, **size, metres(5))) return wrong;
    }
    if (hole.pilot && hole.pilotTip && *hole.pilotTip > *hole.pilot)
        return problem("hole.pilot_tip", "is " + millimetreText(*hole.pilotTip),
                       "at most the bit's thick end, " + millimetreText(*hole.pilot));
    if (fastener.pitch && *fastener.pitch > fastener.diameter / 2.0)
        return problem("fastener.pitch", "is " + millimetreText(*fastener.pitch),
                       "at most half the diameter, " + millimetreText(fastener.diameter / 2.0));
    if (fastener.slant &&
        !(fastener.slant->inDegrees() >= 0.0 && fastener.slant->inDegrees() <= 60.0))
        return problem("fastener.slant", "is " + displayAngle(*fastener.slant), "0 to 60 degrees");
    return std::nullopt;
}

std::optional<Problem> groupProblem(const JointGroup& group) {
    const auto far = [](const GroupPlace& place) {
        return !isFinite(place.along) || !isFinite(place.across) ||
               abs(place.along) > metres(100) || abs(place.across) > metres(100);
    };
    if (group.places.size() < 2 || group.places.size() > 1000)
        return problem("group.places", "are " + std::to_string(group.places.size()),
                       "2 to 1000 places");
    for (std::size_t i = 0; i < group.places.size(); ++i) {
        if (far(group.places[i]))
            return problem("group.places[" + std::to_string(i) + "]", "lies too far away",
                           "within 100 m");
        for (std::size_t k = 0; k < i; ++k) {
            if (group.places[i] == group.places[k])
                return problem("group.places[" + std::to_string(i) + "]",
                               "is the place of another, number " + std::to_string(k + 1),
                               "a place of its own for each fastening");
        }
    }
    if (far(group.loadAt)) return problem("group.load_at", "lies too far away", "within 100 m");
    return std::nullopt;
}

std::optional<Problem> fastenerProblem(const Joint& joint) {
    const JointFastener& fastener = joint.fastener;
    if (fastener.gauge && fastener.kind != FastenerKind::woodScrew)
        return problem("fastener.gauge", "is given for a " + std::string(nameOf(fastener.kind)),
                       "gauges are of wood screws");
    if (fastener.gauge && (fastener.gauge->number() < 0 || fastener.gauge->number() > 30))
        return problem("fastener.gauge", "is No. " + std::to_string(fastener.gauge->number()),
                       "No. 0 to No. 30");
    const ScrewShape shape = screwShape(fastener);
    if (auto wrong = sizeProblem("fastener.diameter", shape.body.value, metres(0.1))) return wrong;
    if (fastener.root && !(fastener.root->si() > 0.0 && *fastener.root <= shape.body.value)) {
        return problem("fastener.root", "is " + millimetreText(*fastener.root),
                       "more than 0 and at most the body, " + millimetreText(shape.body.value));
    }
    const bool pointed =
        fastener.kind == FastenerKind::woodScrew || fastener.kind == FastenerKind::drift;
    if (pointed) {
        if (auto wrong = driven(joint)) return wrong;
    }
    if (fastener.threadLength &&
        !(fastener.threadLength->si() >= 0.0 && *fastener.threadLength <= fastener.length) &&
        fastener.kind == FastenerKind::woodScrew) {
        return problem("fastener.thread_length", "is " + millimetreText(*fastener.threadLength),
                       "0 to the length, " + millimetreText(fastener.length));
    }
    if (auto wrong = optionalSizes(fastener)) return wrong;
    if (auto wrong = metalProblem(fastener)) return wrong;
    if (!(fastener.metal.factor >= 1.0 && fastener.metal.factor <= 100.0))
        return problem("fastener.metal_factor", "is " + rounded(fastener.metal.factor, 3),
                       "1 to 100");
    return std::nullopt;
}

}  // namespace

std::optional<Problem> problemOf(const Joint& joint) {
    if (joint.members.size() < 2 || joint.members.size() > 20) {
        return problem("members", "are " + std::to_string(joint.members.size()), "2 to 20");
    }
    for (std::size_t i = 0; i < joint.members.size(); ++i) {
        const bool outer = i == 0 || i + 1 == joint.members.size();
        if (auto wrong = memberProblem(joint.members[i], outer)) {
            wrong->where.insert(0, "members[" + std::to_string(i) + "].");
            return wrong;
        }
    }
    if (auto wrong = fastenerProblem(joint)) return wrong;
    if (joint.row && (joint.row->count < 1 || joint.row->count > 1000))
        return problem("row.count", "is " + std::to_string(joint.row->count), "1 to 1000");
    if (joint.row && joint.row->count > 1) {
        if (auto wrong = sizeProblem("row.spacing", joint.row->spacing, metres(10))) return wrong;
    }
    if (joint.group) {
        if (auto wrong = groupProblem(*joint.group)) return wrong;
    }
    if (joint.load && !isFinite(joint.load->axial))
        return problem("load.axial", "is not a load", "a plain figure");
    if (joint.load && !(joint.load->lateral.si() >= 0.0 && isFinite(joint.load->lateral)))
        return problem("load.lateral",
                       "is " + displayForce(joint.load->lateral, UnitSystem::millimetres),
                       "0 or more");
    return std::nullopt;
}

}  // namespace fayline
