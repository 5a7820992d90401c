// How long the window is away for one edit of a large hull.
#include <QElapsedTimer>
#include <algorithm>
#include <iostream>

#include "made_hull.h"
#include "window_fixture.h"

namespace fayline {
namespace {

constexpr int frames = 60;
constexpr int turns = 15;

class Speed : public test::WindowTest {
  protected:
    void openMade() {
        ASSERT_TRUE(window.createFile(file.folder() + QStringLiteral("/made.fayline"),
                                      std::vector<Step>{}));
        test::Decisions first, then;
        for (auto& decision : test::madeHull(frames))
            (decision.first.find('-') == std::string::npos ? first : then).push_back(decision);
        for (const auto& typed : {first, then}) ASSERT_TRUE(window.desk().decide(typed));
        ASSERT_GE(allHoles(*window.desk().results()).size(), 3000U);
    }
    /// From the edit until everything that changed is painted: all, and the part that decides and
    /// works out.
    double medianOf(const std::function<Typed(int)>& edit) {
        std::vector<double> times_ms;
        for (int turn = 0; turn < turns; ++turn) {
            window.desk().waitUntilSettled(1000);
            QCoreApplication::processEvents();
            QElapsedTimer clock;
            clock.start();
            EXPECT_TRUE(window.desk().decide(edit(turn)));
            QCoreApplication::processEvents(QEventLoop::ExcludeUserInputEvents);
            times_ms.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
        }
        std::nth_element(times_ms.begin(), times_ms.begin() + turns / 2, times_ms.end());
        return times_ms[turns / 2];
    }
};

TEST_F(Speed, anEditOfALargeHullIsSeenAtOnce) {
    openMade();
    window.resize(1360, 860);
    // Bounds leave room for a slow, busy machine and for code without full optimisation; the
    // figures are printed to be looked at.
    constexpr double most_ms = 400.0;
    for (const auto page : {MainWindow::stationsPage, MainWindow::marginsPage,
                            MainWindow::sheetsPage, MainWindow::metalPage, MainWindow::hullPage}) {
        window.showPage(page);
        for (int i = 0; i < 5; ++i) QCoreApplication::processEvents();
        const double bolt_ms = medianOf([](int turn) {
            return Typed{{"K.5.diameter", turn % 2 == 0 ? "3/4 in" : "7/8 in"}};
        });
        const double heel_ms = medianOf([](int turn) {
            return Typed{{"F30.heel.count", turn % 2 == 0 ? "3" : "2"}};
        });
        std::cout << "page " << page << ": a bolt " << bolt_ms << " ms, a heel " << heel_ms
                  << " ms\n";
        EXPECT_LT(bolt_ms, most_ms) << page;
        EXPECT_LT(heel_ms, most_ms) << page;
    }
}

}  // namespace
}  // namespace fayline
