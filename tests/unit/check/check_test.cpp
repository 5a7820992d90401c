#include "check/check.h"

#include <gtest/gtest.h>

using namespace fayline;

namespace {

LimitState carrying(double working_N) {
    LimitState state;
    state.working = newtons(working_N);
    return state;
}

Check named(const char* id, Status status, double margin) {
    Check check;
    check.id = id;
    check.status = status;
    check.margin = margin;
    return check;
}

}  // namespace

TEST(Compare, BandsOfStatus) {
    EXPECT_EQ(compare(newtons(1000), carrying(999), 1.5).status, Status::isShort);
    EXPECT_EQ(compare(newtons(1000), carrying(1000), 1.5).status, Status::near);
    EXPECT_EQ(compare(newtons(1000), carrying(1499), 1.5).status, Status::near);
    EXPECT_EQ(compare(newtons(1000), carrying(1500), 1.5).status, Status::ok);
    EXPECT_DOUBLE_EQ(*compare(newtons(1000), carrying(1500), 1.5).margin, 1.5);
}

TEST(Compare, NilDemandIsUnloadedWithoutMargin) {
    const Check check = compare(Force{}, carrying(1000), 1.5);
    EXPECT_EQ(check.status, Status::unloaded);
    EXPECT_FALSE(check.margin);
    EXPECT_FALSE(check.why.empty());
}

TEST(Compare, OutsideTheRangeIsNeverOk) {
    LimitState state = carrying(9000);
    state.outside = {{Rule::washerMayDish, -1, {}, {}, 0.0}};
    EXPECT_EQ(compare(newtons(1000), state, 1.5).status, Status::outside);
    // Being short is worse news than being outside the range.
    EXPECT_EQ(compare(newtons(10000), state, 1.5).status, Status::isShort);
}

TEST(WorstOf, TakesTheFirstInOrder) {
    EXPECT_EQ(worstOf({}), Status::unloaded);
    EXPECT_EQ(worstOf({named("a", Status::ok, 2), named("b", Status::outside, 2)}),
              Status::outside);
    EXPECT_EQ(worstOf({named("a", Status::unknown, 0), named("b", Status::near, 1.2)}),
              Status::near);
    EXPECT_EQ(worstOf({named("a", Status::unknown, 0), named("b", Status::ok, 2)}),
              Status::unknown);
}

TEST(WorseThan, StatusThenMarginThenNaturalId) {
    EXPECT_TRUE(worseThan(named("K.9", Status::isShort, 0.9), named("K.1", Status::near, 1.1)));
    EXPECT_TRUE(worseThan(named("K.9", Status::near, 1.1), named("K.1", Status::near, 1.2)));
    EXPECT_TRUE(worseThan(named("K.2", Status::near, 1.1), named("K.10", Status::near, 1.1)));
    EXPECT_FALSE(worseThan(named("K.2", Status::near, 1.1), named("K.2", Status::near, 1.1)));
}
