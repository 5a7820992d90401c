// From one decision until the window shows what came of it, page by page, on hulls of several
// sizes; and the bench sheets as PDF. Nothing is seen of it: the pages are painted off screen.
// Times are what the window's thread computed; beside them stands the clock's.

#include <benchmark/benchmark.h>

#include <QApplication>
#include <QElapsedTimer>
#include <QTemporaryDir>
#include <algorithm>
#include <cmath>
#include <ctime>
#include <stdexcept>

#include "derive/paper.h"
#include "desk/desk.h"
#include "made_hull.h"
#include "made_project.h"
#include "main_window.h"
#include "paper/paper.h"
#include "services.h"

namespace {

using namespace fayline;

/// Frames, strakes, screws at each crossing.
struct Size {
    int frames, strakes, eachCrossing;
};
constexpr Size usual{60, 24, 2};  // about 6,000 fastenings
constexpr Size large{120, 50, 2};
constexpr Size largest{240, 50, 4};

constexpr const char* pageNames[] = {"hull", "stations", "margins", "sheets", "metal"};

/// What this thread has computed: other programs on the machine do not count.
double computed_ms() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return 1e3 * static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) / 1e6;
}

/// By the clock on the wall, and computed.
struct Times {
    double wall_ms = 0.0, computed_ms = 0.0;
};

double milliseconds(const QElapsedTimer& clock) {
    return static_cast<double>(clock.nsecsElapsed()) / 1e6;
}

double middle(std::vector<double> values) {
    std::nth_element(values.begin(), values.begin() + static_cast<long>(values.size() / 2),
                     values.end());
    return values[values.size() / 2];
}

/// A window with a made hull open in it.
class Window {
  public:
    explicit Window(const Size& size)
        : settings_(folder_.path(), folder_.path()),
          theme_(*qApp),
          window_(test::services(), settings_, theme_) {
        const bench::Made made(size.frames, size.strakes, size.eachCrossing);
        window_.resize(1360, 860);
        window_.show();
        const QString path = folder_.path() + QStringLiteral("/made.fayline");
        if (!window_.createFile(path, made.journal.steps())) throw std::runtime_error("no file");
        rest();
    }

    [[nodiscard]] Desk& desk() { return window_.desk(); }
    [[nodiscard]] QString folder() const { return folder_.path(); }
    [[nodiscard]] long holes() { return static_cast<long>(allHoles(*desk().results()).size()); }

    /// Brings a page to the front and waits until it has nothing left to do.
    void show(int page) {
        window_.showPage(static_cast<MainWindow::PageNumber>(page));
        rest();
    }
    [[gnu::noinline]] void rest() {
        desk().waitUntilSettled(5000);
        QElapsedTimer clock;
        clock.start();
        // Idle work comes one piece a turn of the loop.
        while (clock.elapsed() < 150) QCoreApplication::processEvents();
    }
    /// The middle of several times from a decision until all that changed is painted.
    [[gnu::noinline]] Times edit(const std::string& what, const char* one, const char* other,
                                 int turns) {
        std::vector<double> wall, computed;
        for (int turn = 0; turn < turns; ++turn) {
            rest();
            QElapsedTimer clock;
            clock.start();
            const double begun_ms = computed_ms();
            if (!desk().decide({{what, turn % 2 == 0 ? one : other}}))
                throw std::runtime_error(what);
            QCoreApplication::processEvents(QEventLoop::ExcludeUserInputEvents);
            computed.push_back(computed_ms() - begun_ms);
            wall.push_back(milliseconds(clock));
        }
        return {middle(wall), middle(computed)};
    }

  private:
    QTemporaryDir folder_;
    Settings settings_;
    Theme theme_;
    MainWindow window_;
};

constexpr int turns = 11;

Times bolt(Window& window) {
    return window.edit("K.5.diameter", "3/4 in", "7/8 in", turns);
}
Times heel(Window& window) {
    return window.edit("F30.heel.count", "3", "2", turns);
}

void editUntilPainted(benchmark::State& state) {
    Window window(usual);
    const auto page = static_cast<int>(state.range(0));
    window.show(page);
    for (auto _ : state) {
        const auto tell = [&](const std::string& name, const Times& times) {
            state.counters[name + "_ms"] = times.computed_ms;
            state.counters[name + "_wall_ms"] = times.wall_ms;
        };
        tell("bolt", bolt(window));
        tell("heel", heel(window));
        tell("all_planks", window.edit("plank.gauge", "No. 12", "No. 14", 5));
    }
    state.counters["holes"] = static_cast<double>(window.holes());
    state.SetLabel(pageNames[page]);
}

/// How the time of one bolt's edit grows with the hull: t ~ holes ^ exponent between the smallest
/// and the largest.
void growth(benchmark::State& state) {
    const auto page = static_cast<int>(state.range(0));
    for (auto _ : state) {
        std::vector<double> times, holes;
        for (const Size& size : {usual, large, largest}) {
            Window window(size);
            window.show(page);
            times.push_back(bolt(window).computed_ms);
            holes.push_back(static_cast<double>(window.holes()));
        }
        state.counters["ms_6k"] = times[0];
        state.counters["ms_25k"] = times[1];
        state.counters["ms_100k"] = times[2];
        state.counters["exponent"] = std::log(times[2] / times[0]) / std::log(holes[2] / holes[0]);
    }
    state.SetLabel(pageNames[page]);
}

void sheetsToPdf(benchmark::State& state) {
    Window window(usual);
    const Desk& desk = window.desk();
    PaperOptions options;
    options.program = "bench";
    options.steps = &desk.journal().steps();
    for (auto _ : state) {
        QElapsedTimer clock;
        clock.start();
        const auto sheets = sheetsOf(desk.project(), *desk.results(), desk.catalogue(), options);
        state.counters["laid_out_ms"] = milliseconds(clock);
        int written = 0;
        for (const Sheet& sheet : sheets) {
            if (sheet.kind != SheetKind::frame) continue;
            if (!writePdf(window.folder() + QStringLiteral("/%1.pdf").arg(written), sheet))
                state.SkipWithError("a sheet was not written");
            ++written;
        }
        state.counters["sheets"] = written;
        state.counters["all_ms"] = milliseconds(clock);
    }
}

}  // namespace

BENCHMARK(editUntilPainted)->DenseRange(0, 4)->Iterations(1)->Unit(benchmark::kMillisecond);
BENCHMARK(sheetsToPdf)->Iterations(3)->Unit(benchmark::kMillisecond);
BENCHMARK(growth)->DenseRange(0, 4)->Iterations(1)->Unit(benchmark::kMillisecond);

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    QApplication::setStyle(QStringLiteral("Fusion"));
    QLocale::setDefault(QLocale::c());
    benchmark::Initialize(&argc, argv);
    if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 1;
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
