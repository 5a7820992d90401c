#include "layout/planking.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "planking_findings.h"

namespace fayline {
namespace {

/// From a butt to the garboard's next fastening, in diameters: an end's distance (the small-craft
/// design handbook BDB-401-02: end 4).
constexpr double buttClear = 4.0;

struct Side {
    double sign;
    const char* letter;
    const char* word;
};
constexpr Side sides[] = {{-1.0, "P", "port"}, {1.0, "S", "starboard"}};

Length spread(Length from, Length to, int i, int count) {
    if (count <= 1) return (from + to) / 2.0;
    return from + (static_cast<double>(i) / (count - 1)) * (to - from);
}

/// A hole square to the planking at a place of its outside.
void drill(Hole& hole, const PlankingInput& in, const FasteningChoice& choice, const Side& side,
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

/// Along the strake's width, clear of both edges.
CurvePoint acrossStrake(const PlankLine& line, int strake, Length clear, int i, int count) {
    const auto k = static_cast<std::size_t>(strake);
    const Length width = line.seams[k] - line.seams[k - 1];
    const Length edge = min(max(clear, 0.15 * width), width / 2.0);
    return line.curve->at(spread(line.seams[k - 1] + edge, line.seams[k] - edge, i, count));
}

void fastenButts(const PlankingInput& in, const std::vector<Butt>& butts, FrameFastenings& out) {
    if (!in.butt || in.butt->count <= 0) return;
    const FasteningChoice& choice = *in.butt;
    for (const Butt& butt : butts) {
        const PlankLine& fore = in.frames[butt.bay];
        const PlankLine& aft = in.frames[butt.bay + 1];
        const Length middle = (fore.curve->x() + aft.curve->x()) / 2.0;
        // Ends of planks split: seven diameters from the butt, every other one two further.
        for (const Side& side : sides) {
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

/// Whether a strake ends in the rabbet of stem or sternpost, which stand no further out than the
/// keel is sided; else on a transom.
bool endsOnPost(const PlankingInput& in, const PlankLine& end, int strake) {
    const auto k = static_cast<std::size_t>(strake);
    const Length middle = (end.seams[k - 1] + end.seams[k]) / 2.0;
    return !in.keelSided || end.curve->at(middle).y <= *in.keelSided;
}

void fastenEnds(const PlankingInput& in, FrameFastenings& out) {
    if (!in.hood || in.hood->count <= 0) return;
    const FasteningChoice& choice = *in.hood;
    // A hull of one frame has both its ends at it: the after ones are numbered on.
    const bool oneFrame = in.fore && in.aft && in.fore->frame == in.aft->frame;
    for (const auto& [line, inward, post, flat] :
         {std::tuple(&in.fore, 1.0, "stem", "bow_transom"),
          std::tuple(&in.aft, -1.0, "sternpost", "transom")}) {
        if (!*line || !(*line)->curve) continue;
        const PlankLine& end = **line;
        const int before = oneFrame && line == &in.aft ? choice.count : 0;
        const int strakes = static_cast<int>(end.seams.size()) - 1;
        for (const Side& side : sides) {
            for (int strake = 1; strake <= strakes; ++strake) {
                const std::string member = endsOnPost(in, end, strake) ? post : flat;
                for (int i = 0; i < choice.count; ++i) {
                    Hole hole;
                    const std::string number =
                        std::to_string(strake) + "." + std::to_string(before + i + 1);
                    hole.id = end.frame + "." + side.letter + ".hood." + number;
                    hole.mark = "E" + number;
                    hole.frame = end.frame;
                    hole.group = "hood";
                    hole.joins = {"strake" + std::to_string(strake) + "." + side.letter, member};
                    const double off = i % 2 == 0 ? 4.0 : 6.0;
                    drill(hole, in, choice, side, end.curve->x() + inward * off * choice.diameter,
                          acrossStrake(end, strake, 3.0 * choice.diameter, i, choice.count),
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
        for (const Side& side : sides) {
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
                const Length clear = buttClear * choice.diameter;
                if (butted && abs(x - middle) < clear) x = middle + (x < middle ? -clear : clear);
                drill(hole, in, choice, side, x, place,
                      max(choice.length.value_or(Length{}), in.planking));
                out.holes.push_back(std::move(hole));
            }
        }
    }
}

}  // namespace

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
