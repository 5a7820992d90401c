#include "layout/planking.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "planking_findings.h"
#include "planking_parts.h"
#include "practice.h"

namespace fayline {

void drill(Hole& hole, const PlankingInput& in, const FasteningChoice& choice, const HullSide& side,
           Length x, const CurvePoint& place, Length inner) {
    const bool through = choice.kind == FasteningKind::bolt || choice.kind == FasteningKind::rivet;
    const Length stack = in.planking + inner - choice.counterbore;
    const Length length = through ? stack + choice.washerThickness + choice.diameter
                                  : choice.length.value_or(Length{});
    const auto at = [&](Length depth) {
        return Point{x, side.sign * (place.y - place.outY * depth), place.z - place.outZ * depth};
    };
    dress(hole, choice);
    hole.side = side.word;
    hole.face = "outer";
    hole.start = at(choice.counterbore);
    hole.end = at(choice.counterbore + length);
    hole.length = length;
    hole.grip = through ? stack : in.planking - choice.counterbore;
    hole.steps = choice.kind == FasteningKind::woodScrew
                     ? screwSteps(choice, in.planking, in.hardwood)
                     : throughSteps(choice, through ? stack : length);
}

namespace {

CurvePoint between(const CurvePoint& a, const CurvePoint& b) {
    const double outY = a.outY + b.outY;
    const double outZ = a.outZ + b.outZ;
    const double size = std::hypot(outY, outZ);
    return {(a.y + b.y) / 2.0, (a.z + b.z) / 2.0, size > 0 ? outY / size : a.outY,
            size > 0 ? outZ / size : a.outZ};
}

/// A place across a strake that wide, clear of both its edges.
Length across(Length width, Length clear, int i, int count) {
    const Length edge = min(max(clear, 0.15 * width), width / 2.0);
    return spread(edge, width - edge, i, count);
}

CurvePoint acrossStrake(const PlankLine& line, int strake, Length clear, int i, int count) {
    const auto k = static_cast<std::size_t>(strake);
    const Length lower = line.seams[k - 1];
    return line.curve->at(lower + across(line.seams[k] - lower, clear, i, count));
}

void fastenButts(const PlankingInput& in, const std::vector<Butt>& butts, FrameFastenings& out) {
    if (!in.butt || in.butt->count <= 0) return;
    const FasteningChoice& choice = *in.butt;
    for (const Butt& butt : butts) {
        const PlankLine& fore = in.frames[butt.bay];
        const PlankLine& aft = in.frames[butt.bay + 1];
        const Length middle = (fore.curve->x() + aft.curve->x()) / 2.0;
        // Ends of planks split: seven diameters from the butt, every other one two further.
        for (const HullSide& side : bothSides) {
            int number = 0;
            for (const double end : {-1.0, 1.0}) {
                for (int i = 0; i < choice.count; ++i) {
                    Hole hole;
                    hole.id = butt.id + "." + side.letter + "." + std::to_string(++number);
                    hole.mark = "U" + butt.id.substr(4) + "." + std::to_string(number);
                    hole.frame = fore.frame;
                    hole.group = "butt";
                    hole.joins = {"strake" + std::to_string(butt.strake) + "." + side.letter,
                                  butt.id};
                    const Length clear = 3.0 * choice.diameter;
                    const CurvePoint place =
                        between(acrossStrake(fore, butt.strake, clear, i, choice.count),
                                acrossStrake(aft, butt.strake, clear, i, choice.count));
                    const double off = (i % 2 == 0 ? 7.0 : 9.0) * end;
                    drill(hole, in, choice, side, middle + off * choice.diameter, place, in.block);
                    out.holes.push_back(std::move(hole));
                }
            }
        }
    }
}

/// Four and six diameters from the end in turn, the other way about to starboard: in the stem the
/// points of the two bothSides pass each other.
void fastenEnds(const PlankingInput& in, FrameFastenings& out) {
    if (!in.hood || in.hood->count <= 0) return;
    const FasteningChoice& choice = *in.hood;
    // A hull of one frame has both its ends at it: the after ones are numbered on.
    const bool oneFrame = in.fore && in.aft && in.fore->frame == in.aft->frame;
    for (const auto& [ends, inward, post, flat] :
         {std::tuple(in.fore.get(), 1.0, "stem", "bow_transom"),
          std::tuple(in.aft.get(), -1.0, "sternpost", "transom")}) {
        if (ends == nullptr) continue;
        const int before = oneFrame && ends == in.aft.get() ? choice.count : 0;
        for (const HullSide& side : bothSides) {
            for (std::size_t k = 0; k < ends->strakes.size(); ++k) {
                const StrakeEnd& end = ends->strakes[k];
                for (int i = 0; i < choice.count; ++i) {
                    Hole hole;
                    const std::string number =
                        std::to_string(k + 1) + "." + std::to_string(before + i + 1);
                    hole.id = ends->frame + "." + side.letter + ".hood." + number;
                    hole.mark = "E" + number;
                    hole.frame = ends->frame;
                    hole.group = "hood";
                    hole.joins = {"strake" + std::to_string(k + 1) + "." + side.letter,
                                  end.onPost ? post : flat};
                    const bool even = (static_cast<int>(k) + i) % 2 == 0;
                    const double off = (even ? 1.0 : -1.0) * side.sign * inward;
                    const EndSpot spot =
                        end.spotAt(across(end.width(), 3.0 * choice.diameter, i, choice.count));
                    drill(hole, in, choice, side, spot.x + off * choice.diameter, spot.at,
                          max(choice.length.value_or(Length{}), in.planking));
                    out.holes.push_back(std::move(hole));
                }
            }
        }
    }
}

}  // namespace

Length endInset(const FasteningChoice& hood) {
    return 5.0 * hood.diameter;
}

FrameFastenings layOutPlanking(const PlankingInput& input) {
    FrameFastenings out;
    const auto butts = setOutButts(input, out.findings);
    fastenButts(input, butts, out);
    fastenEnds(input, out);
    fastenGarboard(input, butts, out);
    plankingFindings(input, butts, out);
    return out;
}

}  // namespace fayline
