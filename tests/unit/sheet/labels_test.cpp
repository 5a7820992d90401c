#include "sheet/labels.h"

#include <gtest/gtest.h>

namespace fayline {
namespace {

std::vector<LabelWish> frames(int count, double spacing_mm, double width_mm) {
    std::vector<LabelWish> row;
    for (int i = 0; i < count; ++i)
        row.push_back({"F" + std::to_string(i + 1), i * spacing_mm, width_mm, 0});
    return row;
}

std::vector<std::string> fitting(const std::vector<LabelWish>& row) {
    std::vector<std::string> names;
    for (const std::size_t i : labelsThatFit(row, {1.0})) names.push_back(row[i].text);
    return names;
}

using Names = std::vector<std::string>;

TEST(Labels, AllWhereThereIsRoom) {
    EXPECT_EQ(fitting(frames(4, 7.0, 6.0)), (Names{"F1", "F2", "F3", "F4"}));
}

TEST(Labels, EveryFifthAndTheEnds) {
    // 6 wide and 1 apart need 7: 5 frames 1.5 apart are 7.5, 2 are 3.
    EXPECT_EQ(fitting(frames(21, 1.5, 6.0)), (Names{"F5", "F10", "F15", "F20"}));
    // Two apart the ends fit as well.
    EXPECT_EQ(fitting(frames(22, 2.0, 6.0)), (Names{"F1", "F5", "F10", "F15", "F20"}));
}

TEST(Labels, UrgentOnesFirst) {
    std::vector<LabelWish> row = frames(21, 1.5, 6.0);
    row[10].urgency = 1;  // F11
    row[12].urgency = 2;  // F13, in the way of F11, F10 and F15
    EXPECT_EQ(fitting(row), (Names{"F5", "F13", "F20"}));
    row[12].urgency = 0;
    EXPECT_EQ(fitting(row), (Names{"F5", "F11", "F20"}));
}

TEST(Labels, LetteredFramesOnlyWhereAllFit) {
    std::vector<LabelWish> row = frames(10, 3.5, 6.0);
    row.insert(row.begin() + 5, {"F5A", 4.5 * 3.5, 6.0, 0});
    EXPECT_EQ(fitting(row), (Names{"F2", "F4", "F6", "F8", "F10"}));
}

TEST(Labels, NamesWithoutNumbersAndNoNamesAtAll) {
    EXPECT_EQ(fitting({{"stem", 0.0, 8.0, 0}, {"keel", 4.0, 8.0, 0}}), (Names{"stem"}));
    EXPECT_TRUE(fitting({}).empty());
}

TEST(Labels, NeverOverlap) {
    for (int count = 1; count < 90; count += 7) {
        for (double spacing_mm = 0.3; spacing_mm < 9.0; spacing_mm *= 1.3) {
            std::vector<LabelWish> row = frames(count, spacing_mm, 5.3);
            for (std::size_t i = 3; i < row.size(); i += 5)
                row[i].urgency = static_cast<int>(i % 3);
            const std::vector<std::size_t> chosen = labelsThatFit(row, {1.0});
            EXPECT_FALSE(chosen.empty());
            for (std::size_t k = 1; k < chosen.size(); ++k) {
                EXPECT_GE(row[chosen[k]].atMm - row[chosen[k - 1]].atMm, 6.3 - 1e-9);
            }
        }
    }
}

}  // namespace
}  // namespace fayline
