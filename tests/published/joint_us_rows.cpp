#include <stdexcept>

#include "joint/joint.h"
#include "joint/screw.h"
#include "joint/us_axial.h"
#include "joint/us_factors.h"
#include "joint/us_lateral.h"
#include "joint/work_joint.h"
#include "joint_rows.h"

namespace fayline {
namespace {

constexpr double pound_N = 4.4482216152605;

double pounds(Force force) {
    return inNewtons(force) / pound_N;
}
double poundsPerInch(ForcePerLength value) {
    return inNewtonsPerMillimetre(value) * 25.4 / pound_N;
}
SpecificGravityOvenDry gravity(const Row& row) {
    return {row.number("gravity")};
}

}  // namespace

double lagWithdrawal_lbPerIn(const Row& row, const Coefficients& c) {
    return poundsPerInch(lagWithdrawalUs(gravity(row), row.length("diameter"), c.us));
}

double screwWithdrawal_lbPerIn(const Row& row, const Coefficients& c) {
    return poundsPerInch(screwWithdrawalUs(gravity(row), row.length("diameter"), c.us));
}

double screwOrNailWithdrawal_lbPerIn(const Row& row, const Coefficients& c) {
    if (row.text("what") == "screw") return screwWithdrawal_lbPerIn(row, c);
    return poundsPerInch(nailWithdrawalUs(gravity(row), row.length("diameter"), c.us));
}

double handbookWithdrawal(const Row& row, const Coefficients& c) {
    const auto perLength =
        row.text("what") == "screw" ? &screwWithdrawalUltimate : &driftWithdrawalUltimate;
    return inNewtonsPerMillimetre(perLength({1.0}, millimetres(1), c.us));
}

double pullThrough_lb(const Row& row, const Coefficients& c) {
    return pounds(pullThroughUs(gravity(row), row.length("head"), row.length("thickness"), c.us));
}

double lagPlate_lb(const Row& row, const Coefficients& c) {
    const Length nominal = row.length("diameter");
    const Length root = row.length("root");
    const Angle grain = row.angle("grain");
    const Moment moment = dowelMoment(row.stress("bending_yield"), root);
    const Stress wood =
        dowelBearingUs(gravity(row), nominal, grain, BearingRounding::toFiftyPsi, c.us);
    const DowelInput dowel{row.stress("side_bearing") * root,
                           wood * root,
                           row.length("side"),
                           8.0 * nominal,
                           {},
                           moment,
                           moment};
    return pounds(
        usSingleShear(dowelModes(dowel), usReduction(root, nominal, grain, c.us)).reference);
}

double nail_lb(const Row& row, const Coefficients& c) {
    const Length diameter = row.length("diameter");
    const Moment moment = dowelMoment(row.stress("bending_yield"), diameter);
    const ForcePerLength bearing =
        dowelBearingUs(gravity(row), diameter, {}, BearingRounding::toFiftyPsi, c.us) * diameter;
    const DowelInput dowel{bearing, bearing, row.length("side"), row.length("main"), {},
                           moment,  moment};
    const UsReduction reduction = usReduction(diameter, diameter, {}, c.us);
    return pounds(usSingleShear(dowelModes(dowel), reduction).reference) *
           durationFactorUs(durationNamed(row.text("duration")).value());
}

double lateral_lb(const Row& row, const Coefficients& c) {
    const Length nominal = row.length("diameter");
    const Length root = row.length("root");
    const Angle side = row.angle("grain_side");
    const Angle main = row.angle("grain_main");
    const Moment moment = dowelMoment(row.stress("bending_yield"), root);
    const auto bearing = [&](Angle grain) {
        return dowelBearingUs(gravity(row), nominal, grain, BearingRounding::toFiftyPsi, c.us) *
               root;
    };
    const DowelInput dowel{bearing(side), bearing(main), row.length("side"), row.length("main"), {},
                           moment,        moment};
    const UsReduction reduction = usReduction(root, nominal, std::max(side, main), c.us);
    const DowelModes modes = dowelModes(dowel);
    return pounds(row.text("double") == "yes" ? usDoubleShear(modes, reduction).reference
                                              : usSingleShear(modes, reduction).reference);
}

double groupFactor(const Row& row, const Coefficients& c) {
    const Stress modulus = Stress::fromSi(1.4e6 * pound_N / (0.0254 * 0.0254));
    const Area sideArea = 5.0 * (inches(1) * inches(1));
    const GroupMember side{sideArea, modulus};
    const GroupMember main{sideArea / row.number("ratio"), modulus};
    return groupFactorUs(static_cast<int>(row.number("n")), inches(4), inches(1), main, side, c.us);
}

double screwSize(const Row& row, const Coefficients&) {
    const Gauge gauge(static_cast<int>(row.number("gauge")));
    const std::string what = row.text("what");
    if (what == "body") return inInches(screwBody(gauge));
    if (what == "end_grain") return endGrainFactorUs(true);
    Joint joint;
    joint.members.resize(2);
    for (JointMember& member : joint.members) member.thickness = millimetres(100);
    joint.fastener.kind = FastenerKind::woodScrew;
    joint.fastener.gauge = gauge;
    joint.fastener.length = millimetres(120);
    for (const GeometryFinding& finding : jointGeometry(joint)) {
        if (finding.what == what) return finding.needs / screwBody(gauge);
    }
    throw std::runtime_error(row.where() + ": no finding called " + what);
}

}  // namespace fayline
