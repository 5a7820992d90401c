#include "layout/backbone.h"

#include <cmath>
#include <numbers>

#include "quantity/display.h"

namespace fayline {
namespace {

constexpr double leastDiameters = 4.0;
constexpr double slantDegrees = 5.0;

std::string inMm(Length length) {
    return displayLength(length, LengthStyle::millimetres);
}

void placeRow(const BackboneJoint& joint, FrameFastenings& out) {
    const FasteningChoice& choice = joint.choice;
    const double dx_m = (joint.aftX - joint.foreX).si();
    const double dz_m = (joint.aftHeight - joint.foreHeight).si();
    const double run_m = std::hypot(dx_m, dz_m);
    const std::string place = "B." + joint.name;
    if (run_m <= 0) {
        out.findings.push_back({"grip",
                                {},
                                std::nullopt,
                                place + ": its two ends are one place, so there is no joint",
                                {place + ".aft_x="}});
        return;
    }
    const double alongX = dx_m / run_m;
    const double alongZ = dz_m / run_m;
    const Length step = metres(run_m / choice.count);
    if (step / 2.0 < leastDiameters * choice.diameter) {
        out.findings.push_back({choice.count > 1 ? "spacing" : "end",
                                {place + ".1"},
                                leastDiameters * choice.diameter - step / 2.0,
                                place + ": the end ones stand " + inMm(step / 2.0) +
                                    " from the joint's ends; 4 " + "diameters are " +
                                    inMm(leastDiameters * choice.diameter),
                                {place + ".count=" + std::to_string(choice.count - 1)}});
    }
    for (int i = 0; i < choice.count; ++i) {
        Hole hole;
        hole.id = place + "." + std::to_string(i + 1);
        hole.mark = "J" + std::to_string(i + 1);
        hole.frame = joint.frame;
        hole.face = "inner";
        hole.group = "backbone";
        dress(hole, choice);
        hole.joins = {joint.upper, joint.lower};
        const double at_m = (i + 0.5) * step.si();
        const double slant =
            choice.kind == FasteningKind::drift
                ? (i % 2 == 0 ? 1.0 : -1.0) * slantDegrees * std::numbers::pi / 180.0
                : 0.0;
        // Square to the joint's line, upwards, then slanted along it.
        const double upX = -alongZ * std::cos(slant) + alongX * std::sin(slant);
        const double upZ = alongX * std::cos(slant) + alongZ * std::sin(slant);
        const Length wood = choice.length.value_or(Length{});
        const Length proud = choice.kind == FasteningKind::bolt ? proudOf(choice) : Length{};
        const Length half = wood / 2.0 + proud;
        const Point middle{joint.foreX + metres(alongX * at_m), Length{},
                           joint.foreHeight + metres(alongZ * at_m)};
        hole.start = {middle.x + upX * half, Length{}, middle.z + upZ * half};
        hole.end = {middle.x - upX * half, Length{}, middle.z - upZ * half};
        hole.length = 2.0 * half;
        hole.grip = wood;
        hole.steps = throughSteps(choice, wood);
        out.holes.push_back(std::move(hole));
    }
}

void findClashes(const BackboneInput& input, FrameFastenings& out) {
    for (std::size_t i = 0; i < out.holes.size(); ++i) {
        const Hole& a = out.holes[i];
        const auto against = [&](const Hole& b) {
            const Length gap = distanceBetween(a, b) - (a.diameter + b.diameter) / 2.0;
            if (gap >= Length{}) return;
            const std::string joint = a.id.substr(0, a.id.rfind('.'));
            out.findings.push_back({"clash",
                                    {a.id, b.id},
                                    -gap,
                                    a.id + " meets " + b.id + ", " + inMm(-gap) + " too near",
                                    {joint + ".fore_x=", joint + ".count="}});
        };
        for (std::size_t j = i + 1; j < out.holes.size(); ++j) against(out.holes[j]);
        for (const Hole& other : input.others) against(other);
    }
}

}  // namespace

FrameFastenings layOutBackbone(const BackboneInput& input) {
    FrameFastenings out;
    for (const BackboneJoint& joint : input.joints) placeRow(joint, out);
    findClashes(input, out);
    return out;
}

}  // namespace fayline
