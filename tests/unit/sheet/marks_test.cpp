#include "sheet/marks.h"

#include <gtest/gtest.h>

#include <set>

namespace fayline {
namespace {

constexpr std::array all{Status::isShort, Status::near, Status::unknown,
                         Status::outside, Status::ok,   Status::unloaded};

/// What is left of a sign when colour is taken away.
std::string shapeOf(Status status) {
    std::string told;
    for (const DrawItem& item : statusMark(status, {0, 0}, {3, 3}, "F1")) {
        told += std::to_string(item.shape.index());
        if (const auto* mark = std::get_if<shape::Mark>(&item.shape)) {
            told += "/" + std::to_string(static_cast<int>(mark->kind)) +
                    (mark->filled ? "filled" : "hollow");
        }
        told += " ";
    }
    return told;
}

TEST(Marks, EveryStatusHasAShapeAndARoleOfItsOwn) {
    std::set<std::string> shapes;
    std::set<Role> roles;
    for (const Status status : all) {
        shapes.insert(shapeOf(status));
        roles.insert(statusRole(status));
    }
    EXPECT_EQ(shapes.size(), all.size());
    EXPECT_EQ(roles.size(), all.size());
}

TEST(Marks, StayWithinTheirSizeAndCarryTheId) {
    for (const Status status : all) {
        for (const DrawItem& item : statusMark(status, {10, 20}, {3, 3}, "F1")) {
            EXPECT_EQ(item.id, "F1");
            if (std::holds_alternative<shape::Text>(item.shape))
                continue;  // a sign of letters has its own height
            const RectMm box = boundsOf(item);
            EXPECT_GE(box.left, 10 - 1.75);
            EXPECT_LE(box.right, 10 + 1.75);
            EXPECT_GE(box.top, 20 - 1.75);
            EXPECT_LE(box.bottom, 20 + 1.75);
        }
    }
}

TEST(Marks, BoltsThatAreNotWellHaveARoleOfTheirOwn) {
    EXPECT_EQ(boltRole(Status::ok), Role::bolt);
    EXPECT_EQ(boltRole(Status::unloaded), Role::bolt);
    EXPECT_EQ(boltRole(Status::isShort), Role::boltShort);
    EXPECT_EQ(boltRole(Status::near), Role::boltNear);
    EXPECT_EQ(boltRole(Status::unknown), Role::boltUnknown);
    EXPECT_EQ(boltRole(Status::outside), Role::boltUnknown);
}

}  // namespace
}  // namespace fayline
