#include "layout/frame_fastenings.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "frame_findings.h"
#include "frame_parts.h"
#include "practice.h"

namespace fayline {

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

namespace {

constexpr std::array<std::pair<HeelDetail, std::string_view>, 5> details{{
    {HeelDetail::socketed, "socketed"},
    {HeelDetail::onTop, "on_top"},
    {HeelDetail::beside, "beside"},
    {HeelDetail::continuous, "continuous"},
    {HeelDetail::halfFrames, "half_frames"},
}};

/// A hole across the frame's depth, where it stands at some depth.
struct Crossing {
    CurvePoint at;
    Length diameter;
};

std::vector<Crossing> plankCrossings(const FrameFasteningInput& in, const PlankPlaces& places,
                                     Length depth) {
    std::vector<Crossing> all;
    for (std::size_t k = 0; k < places.size(); ++k) {
        for (const Length along : places[k])
            all.push_back({in.curve->inside(along, depth), in.plank[k]->diameter});
    }
    return all;
}

/// Wood to the nearest crossing over two diameters of the thinner, at a depth along the frame.
Length spareAt(const FrameFasteningInput& in, const std::vector<Crossing>& crossings, Length depth,
               Length diameter, Length along) {
    const CurvePoint here = in.curve->inside(along, depth);
    Length least = metres(1);
    for (const Crossing& c : crossings) {
        const Length away = metres(std::hypot((here.y - c.at.y).si(), (here.z - c.at.z).si()));
        const Length body = min(diameter, c.diameter);
        least = min(least, away - (diameter + c.diameter) / 2.0 - 2.0 * body);
    }
    return least;
}

/// The place nearest the wanted one, no further off than `most` and between the ends, that leaves
/// two diameters of wood to every crossing at this depth; else the one that leaves most.
Length clearOf(const FrameFasteningInput& in, const std::vector<Crossing>& crossings, Length depth,
               Length wanted, Length diameter, Length from, Length to, Length most) {
    constexpr Length step = millimetres(2);
    const auto spare = [&](Length along) { return spareAt(in, crossings, depth, diameter, along); };
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

/// Draws the ends of a row in until they are clear of the crossings; where there is no room for
/// that, they stay.
void clearEnds(const FrameFasteningInput& in, const std::vector<Crossing>& crossings, Length depth,
               const FasteningChoice& choice, Length& from, Length& to) {
    constexpr Length step = millimetres(2);
    const Length room = (to - from) / 4.0;
    const auto clear = [&](Length along) {
        return spareAt(in, crossings, depth, choice.diameter, along) >= Length{};
    };
    for (Length off; off <= room; off += step) {
        if (!clear(from + off)) continue;
        from += off;
        break;
    }
    for (Length off; off <= room; off += step) {
        if (!clear(to - off)) continue;
        to -= off;
        break;
    }
}

/// Arm fastenings run fore and aft through frame and floor where these lie side by side, along the
/// middle of the frame.
void arms(const FrameFasteningInput& in, const FasteningChoice& choice, const HullSide& side,
          const PlankPlaces& places, FrameFastenings& out) {
    if (!in.floor || choice.count <= 0) return;
    const Length depth = in.planking + in.moulded / 2.0;
    const Length inner = in.keelSided.value_or(Length{}) / 2.0 + 2.0 * choice.diameter;
    const Length outer = in.floor->reach - 4.0 * choice.diameter;
    auto from = in.curve->alongAtHalfBreadth(inner);
    auto to = in.curve->alongAtHalfBreadth(outer);
    // No lower than the floor's underside on the keel, so that the floor has wood round them, and
    // clear of the heel's fastenings.
    const Length lowest = in.floor->underside + edgeDiameters * choice.diameter;
    const auto free = [&](Length along) {
        const CurvePoint at = in.curve->inside(along, depth);
        if (at.z < lowest) return false;
        Hole bored;
        bored.start = mirrored(in.curve->x() - in.sided, side, at.y, at.z);
        bored.end = mirrored(in.curve->x() + in.sided, side, at.y, at.z);
        return std::none_of(out.holes.begin(), out.holes.end(), [&](const Hole& hole) {
            return hole.group == "heel" && hole.side == side.word &&
                   distanceBetween(hole, bored) < (hole.diameter + choice.diameter) / 2.0 +
                                                      2.0 * max(hole.diameter, choice.diameter);
        });
    };
    constexpr Length step = millimetres(2);
    while (from && to && *from < *to && !free(*from)) *from += step;
    const auto crossings = plankCrossings(in, places, depth);
    if (from && to && *from < *to) clearEnds(in, crossings, depth, choice, *from, *to);
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
    const Length pitch = choice.count > 1 ? (*to - *from) / (choice.count - 1) : *to - *from;
    const Length give = min(millimetres(40), max(Length{}, pitch - 4.0 * choice.diameter) / 2.0);
    for (int i = 0; i < choice.count; ++i) {
        const Length along = clearOf(in, crossings, depth, spread(*from, *to, i, choice.count),
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
        PlankPlaces places = plankPlaces(input);
        if (*heel) placeHeels(input, **heel, *side, places, out);
        if (*arm) arms(input, **arm, *side, places, out);
        planks(input, *side, places, out);
    }
    if (input.floorBolt) floorBolts(input, *input.floorBolt, out);
    frameFindings(input, out);
    return out;
}

}  // namespace fayline
