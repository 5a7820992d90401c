#include "layout/ballast_bolts.h"

#include <algorithm>
#include <cmath>

#include "fastener/bolt_hole.h"

namespace fayline {
namespace {

/// A place a bolt can take by rule.
struct Seat {
    Length x;
    std::string frame;
    std::vector<std::string> floors;
    std::optional<Length> width;
    std::optional<Length> top;  ///< of the floor; none between floors
};

std::vector<Seat> floorSeats(const BallastBoltInput& input) {
    std::vector<Seat> seats;
    for (const FloorSeat& floor : input.floors) {
        if (sectionAt(input.sections, floor.x)) {
            seats.push_back({floor.x, floor.frame, {floor.frame}, floor.siding, floor.top});
        }
    }
    return seats;
}

std::vector<Seat> betweenSeats(const BallastBoltInput& input) {
    std::vector<Seat> seats;
    for (std::size_t i = 0; i + 1 < input.floors.size(); ++i) {
        const FloorSeat& fore = input.floors[i];
        const FloorSeat& aft = input.floors[i + 1];
        const Length x = fore.x + (aft.x - fore.x) / 2.0;
        if (sectionAt(input.sections, x))
            seats.push_back({x, fore.frame, {fore.frame, aft.frame}, std::nullopt, std::nullopt});
    }
    return seats;
}

/// Every k-th seat so that the first and last are used and the rest lie even.
std::optional<Seat> seatFor(const std::vector<Seat>& seats, std::size_t bolt, std::size_t bolts) {
    if (seats.empty()) return std::nullopt;
    if (bolts <= 1) return seats[seats.size() / 2];
    const double step = static_cast<double>(seats.size() - 1) / static_cast<double>(bolts - 1);
    return seats[static_cast<std::size_t>(std::lround(step * static_cast<double>(bolt)))];
}

/// A bolt placed by hand takes what stands at its place: the floor whose siding it falls in, or the
/// two it stands between.
Seat seatAt(const BallastBoltInput& input, Length x, bool between) {
    Seat seat{x, "", {}, std::nullopt, std::nullopt};
    if (input.floors.empty()) return seat;
    const auto nearest = std::min_element(
        input.floors.begin(), input.floors.end(),
        [&](const FloorSeat& a, const FloorSeat& b) { return abs(a.x - x) < abs(b.x - x); });
    seat.frame = nearest->frame;
    if (!between && abs(nearest->x - x) * 2.0 <= nearest->siding) {
        seat.floors = {nearest->frame};
        seat.top = nearest->top;
        // The washer finds twice the distance to the nearer face of the floor.
        seat.width = nearest->siding - 2.0 * abs(nearest->x - x);
        return seat;
    }
    const auto behind = std::find_if(input.floors.begin(), input.floors.end(),
                                     [&](const FloorSeat& f) { return f.x > x; });
    if (behind != input.floors.begin()) seat.floors.push_back((behind - 1)->frame);
    if (behind != input.floors.end()) seat.floors.push_back(behind->frame);
    return seat;
}

std::vector<HoleStep> drillSteps(const BoltChoice& bolt, Length grip) {
    const auto hole =
        boltHole({bolt.diameter, grip, HoleFit::snug, HoleEnd::head, std::nullopt, std::nullopt});
    std::vector<HoleStep> steps;
    if (!hole) return steps;
    for (const DrillStep& step : hole->steps)
        steps.push_back({step.what, step.bit, step.depth.value_or(grip)});
    return steps;
}

}  // namespace

std::optional<JointSection> sectionAt(const std::vector<JointSection>& sections, Length x) {
    if (sections.empty() || x < sections.front().x || x > sections.back().x) return std::nullopt;
    const auto above = std::lower_bound(sections.begin(), sections.end(), x,
                                        [](const JointSection& s, Length at) { return s.x < at; });
    if (above == sections.begin() || above->x == x) return *above;
    const JointSection& a = *(above - 1);
    const JointSection& b = *above;
    const double t = (x - a.x) / (b.x - a.x);
    return JointSection{x, a.keelTop + t * (b.keelTop - a.keelTop),
                        a.joint + t * (b.joint - a.joint),
                        a.ballastBottom + t * (b.ballastBottom - a.ballastBottom),
                        a.breadth + t * (b.breadth - a.breadth)};
}

BallastBoltLayout layOutBallastBolts(const BallastBoltInput& input) {
    BallastBoltLayout layout;
    const auto floors = floorSeats(input);
    const auto spaces = betweenSeats(input);
    for (std::size_t i = 0; i < input.bolts.size(); ++i) {
        const BoltChoice& bolt = input.bolts[i];
        const auto seat = bolt.x ? std::optional<Seat>(seatAt(input, *bolt.x, bolt.between))
                                 : seatFor(bolt.between ? spaces : floors, i, input.bolts.size());
        if (!seat) continue;
        const Length y =
            bolt.offset.value_or(i % 2 == 0 ? -input.alternateOffset : input.alternateOffset);
        const auto section = sectionAt(input.sections, seat->x);
        if (!section) {
            layout.findings.push_back({"bed",
                                       {bolt.id},
                                       std::nullopt,
                                       bolt.id + " stands off the ballast: nothing there to hold",
                                       {bolt.id + ".x="}});
            continue;
        }
        PlacedBolt placed{bolt.id,
                          seat->frame,
                          seat->floors,
                          bolt.between || !seat->top,
                          {seat->x, y, section->joint},
                          {},
                          seat->width};
        const Length upper = seat->top.value_or(section->keelTop);
        const Length lower = section->ballastBottom + bolt.recess;
        placed.grip = upper - lower;
        const Length proud = bolt.washerThickness + bolt.diameter + 2.0 * bolt.pitch;

        Hole hole;
        hole.id = bolt.id;
        hole.mark = bolt.id;
        hole.frame = seat->frame;
        hole.side = y < Length{} ? "port" : y > Length{} ? "starboard" : "";
        hole.face = "inner";
        hole.group = "ballast";
        hole.kind = "bolt";
        if (seat->top) hole.joins.push_back(seat->frame + ".floor");
        hole.joins.insert(hole.joins.end(), {"keel", "ballast"});
        hole.start = {seat->x, y, upper + proud};
        hole.end = {seat->x, y, lower - proud};
        hole.diameter = bolt.diameter;
        hole.metal = bolt.metal;
        hole.washerDiameter = bolt.washerDiameter;
        hole.washerThickness = bolt.washerThickness;
        hole.grip = placed.grip;
        hole.length = placed.grip + 2.0 * proud;
        hole.steps = drillSteps(bolt, placed.grip);
        layout.placed.push_back(std::move(placed));
        layout.holes.push_back(std::move(hole));
    }
    auto found = ballastBoltFindings(input, layout);
    layout.findings.insert(layout.findings.end(), found.begin(), found.end());
    return layout;
}

}  // namespace fayline
