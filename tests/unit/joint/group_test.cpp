#include "joint/group.h"

#include <gtest/gtest.h>

#include <cmath>

#include "any_joint.h"
#include "joint/work_joint.h"

using namespace fayline;
using namespace fayline::test;

namespace {

GroupPlace at(double along_mm, double across_mm) {
    return {millimetres(along_mm), millimetres(across_mm)};
}

JointGroup square(double load_across_mm) {
    return {{at(0, 0), at(100, 0), at(0, 100), at(100, 100)}, at(0, load_across_mm), {}};
}

}  // namespace

TEST(Group, ThroughTheMiddleItIsShared) {
    for (const GroupShare& share : elasticShares(square(50), newtons(1000))) {
        EXPECT_NEAR(share.along.si(), 250, 1e-9);
        EXPECT_NEAR(share.across.si(), 0, 1e-9);
    }
    EXPECT_NEAR(worstShare(square(50)).share, 0.25, 1e-12);
    EXPECT_NEAR(plasticLoad(square(50)), 4.0, 1e-9);
}

// 1 kN along, 150 mm off the middle of a square of 100 mm: M = −150 Nm, Σr² = 0.02 m²; on each
// 375 N along and across from turning, 250 N along evenly: the worst √(625² + 375²).
TEST(Group, EccentricByHand) {
    const JointGroup group = square(200);
    const auto shares = elasticShares(group, newtons(1000));
    EXPECT_NEAR(worstShare(group).share, std::hypot(0.625, 0.375), 1e-12);
    Force along, across;
    double moment = 0;
    for (std::size_t i = 0; i < shares.size(); ++i) {
        along += shares[i].along;
        across += shares[i].across;
        moment += group.places[i].along.si() * shares[i].across.si() -
                  group.places[i].across.si() * shares[i].along.si();
    }
    EXPECT_NEAR(along.si(), 1000, 1e-9);
    EXPECT_NEAR(across.si(), 0, 1e-9);
    EXPECT_NEAR(moment, -0.2 * 1000, 1e-9);
}

TEST(Group, TurningOneThirdOfTheWayRoundChangesNothing) {
    JointGroup group{
        {at(0, 0), at(80, 0), at(160, 20), at(40, 70)}, at(200, 90), Angle::degrees(25)};
    JointGroup turned = group;
    const double c = std::cos(Angle::degrees(120).inRadians());
    const double s = std::sin(Angle::degrees(120).inRadians());
    const auto turn = [&](GroupPlace place) {
        return GroupPlace{place.along * c - place.across * s, place.along * s + place.across * c};
    };
    for (GroupPlace& place : turned.places) place = turn(place);
    turned.loadAt = turn(turned.loadAt);
    turned.direction = Angle::degrees(145);
    EXPECT_NEAR(worstShare(turned).share, worstShare(group).share, 1e-12);
    EXPECT_EQ(worstShare(turned).place, worstShare(group).place);
    EXPECT_NEAR(plasticLoad(turned), plasticLoad(group), 1e-6);
}

// Two fastenings 100 mm apart under a pure couple's worth: the load far away, M = F·e, each
// carries F·e/0.1 m, plastic and elastic alike.
TEST(Group, TwoUnderACouple) {
    const JointGroup group{{at(0, 0), at(100, 0)}, at(1e5, 0), Angle::degrees(90)};
    const double arm = 99.95;  // metres
    EXPECT_NEAR(worstShare(group).share, 0.5 + arm / 0.1, 1e-9);
    EXPECT_NEAR(plasticLoad(group) * (arm / 0.1), 1.0, 1e-3);
}

// Four about a centre, the load far off: each yields at once, λ·M = Σ r.
TEST(Group, PlasticTurningByHand) {
    const JointGroup group{{at(-50, -50), at(50, -50), at(-50, 50), at(50, 50)}, at(0, 1e5), {}};
    EXPECT_NEAR(plasticLoad(group) * 100.0, 4 * 0.0707107, 1e-3);
}

TEST(Group, PlasticLiesBetweenElasticAndAll) {
    for (const double off : {0.0, 10.0, 50.0, 120.0, 400.0, 2000.0}) {
        const JointGroup group{{at(0, 0), at(80, 0), at(160, 20), at(40, 70), at(90, 90)},
                               at(0, off),
                               Angle::degrees(10)};
        EXPECT_GE(plasticLoad(group), 1.0 / worstShare(group).share * (1 - 1e-9)) << off;
        EXPECT_LE(plasticLoad(group), 5.0 + 1e-9) << off;
    }
}

TEST(Group, InAJointTheWorstFasteningReachesItsOwnLoad) {
    Joint joint = through(2);
    joint.group = square(200);
    const auto result = workJoint(joint).value();
    for (const BasisResult* basis : {&result.us, &result.ec5}) {
        ASSERT_TRUE(basis->group);
        EXPECT_NEAR(
            basis->group->state.working * basis->group->share / basis->lateral->state.working, 1.0,
            1e-12);
        EXPECT_GT(basis->group->plastic, basis->group->state.working);
        EXPECT_EQ(basis->group->state.standing, basis->lateral->state.standing);
    }
    joint.group->places.resize(1);
    EXPECT_FALSE(workJoint(joint));
    joint.group->places.push_back(joint.group->places[0]);
    EXPECT_EQ(workJoint(joint).error().where, "group.places[1]");
}
