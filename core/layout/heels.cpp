#include <algorithm>
#include <cmath>

#include "frame_parts.h"
#include "practice.h"

namespace fayline {
namespace {

/// Out for one along, over which a frame leaves the keel flat: 35 degrees to level.
constexpr double flatFrame = 0.82;

/// How much of a frame a heel's fastening goes through at the most, in mouldings.
constexpr double mostInFrame = 1.25;

struct Drive {
    CurvePoint from, to;  ///< starboard
    Length grip;          ///< in the frame
    const char* face;
};

/// Down into the keel's top.
Drive drivenDown(const FrameFasteningInput& in, const FasteningChoice& choice, Length top, int i) {
    const Length half = *in.keelSided / 2.0;
    const Length y =
        half / 2.0 + (choice.count > 1
                          ? (static_cast<double>(i) / (choice.count - 1) - 0.5) * half / 2.0
                          : Length{});
    const Length start = top + in.moulded;
    return {{y, start, 0, 0},
            {y, start - choice.counterbore - choice.length.value_or(Length{}), 0, 0},
            in.moulded,
            "inner"};
}

/// A frame's foot at the keel's side, and which way it goes up from there.
struct Foot {
    CurvePoint at;
    double flat = 0, steep = 1;  ///< of its line: out and up, for one along
};

Foot footOf(const FrameFasteningInput& in) {
    constexpr Length step = millimetres(1);
    Length along;
    while (along < in.curve->girth() / 4.0 &&
           in.curve->inside(along, in.planking).y < *in.keelSided / 2.0)
        along += step;
    Foot foot{in.curve->inside(along, in.planking)};
    const CurvePoint up = in.curve->inside(along + 2.0 * in.moulded, in.planking);
    const double y = (up.y - foot.at.y).si(), z = (up.z - foot.at.z).si();
    const double size = std::hypot(y, z);
    if (size > 0) {
        foot.flat = y / size;
        foot.steep = z / size;
    }
    return foot;
}

/// Level through the frame's outer face into what it stands beside, port and starboard in turn.
Drive drivenLevel(const FrameFasteningInput& in, const FasteningChoice& choice, const Foot& foot,
                  Length top, int i, bool starboard, int variant) {
    const Length length = choice.length.value_or(Length{}) + choice.counterbore;
    const Length depth = *in.keelTop - in.keelUnderside.value_or(*in.keelTop - in.moulded);
    // Where the frame stands on its backbone, no further out than leaves a bite.
    Length highest = top - 0.25 * depth;
    if (foot.flat > 0)
        highest = min(highest, foot.at.z + mostInFrame * in.moulded * (foot.steep / foot.flat));
    const Length base = in.curve->inside(Length{}, in.planking).z;
    const Length lowest =
        min(highest, max(base + edgeDiameters * choice.diameter, highest - 0.35 * depth));
    const Length pitch =
        choice.count > 1 ? (highest - lowest) / (choice.count - 1) : highest - lowest;
    const Length shift = (variant % 2 == 1 ? 1.0 : -1.0) * millimetres(4) * ((variant + 1) / 2);
    const Length wanted =
        spread(highest, lowest, i, choice.count) - (starboard ? pitch / 2.0 : Length{}) + shift;
    const Length z = max(base + choice.diameter, min(highest, wanted));
    constexpr Length step = millimetres(1);
    Length along;
    while (along < in.curve->girth() / 2.0 && in.curve->inside(along, in.planking).z < z)
        along += step;
    const Length y = in.curve->inside(along, in.planking).y;
    // The frame is cut off on the backbone's side, where that is as wide as the keel.
    const Length half = *in.keelSided / 2.0;
    Length inFrame = in.moulded / std::max(0.5, foot.steep);
    if (y > half) inFrame = min(inFrame, y - half);
    return {{y, z, 0, 0}, {y - length, z, 0, 0}, inFrame, "outer"};
}

/// Slanted down through the frame's inner face into the keel's side, by as little as keeps it
/// to one and a quarter mouldings of the frame, in steps of five degrees; where the frame's end
/// stands, clear of its edges and of the keel's top.
Drive drivenSlanted(const FrameFasteningInput& in, const FasteningChoice& choice, const Foot& foot,
                    Length top, int i, int variant) {
    constexpr double degree = 3.14159265358979323846 / 180.0;
    constexpr int first = 30, last = 75, step = 5;
    const Length length = choice.length.value_or(Length{}) + choice.counterbore;
    const Length half = *in.keelSided / 2.0;
    const Length endHeight = in.moulded / foot.flat;
    const Length clear = min(edgeDiameters * choice.diameter, endHeight / 2.0);
    const Length highest =
        min(foot.at.z + endHeight - clear, top - edgeDiameters * choice.diameter);
    const Length z = spread(highest, min(highest, foot.at.z + clear), i, choice.count);
    const Length below = foot.at.z + endHeight - z;  // under the inner face
    for (int slant = std::min(last, first + step * variant);; slant += step) {
        const double sine = std::sin(slant * degree), cosine = std::cos(slant * degree);
        const double rises = sine - cosine * foot.steep / foot.flat;
        const Length inFrame = rises > 0 ? min(length, below / rises) : length;
        if (inFrame > mostInFrame * in.moulded && slant < last) continue;
        const Length beyond = length - inFrame;
        return {{half + cosine * inFrame, z + sine * inFrame, 0, 0},
                {half - cosine * beyond, z - sine * beyond, 0, 0},
                inFrame,
                "inner"};
    }
}

}  // namespace

void heels(const FrameFasteningInput& in, const FasteningChoice& choice, const HullSide& side,
           int variant, FrameFastenings& out) {
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
    const Length top = in.backboneTop.value_or(*in.keelTop);
    const Length length = choice.length.value_or(Length{});
    const Foot foot = footOf(in);
    const std::size_t before = out.holes.size();
    Length thickest;
    for (int i = 0; i < choice.count; ++i) {
        Hole hole = holeFor(in, choice, side, "heel", i + 1, "H");
        const Drive drive =
            down ? drivenDown(in, choice, *in.keelTop, i)
            : foot.flat < flatFrame
                ? drivenLevel(in, choice, foot, top, i, side.sign > 0, variant % (heelVariants / 2))
                : drivenSlanted(in, choice, foot, top, i, variant % (heelVariants / 2));
        const bool flipped = variant >= heelVariants / 2;
        const Length x = in.curve->x() + ((i % 2 == 0) != flipped ? -0.2 : 0.2) * in.sided;
        hole.face = drive.face;
        hole.start = mirrored(x, side, drive.from.y, drive.from.z);
        hole.end = mirrored(x, side, drive.to.y, drive.to.z);
        hole.joins = {in.frame + "." + side.letter, hole.end.z > *in.keelTop ? "deadwood" : "keel"};
        hole.length = length;
        hole.grip = drive.grip - choice.counterbore;
        thickest = max(thickest, drive.grip);
        out.holes.push_back(std::move(hole));
    }
    // One setting of the bit for all: the shank clear through the thickest.
    for (std::size_t i = before; i < out.holes.size(); ++i)
        out.holes[i].steps = choice.kind == FasteningKind::woodScrew
                                 ? screwSteps(choice, thickest, true)
                                 : throughSteps(choice, length);
}

}  // namespace fayline
