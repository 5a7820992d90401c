// A view with thousands of marks must follow the hand.
#include <gtest/gtest.h>

#include <QApplication>
#include <QScrollBar>
#include <algorithm>
#include <array>
#include <ctime>
#include <iostream>

#include "sketch/sketch_view.h"

namespace fayline {
namespace {

Drawing manyMarks(int count) {
    Drawing drawing;
    drawing.size = {600.0, 300.0};
    constexpr std::array kinds{shape::MarkKind::circle, shape::MarkKind::cross,
                               shape::MarkKind::diamond, shape::MarkKind::triangle,
                               shape::MarkKind::square};
    for (int i = 0; i < count; ++i) {
        const PointMm at{3.0 + (i % 120) * 4.95, 3.0 + (i / 120) * 5.9};
        drawing.items.push_back({Role::label, "P." + std::to_string(i),
                                 shape::Mark{at,
                                             kinds[static_cast<std::size_t>(i) % kinds.size()],
                                             2.0,
                                             i % 2 == 0,
                                             {0.2, {}}}});
    }
    return drawing;
}

/// Work of this thread, so that a busy machine changes nothing.
class Stopwatch {
  public:
    [[nodiscard]] double milliseconds() const { return now() - start_; }

  private:
    static double now() {
        timespec time{};
        clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
        return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) / 1e6;
    }
    double start_ = now();
};

TEST(Pan, SixThousandMarksFollowTheHand) {
    SketchView view;
    view.resize(1240, 420);
    view.setDrawing(manyMarks(6000));
    view.show();
    view.setZoom(3.0);
    QApplication::processEvents();
    std::vector<double> steps_ms;
    for (int i = 0; i < 150; ++i) {
        const Stopwatch timer;
        view.horizontalScrollBar()->setValue(view.horizontalScrollBar()->value() +
                                             (i < 75 ? 12 : -12));
        view.verticalScrollBar()->setValue(view.verticalScrollBar()->value() +
                                           (i % 50 < 25 ? 7 : -7));
        view.viewport()->repaint();
        steps_ms.push_back(timer.milliseconds());
        for (int k = 0; k < 4; ++k)
            QApplication::processEvents();  // the time between two moves of a hand
    }
    std::sort(steps_ms.begin(), steps_ms.end());
    std::cout << "pan over 6000 marks: median " << steps_ms[75] << " ms, three in four below "
              << steps_ms[112] << " ms, 95 % below " << steps_ms[142] << " ms, worst "
              << steps_ms.back() << " ms\n";
    EXPECT_LT(steps_ms[75], 5.0);
    EXPECT_LT(steps_ms[142], 5.0);

    Stopwatch watch;
    view.setSelected(QStringLiteral("P.2000"));
    view.viewport()->repaint();
    std::cout << "choosing: " << watch.milliseconds() << " ms\n";
    watch = Stopwatch();
    view.setZoom(2.0);
    view.viewport()->repaint();
    std::cout << "whole view painted anew: " << watch.milliseconds() << " ms\n";
    watch = Stopwatch();
    int hits = 0;
    for (int i = 0; i < 100; ++i) hits += view.idAt({10 * i, 200}) ? 1 : 0;
    EXPECT_GT(hits, 10);
    std::cout << "finding what lies under the pointer: " << watch.milliseconds() / 100.0 << " ms\n";
}

}  // namespace
}  // namespace fayline
