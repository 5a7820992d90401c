#include "joint/screw.h"

#include <gtest/gtest.h>

#include "any_joint.h"
#include "joint/work_joint.h"

using namespace fayline;
using namespace fayline::test;

namespace {

const GeometryFinding& finding(const std::vector<GeometryFinding>& all, const std::string& what) {
    for (const GeometryFinding& one : all) {
        if (one.what == what) return one;
    }
    throw std::runtime_error("no finding " + what);
}

}  // namespace

TEST(Screw, RootMeasuredThenAverageThenCode) {
    JointFastener screw = plankScrew().fastener;
    EXPECT_NEAR(inInches(screwShape(screw).root.value), 0.166, 1e-9);
    screw.roots = ScrewRoots::code;
    EXPECT_NEAR(inInches(screwShape(screw).root.value), 0.196, 1e-9);
    EXPECT_EQ(screwShape(screw).root.standing, Standing::fromMemory);
    screw.root = inches(0.17);
    EXPECT_NEAR(inInches(screwShape(screw).root.value), 0.17, 1e-9);
    screw.root.reset();
    screw.gauge = Gauge(22);  // neither table holds it
    EXPECT_NEAR(screwShape(screw).root.value / screwShape(screw).body.value, 2.0 / 3.0, 1e-12);
}

TEST(Screw, AveragesAreSmallerThanTheCodesRoots) {
    for (int gauge = 0; gauge <= 24; ++gauge) {
        const auto average = screwRootMeasured(Gauge(gauge));
        const auto code = screwRootCode(Gauge(gauge));
        if (!average || !code) continue;
        EXPECT_LT(average->value, code->value) << gauge;
        EXPECT_GT(average->value / screwBody(Gauge(gauge)), 0.64) << gauge;
        EXPECT_LT(code->value, screwBody(Gauge(gauge))) << gauge;
    }
}

TEST(Screw, GivenSizesComeBeforeRules) {
    JointFastener screw = plankScrew().fastener;
    EXPECT_NEAR(screwShape(screw).thread.value / screw.length, 2.0 / 3.0, 1e-12);
    EXPECT_NEAR(screwShape(screw).head.value / screwShape(screw).body.value, 2.0, 1e-12);
    screw.threadLength = inches(1.4);
    screw.headDiameter = inches(0.49);
    screw.diameter = inches(0.245);
    EXPECT_EQ(screwShape(screw).thread.value, inches(1.4));
    EXPECT_EQ(screwShape(screw).head.value, inches(0.49));
    EXPECT_EQ(screwShape(screw).body.value, inches(0.245));
}

// Planking rule of 1 in: counterbore 3/8 in, No. 16 of 2 in: shank .667 in over .625 in of plank.
TEST(ScrewGeometry, RuleBookScrewIsNotThreadBound) {
    Joint joint = plankScrew();
    joint.fastener.gauge = Gauge(16);
    joint.fastener.length = inches(2.0);
    joint.members[0].counterbore = inches(0.375);
    joint.fastener.bung = inches(9.0 / 16);
    auto all = jointGeometry(joint);
    EXPECT_TRUE(finding(all, "thread_bound").met);
    EXPECT_NEAR(inInches(finding(all, "thread_bound").has), 2.0 / 3, 1e-9);
    EXPECT_NEAR(inInches(finding(all, "thread_bound").needs), 0.625, 1e-9);
    EXPECT_TRUE(finding(all, "bung").met);
    // 1.375 in of penetration is 5.1 diameters.
    EXPECT_FALSE(finding(all, "penetration").met);
    EXPECT_NE(finding(all, "penetration").says().find("traditional, shorter than the code"),
              std::string::npos);
    joint.members[0].counterbore = inches(0.25);
    all = jointGeometry(joint);
    EXPECT_FALSE(finding(all, "thread_bound").met);
    joint.fastener.bung = inches(0.5);
    EXPECT_FALSE(finding(jointGeometry(joint), "bung").met);
}

TEST(ScrewGeometry, PointComingOut) {
    Joint joint = plankScrew();
    joint.members[1].thickness = inches(1.4);
    const auto out = finding(jointGeometry(joint), "tip_out");
    EXPECT_FALSE(out.met);
    EXPECT_NEAR(inInches(out.has), -0.1, 1e-9);
    EXPECT_NE(out.says().find("comes out"), std::string::npos);
    joint.members[1].thickness = inches(1.6);
    EXPECT_FALSE(finding(jointGeometry(joint), "tip_out").met);
    joint.members[1].thickness = inches(1.8);
    EXPECT_TRUE(finding(jointGeometry(joint), "tip_out").met);
}

TEST(ScrewGeometry, OnlyForScrews) {
    EXPECT_TRUE(jointGeometry(through(2)).empty());
}
