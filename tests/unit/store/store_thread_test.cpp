#include "store/store_thread.h"

#include <gtest/gtest.h>
#include <sqlite3.h>

#include <atomic>
#include <mutex>
#include <thread>

#include "support.h"

namespace fayline {
namespace {

using namespace test;
using std::chrono::milliseconds;
using std::chrono::seconds;

/// What the store has told so far.
struct Told {
    std::mutex mutex;
    std::vector<std::int64_t> settled;
    std::vector<std::string> failed;
    std::atomic<bool> onOtherThread = true;

    StoreThread::Callbacks callbacks() {
        const auto here = std::this_thread::get_id();
        return {[this, here](const Step& step) {
                    const std::lock_guard lock(mutex);
                    if (std::this_thread::get_id() == here) onOtherThread = false;
                    settled.push_back(step.number);
                },
                [this](const Step& step, const Problem& problem) {
                    const std::lock_guard lock(mutex);
                    failed.push_back(std::to_string(step.number) + " " + problem.code);
                }};
    }
    std::vector<std::int64_t> settledNow() {
        const std::lock_guard lock(mutex);
        return settled;
    }
    std::vector<std::string> failedNow() {
        const std::lock_guard lock(mutex);
        return failed;
    }
};

Step addTo(Journal& journal) {
    Step step = nextStep(journal);
    EXPECT_TRUE(journal.append(step));
    return step;
}

TEST(StoreThreadTest, testStepsSettleInOrderAndAreThere) {
    const TempFolder folder;
    Told told;
    auto store = StoreThread::create(folder / "a", {}, "fayline", told.callbacks());
    ASSERT_TRUE(store) << store.error().line();
    EXPECT_FALSE((*store)->lastSettled());
    Journal journal;
    std::vector<std::int64_t> numbers;
    for (int i = 0; i < 25; ++i) {
        (*store)->post(addTo(journal));
        numbers.push_back(i + 1);
    }
    EXPECT_TRUE((*store)->waitUntilSettled(seconds(20)));
    EXPECT_EQ(told.settledNow(), numbers);
    EXPECT_TRUE(told.onOtherThread);
    EXPECT_TRUE((*store)->unsettled().empty());
    EXPECT_TRUE((*store)->lastSettled());
    EXPECT_EQ(ProjectFile::verify(folder / "a")->step, 25);
    EXPECT_TRUE((*store)->close().empty());
    const auto again = StoreThread::open(folder / "a", OpenMode::readWrite, {});
    EXPECT_EQ((*again)->opened().journal.steps(), journal.steps());
    EXPECT_EQ((*again)->opened().outcome, FileOutcome::ok);
}

TEST(StoreThreadTest, testClosingWritesWhatIsLeft) {
    const TempFolder folder;
    Journal journal;
    {
        auto store = StoreThread::create(folder / "a", {}, "fayline", {});
        for (int i = 0; i < 15; ++i) (*store)->post(addTo(journal));
    }
    EXPECT_EQ(ProjectFile::verify(folder / "a")->step, 15);
    EXPECT_EQ(openWord(folder / "a", OpenMode::readWrite), "ok") << "the lock is let go";
}

TEST(StoreThreadTest, testPostingDoesNotWaitForTheDisk) {
    const TempFolder folder;
    Journal journal;
    auto store = StoreThread::create(folder / "a", {}, "fayline", {});
    sqlite3* native = nullptr;
    ASSERT_EQ(sqlite3_open_v2((folder / "a").c_str(), &native, SQLITE_OPEN_READWRITE, nullptr), 0);
    ASSERT_EQ(sqlite3_exec(native, "BEGIN EXCLUSIVE", nullptr, nullptr, nullptr), SQLITE_OK);
    const auto begun = std::chrono::steady_clock::now();
    for (int i = 0; i < 10; ++i) (*store)->post(addTo(journal));
    EXPECT_LT(std::chrono::steady_clock::now() - begun, milliseconds(500))
        << "the file is locked for seconds, typing is not";
    EXPECT_FALSE((*store)->waitUntilSettled(milliseconds(50)));
    sqlite3_close(native);
    EXPECT_TRUE((*store)->waitUntilSettled(seconds(10)));
}

TEST(StoreThreadTest, testFailedStepIsKeptAndTriedAgain) {
    const TempFolder folder;
    Told told;
    Journal journal;
    auto store = StoreThread::create(folder / "a", {}, "fayline", told.callbacks());
    (*store)->post(addTo(journal));
    ASSERT_TRUE((*store)->waitUntilSettled(seconds(10)));
    std::filesystem::rename(folder / "a", folder / "b");
    (*store)->post(addTo(journal));
    (*store)->post(addTo(journal));
    EXPECT_FALSE((*store)->waitUntilSettled(seconds(10)));
    EXPECT_EQ((*store)->trouble()->code, "file.moved");
    EXPECT_EQ((*store)->unsettled().size(), 2U);
    ASSERT_FALSE(told.failedNow().empty());
    EXPECT_EQ(told.failedNow().front(), "2 file.moved");
    std::filesystem::rename(folder / "b", folder / "a");
    (*store)->retry();
    EXPECT_TRUE((*store)->waitUntilSettled(seconds(10)));
    EXPECT_FALSE((*store)->trouble());
    EXPECT_EQ(told.settledNow(), (std::vector<std::int64_t>{1, 2, 3}));
}

TEST(StoreThreadTest, testStepsThatCannotBeWrittenAreHandedBack) {
    const TempFolder folder;
    Journal journal;
    auto store = StoreThread::create(folder / "a", {}, "fayline", {});
    (*store)->post(addTo(journal));
    ASSERT_TRUE((*store)->waitUntilSettled(seconds(10)));
    std::filesystem::remove(folder / "a");
    (*store)->post(addTo(journal));
    EXPECT_EQ((*store)->close(), std::vector<Step>{journal.steps().back()});
    ASSERT_TRUE(ProjectFile::create(folder / "rescued", journal.steps(), "fayline"));
    EXPECT_EQ(ProjectFile::verify(folder / "rescued")->step, 2);
}

TEST(StoreThreadTest, testStepThatDoesNotFitStopsTheRow) {
    const TempFolder folder;
    Told told;
    Journal journal;
    auto store = StoreThread::create(folder / "a", {}, "fayline", told.callbacks());
    Step bad = addTo(journal);
    bad.title = "altered";
    (*store)->post(bad);
    EXPECT_FALSE((*store)->waitUntilSettled(seconds(10)));
    EXPECT_EQ(told.failedNow(), std::vector<std::string>{"1 journal.hash"});
}

TEST(StoreThreadTest, testCopyHoldsWhatWasPostedBefore) {
    const TempFolder folder;
    Journal journal;
    auto store = StoreThread::create(folder / "a", {}, "fayline", {});
    for (int i = 0; i < 5; ++i) (*store)->post(addTo(journal));
    std::atomic<int> outcome = 0;
    (*store)->copyTo(folder / "b", [&](const Result<void>& copied) { outcome = copied ? 1 : 2; });
    for (int i = 0; i < 5; ++i) (*store)->post(addTo(journal));
    ASSERT_TRUE((*store)->waitUntilSettled(seconds(20)));
    EXPECT_EQ(outcome, 1);
    EXPECT_EQ(ProjectFile::verify(folder / "b")->step, 5);
    EXPECT_EQ(ProjectFile::verify(folder / "a")->step, 10);
}

TEST(StoreThreadTest, testCopyOfAFileThatIsGoneStillWorks) {
    const TempFolder folder;
    Journal journal;
    auto store = StoreThread::create(folder / "a", {}, "fayline", {});
    (*store)->post(addTo(journal));
    ASSERT_TRUE((*store)->waitUntilSettled(seconds(10)));
    std::filesystem::remove(folder / "a");
    (*store)->post(addTo(journal));
    EXPECT_FALSE((*store)->waitUntilSettled(seconds(10)));
    std::atomic<bool> copied = false;
    (*store)->copyTo(folder / "b", [&](const Result<void>& done) { copied = done.has_value(); });
    (*store)->waitUntilSettled(seconds(10));
    EXPECT_TRUE(copied);
    EXPECT_EQ(ProjectFile::verify(folder / "b")->step, 1);
}

TEST(StoreThreadTest, testRefusedFileGivesTheProblem) {
    const TempFolder folder;
    EXPECT_EQ(StoreThread::open(folder / "none", OpenMode::readWrite, {}).error().code,
              "file.missing");
    makeProject(folder / "a", 3);
    const auto first = StoreThread::open(folder / "a", OpenMode::readWrite, {});
    const auto second = StoreThread::open(folder / "a", OpenMode::readWrite, {});
    EXPECT_EQ((*second)->opened().outcome, FileOutcome::inUse);
    EXPECT_TRUE((*second)->opened().readOnly);
}

TEST(StoreThreadTest, testManyThreadsMayAskAtOnce) {
    const TempFolder folder;
    Journal journal;
    auto store = StoreThread::create(folder / "a", {}, "fayline", {});
    std::atomic<bool> stop = false;
    std::vector<std::thread> askers;
    askers.reserve(3);
    for (int i = 0; i < 3; ++i)
        askers.emplace_back([&] {
            while (!stop) {
                static_cast<void>((*store)->unsettled());
                static_cast<void>((*store)->trouble());
                static_cast<void>((*store)->lastSettled());
                std::this_thread::yield();
            }
        });
    for (int i = 0; i < 20; ++i) (*store)->post(addTo(journal));
    EXPECT_TRUE((*store)->waitUntilSettled(seconds(20)));
    stop = true;
    for (std::thread& asker : askers) asker.join();
}

}  // namespace
}  // namespace fayline
