#include "hull/structure.h"

#include <gtest/gtest.h>

#include "shapes.h"

namespace fayline {
namespace {

using namespace test;

KeelTimber keel() {
    return {metres(1),      metres(4),        millimetres(60),
            millimetres(0), millimetres(210), millimetres(150)};
}

std::vector<FrameInput> frames() {
    return setOutFrames({metres(0.5), millimetres(230), 18, millimetres(44), millimetres(60)});
}

TEST(Keel, heightsAlongTheTimber) {
    EXPECT_NEAR(inMillimetres(*keelUndersideAt(keel(), metres(1))), 60.0, 1e-9);
    EXPECT_NEAR(inMillimetres(*keelUndersideAt(keel(), metres(2.5))), 30.0, 1e-9);
    EXPECT_NEAR(inMillimetres(*keelTopAt(keel(), metres(4))), 150.0, 1e-9);
    EXPECT_FALSE(keelTopAt(keel(), metres(4.01)));
    EXPECT_FALSE(keelUndersideAt(keel(), metres(0.99)));
}

TEST(Keel, problemsAreNamed) {
    EXPECT_TRUE(checkKeel(keel()).empty());
    auto bad = keel();
    bad.sided = millimetres(2);
    bad.from = metres(201);
    const auto problems = checkKeel(bad);
    ASSERT_EQ(problems.size(), 2U);
    EXPECT_EQ(problems[0].line(),
              "keel.from: the keel's fore end is 201000 mm; -200000 mm to 200000 mm");
    EXPECT_EQ(problems[1].line(), "keel.sided: the keel's siding is 2 mm; 5 mm to 2000 mm");
    auto turned = keel();
    turned.to = metres(1);
    ASSERT_EQ(checkKeel(turned).size(), 1U);
    EXPECT_EQ(checkKeel(turned)[0].line(),
              "keel.to: the keel's after end is at 1000 mm; aft of its fore end at 1000 mm");
}

TEST(Frames, setOutFromForward) {
    const auto set = frames();
    ASSERT_EQ(set.size(), 18U);
    EXPECT_EQ(set.front().id, "F1");
    EXPECT_EQ(set.back().id, "F18");
    EXPECT_NEAR(inMillimetres(set[17].x), 500.0 + 17 * 230.0, 1e-9);
    EXPECT_FALSE(set[3].measured);
    EXPECT_TRUE(setOutFrames({metres(0.5), millimetres(230), 0, {}, {}}).empty());
}

TEST(Frames, problemsAreNamed) {
    const auto surface = lofted(box(metres(5), metres(2), metres(1), 6));
    EXPECT_TRUE(checkFrames(frames(), surface).empty());
    auto bad = frames();
    bad[1].x = metres(0.4);
    bad[2].id = "F1";
    bad[4].moulded = millimetres(3);
    bad[17].x = metres(5.2);
    const auto problems = checkFrames(bad, surface);
    ASSERT_EQ(problems.size(), 4U);
    EXPECT_EQ(problems[0].line(), "F2.frame.x: frame F2 is at 400 mm; aft of frame F1 at 500 mm");
    EXPECT_EQ(problems[1].line(), "F1.frame: there are two frames F1; each name once");
    EXPECT_EQ(problems[2].line(), "F5.frame.moulded: the moulding is 3 mm; 5 mm to 2000 mm");
    EXPECT_EQ(problems[3].line(), "F18.frame.x: frame F18 is 5200 mm; 0 mm to 5000 mm");
}

TEST(Floors, standOnTheKeelBesideOrAcrossTheFrame) {
    const auto surface = lofted(box(metres(5), metres(2), metres(1), 6));
    FloorInput floor{"F9", millimetres(75), millimetres(180)};
    const auto beside = placeFloor(floor, frames(), keel(), surface);
    ASSERT_TRUE(beside);
    EXPECT_NEAR(inMillimetres(beside->x), 500 + 8 * 230 + (44 + 75) / 2.0, 1e-9);
    const double top_mm = 60.0 * (4000.0 - inMillimetres(beside->x)) / 3000.0 + 150.0;
    EXPECT_NEAR(inMillimetres(beside->heelHeight), top_mm, 1e-9);
    EXPECT_NEAR(inMillimetres(beside->throatHeight), top_mm + 180.0, 1e-9);
    EXPECT_NEAR(beside->halfBreadthAtThroat.si(), 1.0, 1e-9);
    floor.aftOfFrame = false;
    EXPECT_NEAR(inMillimetres(placeFloor(floor, frames(), keel(), surface)->x),
                500 + 8 * 230 - (44 + 75) / 2.0, 1e-9);
    floor.topology = FloorTopology::across;
    EXPECT_NEAR(inMillimetres(placeFloor(floor, frames(), keel(), surface)->x), 500 + 8 * 230,
                1e-9);
}

TEST(Floors, problemsAreNamed) {
    const auto surface = lofted(box(metres(5), metres(2), metres(1), 6));
    const auto refusal = [&](const FloorInput& floor) {
        const auto place = placeFloor(floor, frames(), keel(), surface);
        return place ? std::string() : place.error().line();
    };
    EXPECT_EQ(refusal({"F99", millimetres(75), millimetres(180)}),
              "F99.floor: there is no frame F99; a frame that exists");
    EXPECT_EQ(refusal({"F1", millimetres(75), millimetres(180)}),
              "F1.floor: the floor at 559.5 mm does not stand on the keel; 1000 mm to 4000 mm");
    EXPECT_EQ(refusal({"F9", millimetres(75), millimetres(900)}),
              "F9.floor: the top of the floor, at 1082.01 mm, lies outside the hull; between 0 mm "
              "and 1000 mm");
}

}  // namespace
}  // namespace fayline
