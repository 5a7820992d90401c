// One joint, timed against plain scalar code that works the same yield modes. Ratios of one run,
// the two taken in turn; the least of many rounds. Release build, quiet machine.

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <vector>

#include "joint/ec5_bearing.h"
#include "joint/ec5_lateral.h"
#include "joint/moisture.h"
#include "joint/us_bearing.h"
#include "joint/us_lateral.h"
#include "joint/work_joint.h"

using namespace fayline;

namespace {

constexpr double pound_N = 4.4482216152605;
constexpr double psi_Pa = pound_N / (0.0254 * 0.0254);
constexpr int joints = 512;

/// Sizes of one two-member bolted joint in pounds, inches, newtons and millimetres.
struct Plain {
    double d_in, side_in, main_in, gravity_s, gravity_m, angle_deg, yield_psi;
    double d_mm, t1_mm, t2_mm, density1, density2, ultimate_MPa;
};

std::vector<Plain> made() {
    std::vector<Plain> all;
    for (int i = 0; i < joints; ++i) {
        const double part = static_cast<double>(i) / joints;
        Plain p{};
        p.d_in = 0.25 + 0.5 * part;
        p.side_in = 1.0 + 1.5 * part;
        p.main_in = 3.5 - 1.5 * part;
        p.gravity_s = 0.35 + 0.3 * part;
        p.gravity_m = 0.70 - 0.2 * part;
        p.angle_deg = 10.0 + 70.0 * part;
        p.yield_psi = 45000 + 9000 * part;
        p.d_mm = p.d_in * 25.4;
        p.t1_mm = p.side_in * 25.4;
        p.t2_mm = p.main_in * 25.4;
        p.density1 = 320 + 250 * part;
        p.density2 = 600 - 150 * part;
        p.ultimate_MPa = 400 + 100 * part;
        all.push_back(p);
    }
    return all;
}

struct Sum {
    double us = 0, ec5 = 0;
    int modes = 0;
};

/// The closed forms of NDS Table 12.3.1A and EN 1995-1-1 8.6, doubles only.
void plainJoint(const Plain& p, Sum& sum) {
    const double sine = std::sin(p.angle_deg * 3.14159265358979 / 180.0);
    const double cosine = std::cos(p.angle_deg * 3.14159265358979 / 180.0);
    const double fes = 11200 * p.gravity_s;
    const double along = 11200 * p.gravity_m;
    const double across = 6100 * std::pow(p.gravity_m, 1.45) / std::sqrt(p.d_in);
    const double fem = along * across / (along * sine * sine + across * cosine * cosine);
    const double re = fem / fes, rt = p.main_in / p.side_in, d2 = p.d_in * p.d_in;
    const double k1 = (std::sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re) -
                       re * (1 + rt)) /
                      (1 + re);
    const double k2 = -1 + std::sqrt(2 * (1 + re) + 2 * p.yield_psi * (1 + 2 * re) * d2 /
                                                        (3 * fem * p.main_in * p.main_in));
    const double k3 = -1 + std::sqrt(2 * (1 + re) / re + 2 * p.yield_psi * (2 + re) * d2 /
                                                             (3 * fem * p.side_in * p.side_in));
    const double grain = 1 + 0.25 * p.angle_deg / 90;
    const double us[6] = {p.d_in * p.main_in * fem / (4 * grain),
                          p.d_in * p.side_in * fes / (4 * grain),
                          k1 * p.d_in * p.side_in * fes / (3.6 * grain),
                          k2 * p.d_in * p.main_in * fem / ((1 + 2 * re) * 3.2 * grain),
                          k3 * p.d_in * p.side_in * fem / ((2 + re) * 3.2 * grain),
                          d2 / (3.2 * grain) * std::sqrt(2 * fem * p.yield_psi / (3 * (1 + re)))};
    const double f1 = 0.082 * (1 - 0.01 * p.d_mm) * p.density1;
    const double k90 = 0.90 + 0.015 * p.d_mm;
    const double f2 =
        0.082 * (1 - 0.01 * p.d_mm) * p.density2 / (k90 * sine * sine + cosine * cosine);
    const double beta = f2 / f1, moment = 0.3 * p.ultimate_MPa * std::pow(p.d_mm, 2.6);
    const double t1 = p.t1_mm, t2 = p.t2_mm, q = f1 * p.d_mm, ratio = t2 / t1;
    const double ec5[6] = {
        q * t1,
        f2 * t2 * p.d_mm,
        q * t1 / (1 + beta) *
            (std::sqrt(beta + 2 * beta * beta * (1 + ratio + ratio * ratio) +
                       beta * beta * beta * ratio * ratio) -
             beta * (1 + ratio)),
        1.05 * q * t1 / (2 + beta) *
            (std::sqrt(2 * beta * (1 + beta) + 4 * beta * (2 + beta) * moment / (q * t1 * t1)) -
             beta),
        1.05 * q * t2 / (1 + 2 * beta) *
            (std::sqrt(2 * beta * beta * (1 + beta) +
                       4 * beta * (1 + 2 * beta) * moment / (q * t2 * t2)) -
             beta),
        1.15 * std::sqrt(2 * beta / (1 + beta)) * std::sqrt(2 * moment * q)};
    const auto least = std::min_element(us, us + 6);
    const auto lowest = std::min_element(ec5, ec5 + 6);
    sum.us += *least * pound_N;
    sum.ec5 += *lowest;
    sum.modes += static_cast<int>(least - us) + static_cast<int>(lowest - ec5);
}

