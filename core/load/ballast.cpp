#include "load/ballast.h"

#include <algorithm>
#include <cmath>

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

/// The four ways of sharing the moment. `lee` = +1 when the starboard edge is the tipping line, −1
/// for port.
void shareMoment(const BallastLoadInput& input, double lee, Moment moment, CaseLoads& loads) {
    const std::size_t count = input.bolts.size();
    std::vector<Length> lever(count);
    Length sum, windward;
    Area squares;
    std::vector<CrackedBolt> cracked;
    for (std::size_t i = 0; i < count; ++i) {
        const LoadedBolt& bolt = input.bolts[i];
        const Length u = lee * bolt.joint.y;
        lever[i] = max(Length{}, breadthAt(input.bed, bolt.joint.x) / 2.0 - u);
        sum += lever[i];
        squares += lever[i] * lever[i];
        if (u <= Length{}) windward += lever[i];
        cracked.push_back({u, bolt.modulus * bolt.area / bolt.grip});
    }
    std::vector<CrackedStrip> strips;
    for (const BedSlice& slice : input.bed) strips.push_back({slice.length, slice.breadth / 2.0});
    const CrackedSection section =
        crackedSection(cracked, strips, input.acrossGrain / input.timberDepth, moment);
    loads.settled = section.balanced;
    if (input.acrossGrain.si() <= 0) {
        loads.why = "the keel's wood is not decided, or has no stiffness in the catalogue";
    } else if (!section.balanced) {
        loads.why =
            "no balance between bolts and bed: the bolts stand outside the bed or it has no "
            "breadth";
    }
    for (std::size_t i = 0; i < count; ++i) {
        BoltForces& forces = loads.bolts[i];
        if (sum.si() > 0) forces.equalForce = moment / sum;
        if (windward.si() > 0 && lee * forces.point.y <= Length{})
            forces.windwardOnly = moment / windward;
        if (squares.si() > 0) forces.elastic = moment * lever[i] / squares;
        forces.cracked = section.tension[i];
        forces.force.z = section.tension[i];
        forces.demandAxial = section.tension[i] * forces.envelope;
    }
    loads.bed = BedForces{section.contact, lee * section.contactAt, lee * section.neutral,
                          section.highest, std::nullopt};
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

/// Sideways force, shared so that it also turns the ballast about no other axis.
void shareSideways(Force total, CaseLoads& loads) {
    for (BoltForces& forces : loads.bolts) {
        const Force own = forces.shareRigid * total;
        forces.force.y -= own;
        forces.lateral = abs(own);
        forces.demandLateral =
            std::max(forces.shareTributary, std::abs(forces.shareRigid)) * abs(total);
    }
}

/// Weight hanging on the bolts, added to what a moment puts there: a state in balance, on the safe
/// side of the true one.
void shareHanging(Force total, CaseLoads& loads) {
    for (BoltForces& forces : loads.bolts) {
        forces.force.z += forces.shareRigid * total;
        forces.demandAxial += std::max(forces.shareTributary, std::abs(forces.shareRigid)) * total;
    }
}

void tip(const BallastLoadInput& input, CaseLoads& loads) {
    const double lee = loads.totalMoment.x < Moment{} ? -1.0 : 1.0;
    loads.frames =
        frameShares(input, loads.totalMoment.x, loads.total.y, min(Force{}, loads.total.z));
    if (input.bolts.empty()) return;
    shareMoment(input, lee, abs(loads.totalMoment.x), loads);
    shareSideways(loads.total.y, loads);
    if (loads.total.z < Force{}) shareHanging(-loads.total.z, loads);
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

/// A blow on the fore end: the ballast tips about the after end of the joint, bolts pull in
/// proportion to their distance from it.
void groundingAft(const BallastLoadInput& input, CaseLoads& loads) {
    const Force above = max(Mass{}, input.boat - input.ballast) * standardGravity;
    loads.at = {input.foreEnd, Length{}, input.foot};
    loads.total.x = bluntness(input.waterline) * loads.settings.factor * above;
    loads.totalMoment = momentAbout(originOf(input), loads.at, loads.total);
    loads.frames = frameShares(input, Moment{}, Force{}, Force{});
    if (input.bolts.empty() || input.bed.empty()) return;
    const auto count = static_cast<double>(input.bolts.size());
    const Length pivot = input.bed.back().x + input.bed.back().length / 2.0;
    Length height;
    Area squares;
    for (const LoadedBolt& bolt : input.bolts) {
        height += bolt.joint.z / count;
        const Length lever = max(Length{}, pivot - bolt.joint.x);
        squares += lever * lever;
    }
    const Moment moment = (height - input.foot) * loads.total.x;
    Force pressed;
    for (BoltForces& forces : loads.bolts) {
        const Length lever = max(Length{}, pivot - forces.point.x);
        if (squares.si() > 0) forces.elastic = moment * lever / squares;
        forces.force.x = -loads.total.x / count;
        forces.force.z = forces.elastic;
        forces.lateral = forces.demandLateral = loads.total.x / count;
        forces.demandAxial = forces.elastic;
        pressed += forces.elastic;
    }
    loads.bed = BedForces{pressed, Length{}, Length{}, Stress{}, pivot};
}

/// The boat stands on her ballast: aground upright, or ashore.
void standing(const BallastLoadInput& input, CaseLoads& loads) {
    const Force push =
        max(Mass{}, input.boat - input.ballast) * standardGravity * loads.settings.factor;
    loads.total.z = push;
    loads.frames = frameShares(input, Moment{}, Force{}, push);
    // The hull stands on her floors evenly, however the ballast is shaped.
    for (FrameShare& frame : loads.frames)
        frame.tributary = 1.0 / static_cast<double>(loads.frames.size());
    Area bed;
    for (const BedSlice& slice : input.bed) bed += slice.length * slice.breadth;
    if (bed.si() <= 0) return;
    loads.bed = BedForces{push, Length{}, Length{}, push / bed, input.centre.x};
}

void hanging(const BallastLoadInput& input, CaseLoads& loads) {
    const Force weight = input.ballast * standardGravity * loads.settings.factor;
    loads.total.z = -weight;
    loads.frames = frameShares(input, Moment{}, Force{}, -weight);
    shareHanging(weight, loads);
}

/// What is left over on the ballast when its load, the bolts and the bed are added up. In a
/// knockdown the bed's place along the keel is not worked out, so pitch is left out there.
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
    const bool pitchKnown = !loads.bed || loads.bed->along;
    const double pitch_Nm = pitchKnown ? moment.y.si() : 0.0;
    const double size_N = std::hypot(loads.total.x.si(), loads.total.y.si(), loads.total.z.si());
    const double size_Nm = std::hypot(loads.totalMoment.x.si(), loads.totalMoment.y.si());
    Residual residual{newtons(std::hypot(force.x.si(), force.y.si(), force.z.si())),
                      newtonMetres(std::hypot(moment.x.si(), pitch_Nm, moment.z.si())), 0};
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
            groundingAft(input, loads);
            break;
        case LoadCase::groundingUp:
        case LoadCase::onKeel:
            standing(input, loads);
            break;
        case LoadCase::slings:
            hanging(input, loads);
            break;
        case LoadCase::seaBottom:
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
