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
    loads.bed =
        BedForces{section.contact, lee * section.contactAt, lee * section.neutral, section.highest};
}

void knockdown(const BallastLoadInput& input, CaseLoads& loads) {
    const double lee = loads.loadCase == LoadCase::knockdownStarboard ? 1.0 : -1.0;
    const Force weight = input.ballast * standardGravity * loads.settings.factor;
    const Length arm = input.axisHeight - input.centre.z;
    loads.total.y = lee * weight;
    loads.totalMoment.x = lee * (weight * arm);
    loads.frames = frameShares(input, loads.totalMoment.x, loads.total.y, Force{});
    if (input.bolts.empty()) return;
    shareMoment(input, lee, weight * arm, loads);
    for (BoltForces& forces : loads.bolts) {
        forces.lateral = weight / static_cast<double>(loads.bolts.size());
        forces.force.y = -lee * forces.lateral;
        forces.demandLateral = forces.lateral * forces.envelope;
    }
}

void groundingUp(const BallastLoadInput& input, CaseLoads& loads) {
    const Force push =
        max(Mass{}, input.boat - input.ballast) * standardGravity * loads.settings.factor;
    loads.total.z = push;
    loads.frames = frameShares(input, Moment{}, Force{}, push);
    Area bed;
    for (const BedSlice& slice : input.bed) bed += slice.length * slice.breadth;
    if (bed.si() <= 0) return;
    loads.bed = BedForces{push, Length{}, Length{}, push / bed};
}

/// What is left over on the ballast when its load, the bolts and the bed are added up.
Residual residualOf(const CaseLoads& loads) {
    double y_N = loads.total.y.si();
    double z_N = loads.total.z.si();
    double x_Nm = loads.totalMoment.x.si();
    for (const BoltForces& bolt : loads.bolts) {
        y_N += bolt.force.y.si();
        z_N += bolt.force.z.si();
        x_Nm += bolt.point.y.si() * bolt.force.z.si();
    }
    if (loads.bed) {
        z_N -= loads.bed->resultant.si();
        x_Nm -= loads.bed->at.si() * loads.bed->resultant.si();
    }
    Residual residual{newtons(std::hypot(y_N, z_N)), newtonMetres(std::abs(x_Nm)), 0};
    const double force_N = std::hypot(loads.total.y.si(), loads.total.z.si());
    const double moment_Nm = std::abs(loads.totalMoment.x.si());
    if (force_N > 0) residual.relative = residual.force.si() / force_N;
    if (moment_Nm > 0)
        residual.relative = std::max(residual.relative, residual.moment.si() / moment_Nm);
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
    if (loadCase == LoadCase::groundingUp) {
        groundingUp(input, loads);
    } else {
        knockdown(input, loads);
    }
    if (input.bolts.empty() && loadCase != LoadCase::groundingUp) {
        loads.carried = false;
        loads.why = "nothing carries this: no ballast bolts";
    }
    loads.residual = residualOf(loads);
    return loads;
}

}  // namespace fayline
