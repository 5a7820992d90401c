#include "derive/memo.h"

#include <gtest/gtest.h>

using fayline::Memo;

TEST(Memo, EqualInputGivesTheSamePointer) {
    Memo<int, int, int> memo;
    int runs = 0;
    const auto twice = [](int n) { return 2 * n; };
    const auto first = memo.get(0, 21, twice, runs);
    const auto second = memo.get(0, 21, twice, runs);
    EXPECT_EQ(first, second);
    EXPECT_EQ(runs, 1);
    EXPECT_EQ(*memo.get(0, 4, twice, runs), 8);
    EXPECT_EQ(runs, 2);
}

TEST(Memo, ForgetsWhatIsNotAskedForInTwoGenerations) {
    Memo<int, int, int> memo;
    int runs = 0;
    const auto same = [](int n) { return n; };
    memo.get(7, 1, same, runs);
    memo.nextGeneration();
    memo.nextGeneration();
    memo.get(7, 1, same, runs);
    EXPECT_EQ(runs, 1);
    memo.nextGeneration();
    memo.nextGeneration();
    memo.nextGeneration();
    memo.get(7, 1, same, runs);
    EXPECT_EQ(runs, 2);
}
