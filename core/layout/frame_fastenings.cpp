#include "layout/frame_fastenings.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "frame_findings.h"
#include "practice.h"

namespace fayline {
namespace {

constexpr std::array<std::pair<HeelDetail, std::string_view>, 5> details{{
    {HeelDetail::socketed, "socketed"},
    {HeelDetail::onTop, "on_top"},
    {HeelDetail::beside, "beside"},
    {HeelDetail::continuous, "continuous"},
    {HeelDetail::halfFrames, "half_frames"},
}};

Point mirrored(Length x, const HullSide& side, Length y, Length z) {
    return {x, side.sign * y, z};
}

Hole holeFor(const FrameFasteningInput& in, const FasteningChoice& choice, const HullSide& side,
             const char* group, int number, const char* markLetter) {
    Hole hole;
    hole.frame = in.frame;
    hole.side = side.word;
    hole.id = in.frame + "." + side.letter + "." + group + "." + std::to_string(number);
    hole.mark = std::string(markLetter) + std::to_string(number);
    hole.group = group;
    dress(hole, choice);
    return hole;
}

/// A hole across the frame's depth, by its place along the frame.
struct Crossing {
    Length along, diameter;
};

Length plankAlong(const FrameFasteningInput& in, std::size_t strake, int i) {
    const FasteningChoice& choice = *in.plank[strake];
    const Length width = in.seams[strake + 1] - in.seams[strake];
    const Length edge = min(max(4.0 * choice.diameter, 0.2 * width), width / 2.0);
    return spread(in.seams[strake] + edge, in.seams[strake + 1] - edge, i, choice.count);
}

std::vector<Crossing> plankCrossings(const FrameFasteningInput& in) {
    std::vector<Crossing> all;
    for (std::size_t k = 0; k + 1 < in.seams.size() && k < in.plank.size(); ++k) {
        for (int i = 0; in.plank[k] && i < in.plank[k]->count; ++i)
            all.push_back({plankAlong(in, k, i), in.plank[k]->diameter});
    }
    return all;
}

/// The place nearest the wanted one, no further off than `most` and between the ends, that leaves
/// two diameters of wood to every crossing; else the one that leaves most.
Length clearOf(const std::vector<Crossing>& crossings, Length wanted, Length diameter, Length from,
               Length to, Length most) {
    constexpr Length step = millimetres(2);
    const auto spare = [&](Length along) {
        Length least = metres(1);
        for (const Crossing& c : crossings) {
            const Length body = min(diameter, c.diameter);
            least = min(least, abs(along - c.along) - (diameter + c.diameter) / 2.0 - 2.0 * body);
        }
        return least;
    };
    Length best = wanted;
    Length bestSpare = spare(wanted);
    for (Length off = step; off <= most && bestSpare < Length{}; off += step) {
        for (const Length along : {wanted - off, wanted + off}) {
            if (along < from || along > to || spare(along) <= bestSpare) continue;
            best = along;
            bestSpare = spare(along);
        }
    }
    return best;
}

/// Arm fastenings run fore and aft through frame and floor where these lie side by side, along the
/// middle of the frame.
void arms(const FrameFasteningInput& in, const FasteningChoice& choice, const HullSide& side,
          FrameFastenings& out) {
    if (!in.floor || choice.count <= 0) return;
    const Length depth = in.planking + in.moulded / 2.0;
    const Length inner = in.keelSided.value_or(Length{}) / 2.0 + 2.0 * choice.diameter;
    const Length outer = in.floor->reach - 4.0 * choice.diameter;
    const auto from = in.curve->alongAtHalfBreadth(inner);
    const auto to = in.curve->alongAtHalfBreadth(outer);
    if (!from || !to || *to <= *from) {
        out.findings.push_back({"grip",
                                {in.frame + "." + side.letter + ".arm.1"},
                                std::nullopt,
                                in.frame + " floor's arm does not reach along the frame",
                                {in.frame + ".floor.reach="}});
        return;
    }
    const double aft = in.floor->x > in.curve->x() ? 1.0 : -1.0;
    const Length far = in.floor->x + aft * in.floor->siding / 2.0;
    const Length near = in.curve->x() - aft * in.sided / 2.0;
    const auto crossings = plankCrossings(in);
    const Length pitch = choice.count > 1 ? (*to - *from) / (choice.count - 1) : *to - *from;
    const Length give = min(millimetres(40), max(Length{}, pitch - 4.0 * choice.diameter) / 2.0);
    for (int i = 0; i < choice.count; ++i) {
        const Length along = clearOf(crossings, spread(*from, *to, i, choice.count),
                                     choice.diameter, *from, *to, give);
        const CurvePoint place = in.curve->inside(along, depth);
        Hole hole = holeFor(in, choice, side, "arm", i + 1, "A");
        hole.face = aft > 0 ? "aft" : "fore";
        hole.joins = {in.frame + ".floor", in.frame + "." + side.letter};
        const Length proud = choice.kind == FasteningKind::bolt ? proudOf(choice) : Length{};
        hole.start = mirrored(far + aft * proud, side, place.y, place.z);
        hole.end = mirrored(near - aft * proud, side, place.y, place.z);
        hole.grip = abs(far - near);
        hole.length = hole.grip + 2.0 * proud;
        hole.steps = throughSteps(choice, hole.grip);
        out.holes.push_back(std::move(hole));
    }
}

/// Where a heel fastening starts and which way it goes, for each heel detail: into the keel's side,
/// or down into its top.
void heels(const FrameFasteningInput& in, const FasteningChoice& choice, const HullSide& side,
           FrameFastenings& out) {
    if (!in.keelSided || !in.keelTop || choice.count <= 0) return;
    const bool through = choice.kind == FasteningKind::bolt || choice.kind == FasteningKind::rivet;
    if (through && !choice.length) {
        const std::string place = in.frame + "." + side.letter + ".heel";
        out.findings.push_back({"grip",
                                {place + ".1"},
                                std::nullopt,
                                place + ": how long its bolts or rivets are is not decided",
                                {place + ".length="}});
        return;
    }
    const bool down = in.heelDetail == HeelDetail::onTop ||
                      in.heelDetail == HeelDetail::continuous ||
                      in.heelDetail == HeelDetail::halfFrames;
    const Length length = choice.length.value_or(Length{});
    const Length half = *in.keelSided / 2.0;
    for (int i = 0; i < choice.count; ++i) {
        Hole hole = holeFor(in, choice, side, "heel", i + 1, "H");
        hole.joins = {in.frame + "." + side.letter, "keel"};
        hole.face = "inner";
        const Length x = in.curve->x() + (i % 2 == 0 ? -0.2 : 0.2) * in.sided;
        if (down) {
            const Length y =
                half / 2.0 + (choice.count > 1
                                  ? (static_cast<double>(i) / (choice.count - 1) - 0.5) * half / 2.0
                                  : Length{});
            hole.start = mirrored(x, side, y, *in.keelTop + in.moulded);
            hole.end = mirrored(x, side, y, *in.keelTop + in.moulded - choice.counterbore - length);
        } else {
            const Length depth = *in.keelTop - in.keelUnderside.value_or(*in.keelTop - in.moulded);
            const Length z =
                spread(*in.keelTop - 0.25 * depth, *in.keelTop - 0.6 * depth, i, choice.count);
            hole.start = mirrored(x, side, half + in.moulded, z);
            hole.end = mirrored(x, side, half + in.moulded - choice.counterbore - length, z);
        }
        hole.length = length;
        hole.grip = in.moulded - choice.counterbore;
        hole.steps = choice.kind == FasteningKind::woodScrew ? screwSteps(choice, in.moulded, true)
                                                             : throughSteps(choice, length);
        out.holes.push_back(std::move(hole));
    }
}

/// Floor to keel: down through the floor into the keel, clear of the ballast, alternate sides of
/// the centreline.
void floorBolts(const FrameFasteningInput& in, const FasteningChoice& choice,
                FrameFastenings& out) {
    if (!in.floor || !in.keelTop || !in.keelUnderside || choice.count <= 0) return;
    const Length half = in.keelSided.value_or(Length{}) / 2.0;
    const Hole* boltInFloor = nullptr;
    for (const Hole& bolt : in.ballast) {
        if (abs(bolt.start.x - in.floor->x) < in.floor->siding / 2.0) boltInFloor = &bolt;
    }
    for (int i = 0; i < choice.count; ++i) {
        Hole hole;
        hole.frame = in.frame;
        hole.id = in.frame + ".floor." + std::to_string(i + 1);
        hole.mark = "T" + std::to_string(i + 1);
        hole.group = "floor";
        hole.face = "inner";
        dress(hole, choice);
        hole.joins = {in.frame + ".floor", "keel"};
        Length y = spread(-0.5 * half, 0.5 * half, i, choice.count);
        if (choice.count == 1 && boltInFloor != nullptr)
            y = boltInFloor->start.y > Length{} ? -0.5 * half : 0.5 * half;
        hole.side = y < Length{} ? "port" : y > Length{} ? "starboard" : "";
        const Length proud = choice.kind == FasteningKind::bolt ? proudOf(choice) : Length{};
        const Length bottom = choice.kind == FasteningKind::bolt
                                  ? *in.keelUnderside
                                  : in.floor->top - choice.length.value_or(Length{});
        hole.start = {in.floor->x, y, in.floor->top + proud};
        hole.end = {in.floor->x, y, bottom};
        hole.grip = in.floor->top - max(bottom, *in.keelUnderside);
        hole.length = hole.start.z - hole.end.z;
        hole.steps = choice.kind == FasteningKind::woodScrew
                         ? screwSteps(choice, in.floor->top - *in.keelTop, true)
                         : throughSteps(choice, hole.grip);
        out.holes.push_back(std::move(hole));
    }
}

/// Plank fastenings at one crossing: square to the plank, spread over its width, staggered fore and
/// aft.
void planks(const FrameFasteningInput& in, const HullSide& side, FrameFastenings& out) {
    for (std::size_t strake = 0; strake + 1 < in.seams.size() && strake < in.plank.size();
         ++strake) {
        if (!in.plank[strake] || in.plank[strake]->count <= 0) continue;
        const FasteningChoice& choice = *in.plank[strake];
        const std::string name = "plank." + std::to_string(strake + 1);
        for (int i = 0; i < choice.count; ++i) {
            const CurvePoint place = in.curve->at(plankAlong(in, strake, i));
            Hole hole = holeFor(in, choice, side, name.c_str(), i + 1, "P");
            hole.mark = std::to_string(strake + 1) + static_cast<char>('a' + i);
            hole.group = "plank";
            hole.face = "outer";
            hole.joins = {"strake" + std::to_string(strake + 1) + "." + side.letter,
                          in.frame + "." + side.letter};
            const double stagger = choice.count > 1 ? (i % 2 == 0 ? -0.2 : 0.2) : 0.0;
            const Length x = in.curve->x() + stagger * in.sided;
            const bool through =
                choice.kind == FasteningKind::rivet || choice.kind == FasteningKind::bolt;
            const Length stack = in.planking + in.moulded - choice.counterbore;
            const Length length = through ? stack + choice.washerThickness + choice.diameter
                                          : choice.length.value_or(Length{});
            const Length from = choice.counterbore;
            hole.start =
                mirrored(x, side, place.y - place.outY * from, place.z - place.outZ * from);
            hole.end = mirrored(x, side, place.y - place.outY * (from + length),
                                place.z - place.outZ * (from + length));
            hole.length = length;
            hole.grip = through ? stack : in.planking - choice.counterbore;
            hole.steps = choice.kind == FasteningKind::woodScrew
                             ? screwSteps(choice, in.planking, in.hardwoodFrame)
                             : throughSteps(choice, stack);
            out.holes.push_back(std::move(hole));
        }
    }
}

}  // namespace

std::string_view nameOf(HeelDetail detail) {
    for (const auto& [value, name] : details) {
        if (value == detail) return name;
    }
    return "";
}

std::optional<HeelDetail> heelDetailNamed(std::string_view name) {
    for (const auto& [value, known] : details) {
        if (known == name) return value;
    }
    return std::nullopt;
}

FrameFastenings layOutFrame(const FrameFasteningInput& input) {
    FrameFastenings out;
    if (!input.curve || input.sided <= Length{} || input.moulded <= Length{}) return out;
    for (const auto& [side, heel, arm] :
         {std::tuple(&portSide, &input.heelPort, &input.armPort),
          std::tuple(&starboardSide, &input.heelStarboard, &input.armStarboard)}) {
        if (*heel) heels(input, **heel, *side, out);
        if (*arm) arms(input, **arm, *side, out);
        planks(input, *side, out);
    }
    if (input.floorBolt) floorBolts(input, *input.floorBolt, out);
    frameFindings(input, out);
    return out;
}

}  // namespace fayline
