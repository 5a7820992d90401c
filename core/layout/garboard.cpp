#include <algorithm>
#include <cmath>

#include "planking_findings.h"
#include "planking_parts.h"
#include "practice.h"

namespace fayline {
namespace {

constexpr double degree = 3.14159265358979323846 / 180.0;
constexpr int mostSlant = 75;  ///< degrees off square
constexpr int slantStep = 5;
constexpr Length hair = millimetres(0.5);

CurvePoint mixed(const CurvePoint& a, const CurvePoint& b, double t) {
    const double outY = a.outY + t * (b.outY - a.outY);
    const double outZ = a.outZ + t * (b.outZ - a.outZ);
    const double size = std::hypot(outY, outZ);
    return {a.y + t * (b.y - a.y), a.z + t * (b.z - a.z), size > 0 ? outY / size : a.outY,
            size > 0 ? outZ / size : a.outZ};
}

/// The planking near the garboard's lower edge and what it is fastened to, at one x.
struct Place {
    const PlankLine& fore;
    const PlankLine& aft;
    double t = 0.5;  ///< from the fore frame to the aft one
    Length planking;
    GarboardSeat seat;

    [[nodiscard]] CurvePoint outside(Length up) const {
        return mixed(fore.curve->at(up), aft.curve->at(up), t);
    }
};

GarboardSeat mixed(const GarboardSeat& a, const GarboardSeat& b, double t) {
    const auto height = [t](const std::optional<Length>& from, const std::optional<Length>& to) {
        return from && to ? std::optional(*from + t * (*to - *from)) : std::nullopt;
    };
    // Where the frames' own timbers differ, the nearer one's.
    return {t < 0.5 ? a.member : b.member, a.half + t * (b.half - a.half),
            height(a.underside, b.underside), height(a.top, b.top)};
}

/// One way of driving it.
struct Drive {
    CurvePoint place;  ///< outside, with the way it comes out of
    Length beyond;     ///< past the backbone's side when it leaves the plank: bites in nothing
    Length lacksEdge;  ///< of wood to the backbone's nearest face at its point
    [[nodiscard]] Length lacks() const { return max(beyond, lacksEdge); }
};

Drive driven(const Place& place, const FasteningChoice& choice, Length length, int slantDegrees) {
    const double slant = slantDegrees * degree;
    // Aimed so as to leave the plank by its inside or, strongly slanted, the middle of its edge.
    const Length up = max(edgeDiameters * choice.diameter, place.planking / 2.0 * std::tan(slant));
    Drive drive;
    drive.place = place.outside(up);
    const double y = drive.place.outY, z = drive.place.outZ;
    drive.place.outY = std::cos(slant) * y - std::sin(slant) * z;
    drive.place.outZ = std::cos(slant) * z + std::sin(slant) * y;
    Length inPlank = place.planking / std::cos(slant);
    if (slantDegrees > 0) inPlank = min(inPlank, up / std::sin(slant));
    const auto at = [&](Length depth) {
        return CurvePoint{drive.place.y - drive.place.outY * depth,
                          drive.place.z - drive.place.outZ * depth, 0, 0};
    };
    const CurvePoint leaves = at(inPlank);
    drive.beyond = max(Length{}, leaves.y - place.seat.half - hair);
    const CurvePoint point = at(choice.counterbore + length);
    const Length wood = edgeDiameters * choice.diameter;
    drive.lacksEdge = max(Length{}, wood - (place.seat.half - point.y));
    // One from the other side comes as near to the middle.
    drive.lacksEdge = max(drive.lacksEdge, choice.diameter / 2.0 - point.y);
    if (place.seat.top) {
        drive.lacksEdge = max(drive.lacksEdge, wood - (*place.seat.top - point.z));
        drive.beyond = max(drive.beyond, leaves.z - *place.seat.top);
    }
    if (place.seat.underside) {
        drive.lacksEdge = max(drive.lacksEdge, wood - (point.z - *place.seat.underside));
        drive.beyond = max(drive.beyond, *place.seat.underside - leaves.z);
    }
    return drive;
}

/// The least slanted that lacks nothing; else the one that lacks least.
Drive bestDrive(const Place& place, const FasteningChoice& choice, Length length) {
    Drive best = driven(place, choice, length, 0);
    for (int slant = slantStep; slant <= mostSlant && best.lacks() > Length{}; slant += slantStep) {
        const Drive drive = driven(place, choice, length, slant);
        if (drive.lacks() < best.lacks()) best = drive;
    }
    return best;
}

/// What lacks at the garboard, told once.
class Lacking {
  public:
    void add(const Place& place, const FasteningChoice& choice, const Drive& drive,
             const Hole& hole) {
        if (drive.lacks() <= Length{}) return;
        Finding& finding = drive.beyond > Length{} ? grip_ : edge_;
        if (!finding.missing || drive.lacks() > *finding.missing) {
            finding.missing = drive.lacks();
            finding.says = drive.beyond > Length{}
                               ? hole.id + " leaves the plank " + shown(drive.beyond) +
                                     " clear of the " + place.seat.member
                               : hole.id + " lacks " + shown(drive.lacksEdge) +
                                     " of wood beside its point in the " + place.seat.member +
                                     "; 2.5 diameters are " +
                                     shown(edgeDiameters * choice.diameter);
            finding.cure = cureFor(place, choice, *choice.length);
        }
        finding.holes.push_back(hole.id);
    }

