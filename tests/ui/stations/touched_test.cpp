// Rows that follow edits one by one against rows made of the outcome alone.
#include <random>

#include "grid_fixture.h"

namespace fayline {
namespace {

class TouchedRows : public test::GridTest {
  protected:
    TouchedRows() { EXPECT_TRUE(desk.decide(test::everyGroup())); }
};

TEST_F(TouchedRows, equalFreshOnesAfterAnyRunOfEdits) {
    const std::vector<Typed> edits = {{{"F20.heel.gauge", "16"}},
                                      {{"F20.P.arm.diameter", "1/4 in"}},
                                      {{"F20.P.arm.diameter", ""}},
                                      {{"K.5.diameter", "3/4 in"}},
                                      {{"K.5.diameter", ""}},
                                      {{"K.6.washer_diameter", "4 in"}},
                                      {{"K.6.x", "5000 mm"}},
                                      {{"K.6.x", ""}},
                                      {{"bolts.diameter", "1 in"}},
                                      {{"bolts.count", "8"}},
                                      {{"bolts.count", "9"}},
                                      {{"heel.gauge", "12"}},
                                      {{"plank.count", "3"}},
                                      {{"F18.floor.kind", "none"}},
                                      {{"F18.floor.kind", ""}},
                                      {{"F19.floor.throat", "9 in"}},
                                      {{"F21.frame.x", "5200 mm"}},
                                      {{"frames.sided", "2 in"}},
                                      {{"hull.basis", "ec5"}},
                                      {{"hull.basis", "us"}},
                                      {{"hull.units", "millimetres"}},
                                      {{"hull.units", "inches"}},
                                      {{"keel.sided", "9 in"}},
                                      {{"keel.sided", "8 1/4 in"}},
                                      {{"F17.frame.reason", "as it came"}}};
    std::mt19937 random(20261125);
    constexpr int turns = 120;
    int few = 0;
    for (int turn = 0; turn < turns; ++turn) {
        const Typed& edit = edits[random() % edits.size()];
        const auto done = desk.decide(edit);
        if (!done) continue;  // a bolt that is not there while there are eight
        if (turn % 7 == 3) {
            ASSERT_TRUE(desk.undo());
        }
        const std::vector<StationRow> fresh = stationRows(desk);
        ASSERT_EQ(model.rowCount(), static_cast<int>(fresh.size()));
        for (int row = 0; row < model.rowCount(); ++row) {
            ASSERT_EQ(model.row(row), fresh[static_cast<std::size_t>(row)])
                << model.row(row).frame << " after " << edit.front().first;
        }
        few += model.madeRows() * 3 < model.rowCount() ? 1 : 0;
    }
    EXPECT_GT(few, turns / 4) << "most edits touch few rows";
}

}  // namespace
}  // namespace fayline
