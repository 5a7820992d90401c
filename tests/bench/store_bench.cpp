// The project file: opening a long journal, writing one step, each beside plain SQLite doing as
// much on the same disk. Files stand in $TMPDIR, or where the system keeps temporary files.

#include <benchmark/benchmark.h>
#include <sqlite3.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <filesystem>
#include <stdexcept>
#include <vector>

#include "made_project.h"
#include "session.h"
#include "store/project_file.h"

namespace {

using namespace fayline;
using bench::Made;

class Folder {
  public:
    Folder() {
        path_ = (std::filesystem::temp_directory_path() / "fayline-bench-XXXXXX").string();
        if (::mkdtemp(path_.data()) == nullptr) throw std::runtime_error("no folder");
    }
    ~Folder() { std::filesystem::remove_all(path_); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    [[nodiscard]] std::filesystem::path operator/(const char* name) const {
        return std::filesystem::path(path_) / name;
    }

  private:
    std::string path_;
};

class Sqlite {
  public:
    explicit Sqlite(const std::filesystem::path& path) {
        if (sqlite3_open(path.c_str(), &native_) != SQLITE_OK)
            throw std::runtime_error("sqlite: open");
    }
    ~Sqlite() { sqlite3_close(native_); }
    Sqlite(const Sqlite&) = delete;
    Sqlite& operator=(const Sqlite&) = delete;
    void run(const std::string& sql) {
        if (sqlite3_exec(native_, sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK)
            throw std::runtime_error(std::string("sqlite: ") + sqlite3_errmsg(native_));
    }
    /// Reads every row and column; how many rows.
    long read(const char* sql) {
        sqlite3_stmt* statement = nullptr;
        if (sqlite3_prepare_v2(native_, sql, -1, &statement, nullptr) != SQLITE_OK)
            throw std::runtime_error(std::string("sqlite: ") + sqlite3_errmsg(native_));
        long rows = 0;
        std::vector<std::string> cells;
        while (sqlite3_step(statement) == SQLITE_ROW) {
            ++rows;
            cells.clear();
            for (int c = 0; c < sqlite3_column_count(statement); ++c) {
                const auto* text = sqlite3_column_text(statement, c);
                cells.emplace_back(text != nullptr ? reinterpret_cast<const char*>(text) : "");
            }
            benchmark::DoNotOptimize(cells);
        }
        sqlite3_finalize(statement);
        return rows;
    }

  private:
    sqlite3* native_ = nullptr;
};

double microseconds(std::chrono::steady_clock::duration time) {
    return std::chrono::duration<double, std::micro>(time).count();
}

double part(std::vector<double> values, double share) {
    std::sort(values.begin(), values.end());
    return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1))];
}

void makeFile(const std::filesystem::path& path, const Made& made) {
    const auto created = ProjectFile::create(path, made.journal.steps(), "bench");
    if (!created) throw std::runtime_error(created.error().line());
}

/// Opens, checks every step of the chain and folds it; beside reading the same rows with SQLite
/// alone.
void openLongJournal(benchmark::State& state) {
    Made made(60);
    made.growTo(static_cast<std::size_t>(state.range(0)));
    const Folder folder;
    makeFile(folder / "long.fayline", made);
    std::vector<double> open_us, raw_us;
    for (auto _ : state) {
        const auto begun = std::chrono::steady_clock::now();
        const auto opened = ProjectFile::open(folder / "long.fayline", OpenMode::readOnly);
        const auto done = std::chrono::steady_clock::now();
        if (!opened) throw std::runtime_error(opened.error().line());
        Sqlite raw(folder / "long.fayline");
        if (raw.read("SELECT * FROM journal ORDER BY step") != state.range(0))
            state.SkipWithError("not all steps are there");
        raw.read("SELECT * FROM change ORDER BY step, n");
        open_us.push_back(microseconds(done - begun));
        raw_us.push_back(microseconds(std::chrono::steady_clock::now() - done));
    }
    state.counters["open_us"] = part(open_us, 0.5);
    state.counters["rows_us"] = part(raw_us, 0.5);
    state.counters["open_over_rows"] = part(open_us, 0.5) / part(raw_us, 0.5);
}

/// What a command waits for: catalogue, file, fold, everything worked out.
void openToMargins(benchmark::State& state) {
    Made made(60);
    made.growTo(static_cast<std::size_t>(state.range(0)));
    const Folder folder;
    makeFile(folder / "long.fayline", made);
    for (auto _ : state) {
        const auto session = cli::openSession(folder / "long.fayline", OpenMode::readOnly);
        if (!session || session->results->worstFirst.empty())
            state.SkipWithError("no margins came of it");
    }
}

/// One step written so that it survives a power cut; beside SQLite with the same syncs and rows.
void commitOneStep(benchmark::State& state) {
    Made made(60);
    const Folder folder;
    makeFile(folder / "p.fayline", made);
    const auto opened = ProjectFile::open(folder / "p.fayline", OpenMode::readWrite);
    if (!opened) throw std::runtime_error(opened.error().line());
    Sqlite raw(folder / "raw.sqlite");
    raw.run("PRAGMA journal_mode=DELETE; PRAGMA synchronous=EXTRA");
    raw.run(
        "CREATE TABLE journal(step INTEGER PRIMARY KEY, a TEXT); CREATE TABLE change(step INTEGER, "
        "n INTEGER, a TEXT,"
        " PRIMARY KEY(step, n)) WITHOUT ROWID; CREATE TABLE head(id INTEGER PRIMARY KEY, step "
        "INTEGER);"
        " INSERT INTO head VALUES(1, 0)");
    const std::string filler(300, 'x');
    std::vector<double> commit_us, raw_us;
    long turn = 0;
    for (auto _ : state) {
        const Step step = made.prepared("K.5.diameter", bench::diameterOf(turn));
        const auto begun = std::chrono::steady_clock::now();
        if (const auto written = opened->file->append(step); !written)
            throw std::runtime_error(written.error().line());
        const auto done = std::chrono::steady_clock::now();
        const std::string n = std::to_string(++turn);
        raw.run("BEGIN IMMEDIATE; INSERT INTO journal VALUES(" + n + ",'" + filler +
                "'); INSERT INTO change VALUES(" + n + ",1,'" + filler +
                "'); UPDATE head SET step=" + n + "; COMMIT");
        commit_us.push_back(microseconds(done - begun));
        raw_us.push_back(microseconds(std::chrono::steady_clock::now() - done));
        state.PauseTiming();
        made.decide("K.5.diameter", bench::diameterOf(turn - 1));
        state.ResumeTiming();
    }
    state.counters["commit_us"] = part(commit_us, 0.5);
    state.counters["commit_p99_us"] = part(commit_us, 0.99);
    state.counters["sqlite_us"] = part(raw_us, 0.5);
    state.counters["commit_over_sqlite"] = part(commit_us, 0.5) / part(raw_us, 0.5);
}

}  // namespace

BENCHMARK(openLongJournal)->Arg(2000)->Unit(benchmark::kMillisecond);
BENCHMARK(openToMargins)->Arg(2000)->Unit(benchmark::kMillisecond);
BENCHMARK(commitOneStep)->Unit(benchmark::kMicrosecond);
