#include "layout/backbone.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <utility>

#include "practice.h"
#include "quantity/display.h"

namespace fayline {
namespace {

constexpr double leastDiameters = 4.0;
constexpr double slantDegrees = 5.0;

std::string inMm(Length length) {
    return displayLength(length, LengthStyle::millimetres);
}
/// Places along a joint: even, half a space from its ends, but never nearer to these than four
/// diameters while it is long enough.
struct Spacing {
    double first_m, step_m;
};
Spacing spacingOf(double run_m, const FasteningChoice& choice) {
    const double even_m = run_m / choice.count;
    const double least_m = leastDiameters * choice.diameter.si();
    if (choice.count < 2 || even_m / 2.0 >= least_m) return {even_m / 2.0, even_m};
    const double first_m = std::min(least_m, run_m / 2.0);
    return {first_m, (run_m - 2.0 * first_m) / (choice.count - 1)};
}

void checkSpacing(const std::string& place, double run_m, const FasteningChoice& choice,
                  FrameFastenings& out) {
    const Spacing at = spacingOf(run_m, choice);
    const Length least = leastDiameters * choice.diameter;
    if (metres(at.first_m) < least - millimetres(1e-6)) {
        out.findings.push_back(
            {"end",
             {place + ".1", place + "." + std::to_string(choice.count)},
             least - metres(at.first_m),
             place + ": the end ones stand " + inMm(metres(at.first_m)) +
                 " from the joint's ends; 4 diameters are " + inMm(least),
             {place + ".diameter=" + wholeDown(metres(run_m / (2.0 * leastDiameters)))}});
    }
    if (choice.count > 1 && metres(at.step_m) < least - millimetres(1e-6)) {
        const double room_m = run_m - 2.0 * least.si();
        const int fit = room_m >= 0 ? 1 + static_cast<int>(room_m / least.si() + 1e-9) : 1;
        std::vector<std::string> ids;
        for (int i = 1; i <= choice.count; ++i) ids.push_back(place + "." + std::to_string(i));
        out.findings.push_back({"spacing",
                                std::move(ids),
                                least - metres(at.step_m),
                                place + ": they stand " + inMm(metres(at.step_m)) +
                                    " apart; 4 diameters are " + inMm(least),
                                {place + ".count=" + std::to_string(fit)}});
    }
}

/// `number`: which joint of the backbone, for its marks.
void placeRow(const BackboneJoint& given, std::size_t number, FrameFastenings& out) {
    // Numbered from forward, or from below on an upright joint, whichever end was given first.
    BackboneJoint joint = given;
    if (joint.aftX < joint.foreX ||
        (joint.aftX == joint.foreX && joint.aftHeight < joint.foreHeight)) {
        std::swap(joint.foreX, joint.aftX);
        std::swap(joint.foreHeight, joint.aftHeight);
    }
    const FasteningChoice& choice = joint.choice;
    if (choice.count <= 0) return;
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
    const Spacing spacing = spacingOf(run_m, choice);
    checkSpacing(place, run_m, choice, out);
    for (int i = 0; i < choice.count; ++i) {
        Hole hole;
        hole.id = place + "." + std::to_string(i + 1);
        hole.mark = "J" + std::to_string(number) + "." + std::to_string(i + 1);
        hole.frame = joint.frame;
        hole.face = "inner";
        hole.group = "backbone";
        dress(hole, choice);
        hole.joins = {joint.upper, joint.lower};
        const double at_m = spacing.first_m + i * spacing.step_m;
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

bool meet(const Hole& a, const Hole& b) {
    return distanceBetween(a, b) < (a.diameter + b.diameter) / 2.0;
}

/// Another number of them with which the joint's row meets nothing and keeps its spacing.
std::optional<std::string> cureOf(const BackboneJoint& joint, const std::vector<Hole>& others) {
    for (const int more : {1, -1, 2, -2, 3, -3}) {
        BackboneJoint changed = joint;
        changed.choice.count += more;
        if (changed.choice.count < 1) continue;
        FrameFastenings row;
        placeRow(changed, 1, row);
        const bool clear = std::none_of(row.holes.begin(), row.holes.end(), [&](const Hole& a) {
            const auto meets = [&](const Hole& b) { return a.id != b.id && meet(a, b); };
            return std::any_of(others.begin(), others.end(), meets) ||
                   std::any_of(row.holes.begin(), row.holes.end(), meets);
        });
        if (row.findings.empty() && clear)
            return "B." + joint.name + ".count=" + std::to_string(changed.choice.count);
    }
    return std::nullopt;
}

void findClashes(const BackboneInput& input, const BackboneJoint& joint, std::size_t first,
                 FrameFastenings& out) {
    std::vector<Hole> others = input.others;
    others.insert(others.end(), out.holes.begin(),
                  out.holes.begin() + static_cast<std::ptrdiff_t>(first));
    bool sought = false;
    std::optional<std::string> cure;
    for (std::size_t i = first; i < out.holes.size(); ++i) {
        const Hole& a = out.holes[i];
        const auto against = [&](const Hole& b) {
            if (!meet(a, b)) return;
            if (!sought) cure = cureOf(joint, others);
            sought = true;
            const Length lacks = (a.diameter + b.diameter) / 2.0 - distanceBetween(a, b);
            out.findings.push_back({"clash",
                                    {a.id, b.id},
                                    lacks,
                                    a.id + " meets " + b.id + ", " + inMm(lacks) + " too near",
                                    cure ? std::vector{*cure} : std::vector<std::string>{}});
        };
        for (std::size_t j = i + 1; j < out.holes.size(); ++j) against(out.holes[j]);
        for (const Hole& other : others) against(other);
    }
}

}  // namespace

FrameFastenings layOutBackbone(const BackboneInput& input) {
    FrameFastenings out;
    std::size_t number = 0;
    for (const BackboneJoint& joint : input.joints) {
        const std::size_t first = out.holes.size();
        placeRow(joint, ++number, out);
        findClashes(input, joint, first, out);
    }
    return out;
}

}  // namespace fayline
