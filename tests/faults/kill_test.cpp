// Kills a program that writes steps, at random moments, and looks whether the project still holds
// every step it was told was kept. A kill alone never finds a missing sync: what the program wrote
// is in the kernel's hands and survives it, so this test says nothing about power cuts, and a
// variant with synchronous off would pass it just as well. What it can find is a promise made
// before the commit, and a variant that does that is its control.

#include <gtest/gtest.h>
#include <poll.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <cstdlib>
#include <iostream>
#include <random>
#include <sstream>
#include <thread>

#include "store/project_file.h"
#include "support.h"

namespace fayline {
namespace {

using namespace test;

/// What one killed program said before it died.
struct LastWords {
    bool ready = false;
    std::vector<std::pair<std::int64_t, std::string>> acks;
    int status = 0;
    int kills = 1;  ///< more if nobody looked at the file in between
};

LastWords runAndKill(const std::filesystem::path& path, bool ackEarly, bool whileOpening,
                     std::chrono::microseconds after) {
    int ends[2];
    EXPECT_EQ(::pipe(ends), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        ::dup2(ends[1], STDOUT_FILENO);
        ::close(ends[0]);
        ::close(ends[1]);
        ::execl(STEP_WRITER, STEP_WRITER, path.c_str(), ackEarly ? "--ack-early" : nullptr,
                static_cast<char*>(nullptr));
        ::_exit(127);
    }
    ::close(ends[1]);
    std::string said;
    if (!whileOpening) {
        char first = ' ';
        if (::read(ends[0], &first, 1) == 1) said += first;
    }
    std::this_thread::sleep_for(after);
    ::kill(child, SIGKILL);
    char buffer[4096];
    for (ssize_t got = 0; (got = ::read(ends[0], buffer, sizeof buffer)) > 0;)
        said.append(buffer, static_cast<std::size_t>(got));
    ::close(ends[0]);
    LastWords words;
    ::waitpid(child, &words.status, 0);
    std::istringstream lines(said.substr(0, said.rfind('\n') + 1));
    std::string word;
    while (lines >> word) {
        if (word == "READY") words.ready = true;
        if (word != "ACK") continue;
        auto& ack = words.acks.emplace_back();
        lines >> ack.first >> ack.second;
    }
    return words;
}

constexpr unsigned openingSpan = 25'000;  // microseconds

struct Tally {
    int rounds = 0;
    int acked = 0;
    int oneMore = 0;       ///< a step was in the file but not yet told of
    int journalLeft = 0;   ///< the kill left a step half written
    int whileOpening = 0;  ///< killed before it could say that it was ready
    int broken = 0;        ///< rounds after which something promised was not so
    std::string firstBroken;
    std::chrono::milliseconds slowestOpening{0};
};

std::string brokenPromise(const TempFolder& folder, const LastWords& words, std::int64_t& tip,
                          Tally& tally) {
    const auto path = folder / "a.fayline";
    if (!WIFSIGNALED(words.status)) return "it ended by itself, " + std::to_string(words.status);
    if (std::filesystem::exists(folder / "a.fayline-journal")) ++tally.journalLeft;
    {
        const auto begun = std::chrono::steady_clock::now();
        const auto opened = ProjectFile::open(path, OpenMode::readWrite);
        if (!opened) return opened.error().line();
        tally.slowestOpening =
            std::max(tally.slowestOpening, std::chrono::duration_cast<std::chrono::milliseconds>(
                                               std::chrono::steady_clock::now() - begun));
        if (opened->outcome != FileOutcome::ok) return "not ok: " + opened->says;
        const auto& steps = opened->file->steps();
        const auto now = static_cast<std::int64_t>(steps.size());
        for (const auto& [number, hash] : words.acks)
            if (number > now || steps[static_cast<std::size_t>(number - 1)].hash != hash)
                return "step " + std::to_string(number) + " was promised and is not there";
        const std::int64_t known = tip + static_cast<std::int64_t>(words.acks.size());
        tip = now;
        if (now > known + words.kills) return "more steps nobody was told of than kills";
        if (now > known) ++tally.oneMore;
    }
    if (namesIn(folder.path()) != std::vector<std::string>{"a.fayline"})
        return "something is left beside the file";
    return "";
}

/// The span of time in which kills fall: 30 ms, or on a slow disk long enough for some steps.
std::chrono::microseconds killSpan(const std::filesystem::path& path) {
    auto opened = ProjectFile::open(path, OpenMode::readWrite);
    const auto begun = std::chrono::steady_clock::now();
    for (int i = 0; i < 10; ++i)
        EXPECT_TRUE(opened->file->append(nextStep(opened->file->journal())));
    const auto five = (std::chrono::steady_clock::now() - begun) / 2;
    return std::max(std::chrono::microseconds(30'000),
                    std::chrono::duration_cast<std::chrono::microseconds>(five));
}

Tally killOften(int rounds, bool ackEarly) {
    const TempFolder folder;
    makeProject(folder / "a.fayline", 10);
    const auto seed = std::random_device()();
    std::cout << "seed " << seed << std::endl;
    std::mt19937 random(seed);
    Tally tally;
    const auto span = static_cast<unsigned>(killSpan(folder / "a.fayline").count());
    std::int64_t tip = 20;
    LastWords before;
    before.kills = 0;
    for (int i = 0; i < rounds; ++i) {
        // Every fifth program is killed while it opens what the fourth, unlooked at, has left.
        const bool whileOpening = i % 5 == 4;
        const std::chrono::microseconds after(random() % (whileOpening ? openingSpan : span));
        LastWords words = runAndKill(folder / "a.fayline", ackEarly, whileOpening, after);
        ++tally.rounds;
        tally.acked += static_cast<int>(words.acks.size());
        if (!words.ready) ++tally.whileOpening;
        words.acks.insert(words.acks.begin(), before.acks.begin(), before.acks.end());
        words.kills += before.kills;
        if (i % 5 == 3 && i + 1 < rounds) {
            before = words;
            continue;
        }
        before = {};
        before.kills = 0;
        const std::string broken = brokenPromise(folder, words, tip, tally);
        if (broken.empty()) continue;
        if (tally.broken++ == 0)
            tally.firstBroken = "round " + std::to_string(i + 1) + ": " + broken;
    }
    std::cout << tally.rounds << " kills, " << tally.acked << " steps acknowledged, "
              << tally.journalLeft << " left a step half written, " << tally.oneMore
              << " left one step more, " << tally.whileOpening
              << " fell while opening, slowest opening " << tally.slowestOpening.count()
              << " ms, broken promises " << tally.broken << std::endl;
    return tally;
}

int roundsWanted() {
    return std::getenv("FAYLINE_LONG") != nullptr ? 1'000 : 50;
}

TEST(KillTest, testNoAcknowledgedStepIsLost) {
    const Tally tally = killOften(roundsWanted(), false);
    EXPECT_EQ(tally.broken, 0) << tally.firstBroken;
    EXPECT_GT(tally.acked, tally.rounds / 2) << "the kills must fall while steps are written";
    EXPECT_GT(tally.journalLeft, 0) << "some kills must fall in the middle of a step";
    EXPECT_LT(tally.slowestOpening, std::chrono::seconds(1));
}

TEST(KillTest, testAPromiseMadeTooEarlyIsFoundOut) {
    EXPECT_GT(killOften(20, true).broken, 0);
}

}  // namespace
}  // namespace fayline