    void tell(std::vector<Finding>& findings) {
        for (Finding* finding : {&grip_, &edge_}) {
            if (finding->holes.empty()) continue;
            if (finding->holes.size() > 1)
                finding->says +=
                    "; " + std::to_string(finding->holes.size() - 1) + " more do so too";
            findings.push_back(std::move(*finding));
        }
    }

  private:
    static std::vector<std::string> cureFor(const Place& place, const FasteningChoice& choice,
                                            Length length) {
        for (Length change = millimetres(5); change <= millimetres(60); change += millimetres(5)) {
            for (const Length other : {length + change, length - change}) {
                if (other <= place.planking) continue;
                if (bestDrive(place, choice, other).lacks() <= Length{})
                    return {"garboard.length=" + wholeUp(other)};
            }
        }
        return {};
    }

    Finding grip_{"grip", {}, std::nullopt, "", {}};
    Finding edge_{"edge", {}, std::nullopt, "", {}};
};

}  // namespace

bool garboardBay(const PlankingInput& in, std::size_t bay) {
    const PlankLine& fore = in.frames[bay];
    const PlankLine& aft = in.frames[bay + 1];
    return fore.curve && aft.curve && fore.seat && aft.seat && fore.seams.size() > 1 &&
           aft.seams.size() > 1 && aft.curve->x() > fore.curve->x();
}

void fastenGarboard(const PlankingInput& in, const std::vector<Butt>& butts, FrameFastenings& out) {
    if (!in.garboard || in.garboard->count <= 0) return;
    const FasteningChoice& choice = *in.garboard;
    Lacking lacking;
    for (std::size_t bay = 0; bay + 1 < in.frames.size(); ++bay) {
        if (!garboardBay(in, bay)) continue;
        const PlankLine& fore = in.frames[bay];
        const PlankLine& aft = in.frames[bay + 1];
        const Length from = fore.curve->x();
        const Length length = aft.curve->x() - from;
        const bool butted = std::any_of(butts.begin(), butts.end(), [&](const Butt& butt) {
            return butt.strake == 1 && butt.bay == bay;
        });
        for (const HullSide& side : bothSides) {
            for (int i = 0; i < choice.count; ++i) {
                double t = (i + 1.0) / (choice.count + 1.0);
                // Clear of a butt midway.
                const double clear = endDiameters * choice.diameter / length;
                if (butted && std::abs(t - 0.5) < clear) t = t < 0.5 ? 0.5 - clear : 0.5 + clear;
                const Place place{fore, aft, t, in.planking, mixed(*fore.seat, *aft.seat, t)};
                Hole hole;
                hole.id = fore.frame + "." + side.letter + ".garboard." + std::to_string(i + 1);
                hole.mark = "G" + std::to_string(i + 1);
                hole.frame = fore.frame;
                hole.group = "garboard";
                hole.joins = {std::string("strake1.") + side.letter, place.seat.member};
                const Drive drive =
                    choice.length ? bestDrive(place, choice, *choice.length)
                                  : Drive{place.outside(edgeDiameters * choice.diameter), {}, {}};
                drill(hole, in, choice, side, from + t * length, drive.place,
                      max(choice.length.value_or(Length{}), in.planking));
                if (choice.length) lacking.add(place, choice, drive, hole);
                out.holes.push_back(std::move(hole));
            }
        }
    }
    lacking.tell(out.findings);
}

}  // namespace fayline
