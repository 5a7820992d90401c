#include "load/ballast.h"

#include <algorithm>
#include <cmath>

#include "load/plane.h"

namespace fayline {
namespace {

Length breadthAt(const std::vector<BedSlice>& bed, Length x) {
    if (bed.empty()) return {};
    const auto nearest = std::min_element(
        bed.begin(), bed.end(),
        [&](const BedSlice& a, const BedSlice& b) { return abs(a.x - x) < abs(b.x - x); });
    return nearest->breadth;
}

std::vector<FrameShare> frameShares(const BallastLoadInput& input, Moment moment, Force lateral,
                                    Force vertical) {
    std::vector<Length> places;
    for (const BearingFrame& frame : input.frames) places.push_back(frame.x);
    const Shares shares = sharesAlong(input.bed, input.centre.x, places);
    std::vector<FrameShare> result;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const double share = shares.rigid[i];
        result.push_back({input.frames[i].frame, places[i], shares.tributary[i], share,
                          share * moment, share * lateral, share * vertical});
    }
    return result;
}

std::vector<BoltForces> namedBolts(const BallastLoadInput& input) {
    std::vector<Length> places;
    for (const LoadedBolt& bolt : input.bolts) places.push_back(bolt.joint.x);
    const Shares shares = sharesAlong(input.bed, input.centre.x, places);
    std::vector<BoltForces> result;
    for (std::size_t i = 0; i < places.size(); ++i) {
        BoltForces forces;
        forces.id = input.bolts[i].id;
        forces.frame = input.bolts[i].frame;
        forces.point = input.bolts[i].joint;
        forces.shareTributary = shares.tributary[i];
        forces.shareRigid = shares.rigid[i];
        forces.envelope =
            std::max(shares.tributary[i], shares.rigid[i]) * static_cast<double>(places.size());
        result.push_back(std::move(forces));
    }
    return result;
}

/// Ways of sharing a tipping moment shown for comparison. `lee` = +1 when the starboard edge is the
/// tipping line, −1 for port.
void compareWays(const BallastLoadInput& input, double lee, Moment moment, CaseLoads& loads) {
    const std::size_t count = input.bolts.size();
    std::vector<Length> lever(count);
    Length sum, windward;
    Area squares;
    for (std::size_t i = 0; i < count; ++i) {
        const LoadedBolt& bolt = input.bolts[i];
        const Length u = lee * bolt.joint.y;
        lever[i] = max(Length{}, breadthAt(input.bed, bolt.joint.x) / 2.0 - u);
        sum += lever[i];
        squares += lever[i] * lever[i];
        if (u <= Length{}) windward += lever[i];
    }
    for (std::size_t i = 0; i < count; ++i) {
        BoltForces& forces = loads.bolts[i];
        if (sum.si() > 0) forces.equalForce = moment / sum;
        if (windward.si() > 0 && lee * forces.point.y <= Length{})
            forces.windwardOnly = moment / windward;
        if (squares.si() > 0) forces.elastic = moment * lever[i] / squares;
    }
}

/// What the load is about: the keel axis at the place of the ballast's centre.
Point originOf(const BallastLoadInput& input) {
    return {input.centre.x, Length{}, input.axisHeight};
}

MomentVector momentAbout(const Point& origin, const Point& at, const ForceVector& force) {
    const Length x = at.x - origin.x;
    const Length y = at.y - origin.y;
    const Length z = at.z - origin.z;
    return {y * force.z - z * force.y, z * force.x - x * force.z, x * force.y - y * force.x};
}

/// Forces in the joint's plane, shared so that the ballast does not turn in it either: sideways by
/// rigid share, fore and aft evenly; where the bolts' middle lies off the centreline, they hold
/// that turning in proportion to their distance from it.
void shareInPlane(const ForceVector& total, CaseLoads& loads) {
    const auto count = static_cast<double>(loads.bolts.size());
    Length middleX, middleY;
    for (const BoltForces& bolt : loads.bolts) {
        middleX += bolt.point.x / count;
        middleY += bolt.point.y / count;
    }
    Area squares;
    for (const BoltForces& bolt : loads.bolts) {
        const Length x = bolt.point.x - middleX;
        const Length y = bolt.point.y - middleY;
        squares += x * x + y * y;
    }
    const ForcePerLength turn = squares.si() > 0 ? total.x * middleY / squares : ForcePerLength{};
    for (BoltForces& bolt : loads.bolts) {
        bolt.force.x = turn * (bolt.point.y - middleY) - total.x / count;
        bolt.force.y = -(turn * (bolt.point.x - middleX)) - bolt.shareRigid * total.y;
        bolt.lateral = newtons(std::hypot(bolt.force.x.si(), bolt.force.y.si()));
        const Force across =
            std::max(bolt.shareTributary, std::abs(bolt.shareRigid)) * abs(total.y);
        bolt.demandLateral = max(bolt.lateral, newtons(std::hypot(bolt.force.x.si(), across.si())));
    }
}

/// Along the fastenings: bolts that only pull against a bed that only pushes, ballast and keel
/// plane to each other.
void sharePlane(const BallastLoadInput& input, CaseLoads& loads) {
    const Point origin = originOf(input);
    std::vector<PlaneBolt> bolts;
    std::vector<PlaneStrip> bed;
    MomentVector turning = momentAbout(origin, loads.at, loads.total);
    for (std::size_t i = 0; i < input.bolts.size(); ++i) {
        const LoadedBolt& bolt = input.bolts[i];
        bolts.push_back(
            {bolt.joint.x - origin.x, bolt.joint.y, bolt.modulus * bolt.area / bolt.grip});
        const MomentVector own = momentAbout(origin, bolt.joint, loads.bolts[i].force);
        turning.x += own.x;
        turning.y += own.y;
    }
    for (const BedSlice& slice : input.bed)
        bed.push_back({slice.x - origin.x, slice.length, slice.breadth / 2.0});
    const PlaneSection section = planeSection(bolts, bed, input.acrossGrain / input.timberDepth,
                                              {loads.total.z, turning.x, turning.y});
    loads.settled = section.balanced;
    if (input.acrossGrain.si() <= 0) {
        loads.why = "the keel's wood is not decided, or has no stiffness in the catalogue";
    } else if (!section.balanced) {
        loads.why =
            "no balance between bolts and bed: the bolts stand outside the bed or it has no "
            "breadth";
    }
    for (std::size_t i = 0; i < bolts.size(); ++i) {
        loads.bolts[i].cracked = section.tension[i];
        loads.bolts[i].force.z = section.tension[i];
    }
    if (section.contact > Force{}) {
        loads.bed = BedForces{section.contact, section.contactY, section.neutral, section.highest,
                              origin.x + section.contactX};
    }
}

/// The joint holds a force that tips the ballast sideways, and what hangs on it.
void tip(const BallastLoadInput& input, CaseLoads& loads) {
    const double lee = loads.totalMoment.x < Moment{} ? -1.0 : 1.0;
    loads.frames =
        frameShares(input, loads.totalMoment.x, loads.total.y, min(Force{}, loads.total.z));
    if (input.bolts.empty()) return;
    compareWays(input, lee, abs(loads.totalMoment.x), loads);
    shareInPlane(loads.total, loads);
    sharePlane(input, loads);
    // Never less than what keeps the ballast in balance.
    for (BoltForces& bolt : loads.bolts)
        bolt.demandAxial = bolt.cracked * std::max(1.0, bolt.envelope);
}

constexpr double sine30 = 0.5;
constexpr double cosine30 = 0.86602540378443865;

/// Knocked down flat, or heeled 30 degrees with the ballast hanging as well as tipping.
void heeled(const BallastLoadInput& input, double lee, bool flat, CaseLoads& loads) {
    const Force weight = input.ballast * standardGravity * loads.settings.factor;
    loads.total.y = lee * (flat ? 1.0 : sine30) * weight;
    if (!flat) loads.total.z = -cosine30 * weight;
    loads.totalMoment = momentAbout(originOf(input), loads.at, loads.total);
    tip(input, loads);
}

/// A quarter of the weight above, sideways at the ballast's foot: judgement.
constexpr double sidewaysPart = 0.25;

void pushedSideways(const BallastLoadInput& input, double towards, CaseLoads& loads) {
    const Force above = max(Mass{}, input.boat - input.ballast) * standardGravity;
    loads.at = {input.centre.x, Length{}, input.foot};
    loads.total.y = towards * sidewaysPart * loads.settings.factor * above;
    loads.totalMoment = momentAbout(originOf(input), loads.at, loads.total);
    tip(input, loads);
}

/// Factor on the weight above, growing with waterline length (ISO 12215-9:2012 load case 4, from
/// memory).
double bluntness(Length waterline) {
    const double part = std::clamp((waterline.si() - 10.0) / 10.0, 0.0, 1.0);
    return 1.2 + part * (3.0 - 1.2);
}

/// Going astern a boat is slower: half the blow from ahead (judgement).
constexpr double asternPart = 0.5;

/// A blow on the ballast's fore end pointing aft, or on its after end pointing forward.
void struckEndOn(const BallastLoadInput& input, bool fromAhead, CaseLoads& loads) {
    loads.frames = frameShares(input, Moment{}, Force{}, Force{});
    if (input.bed.empty()) return;
    const Force above = max(Mass{}, input.boat - input.ballast) * standardGravity;
    const Length fore = input.bed.front().x - input.bed.front().length / 2.0;
    const Length aft = input.bed.back().x + input.bed.back().length / 2.0;
    loads.at = {fromAhead ? fore : aft, Length{}, input.foot};
    loads.total.x = (fromAhead ? 1.0 : -asternPart) * bluntness(input.waterline) *
                    loads.settings.factor * above;
    loads.totalMoment = momentAbout(originOf(input), loads.at, loads.total);
    if (input.bolts.empty()) return;
    shareInPlane(loads.total, loads);
    sharePlane(input, loads);
    // For comparison: about the far end of the joint, in proportion to distance.
    const Length pivot = fromAhead ? aft : fore;
    Area squares;
    for (const BoltForces& bolt : loads.bolts)
        squares += (pivot - bolt.point.x) * (pivot - bolt.point.x);
    for (BoltForces& bolt : loads.bolts) {
        if (squares.si() > 0)
            bolt.elastic = abs(loads.totalMoment.y) * abs(pivot - bolt.point.x) / squares;
        bolt.demandAxial = bolt.cracked;
    }
}

/// The boat stands on her ballast: aground upright, or ashore.
void standing(const BallastLoadInput& input, CaseLoads& loads) {
    const Force push =
        max(Mass{}, input.boat - input.ballast) * standardGravity * loads.settings.factor;
    loads.total.z = push;
    loads.frames = frameShares(input, Moment{}, Force{}, push);
    Area bed;
    for (const BedSlice& slice : input.bed) bed += slice.length * slice.breadth;
    if (bed.si() <= 0) return;
    loads.bed = BedForces{push, Length{}, Length{}, push / bed, input.centre.x};
}

void hanging(const BallastLoadInput& input, CaseLoads& loads) {
    const Force weight = input.ballast * standardGravity * loads.settings.factor;
    loads.total.z = -weight;
    loads.frames = frameShares(input, Moment{}, Force{}, -weight);
    if (input.bolts.empty()) return;
    sharePlane(input, loads);
    for (BoltForces& bolt : loads.bolts) {
        const double share = std::max(bolt.shareTributary, std::abs(bolt.shareRigid));
        bolt.demandAxial = max(bolt.cracked, share * weight);
    }
}

/// What is left over on the ballast when its load, the bolts and the bed are added up: three forces
/// and three moments.
Residual residualOf(const BallastLoadInput& input, const CaseLoads& loads) {
    const Point origin = originOf(input);
    ForceVector force = loads.total;
    MomentVector moment = momentAbout(origin, loads.at, loads.total);
    const auto add = [&](const Point& at, const ForceVector& own) {
        force.x += own.x;
        force.y += own.y;
        force.z += own.z;
        const MomentVector turning = momentAbout(origin, at, own);
        moment.x += turning.x;
        moment.y += turning.y;
        moment.z += turning.z;
    };
    for (const BoltForces& bolt : loads.bolts) add(bolt.point, bolt.force);
    if (loads.bed) {
        const Point at{loads.bed->along.value_or(origin.x), loads.bed->at, origin.z};
        add(at, {Force{}, Force{}, -loads.bed->resultant});
    }
    const double size_N = std::hypot(loads.total.x.si(), loads.total.y.si(), loads.total.z.si());
    const double size_Nm = std::hypot(loads.totalMoment.x.si(), loads.totalMoment.y.si());
    Residual residual{newtons(std::hypot(force.x.si(), force.y.si(), force.z.si())),
                      newtonMetres(std::hypot(moment.x.si(), moment.y.si(), moment.z.si())), 0};
    if (size_N > 0) residual.relative = residual.force.si() / size_N;
    if (size_Nm > 0)
        residual.relative = std::max(residual.relative, residual.moment.si() / size_Nm);
    return residual;
}

}  // namespace

