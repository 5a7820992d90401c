#include "layout/planking.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "planking_findings.h"
#include "practice.h"

namespace fayline {
namespace {

constexpr HullSide bothSides[] = {portSide, starboardSide};

/// A hole square to the planking at a place of its outside.
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

CurvePoint between(const CurvePoint& a, const CurvePoint& b) {
    const double outY = a.outY + b.outY;
    const double outZ = a.outZ + b.outZ;
    const double size = std::hypot(outY, outZ);
    return {(a.y + b.y) / 2.0, (a.z + b.z) / 2.0, size > 0 ? outY / size : a.outY,
            size > 0 ? outZ / size : a.outZ};
}

/// Across a strake from edge to edge, clear of both.
CurvePoint across(const FrameCurve& curve, Length from, Length to, Length clear, int i, int count) {
    const Length width = to - from;
    const Length edge = min(max(clear, 0.15 * width), width / 2.0);
    return curve.at(spread(from + edge, to - edge, i, count));
}

CurvePoint acrossStrake(const PlankLine& line, int strake, Length clear, int i, int count) {
    const auto k = static_cast<std::size_t>(strake);
    return across(*line.curve, line.seams[k - 1], line.seams[k], clear, i, count);
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
                    const double off = (i % 2 == 0 ? 1.0 : -1.0) * side.sign * inward;
                    drill(hole, in, choice, side, end.curve->x() + off * choice.diameter,
                          across(*end.curve, end.from, end.to, 3.0 * choice.diameter, i,
                                 choice.count),
                          max(choice.length.value_or(Length{}), in.planking));
                    out.holes.push_back(std::move(hole));
                }
            }
        }
    }
}

/// The garboard's lower edge lies in the keel's rabbet and is driven level into the keel, clear of
/// a butt.
void fastenGarboard(const PlankingInput& in, const std::vector<Butt>& butts, FrameFastenings& out) {
    if (!in.garboard || in.garboard->count <= 0) return;
    const FasteningChoice& choice = *in.garboard;
    for (std::size_t bay = 0; bay + 1 < in.frames.size(); ++bay) {
        const PlankLine& fore = in.frames[bay];
        const PlankLine& aft = in.frames[bay + 1];
        if (!garboardBay(in, bay)) continue;
        const Length middle = (fore.curve->x() + aft.curve->x()) / 2.0;
        const bool butted = std::any_of(butts.begin(), butts.end(), [&](const Butt& butt) {
            return butt.strake == 1 && butt.bay == bay;
        });
        for (const HullSide& side : bothSides) {
            for (int i = 0; i < choice.count; ++i) {
                Hole hole;
                hole.id = fore.frame + "." + side.letter + ".garboard." + std::to_string(i + 1);
                hole.mark = "G" + std::to_string(i + 1);
                hole.frame = fore.frame;
                hole.group = "garboard";
                hole.joins = {std::string("strake1.") + side.letter, "keel"};
                CurvePoint place = between(fore.curve->at(Length{}), aft.curve->at(Length{}));
                place.z -= 2.0 * choice.diameter;
                place.outY = 1;
                place.outZ = 0;
                const double part = (i + 1.0) / (choice.count + 1.0);
                Length x = fore.curve->x() + part * (aft.curve->x() - fore.curve->x());
                const Length clear = endDiameters * choice.diameter;
                if (butted && abs(x - middle) < clear) x = middle + (x < middle ? -clear : clear);
                drill(hole, in, choice, side, x, place,
                      max(choice.length.value_or(Length{}), in.planking));
                out.holes.push_back(std::move(hole));
            }
        }
    }
}

}  // namespace

Length endInset(const FasteningChoice& hood) {
    return 5.0 * hood.diameter;
}

bool garboardBay(const PlankingInput& in, std::size_t bay) {
    const PlankLine& fore = in.frames[bay];
    const PlankLine& aft = in.frames[bay + 1];
    return fore.curve && aft.curve && fore.overKeel && aft.overKeel && fore.seams.size() > 1 &&
           aft.seams.size() > 1 && aft.curve->x() > fore.curve->x();
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