/// The same joint as the program holds one: typed quantities.
struct Typed {
    Length d, side, main;
    SpecificGravityOvenDry gravitySide, gravityMain;
    CharacteristicDensity density1, density2;
    Stress bendingYield, ultimate;
    Angle angle;
};

Typed typed(const Plain& p) {
    return {inches(p.d_in),
            inches(p.side_in),
            inches(p.main_in),
            {p.gravity_s},
            {p.gravity_m},
            {kilogramsPerCubicMetre(p.density1)},
            {kilogramsPerCubicMetre(p.density2)},
            Stress::fromSi(p.yield_psi * psi_Pa),
            megapascals(p.ultimate_MPa),
            Angle::degrees(p.angle_deg)};
}

/// The same with the program's own functions: units, names of modes, gaps, ropes.
void ownJoint(const Typed& t, Sum& sum) {
    const Direction grain = Direction::of(t.angle);
    const Moment hinge = dowelMoment(t.bendingYield, t.d);
    const DowelInput dowel{dowelBearingUs(t.gravitySide, t.d, Direction{}) * t.d,
                           dowelBearingUs(t.gravityMain, t.d, grain) * t.d,
                           t.side,
                           t.main,
                           {},
                           hinge,
                           hinge};
    const UsLateral us = usSingleShear(dowelModes(dowel), usReduction(t.d, t.d, t.angle));
    const Ec5Dowel ec5{embedmentLarge(t.density1, t.d, Direction{}, WoodFamily::hardwood),
                       embedmentLarge(t.density2, t.d, grain, WoodFamily::hardwood),
                       t.side,
                       t.main,
                       t.d,
                       yieldMomentEc5(t.ultimate, t.d, DowelSection::round),
                       {}};
    const Ec5Lateral lateral = ec5SingleShear(ec5, {}, RopeLimits::bolt);
    sum.us += inNewtons(us.reference);
    sum.ec5 += inNewtons(lateral.onePlane);
    sum.modes += static_cast<int>(us.governs.size() + lateral.governs.size());
}

Figure<Stress> stress(double value_MPa) {
    return {megapascals(value_MPa), Standing::read, "bench, a source of the usual length"};
}