CaseLoads ballastLoads(const BallastLoadInput& input, LoadCase loadCase,
                       const CaseSettings& settings) {
    CaseLoads loads;
    loads.loadCase = loadCase;
    loads.settings = settings;
    loads.axisHeight = input.axisHeight;
    loads.at = input.centre;
    loads.bolts = namedBolts(input);
    switch (loadCase) {
        case LoadCase::knockdownPort:
        case LoadCase::knockdownStarboard:
            heeled(input, loadCase == LoadCase::knockdownStarboard ? 1.0 : -1.0, true, loads);
            break;
        case LoadCase::sailingPort:
        case LoadCase::sailingStarboard:
            heeled(input, loadCase == LoadCase::sailingStarboard ? 1.0 : -1.0, false, loads);
            break;
        case LoadCase::groundingPort:
        case LoadCase::groundingStarboard:
            pushedSideways(input, loadCase == LoadCase::groundingStarboard ? 1.0 : -1.0, loads);
            break;
        case LoadCase::groundingAft:
        case LoadCase::groundingForward:
            struckEndOn(input, loadCase == LoadCase::groundingAft, loads);
            break;
        case LoadCase::groundingUp:
        case LoadCase::onKeel:
            standing(input, loads);
            break;
        case LoadCase::slings:
            hanging(input, loads);
            break;
        case LoadCase::seaBottom:
        case LoadCase::seaSide:
        case LoadCase::swelling:
        case LoadCase::springback:
            loads.frames = frameShares(input, Moment{}, Force{}, Force{});
            break;
    }
    if (input.bolts.empty() && loadsTheKeel(loadCase) && !needsNoBallast(loadCase)) {
        loads.carried = false;
        loads.why = "nothing carries this: no ballast bolts";
    }
    const bool stands = loadCase == LoadCase::groundingUp || loadCase == LoadCase::onKeel;
    if (!stands || loads.bed) loads.residual = residualOf(input, loads);
    return loads;
}

}  // namespace fayline
