// What an edit costs, counted: only what is looked at follows it, and only where it changed.
#include <QSignalSpy>

#include "desk/when_seen.h"
#include "margins/margins_page.h"
#include "margins_model.h"
#include "metal/metal_page.h"
#include "metal_model.h"
#include "sheets/sheets_page.h"
#include "window_fixture.h"

namespace fayline {
namespace {

class Seen : public test::WindowTest {
  protected:
    Seen() {
        openDemo();
        // The first edit brings rows of the catalogue into the project.
        decide("3/4 in");
    }
    void decide(const char* diameter) {
        ASSERT_TRUE(window.desk().decide({{"K.5.diameter", diameter}}));
        QCoreApplication::processEvents();
    }
    [[nodiscard]] std::map<const WhenSeen*, int> runs() const {
        std::map<const WhenSeen*, int> counted;
        for (const auto* each : window.findChildren<WhenSeen*>()) counted[each] = each->runs();
        return counted;
    }
};

TEST_F(Seen, anEditMovesWhatIsInFrontAndNothingElse) {
    for (const auto page : {MainWindow::hullPage, MainWindow::stationsPage, MainWindow::marginsPage,
                            MainWindow::sheetsPage, MainWindow::metalPage}) {
        window.showPage(page);
        QCoreApplication::processEvents();
        const auto before = runs();
        ASSERT_GT(before.size(), 10U);
        decide("7/8 in");
        int followed = 0;
        for (const auto& [each, times] : before) {
            const bool visible = qobject_cast<const QWidget*>(each->parent())->isVisible();
            EXPECT_EQ(each->runs() - times, visible ? 1 : 0)
                << each->parent()->metaObject()->className() << " on page " << page;
            EXPECT_EQ(each->isStale(), !visible);
            followed += visible ? 1 : 0;
        }
        EXPECT_GT(followed, 0) << page;
        decide("3/4 in");
    }
}

TEST_F(Seen, oneBoltTouchesTheRowsOfBoltsAndOfMarginsThatMoved) {
    window.showPage(MainWindow::stationsPage);
    StationsModel& model = window.stations().model();
    QSignalSpy resets(&model, &QAbstractItemModel::modelReset);
    std::set<int> rows;
    int cells = 0;
    QObject::connect(&model, &QAbstractItemModel::dataChanged, &window,
                     [&](const QModelIndex& from, const QModelIndex& to) {
                         EXPECT_EQ(from, to) << "cell by cell";
                         rows.insert(from.row());
                         ++cells;
                     });
    decide("7/8 in");
    const auto bolts = window.desk().results()->ballastBolts->placed.size();
    EXPECT_EQ(resets.size(), 0);
    EXPECT_LE(model.madeRows(), static_cast<int>(bolts));
    EXPECT_LE(rows.size(), bolts) << "rows without a bolt stand as they were";
    EXPECT_LE(cells, static_cast<int>(2 * bolts)) << "its diameter, washer, and worst margins";
    EXPECT_GE(cells, 1);
    EXPECT_LT(bolts * 3, static_cast<std::size_t>(model.rowCount()));
}

TEST_F(Seen, aReasonOrdersNothing) {
    window.showPage(MainWindow::metalPage);
    QSignalSpy resets(&window.metal().model(), &QAbstractItemModel::modelReset);
    ASSERT_TRUE(window.desk().decide({{"K.5.reason", "as the others"}}));
    EXPECT_EQ(resets.size(), 0);
}

}  // namespace
}  // namespace fayline
