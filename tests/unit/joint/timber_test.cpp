// What timbers carry at a hole: the wood left beside it, splitting, a row torn out.

#include <gtest/gtest.h>

#include <cmath>

#include "any_joint.h"
#include "joint/net_section.h"
#include "joint/splitting.h"
#include "joint/work_joint.h"

using namespace fayline;
using namespace fayline::test;

namespace {

Joint acrossGrain() {
    Joint joint = through(2);
    joint.members[0].grain = Angle::degrees(90);
    joint.members[0].width = millimetres(150);
    joint.members[0].shearUs = figure(megapascals(1.5));
    joint.members[0].tensionUs = figure(megapascals(9));
    joint.members[0].tensionEc5 = figure(megapascals(18));
    joint.placement = Placement{};
    joint.placement->edge = millimetres(90);
    joint.placement->edgeLoadedAcross = true;
    return joint;
}

bool misses(const BasisResult& basis, LimitStateKind kind) {
    for (const MissingState& missing : basis.missing)
        if (missing.kind == kind) return true;
    return false;
}

}  // namespace

// 10 MPa · 50 mm · (120 − 20) mm = 50 kN.
TEST(NetSection, ByHand) {
    EXPECT_NEAR(inNewtons(netSectionLoad(megapascals(10), millimetres(120), millimetres(20),
                                         millimetres(50), {})),
                50000, 1e-6);
    EXPECT_NEAR(inNewtons(netSectionLoad(megapascals(10), millimetres(120), millimetres(20),
                                         millimetres(50), Direction::of(Angle::degrees(60)))),
                100000, 1e-6);
}

TEST(NetSection, Limits) {
    const auto at = [](Length hole, Angle angle) {
        return netSectionLoad(megapascals(10), millimetres(120), hole, millimetres(50),
                              Direction::of(angle))
            .si();
    };
    EXPECT_EQ(at(millimetres(120), {}), 0.0);
    EXPECT_EQ(at(millimetres(130), {}), 0.0);
    EXPECT_TRUE(std::isinf(at(millimetres(20), Angle::degrees(90))));
    EXPECT_GT(at(millimetres(19), {}), at(millimetres(20), {}));
}

// 14 · 45 · √(90/(1 − 0.6)) = 9450 N.
TEST(Splitting, Ec5ByHand) {
    EXPECT_NEAR(inNewtons(splittingEc5({millimetres(45), millimetres(150), millimetres(90)})), 9450,
                1e-6);
    EXPECT_EQ(splittingEc5({millimetres(45), millimetres(150), {}}), Force{});
    // At the far edge itself the formula would run away; it stops at 0.95.
    EXPECT_EQ(splittingEc5({millimetres(45), millimetres(150), millimetres(150)}),
              splittingEc5({millimetres(45), millimetres(150), millimetres(142.5)}));
}

// 2/3 · 1.5 · 45 · 90 · 0.36 = 1458 N.
TEST(Splitting, UsByHand) {
    EXPECT_NEAR(inNewtons(splittingUs({millimetres(45), millimetres(150), millimetres(90)},
                                      megapascals(1.5))),
                1458, 1e-6);
    EXPECT_NEAR(inNewtons(splittingUs({millimetres(45), millimetres(150), millimetres(150)},
                                      megapascals(1.5))),
                2.0 / 3.0 * 1.5 * 45 * 150, 1e-6);
}

TEST(Splitting, ARowIsTornOutOverTheLesserDistance) {
    EXPECT_NEAR(inNewtons(rowTornOut(megapascals(1.5), millimetres(45), millimetres(60))),
                1.5 * 45 * 60, 1e-6);
    Joint joint = acrossGrain();
    joint.members[0].grain = {};
    joint.placement->edgeLoadedAcross = false;
    joint.placement->end = millimetres(100);
    joint.placement->spacing = millimetres(60);
    const auto us = workJoint(joint)->us.splitting;
    ASSERT_TRUE(us);
    EXPECT_EQ(us->place, "out along the row");
    EXPECT_NEAR(inNewtons(us->reference), 1.5 * 50.8 * 60, 1e-6);
    EXPECT_FALSE(workJoint(joint)->ec5.splitting);
}

TEST(Splitting, InAJointUnderBothBases) {
    const Joint joint = acrossGrain();
    const auto result = workJoint(joint).value();
    ASSERT_TRUE(result.us.splitting && result.ec5.splitting);
    EXPECT_EQ(result.ec5.splitting->reference,
              splittingEc5({inches(2), millimetres(150), millimetres(90)}));
    EXPECT_NEAR(result.ec5.splitting->working / result.ec5.splitting->reference, 0.7 / 1.3, 1e-12);
    EXPECT_EQ(result.us.splitting->working, result.us.splitting->reference);
    Joint wet = joint;
    wet.service = Service::wet;
    EXPECT_NEAR(workJoint(wet)->us.splitting->working / result.us.splitting->working, 0.97, 1e-12);
    Joint row = joint;
    row.row = JointRow{3, millimetres(50), std::nullopt, std::nullopt};
    EXPECT_NEAR(workJoint(row)->ec5.splitting->reference / result.ec5.splitting->reference,
                1.0 / 3.0, 1e-12);
}

TEST(Splitting, WithoutTheLoadedEdgeItIsMissing) {
    Joint joint = acrossGrain();
    joint.placement.reset();
    const auto result = workJoint(joint).value();
    EXPECT_FALSE(result.us.splitting);
    EXPECT_TRUE(misses(result.us, LimitStateKind::splitting));
    joint.members[0].grain = {};
    EXPECT_FALSE(misses(workJoint(joint)->us, LimitStateKind::splitting));
}

TEST(NetSection, InAJointWithGrainSlopeAndWhatIsMissing) {
    Joint joint = acrossGrain();
    joint.members[0].grain = {};
    const auto straight = workJoint(joint).value();
    ASSERT_TRUE(straight.us.netSection && straight.ec5.netSection);
    EXPECT_EQ(straight.us.netSection->reference,
              netSectionLoad(megapascals(9), millimetres(150), inches(0.5), inches(2), {}));
    joint.members[0].grainSlope = 8;
    EXPECT_NEAR(workJoint(joint)->us.netSection->reference / straight.us.netSection->reference,
                0.53, 1e-12);
    joint.members[0].grainSlope = 3;
    EXPECT_FALSE(workJoint(joint)->us.netSection->outside.empty());
    joint.members[0].tensionUs.reset();
    EXPECT_FALSE(workJoint(joint)->us.netSection);
    EXPECT_TRUE(misses(workJoint(joint)->us, LimitStateKind::netSection));
    joint.members[0].width.reset();
    EXPECT_FALSE(misses(workJoint(joint)->us, LimitStateKind::netSection));
}