Joint whole(const Plain& p, FastenerKind kind) {
    Joint joint;
    for (const double gravity : {p.gravity_s, p.gravity_m}) {
        JointMember member;
        member.name = "timber";
        member.family = WoodFamily::hardwood;
        member.gravity = {SpecificGravityOvenDry{gravity}, Standing::read, "a published table"};
        member.gravityTwelve = {SpecificGravityTwelve{gravity * 0.95}, Standing::read, "a table"};
        member.density = {CharacteristicDensity{kilogramsPerCubicMetre(gravity * 880)},
                          Standing::read, "a class of the standard"};
        member.acrossUs = stress(5.5);
        member.acrossEc5 = stress(6.3);
        member.acrossMean = stress(4.6);
        member.tensionUs = stress(10);
        member.tensionEc5 = stress(18);
        member.shearUs = stress(1.4);
        member.thickness = inches(2);
        member.width = inches(6);
        joint.members.push_back(member);
    }
    joint.members[1].grain = Angle::degrees(p.angle_deg);
    joint.fastener.kind = kind;
    joint.fastener.metal.yield = stress(262);
    joint.fastener.metal.ultimate = stress(483);
    joint.fastener.metal.shear = stress(290);
    joint.placement = Placement{};
    joint.placement->edge = inches(4);
    joint.placement->edgeLoadedAcross = true;
    joint.placement->end = inches(8);
    joint.load = JointLoad{newtons(500), newtons(300)};
    if (kind == FastenerKind::woodScrew) {
        joint.fastener.gauge = Gauge(14);
        joint.fastener.length = inches(3.5);
        joint.fastener.head = FastenerEnd::countersunk;
        joint.fastener.point = FastenerEnd::blind;
    } else {
        joint.fastener.diameter = inches(p.d_in);
        joint.fastener.root = inches(p.d_in * 0.82);
        joint.fastener.pitch = inches(1.0 / 13);
        joint.fastener.nutHeight = inches(0.43);
        joint.fastener.headHeight = inches(0.3);
        joint.fastener.headBearing = EndBearing{inches(1.5), inches(0.25)};
        joint.fastener.pointBearing = EndBearing{inches(1.5), inches(0.25)};
    }
    return joint;
}

double nanoseconds(const std::function<void()>& work, int times) {
    const auto start = std::chrono::steady_clock::now();
    for (int i = 0; i < times; ++i) work();
    const std::chrono::duration<double, std::nano> taken = std::chrono::steady_clock::now() - start;
    return taken.count() / times / joints;
}

}  // namespace

int main(int count, char** words) {
    const int rounds = count > 1 ? std::max(1, std::atoi(words[1])) : 40;
    const auto plain = made();
    std::vector<Joint> screws, bolts;
    std::vector<Typed> own;
    for (const Plain& p : plain) {
        own.push_back(typed(p));
        screws.push_back(whole(p, FastenerKind::woodScrew));
        bolts.push_back(whole(p, FastenerKind::bolt));
    }
    Sum one, other;
    double check = 0;
    const auto all = [&](const std::vector<Joint>& set) {
        for (const Joint& joint : set)
            check += inNewtons(workJoint(joint)->us.lateral->state.working);
    };
    double least[4] = {1e99, 1e99, 1e99, 1e99};
    for (int round = 0; round < rounds; ++round) {
        const auto take = [&](double& slot, const std::function<void()>& work, int times) {
            slot = std::min(slot, nanoseconds(work, times));
        };
        take(
            least[0],
            [&] {
                for (const Plain& p : plain) plainJoint(p, one);
            },
            20);
        take(
            least[1],
            [&] {
                for (const Typed& t : own) ownJoint(t, other);
            },
            20);
        take(
            least[2], [&] { all(screws); }, 4);
        take(
            least[3], [&] { all(bolts); }, 4);
    }
    const double apart = std::abs(one.us / other.us - 1) + std::abs(one.ec5 / other.ec5 - 1);
    if (!(apart < 1e-9) || !(check > 0)) {
        std::fprintf(stderr, "the two do not agree: %g\n", apart);
        return 1;
    }
    std::printf("yield modes of both bases, plain doubles   %7.0f ns\n", least[0]);
    std::printf("the same by the program's functions        %7.0f ns, %.2f times\n", least[1],
                least[1] / least[0]);
    std::printf("every limit state of a wood screw          %7.0f ns, %.2f times\n", least[2],
                least[2] / least[0]);
    std::printf("every limit state of a bolt                %7.0f ns, %.2f times\n", least[3],
                least[3] / least[0]);
    return 0;
}
