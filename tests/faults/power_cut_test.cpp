// Writes down what reaches the disk while steps are written, then builds what a power cut at a
// random moment may leave of it and opens that. The controls are the same calls on a disk that does
// not keep its syncs: they show that the steps survive because of the syncs, and that this test
// would notice a missing one.

#include <gtest/gtest.h>

#include <cstdlib>
#include <iostream>

#include "disk_log.h"
#include "store/project_file.h"
#include "support.h"

namespace fayline {
namespace {

using namespace test;

constexpr std::int64_t stepsBefore = 20;
constexpr std::int64_t stepsWritten = 25;

struct Recording {
    Disk start;
    std::vector<DiskCall> calls;
    Journal journal;
};

Recording record() {
    const TempFolder folder;
    makeProject(folder / "a.fayline", stepsBefore);
    Recording recording;
    recording.start = readDisk(folder.path());
    startDiskLog(folder.path(), recording.start);
    {
        auto opened = ProjectFile::open(folder / "a.fayline", OpenMode::readWrite);
        for (std::int64_t i = 0; i < stepsWritten; ++i) {
            const Step step = nextStep(opened->file->journal());
            EXPECT_TRUE(opened->file->append(step));
            notePromise(step.number);
        }
        recording.journal = opened->file->journal();
    }
    recording.calls = stopDiskLog();
    return recording;
}

/// Like TempFolder, in memory where there is such a place: nothing here has to survive.
class ReplayFolder {
  public:
    ReplayFolder() {
        const std::filesystem::path memory("/dev/shm");
        std::string name =
            ((std::filesystem::is_directory(memory) ? memory
                                                    : std::filesystem::temp_directory_path()) /
             "fayline-test-XXXXXX")
                .string();
        EXPECT_NE(::mkdtemp(name.data()), nullptr);
        path_ = name;
    }
    ~ReplayFolder() { std::filesystem::remove_all(path_); }
    ReplayFolder(const ReplayFolder&) = delete;
    ReplayFolder& operator=(const ReplayFolder&) = delete;
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

  private:
    std::filesystem::path path_;
};

/// What is wrong with the project after the cut; empty if nothing is.
std::string brokenAfter(const Recording& recording, const Disk& disk, std::size_t cut) {
    std::size_t promised = stepsBefore;
    for (std::size_t i = 0; i < cut; ++i)
        if (recording.calls[i].kind == DiskCall::Kind::promise) promised = recording.calls[i].at;
    const ReplayFolder folder;
    writeDisk(disk, folder.path());
    {
        const auto opened = ProjectFile::open(folder.path() / "a.fayline", OpenMode::readWrite);
        if (!opened) return opened.error().line();
        const auto& steps = opened->file->steps();
        if (steps.size() < promised) return "a promised step is lost";
        if (steps.size() > promised + 1) return "more than one step nobody was told of";
        for (std::size_t i = 0; i < steps.size(); ++i)
            if (steps[i] != recording.journal.steps()[i]) return "a step is another";
    }
    if (namesIn(folder.path()).size() != 1) return "something is left beside the file";
    return "";
}

struct Tally {
    int broken = 0;
    std::string first;
};

Tally cutOften(const Recording& recording, int states, Syncs syncs) {
    const auto seed = std::random_device()();
    std::mt19937 random(seed);
    Tally tally;
    for (int i = 0; i < states; ++i) {
        const std::size_t cut = random() % (recording.calls.size() + 1);
        const Disk disk = afterPowerCut(recording.start, recording.calls, cut, syncs, random);
        const std::string broken = brokenAfter(recording, disk, cut);
        if (!broken.empty() && tally.broken++ == 0)
            tally.first = "cut at call " + std::to_string(cut) + ": " + broken;
    }
    std::cout << "seed " << seed << ": " << states << " power cuts among " << recording.calls.size()
              << " calls, " << tally.broken << " left the project broken"
              << (tally.first.empty() ? "" : "; first: " + tally.first) << std::endl;
    return tally;
}

TEST(PowerCutTest, testNothingPromisedIsLost) {
    const int states = std::getenv("FAYLINE_LONG") != nullptr ? 10'000 : 600;
    const Tally tally = cutOften(record(), states, Syncs::kept);
    EXPECT_EQ(tally.broken, 0) << tally.first;
}

TEST(PowerCutTest, testEveryStepIsSyncedFiveTimes) {
    // Journal, its folder, journal with its count, file, folder again: what SQLite does for
    // journal_mode DELETE with synchronous EXTRA.
    const Recording recording = record();
    int syncs = 0;
    for (const DiskCall& call : recording.calls)
        if (call.kind == DiskCall::Kind::syncFile || call.kind == DiskCall::Kind::syncFolder)
            ++syncs;
    EXPECT_EQ(syncs, 5 * stepsWritten);
}

TEST(PowerCutTest, testWithoutFolderSyncsPromisesBreak) {
    EXPECT_GT(cutOften(record(), 300, Syncs::filesOnly).broken, 3);
}

TEST(PowerCutTest, testWithoutAnySyncTheProjectBreaks) {
    EXPECT_GT(cutOften(record(), 300, Syncs::ignored).broken, 3);
}

}  // namespace
}  // namespace fayline
