// Margins of a set of like fastenings: which limit states a load brings into play, and what stands
// when there is nothing to work with.

#include "check/fastening.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "joint/work_joint.h"

using namespace fayline;

namespace {

/// A No. 14 bronze screw through 28 mm of softwood into oak.
SetCheckInput plankSet() {
    SetCheckInput input;
    input.set.id = "F9.P.plank.4.1";
    input.set.frame = "F9";
    input.set.group = "plank";
    input.set.count = 2;
    input.set.thickness = millimetres(28);
    input.set.width = millimetres(120);
    input.set.spacing = millimetres(230);
    input.set.radius = metres(0.9);
    input.set.seam = megapascals(1.6);
    Joint joint;
    JointMember plank;
    plank.name = "plank";
    plank.gravity = {SpecificGravityOvenDry{0.49}, Standing::judgement, "sample"};
    plank.thickness = millimetres(28);
    JointMember frame = plank;
    frame.name = "frame";
    frame.family = WoodFamily::hardwood;
    frame.gravity = {SpecificGravityOvenDry{0.73}, Standing::judgement, "sample"};
    frame.thickness = millimetres(60);
    joint.members = {plank, frame};
    joint.fastener.kind = FastenerKind::woodScrew;
    joint.fastener.gauge = Gauge(14);
    joint.fastener.length = millimetres(63);
    joint.fastener.head = FastenerEnd::countersunk;
    joint.fastener.point = FastenerEnd::thread;
    joint.fastener.metal.yield = {megapascals(150), Standing::judgement, "sample"};
    joint.fastener.metal.ultimate = {megapascals(380), Standing::judgement, "sample"};
    joint.service = Service::wet;
    input.joint = joint;
    return input;
}

FrameLoad loadOf(LoadCase loadCase) {
    FrameLoad load;
    load.loadCase = loadCase;
    load.settings = usualSettings(loadCase);
    return load;
}

std::vector<Check> checked(const SetCheckInput& input, const FrameLoad& load) {
    const SetDemand demand = demandOn(input.set, load);
    const auto result = workJoint(inCase(*input.joint, load.settings, demand));
    if (!result) {
        ADD_FAILURE() << result.error().line();
        return {};
    }
    return checkSet(input, load, demand, &*result, "");
}

const Check* find(const std::vector<Check>& checks, LimitStateKind kind, Basis basis) {
    const auto found = std::find_if(checks.begin(), checks.end(), [&](const Check& c) {
        return c.limitState == kind && c.basis == basis;
    });
    return found == checks.end() ? nullptr : &*found;
}

}  // namespace

TEST(SetChecks, APlankDrawnOffIsCheckedForWhatDrawingBreaks) {
    const SetCheckInput input = plankSet();
    const auto checks = checked(input, loadOf(LoadCase::swelling));
    for (const Basis basis : {Basis::us, Basis::ec5})
        EXPECT_NE(find(checks, LimitStateKind::withdrawal, basis), nullptr);
    EXPECT_NE(find(checks, LimitStateKind::metal, Basis::metal), nullptr);
    EXPECT_EQ(find(checks, LimitStateKind::lateral, Basis::us), nullptr);
    const double demand_N = inNewtons(demandOn(input.set, loadOf(LoadCase::swelling)).axial);
    for (const Check& check : checks) {
        EXPECT_EQ(check.id, "F9.P.plank.4.1");
        EXPECT_EQ(check.stands, 2);
        ASSERT_TRUE(check.demand);
        EXPECT_NEAR(inNewtons(*check.demand), demand_N, 1e-9);
        ASSERT_TRUE(check.margin);
        EXPECT_NEAR(*check.margin, *check.working / *check.demand, 1e-12);
    }
}

TEST(SetChecks, TheMetalIsCheckedOnceForBothTimberSets) {
    const auto checks = checked(plankSet(), loadOf(LoadCase::swelling));
    EXPECT_EQ(std::count_if(checks.begin(), checks.end(),
                            [](const Check& c) { return c.basis == Basis::metal; }),
              1);
}

// The figures are those of the band's unfavourable end; the other end's margin is ten times that.
TEST(SetChecks, AJudgedShareIsJudgedAtBothEndsOfItsBand) {
    SetCheckInput input = plankSet();
    input.set.group = "heel";
    input.set.keelSided = millimetres(210);
    input.set.floorHere = true;
    FrameLoad load = loadOf(LoadCase::knockdownPort);
    load.bears = true;
    std::set<Status> seen;
    for (double moment_Nm = 1; moment_Nm < 1e5; moment_Nm *= 1.1) {
        load.moment = newtonMetres(moment_Nm);
        for (const Check& check : checked(input, load)) {
            ASSERT_TRUE(check.margin);
            EXPECT_NE(check.why.find("a twentieth and a half"), std::string::npos);
            seen.insert(check.status);
            const double worst = *check.margin, best = 10 * worst;
            if (worst >= input.target) {
                EXPECT_NE(check.status, Status::near);
                EXPECT_NE(check.status, Status::isShort);
            } else if (worst >= 1) {
                EXPECT_EQ(check.status, Status::near);
            } else if (best < 1) {
                EXPECT_EQ(check.status, Status::isShort);
            } else {
                EXPECT_EQ(check.status, Status::outside);
                EXPECT_FALSE(check.outside.empty());
            }
        }
    }
    EXPECT_TRUE(seen.contains(Status::isShort) && seen.contains(Status::near) &&
                seen.contains(Status::outside));
}

TEST(SetChecks, WithoutAJointTheReasonStands) {
    const SetCheckInput input = plankSet();
    const FrameLoad load = loadOf(LoadCase::swelling);
    const auto checks =
        checkSet(input, load, demandOn(input.set, load), nullptr, "the wood is not decided");
    ASSERT_EQ(checks.size(), 1U);
    EXPECT_EQ(checks[0].status, Status::unknown);
    EXPECT_EQ(checks[0].why, "the wood is not decided");
    EXPECT_FALSE(checks[0].margin);
}

TEST(SetChecks, QuietSetsSayWhy) {
    const SetCheckInput input = plankSet();
    const FrameLoad sea = loadOf(LoadCase::seaBottom);
    const Check quiet = quietCheck(input, sea, demandOn(input.set, sea));
    EXPECT_EQ(quiet.status, Status::unloaded);
    EXPECT_FALSE(quiet.why.empty());
    SetCheckInput backbone = input;
    backbone.set.group = "backbone";
    EXPECT_EQ(quietCheck(backbone, sea, demandOn(backbone.set, sea)).status, Status::unknown);
}

TEST(SetChecks, TheWorkingOpensWithTheLoadAndEndsInTheMargin) {
    const SetCheckInput input = plankSet();
    const FrameLoad load = loadOf(LoadCase::swelling);
    const auto checks = checked(input, load);
    for (const Check& check : checks) {
        const auto trace = explainSet(input, load, check);
        ASSERT_TRUE(trace);
        EXPECT_FALSE(trace->title.empty()) << nameOf(check.limitState);
        EXPECT_EQ(std::get<double>(trace->lines.back().value), *check.margin);
    }
}
