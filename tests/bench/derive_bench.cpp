// One edit against everything again, on hulls of several sizes.

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <vector>

#include "derive/derive.h"
#include "made_project.h"
#include "project/fields.h"

namespace {

using namespace fayline;
using bench::Made;

void setBolt(Project& project, long turn) {
    if (!applyChange(project, "K.5.diameter", bench::diameterOf(turn)))
        throw std::runtime_error("K.5.diameter");
}

void countRuns(benchmark::State& state, const Results& results) {
    const RunCounts& runs = results.runs;
    const auto count = [&](const char* name, int n) { state.counters[name] = n; };
    count("loft", runs.loft);
    count("hydrostatics", runs.hydrostatics);
    count("structure", runs.structure);
    count("curves", runs.curves);
    count("frames", runs.frames);
    count("layout", runs.layout);
    count("loads", runs.loads);
    count("checks", runs.checks);
    count("holes", static_cast<int>(allHoles(results).size()));
}

double microseconds(std::chrono::steady_clock::duration time) {
    return std::chrono::duration<double, std::micro>(time).count();
}

double middle(std::vector<double> values) {
    std::nth_element(values.begin(), values.begin() + static_cast<long>(values.size() / 2),
                     values.end());
    return values[values.size() / 2];
}

/// Frames, strakes and screws at each crossing: 60, 24 and 2 make about 6,000 fastenings.
Made madeOf(const benchmark::State& state) {
    return Made(static_cast<int>(state.range(0)), static_cast<int>(state.range(1)),
                static_cast<int>(state.range(2)));
}

/// K.5's diameter changes; the deriver keeps what it knew. The counters are the slices of each
/// stage that really ran; an edit that touches the hull or another frame is no result.
void editOneBolt(benchmark::State& state) {
    Made made = madeOf(state);
    Deriver deriver(made.catalogue);
    auto results = deriver.derive(made.project);
    long turn = 0;
    for (auto _ : state) {
        setBolt(made.project, turn++);
        results = deriver.derive(made.project);
        benchmark::DoNotOptimize(results);
    }
    countRuns(state, *results);
    const RunCounts& runs = results->runs;
    // The frame the bolt stands at is laid out anew: its fastenings keep clear of the bolt.
    if (runs.loft + runs.hydrostatics + runs.structure + runs.curves > 0 || runs.frames > 1)
        state.SkipWithError("the edit ran stages it does not touch");
    if (runs.layout == 0 || runs.loads == 0 || runs.checks == 0)
        state.SkipWithError("the edit ran nothing");
}

void fromScratch(benchmark::State& state) {
    const Made made = madeOf(state);
    std::shared_ptr<const Results> results;
    for (auto _ : state) {
        results = Deriver(made.catalogue).derive(made.project);
        benchmark::DoNotOptimize(results);
    }
    countRuns(state, *results);
}

/// The two by turns in one run, so that a busy machine slows both: middle times and their ratio.
void editAgainstScratch(benchmark::State& state) {
    Made made = madeOf(state);
    Deriver deriver(made.catalogue);
    deriver.derive(made.project);
    std::vector<double> edit_us, scratch_us;
    long turn = 0;
    for (auto _ : state) {
        setBolt(made.project, turn++);
        const auto begun = std::chrono::steady_clock::now();
        benchmark::DoNotOptimize(deriver.derive(made.project));
        const auto edited = std::chrono::steady_clock::now();
        benchmark::DoNotOptimize(Deriver(made.catalogue).derive(made.project));
        edit_us.push_back(microseconds(edited - begun));
        scratch_us.push_back(microseconds(std::chrono::steady_clock::now() - edited));
    }
    state.counters["edit_us"] = middle(edit_us);
    state.counters["scratch_us"] = middle(scratch_us);
    state.counters["scratch_over_edit"] = middle(scratch_us) / middle(edit_us);
}

/// About 6,000, 25,000 and 100,000 fastenings.
void sizes(benchmark::internal::Benchmark* bench) {
    bench->Args({60, 24, 2})->Args({120, 50, 2})->Args({240, 50, 4});
}

}  // namespace

BENCHMARK(editOneBolt)->Apply(sizes)->Unit(benchmark::kMicrosecond);
BENCHMARK(fromScratch)->Apply(sizes)->Unit(benchmark::kMicrosecond);
BENCHMARK(editAgainstScratch)->Args({60, 24, 2})->Unit(benchmark::kMicrosecond);
