#include <gtest/gtest.h>

#include <limits>

#include "any_joint.h"
#include "joint/work_joint.h"

using namespace fayline;
using namespace fayline::test;

namespace {

std::string refused(const Joint& joint) {
    const auto problem = problemOf(joint);
    EXPECT_TRUE(problem);
    EXPECT_FALSE(workJoint(joint));
    return problem ? problem->where : "";
}

}  // namespace

TEST(JointCheck, NamesReadBack) {
    for (const auto kind :
         {FastenerKind::woodScrew, FastenerKind::bolt, FastenerKind::drift, FastenerKind::rivet})
        EXPECT_EQ(fastenerKindNamed(nameOf(kind)), kind);
    for (const auto end : {FastenerEnd::head, FastenerEnd::nut, FastenerEnd::formedHead,
                           FastenerEnd::clenchRing, FastenerEnd::rove, FastenerEnd::peened,
                           FastenerEnd::countersunk, FastenerEnd::thread, FastenerEnd::blind})
        EXPECT_EQ(fastenerEndNamed(nameOf(end)), end);
    EXPECT_FALSE(fastenerKindNamed("lag"));
    EXPECT_EQ(nameOf(FastenerKind::woodScrew), "wood_screw");
}

TEST(JointCheck, GoodJointsPass) {
    EXPECT_FALSE(problemOf(plankScrew()));
    EXPECT_FALSE(problemOf(through(2)));
}

TEST(JointCheck, EachSlipIsNamedByItsPlace) {
    Joint joint = plankScrew();
    joint.members.pop_back();
    EXPECT_EQ(refused(joint), "members");
    joint = plankScrew();
    joint.members[1].thickness = {};
    EXPECT_EQ(refused(joint), "members[1].thickness");
    joint = plankScrew();
    joint.members[1].thickness = metres(std::numeric_limits<double>::quiet_NaN());
    EXPECT_EQ(refused(joint), "members[1].thickness");
    joint = plankScrew();
    joint.members[0].counterbore = inches(1);
    EXPECT_EQ(refused(joint), "members[0].counterbore");
    joint = through(3);
    joint.members[1].counterbore = millimetres(3);
    EXPECT_EQ(refused(joint), "members[1].counterbore");
    joint = plankScrew();
    joint.members[0].gap = millimetres(-1);
    EXPECT_EQ(refused(joint), "members[0].gap");
    joint = plankScrew();
    joint.members[0].grain = Angle::degrees(91);
    EXPECT_EQ(refused(joint), "members[0].grain");
    joint = plankScrew();
    joint.members[0].gravity->value.value = 12;
    EXPECT_EQ(refused(joint), "members[0].specific_gravity");
    joint = plankScrew();
    joint.members[0].density->value.value = kilogramsPerCubicMetre(0.5);
    EXPECT_EQ(refused(joint), "members[0].density");
    joint = plankScrew();
    joint.fastener.length = inches(0.9);
    EXPECT_EQ(refused(joint), "fastener.length");
    joint = through(2);
    joint.fastener.diameter = {};
    EXPECT_EQ(refused(joint), "fastener.diameter");
    joint = through(2);
    joint.fastener.root = inches(0.6);
    EXPECT_EQ(refused(joint), "fastener.root");
    joint = through(2);
    joint.fastener.gauge = Gauge(14);
    EXPECT_EQ(refused(joint), "fastener.gauge");
    joint = plankScrew();
    joint.load = JointLoad{newtons(-1), {}};
    EXPECT_EQ(refused(joint), "load.lateral");
    joint = plankScrew();
    joint.row = JointRow{3, {}, {}, {}};
    EXPECT_EQ(refused(joint), "row.spacing");
}

// What is no number is refused wherever it stands, and so is what no timber or metal can have.
TEST(JointCheck, NoFigureSlipsThrough) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double huge = std::numeric_limits<double>::infinity();
    for (const double bad : {nan, huge, -1.0}) {
        SCOPED_TRACE(bad);
        const auto with = [&](Joint joint, auto change) {
            change(joint);
            return refused(joint);
        };
        EXPECT_EQ(with(plankScrew(), [&](Joint& j) { j.members[0].counterbore = metres(bad); }),
                  "members[0].counterbore");
        EXPECT_EQ(with(plankScrew(), [&](Joint& j) { j.members[0].gap = metres(bad); }),
                  "members[0].gap");
        EXPECT_EQ(with(plankScrew(), [&](Joint& j) { j.members[0].width = metres(bad); }),
                  "members[0].width");
        EXPECT_EQ(with(plankScrew(), [&](Joint& j) { j.fastener.length = metres(bad); }),
                  "fastener.length");
        EXPECT_EQ(with(plankScrew(), [&](Joint& j) { j.fastener.root = metres(bad); }),
                  "fastener.root");
        EXPECT_EQ(with(plankScrew(), [&](Joint& j) { j.fastener.threadLength = metres(bad); }),
                  "fastener.thread_length");
        EXPECT_EQ(with(plankScrew(), [&](Joint& j) { j.fastener.screwHole.pilot = metres(bad); }),
                  "hole.pilot");
        EXPECT_EQ(with(plankScrew(),
                       [&](Joint& j) {
                           j.load = JointLoad{newtons(bad), {}};
                       }),
                  "load.lateral");
        EXPECT_EQ(with(through(2), [&](Joint& j) { j.fastener.nutHeight = metres(bad); }),
                  "fastener.nut_height");
        EXPECT_EQ(with(through(2), [&](Joint& j) { j.fastener.corrosion = metres(bad); }),
                  "fastener.corrosion");
        EXPECT_EQ(with(through(2), [&](Joint& j) { j.fastener.metal.yield->value = ksi(bad); }),
                  "fastener.yield");
        EXPECT_EQ(with(through(2), [&](Joint& j) { j.fastener.slant = Angle::degrees(bad); }),
                  "fastener.slant");
        EXPECT_EQ(with(through(2), [&](Joint& j) { j.members[1].grainSlope = bad; }),
                  "members[1].grain_slope");
    }
    Joint joint = through(2);
    joint.load = JointLoad{newtons(1), newtons(nan)};
    EXPECT_EQ(refused(joint), "load.axial");
    joint = through(2);
    joint.group = JointGroup{{{}, {metres(nan), {}}}, {}, {}};
    EXPECT_EQ(refused(joint), "group.places[1]");
}

TEST(JointCheck, SentenceSaysWhatIsAllowed) {
    Joint joint = plankScrew();
    joint.members[0].grain = Angle::degrees(120);
    EXPECT_EQ(problemOf(joint)->line(), "members[0].grain: is 120°; 0 to 90 degrees");
}
