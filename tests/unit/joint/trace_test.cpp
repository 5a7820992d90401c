// Every limit state opens as a working: formula, figures with units and sources, clause, standing
// and what lies outside; built only when asked for.

#include <gtest/gtest.h>

#include <set>

#include "any_joint.h"
#include "joint/work_joint.h"

using namespace fayline;
using namespace fayline::test;

namespace {

Joint everything() {
    Joint joint = through(3);
    joint.fastener.head = FastenerEnd::nut;
    joint.fastener.pitch = inches(1.0 / 13);
    joint.fastener.nutHeight = inches(0.4375);
    joint.fastener.headHeight = inches(0.2);
    joint.fastener.hole = inches(0.53);
    for (JointMember& member : joint.members) {
        member.width = inches(6);
        member.tensionUs = figure(megapascals(9));
        member.tensionEc5 = figure(megapascals(18));
        member.shearUs = figure(megapascals(1.4));
    }
    joint.members[0].grain = Angle::degrees(45);
    joint.members[2] = {};
    joint.members[2].lead = figure(megapascals(30));
    joint.members[2].thickness = inches(4);
    joint.placement = Placement{};
    joint.placement->edge = inches(3);
    joint.placement->edgeLoadedAcross = true;
    joint.placement->end = inches(5);
    joint.group = JointGroup{{{}, {inches(4), {}}}, {inches(1), inches(3)}, {}};
    joint.load = JointLoad{newtons(500), newtons(300)};
    return joint;
}

Joint pulledScrew() {
    Joint joint = plankScrew();
    joint.load = JointLoad{newtons(100), newtons(50)};
    return joint;
}

Joint drift() {
    Joint joint = through(2);
    joint.fastener.kind = FastenerKind::drift;
    joint.fastener.length = inches(3.5);
    joint.fastener.slant = Angle::degrees(10);
    joint.load = JointLoad{newtons(100), newtons(50)};
    return joint;
}

Joint rivet() {
    Joint joint = through(2);
    joint.fastener.kind = FastenerKind::rivet;
    joint.fastener.section = DowelSection::square;
    joint.fastener.point = FastenerEnd::rove;
    joint.fastener.peenHeight = inches(0.2);
    return joint;
}

}  // namespace

TEST(Traces, EveryLimitStateHasOneThatCanBeDoneAgainByHand) {
    std::set<LimitStateKind> seen;
    for (const Joint& joint : {everything(), pulledScrew(), drift(), rivet()}) {
        JointTraces traces;
        const JointResult result = workJoint(joint, &traces).value();
        for (const BasisResult* basis : {&result.us, &result.ec5}) {
            basis->each([&](const LimitState& state) {
                seen.insert(state.kind);
                SCOPED_TRACE(nameOf(state.kind));
                const auto found = traces.find({state.basis, state.kind});
                ASSERT_NE(found, traces.end());
                const Trace& trace = found->second;
                EXPECT_FALSE(trace.title.empty() || trace.formula.empty());
                EXPECT_EQ(trace.clause, clauseOf(state));
                EXPECT_EQ(trace.standing, state.standing);
                EXPECT_EQ(trace.outside, textsOf(state.outside));
                ASSERT_GE(trace.lines.size(), 3U);
                bool ends = false;
                for (const TraceLine& line : trace.lines) {
                    EXPECT_FALSE(line.symbol.empty() || line.meaning.empty());
                    const auto* force = std::get_if<Force>(&line.value);
                    ends = ends || (force != nullptr && *force == state.working);
                }
                EXPECT_TRUE(ends) << "the design load stands in it";
            });
        }
    }
    // All that a joint can come to.
    for (const auto kind :
         {LimitStateKind::lateral, LimitStateKind::withdrawal, LimitStateKind::pullThrough,
          LimitStateKind::washer, LimitStateKind::metal, LimitStateKind::combined,
          LimitStateKind::headShear, LimitStateKind::threadStrip, LimitStateKind::crushing,
          LimitStateKind::punching, LimitStateKind::netSection, LimitStateKind::splitting,
          LimitStateKind::group})
        EXPECT_TRUE(seen.count(kind)) << nameOf(kind);
}

TEST(Traces, AskingForThemChangesNoFigure) {
    for (const Joint& joint : {everything(), pulledScrew(), drift(), rivet()}) {
        JointTraces traces;
        EXPECT_EQ(workJoint(joint).value(), workJoint(joint, &traces).value());
        EXPECT_FALSE(traces.empty());
    }
}

TEST(Traces, ASlantIsShownAndNotCredited) {
    Joint straight = drift();
    straight.fastener.slant.reset();
    const auto slanted = workJoint(drift())->us.withdrawal->state;
    EXPECT_EQ(slanted.working, workJoint(straight)->us.withdrawal->state.working);
    bool said = false;
    for (const Remark& remark : slanted.outside)
        said = said || remark.rule == Rule::slantNotCredited;
    EXPECT_TRUE(said);
}

TEST(JointHash, EqualJointsHashAlikeAndAnyFigureTellsThemApart) {
    const Joint joint = everything();
    Joint other = joint;
    EXPECT_EQ(JointHash{}(joint), JointHash{}(other));
    other.members[1].gap = millimetres(1);
    EXPECT_FALSE(joint == other);
    other = joint;
    other.fastener.corrosion = millimetres(0.1);
    EXPECT_FALSE(joint == other);
}
