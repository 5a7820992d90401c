// A joint cut open: sizes to one scale, and nothing outside its room.
#include "sheet/joint_picture.h"

#include <gtest/gtest.h>

#include "found.h"

namespace fayline {
namespace {

Joint plankOnFrame() {
    Joint joint;
    JointMember plank, frame;
    plank.name = "plank";
    plank.thickness = millimetres(30);
    plank.counterbore = millimetres(10);
    frame.name = "frame";
    frame.thickness = millimetres(60);
    joint.members = {plank, frame};
    joint.fastener.kind = FastenerKind::woodScrew;
    joint.fastener.gauge = Gauge(14);
    joint.fastener.length = millimetres(64);
    joint.fastener.head = FastenerEnd::countersunk;
    joint.fastener.point = FastenerEnd::blind;
    joint.fastener.bung = millimetres(13);
    return joint;
}

Joint boltThroughThree() {
    Joint joint;
    for (const char* name : {"arm of the floor", "frame", "doubler"}) {
        JointMember member;
        member.name = name;
        member.thickness = millimetres(50);
        joint.members.push_back(member);
    }
    joint.members[1].thickness = millimetres(12);
    joint.members[1].gap = millimetres(2);
    joint.fastener.kind = FastenerKind::bolt;
    joint.fastener.diameter = millimetres(12);
    joint.fastener.headBearing = joint.fastener.pointBearing =
        EndBearing{millimetres(36), millimetres(4)};
    return joint;
}

RectMm boundsOfShape(const Drawing& drawing, const std::string& id, Role role) {
    RectMm all;
    for (const DrawItem& item : drawing.items) {
        if (item.id != id || item.role != role) continue;
        if (const auto* polygon = std::get_if<shape::Polygon>(&item.shape)) {
            for (const PointMm& p : polygon->points) all = united(all, p);
        }
    }
    return all;
}

TEST(JointPicture, MembersAndScrewAreToOneScale) {
    const Drawing drawing = jointDrawing(plankOnFrame(), {{120, 60}, 2.1, UnitSystem::millimetres});
    ASSERT_TRUE(drawing.scale);
    const double scale = drawing.scale->mmPerMetre / 1000.0;
    const RectMm plank = boundsOfShape(drawing, "member.0", Role::timber);
    const RectMm frame = boundsOfShape(drawing, "member.1", Role::frame);
    EXPECT_NEAR(plank.width(), 30.0 * scale, 1e-9);
    EXPECT_NEAR(frame.width(), 60.0 * scale, 1e-9);
    EXPECT_NEAR(plank.right, frame.left, 1e-9);
    const RectMm screw = boundsOfShape(drawing, "fastener", Role::bolt);
    EXPECT_NEAR(screw.width(), 64.0 * scale, 1e-9);
    EXPECT_NEAR(screw.left, plank.left + 10.0 * scale, 1e-9) << "at the bottom of its counterbore";
    EXPECT_NEAR(screw.height(), 2.0 * 6.1468 * scale, 1e-3) << "a head of twice the body";
}

TEST(JointPicture, AGapIsLeftOpen) {
    const Drawing drawing =
        jointDrawing(boltThroughThree(), {{160, 60}, 2.1, UnitSystem::millimetres});
    const double scale = drawing.scale->mmPerMetre / 1000.0;
    const RectMm frame = boundsOfShape(drawing, "member.1", Role::frame);
    const RectMm doubler = boundsOfShape(drawing, "member.2", Role::timber);
    EXPECT_NEAR(doubler.left - frame.right, 2.0 * scale, 1e-9);
    const auto all = texts(drawing);
    bool said = false;
    for (const auto& text : all) said = said || text.text.find("gap 2 mm") != std::string::npos;
    EXPECT_TRUE(said);
}

TEST(JointPicture, StaysInsideItsRoomWhateverItsShape) {
    for (const Joint& joint : {plankOnFrame(), boltThroughThree()}) {
        for (const SizeMm size : {SizeMm{60, 40}, SizeMm{174, 46}, SizeMm{80, 120}}) {
            const RectMm all = boundsOf(jointDrawing(joint, {size, 2.1, UnitSystem::inches}));
            EXPECT_GE(all.left, -0.5);
            EXPECT_GE(all.top, -0.5);
            EXPECT_LE(all.right, size.width + 0.5);
            EXPECT_LE(all.bottom, size.height + 0.5);
        }
    }
}

TEST(JointPicture, AJointWithoutSizesIsDrawnAsFarAsTheyGo) {
    EXPECT_TRUE(boundsOf(jointDrawing(Joint{}, {{100, 50}, 2.1, UnitSystem::inches})).empty());
    Joint joint = plankOnFrame();
    joint.fastener.gauge.reset();
    joint.fastener.length = {};
    joint.members[1].thickness = {};
    const Drawing drawing = jointDrawing(joint, {{100, 50}, 2.1, UnitSystem::inches});
    EXPECT_FALSE(boundsOf(drawing, "member.0").empty());
    EXPECT_TRUE(boundsOfShape(drawing, "fastener", Role::bolt).empty());
}

}  // namespace
}  // namespace fayline
