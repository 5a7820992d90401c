#include <algorithm>
#include <utility>

#include "frame_parts.h"
#include "practice.h"

namespace fayline {
namespace {

/// Where one plank fastening lies, square to the plank.
Hole plankRod(const FrameFasteningInput& in, const HullSide& side, std::size_t strake,
              std::size_t i, Length along) {
    const FasteningChoice& choice = *in.plank[strake];
    const CurvePoint place = in.curve->at(along);
    Hole hole;
    hole.side = side.word;
    hole.diameter = choice.diameter;
    const double stagger = choice.count > 1 ? (i % 2 == 0 ? -0.2 : 0.2) : 0.0;
    const Length x = in.curve->x() + stagger * in.sided;
    const bool through = choice.kind == FasteningKind::rivet || choice.kind == FasteningKind::bolt;
    const Length stack = in.planking + in.moulded - choice.counterbore;
    hole.length = through ? stack + choice.washerThickness + choice.diameter
                          : choice.length.value_or(Length{});
    const auto at = [&](Length depth) {
        return mirrored(x, side, place.y - place.outY * depth, place.z - place.outZ * depth);
    };
    hole.start = at(choice.counterbore);
    hole.end = at(choice.counterbore + hole.length);
    hole.grip = through ? stack : in.planking - choice.counterbore;
    return hole;
}

Hole plankHole(const FrameFasteningInput& in, const HullSide& side, std::size_t strake,
               std::size_t i, Length along) {
    const FasteningChoice& choice = *in.plank[strake];
    const std::string number = std::to_string(strake + 1);
    Hole hole =
        holeFor(in, choice, side, ("plank." + number).c_str(), static_cast<int>(i) + 1, "P");
    hole.mark = number + static_cast<char>('a' + i);
    hole.group = "plank";
    hole.face = "outer";
    hole.joins = {"strake" + number + "." + side.letter, in.frame + "." + side.letter};
    const Hole rod = plankRod(in, side, strake, i, along);
    hole.start = rod.start;
    hole.end = rod.end;
    hole.length = rod.length;
    hole.grip = rod.grip;
    hole.steps = choice.kind == FasteningKind::woodScrew
                     ? screwSteps(choice, in.planking, in.hardwoodFrame)
                     : throughSteps(choice, in.planking + in.moulded - choice.counterbore);
    return hole;
}

/// Wood between a hole and the nearest of the heel's, over two diameters of the thinner.
Length spareTo(const Hole& hole, const std::vector<Hole>& others) {
    Length least = metres(1);
    for (const Hole& other : others) {
        if (other.side != hole.side || other.group != "heel") continue;
        least = min(least, distanceBetween(hole, other) - (hole.diameter + other.diameter) / 2.0 -
                               2.0 * min(hole.diameter, other.diameter));
    }
    return least;
}

/// What wood lacks between the heel's fastenings and those of the other side, and for their bite.
Length lacksBetween(const std::vector<Hole>& heelHoles, const std::vector<Hole>& others) {
    Length lacks;
    for (const Hole& hole : heelHoles) {
        if (hole.kind == "drift")
            lacks += max(Length{}, biteDiameters * hole.diameter - (hole.length - hole.grip));
        for (const Hole& other : others) {
            const Length body = other.group == "plank" ? min(hole.diameter, other.diameter)
                                                       : max(hole.diameter, other.diameter);
            const Length gap =
                distanceBetween(hole, other) - (hole.diameter + other.diameter) / 2.0;
            lacks += max(Length{}, 2.0 * body - gap);
        }
    }
    return lacks;
}

/// The lowest strakes' fastenings give way to the heel's, clear of their plank's edges and each
/// other: to the nearest place that leaves enough, else to the one that leaves most.
Length giveWayToHeels(const FrameFasteningInput& in, const HullSide& side,
                      const std::vector<Hole>& heelHoles, PlankPlaces& places) {
    constexpr std::size_t strakesNearHeels = 2;
    constexpr Length step = millimetres(2);
    Length lacks;
    for (std::size_t k = 0; k < std::min(strakesNearHeels, places.size()); ++k) {
        if (places[k].empty()) continue;
        const Length diameter = in.plank[k]->diameter;
        for (std::size_t i = 0; i < places[k].size(); ++i) {
            const Length wanted = places[k][i];
            const Length low = i > 0 ? places[k][i - 1] + pitchDiameters * diameter
                                     : in.seams[k] + edgeDiameters * diameter;
            const Length high =
                in.seams[k + 1] - edgeDiameters * diameter -
                pitchDiameters * static_cast<double>(places[k].size() - 1 - i) * diameter;
            const auto spare = [&](Length along) {
                return spareTo(plankRod(in, side, k, i, along), heelHoles);
            };
            Length best = spare(wanted);
            for (Length off = step; best < Length{} && off <= high - low; off += step) {
                for (const Length along : {wanted - off, wanted + off}) {
                    if (along < low || along > high) continue;
                    const Length left = spare(along);
                    if (left <= best) continue;
                    best = left;
                    places[k][i] = along;
                }
            }
            lacks += max(Length{}, -best);
            if (i + 1 < places[k].size())
                places[k][i + 1] = max(places[k][i + 1], places[k][i] + pitchDiameters * diameter);
        }
    }
    return lacks;
}

}  // namespace

PlankPlaces plankPlaces(const FrameFasteningInput& in) {
    PlankPlaces places;
    for (std::size_t k = 0; k + 1 < in.seams.size() && k < in.plank.size(); ++k) {
        places.emplace_back();
        if (!in.plank[k]) continue;
        const Length width = in.seams[k + 1] - in.seams[k];
        const Length edge = min(max(4.0 * in.plank[k]->diameter, 0.2 * width), width / 2.0);
        for (int i = 0; i < in.plank[k]->count; ++i)
            places.back().push_back(
                spread(in.seams[k] + edge, in.seams[k + 1] - edge, i, in.plank[k]->count));
    }
    return places;
}

void placeHeels(const FrameFasteningInput& in, const FasteningChoice& choice, const HullSide& side,
                PlankPlaces& places, FrameFastenings& out) {
    std::optional<Length> least;
    FrameFastenings best;
    PlankPlaces bestPlaces = places;
    for (int variant = 0; variant < heelVariants; ++variant) {
        FrameFastenings tried;
        heels(in, choice, side, variant, tried);
        PlankPlaces moved = places;
        const Length lacks =
            giveWayToHeels(in, side, tried.holes, moved) + lacksBetween(tried.holes, out.holes);
        if (least && lacks >= *least) continue;
        least = lacks;
        best = std::move(tried);
        bestPlaces = std::move(moved);
        if (lacks <= Length{}) break;
    }
    places = std::move(bestPlaces);
    out.holes.insert(out.holes.end(), best.holes.begin(), best.holes.end());
    out.findings.insert(out.findings.end(), best.findings.begin(), best.findings.end());
}

void planks(const FrameFasteningInput& in, const HullSide& side, const PlankPlaces& places,
            FrameFastenings& out) {
    for (std::size_t strake = 0; strake < places.size(); ++strake) {
        for (std::size_t i = 0; i < places[strake].size(); ++i)
            out.holes.push_back(plankHole(in, side, strake, i, places[strake][i]));
    }
}

}  // namespace fayline
