#include "joint/moisture.h"

#include <gtest/gtest.h>

#include "any_joint.h"
#include "joint/work_joint.h"

using namespace fayline;
using namespace fayline::test;

namespace {

MoistureRow rowOf(const std::vector<MoistureRow>& rows, Basis basis, LimitStateKind kind) {
    for (const MoistureRow& row : rows) {
        if (row.basis == basis && row.kind == kind) return row;
    }
    ADD_FAILURE();
    return {};
}

}  // namespace

TEST(Moisture, EachStateIsTheJointWorkedThere) {
    Joint joint = plankScrew();
    const auto rows = moistureRows(joint, MoistureZone::cycling).value();
    for (const LimitStateKind kind :
         {LimitStateKind::lateral, LimitStateKind::withdrawal, LimitStateKind::pullThrough}) {
        const MoistureRow row = rowOf(rows, Basis::us, kind);
        EXPECT_NEAR(row.working[2] / row.working[1], 0.7, 1e-12);
        EXPECT_EQ(row.working[0], row.working[1]);
        EXPECT_EQ(row.working[3], row.working[1]);
        EXPECT_EQ(row.governs, MoistureState::afloat);
    }
    joint.service = Service::wet;
    EXPECT_EQ(rowOf(rows, Basis::ec5, LimitStateKind::lateral).working[2],
              workJoint(joint)->ec5.lateral->state.working);
}

TEST(Moisture, ZonesSayWhichStatesAreWet) {
    for (const MoistureState state : moistureStates) {
        EXPECT_EQ(serviceIn(state, MoistureZone::drier, Fitted::dry), Service::dry);
        EXPECT_EQ(serviceIn(state, MoistureZone::soaked, Fitted::dry),
                  state == MoistureState::afloat || state == MoistureState::winterAshore
                      ? Service::wet
                      : Service::dry);
    }
    EXPECT_EQ(serviceIn(MoistureState::asFitted, MoistureZone::drier, Fitted::wet), Service::wet);
    EXPECT_EQ(serviceIn(MoistureState::shedDry, MoistureZone::soaked, Fitted::wet), Service::dry);
}

// Rows of bolts across the grain in timber fitted wet: 0.4 once dried (NDS Table 11.3.3), and no
// better when wetted again.
TEST(Moisture, FittedWetAndDriedGovernsARowAcrossTheGrain) {
    Joint joint = through(2);
    joint.fitted = Fitted::wet;
    joint.members[0].grain = Angle::degrees(90);
    joint.row = JointRow{3, inches(3), std::nullopt, std::nullopt};
    const auto rows = moistureRows(joint, MoistureZone::soaked).value();
    const MoistureRow row = rowOf(rows, Basis::us, LimitStateKind::lateral);
    EXPECT_NEAR(row.working[1] / row.working[0], 0.4 / 0.7, 1e-12);
    EXPECT_EQ(row.working[2], row.working[1]);
    joint.fitted = Fitted::dry;
    const auto dry = moistureRows(joint, MoistureZone::soaked).value();
    EXPECT_EQ(rowOf(dry, Basis::us, LimitStateKind::lateral).governs, MoistureState::afloat);
}

TEST(Moisture, MetalKnowsNone) {
    const auto rows = moistureRows(through(2), MoistureZone::soaked).value();
    for (const MoistureRow& row : rows) EXPECT_NE(row.basis, Basis::metal);
    Joint bad = through(2);
    bad.members[0].thickness = {};
    EXPECT_FALSE(moistureRows(bad, MoistureZone::soaked));
}

TEST(Moisture, NamesReadBack) {
    for (const auto zone : {MoistureZone::soaked, MoistureZone::cycling, MoistureZone::drier})
        EXPECT_EQ(moistureZoneNamed(nameOf(zone)), zone);
    EXPECT_FALSE(moistureZoneNamed("damp"));
}
