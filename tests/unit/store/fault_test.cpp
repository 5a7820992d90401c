#include <gtest/gtest.h>
#include <sched.h>
#include <signal.h>
#include <sqlite3.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <iostream>

#include "store/project_file.h"
#include "store/store_thread.h"
#include "support.h"

namespace fayline {
namespace {

using namespace test;

/// Says why a child is not content, where the test's output shows it.
int unhappy(int code, const std::string& why) {
    std::cerr << "in the child: " << why << std::endl;
    return code;
}

/// Appends until a step fails with this code, then makes room and goes on. 0 if all was as it
/// should be: no step lost, none half there, the failed one written at the second try.
int fillUpAndGoOn(const std::filesystem::path& path, const std::function<void()>& makeRoom) {
    auto made = ProjectFile::create(path, journalOf(3).steps(), "fayline");
    if (!made) return unhappy(1, made.error().line());
    ProjectFile& file = *made->file;
    Problem problem;
    std::int64_t acked = 3;
    for (; acked < 20'000; ++acked) {
        const auto written = file.append(nextStep(file.journal()));
        if (written) continue;
        problem = written.error();
        break;
    }
    std::cerr << problem.line() << std::endl;
    if (problem.code != "file.full") return unhappy(2, problem.code);
    if (problem.line().find("step " + std::to_string(acked + 1) + " is not in the file") ==
        std::string::npos)
        return unhappy(3, problem.line());
    if (file.append(nextStep(file.journal())).has_value()) return unhappy(4, "it fitted after all");
    const auto verified = ProjectFile::verify(path);
    if (!verified) return unhappy(5, verified.error().line());
    if (verified->outcome != FileOutcome::inUse || verified->step != acked)
        return unhappy(6, verified->says + std::to_string(verified->step));
    makeRoom();
    const auto again = file.append(nextStep(file.journal()));
    if (!again) return unhappy(7, again.error().line());
    made->file.reset();
    return openWord(path, OpenMode::readWrite) == "ok" &&
                   ProjectFile::verify(path)->step == acked + 1
               ? 0
               : unhappy(8, "not whole");
}

TEST(FaultTest, testDiskFullLosesNoStepAndSaysSo) {
    const TempFolder folder;
    const int ended = inChild([&] {
        if (::unshare(CLONE_NEWNS) != 0 ||
            ::mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) != 0 ||
            ::mount("none", folder.path().c_str(), "tmpfs", 0, "size=512k") != 0)
            return 90;
        writeBytes(folder / "other", std::string(200'000, 'x'));
        return fillUpAndGoOn(folder / "a.fayline",
                             [&] { std::filesystem::remove(folder / "other"); });
    });
    if (ended == 90) GTEST_SKIP() << "this machine lets nobody make a small disk";
    EXPECT_EQ(ended, 0);
}

TEST(FaultTest, testSizeLimitLosesNoStepAndSaysSo) {
    const TempFolder folder;
    EXPECT_EQ(inChild([&] {
                  ::signal(SIGXFSZ, SIG_IGN);
                  rlimit limit{80'000, RLIM_INFINITY};
                  ::setrlimit(RLIMIT_FSIZE, &limit);
                  return fillUpAndGoOn(folder / "a.fayline", [&] {
                      limit.rlim_cur = RLIM_INFINITY;
                      ::setrlimit(RLIMIT_FSIZE, &limit);
                  });
              }),
              0);
}

TEST(FaultTest, testSizeLimitDoesNotEndTheProgram) {
    const TempFolder folder;
    EXPECT_EQ(inChild([&] {
                  const rlimit limit{80'000, 80'000};
                  ::setrlimit(RLIMIT_FSIZE, &limit);
                  auto store = StoreThread::create(folder / "a.fayline", {}, "fayline", {});
                  if (!store) return 1;
                  Journal journal;
                  while (!(*store)->trouble() && journal.tip() < 5'000) {
                      const Step step = nextStep(journal);
                      if (!journal.append(step)) return 2;
                      (*store)->post(step);
                      (*store)->waitUntilSettled(std::chrono::seconds(10));
                  }
                  const auto trouble = (*store)->trouble();
                  return trouble && trouble->code == "file.full" ? 0 : 3;
              }),
              0);
}

TEST(FaultTest, testCopyToAFullDiskLeavesNothing) {
    const TempFolder folder;
    EXPECT_EQ(inChild([&] {
                  ::signal(SIGXFSZ, SIG_IGN);
                  auto made =
                      ProjectFile::create(folder / "a.fayline", journalOf(300).steps(), "fayline");
                  const rlimit limit{50'000, RLIM_INFINITY};
                  ::setrlimit(RLIMIT_FSIZE, &limit);
                  const auto copied = made->file->copyTo(folder / "b.fayline");
                  if (copied || copied.error().code != "file.full") return 1;
                  const auto other =
                      ProjectFile::create(folder / "c.fayline", journalOf(300).steps(), "fayline");
                  if (other || other.error().code != "file.full") return 2;
                  return namesIn(folder.path()).size() == 1 ? 0 : 3;
              }),
              0);
}

TEST(FaultTest, testReadOnlyFileOpensForReading) {
    const TempFolder folder;
    const auto path = folder / "a.fayline";
    makeProject(path, 5);
    std::filesystem::permissions(path, std::filesystem::perms(0444));
    const std::string before = bytesOf(path);
    EXPECT_EQ(asNobody([&] {
                  const auto opened = ProjectFile::open(path, OpenMode::readWrite);
                  if (!opened) return unhappy(1, opened.error().line());
                  if (opened->outcome != FileOutcome::readOnly) return 2;
                  if (opened->says.find("file can only be read") == std::string::npos) return 3;
                  if (opened->file->steps().size() != 5) return 4;
                  const auto verified = ProjectFile::verify(path);
                  return verified && verified->outcome == FileOutcome::readOnly ? 0 : 5;
              }),
              0);
    EXPECT_EQ(bytesOf(path), before);
}

TEST(FaultTest, testReadOnlyFolderOpensForReading) {
    const TempFolder folder;
    const auto place = folder / "yard";
    std::filesystem::create_directory(place);
    makeProject(place / "a.fayline", 5);
    std::filesystem::permissions(place / "a.fayline", std::filesystem::perms(0666));
    std::filesystem::permissions(place, std::filesystem::perms(0555));
    const std::string before = bytesOf(place / "a.fayline");
    EXPECT_EQ(asNobody([&] {
                  const auto opened = ProjectFile::open(place / "a.fayline", OpenMode::readWrite);
                  if (!opened) return unhappy(1, opened.error().line());
                  if (opened->outcome != FileOutcome::readOnly) return 2;
                  if (opened->says.find("folder can only be read") == std::string::npos) return 3;
                  const auto made = ProjectFile::create(place / "b.fayline", {}, "fayline");
                  return !made && made.error().code == "file.read_only" ? 0 : 4;
              }),
              0);
    EXPECT_EQ(bytesOf(place / "a.fayline"), before);
    EXPECT_EQ(namesIn(place), std::vector<std::string>{"a.fayline"});
    std::filesystem::permissions(place, std::filesystem::perms(0755));
}

TEST(FaultTest, testFileThatMayNotBeReadIsNotCalledDamaged) {
    const TempFolder folder;
    makeProject(folder / "a.fayline", 5);
    std::filesystem::permissions(folder / "a.fayline", std::filesystem::perms(0));
    EXPECT_EQ(
        asNobody([&] {
            return openWord(folder / "a.fayline", OpenMode::readOnly) == "file.unreadable" ? 0 : 1;
        }),
        0);
}

/// A file and its journal as a power cut in the middle of a step leaves them.
void makeCutOffStep(const std::filesystem::path& from, const std::filesystem::path& to) {
    sqlite3* native = nullptr;
    ASSERT_EQ(sqlite3_open_v2(from.c_str(), &native, SQLITE_OPEN_READWRITE, nullptr), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(native,
                           "PRAGMA cache_size=1; BEGIN IMMEDIATE;"
                           "UPDATE journal SET title = title || hex(zeroblob(2000));"
                           "UPDATE change SET new = 'spoilt' WHERE new IS NOT NULL",
                           nullptr, nullptr, nullptr),
              SQLITE_OK);
    std::filesystem::copy_file(from, to);
    std::filesystem::copy_file(from.string() + "-journal", to.string() + "-journal");
    sqlite3_exec(native, "ROLLBACK", nullptr, nullptr, nullptr);
    sqlite3_close(native);
}

TEST(FaultTest, testStepCutOffHalfWayIsTakenBack) {
    for (const OpenMode mode : {OpenMode::readOnly, OpenMode::readWrite}) {
        const TempFolder folder;
        makeProject(folder / "a.fayline", 100);
        makeCutOffStep(folder / "a.fayline", folder / "b.fayline");
        ASSERT_NE(bytesOf(folder / "a.fayline"), bytesOf(folder / "b.fayline"));
        const auto opened = ProjectFile::open(folder / "b.fayline", mode);
        ASSERT_TRUE(opened) << opened.error().line();
        EXPECT_EQ(opened->outcome, FileOutcome::ok);
        EXPECT_EQ(opened->file->steps(), journalOf(100).steps());
        EXPECT_EQ(namesIn(folder.path()), (std::vector<std::string>{"a.fayline", "b.fayline"}));
    }
}

TEST(FaultTest, testStepCutOffHalfWayWithoutItsJournalIsDamage) {
    const TempFolder folder;
    makeProject(folder / "a.fayline", 100);
    makeCutOffStep(folder / "a.fayline", folder / "b.fayline");
    std::filesystem::remove(folder / "b.fayline-journal");
    EXPECT_EQ(openWord(folder / "b.fayline", OpenMode::readWrite), "file.damaged");
}

TEST(FaultTest, testStepCutOffHalfWayInAReadOnlyPlaceSaysWhatItNeeds) {
    const TempFolder folder;
    const auto place = folder / "yard";
    std::filesystem::create_directory(place);
    makeProject(folder / "a.fayline", 100);
    makeCutOffStep(folder / "a.fayline", place / "b.fayline");
    std::filesystem::permissions(place, std::filesystem::perms(0555));
    EXPECT_EQ(asNobody([&] {
                  const auto opened = ProjectFile::open(place / "b.fayline", OpenMode::readOnly);
                  if (opened) return 1;
                  return opened.error().code == "file.read_only" &&
                                 opened.error().what.find("cut off") != std::string::npos
                             ? 0
                             : unhappy(2, opened.error().line());
              }),
              0);
    std::filesystem::permissions(place, std::filesystem::perms(0755));
}

struct Moved {
    const char* name;
    std::function<void(const TempFolder&)> act;
};

TEST(FaultTest, testFileMovedDeletedOrReplacedIsNoticedAndCanBeRescued) {
    const Moved ways[] = {
        {"moved", [](const TempFolder& f) { std::filesystem::rename(f / "a", f / "else"); }},
        {"deleted", [](const TempFolder& f) { std::filesystem::remove(f / "a"); }},
        {"replaced",
         [](const TempFolder& f) {
             makeProject(f / "other", 2);
             std::filesystem::rename(f / "other", f / "a");
         }},
    };
    for (const Moved& way : ways) {
        SCOPED_TRACE(way.name);
        const TempFolder folder;
        auto made = ProjectFile::create(folder / "a", journalOf(9).steps(), "fayline");
        way.act(folder);
        const bool replaced = std::filesystem::exists(folder / "a");
        const std::string before = replaced ? bytesOf(folder / "a") : "";
        const Step step = nextStep(made->file->journal());
        EXPECT_EQ(made->file->append(step).error().code, "file.moved");
        ASSERT_TRUE(made->file->copyTo(folder / "rescued"));
        EXPECT_EQ(ProjectFile::verify(folder / "rescued")->step, 9);
        EXPECT_EQ(replaced ? bytesOf(folder / "a") : "", before);
        EXPECT_FALSE(std::filesystem::exists(folder / "a-journal"));
    }
}

TEST(FaultTest, testAnotherProjectCopiedOverIsNotWrittenTo) {
    const TempFolder folder;
    auto made = ProjectFile::create(folder / "a", journalOf(9).steps(), "fayline");
    makeProject(folder / "b", 9);
    const std::string other = bytesOf(folder / "b");
    overwriteInPlace(folder / "a", other);
    EXPECT_EQ(made->file->append(nextStep(made->file->journal())).error().code,
              "file.changed_outside");
    EXPECT_EQ(bytesOf(folder / "a"), other);
}

TEST(FaultTest, testWhatIsNoLongerTheProjectIsNotCopiedAsIt) {
    const TempFolder folder;
    auto made = ProjectFile::create(folder / "a", journalOf(9).steps(), "fayline");
    makeProject(folder / "b", 12);
    overwriteInPlace(folder / "a", bytesOf(folder / "b"));
    EXPECT_EQ(made->file->copyTo(folder / "c").error().code, "file.changed_outside");
    ASSERT_TRUE(ProjectFile::create(folder / "c", made->file->steps(), "fayline"));
    EXPECT_EQ(ProjectFile::verify(folder / "c")->step, 9);
    EXPECT_EQ(namesIn(folder.path()), (std::vector<std::string>{"a", "b", "c"}));
}

/// The hard case: the file copied over is of the same size and the same number of commits, which
/// is all that SQLite looks at before it trusts the pages it remembers.
TEST(FaultTest, testSiblingOfTheSameAgeCopiedOverIsNotWrittenTo) {
    const TempFolder folder;
    makeProject(folder / "a", 9);
    std::filesystem::copy_file(folder / "a", folder / "b");
    const StepBy ada{"Ada", "", "2026-11-25T10:42:07Z"};
    {
        auto sibling = ProjectFile::open(folder / "b", OpenMode::readWrite);
        ASSERT_TRUE(sibling->file->append(*sibling->file->journal().prepareNote("theirs", ada)));
    }
    const std::string other = bytesOf(folder / "b");
    auto opened = ProjectFile::open(folder / "a", OpenMode::readWrite);
    ASSERT_TRUE(opened->file->append(*opened->file->journal().prepareNote("ours", ada)));
    overwriteInPlace(folder / "a", other);
    EXPECT_EQ(opened->file->append(*opened->file->journal().prepareNote("more", ada)).error().code,
              "file.changed_outside");
    EXPECT_EQ(bytesOf(folder / "a"), other);
}

TEST(FaultTest, testProjectCutShortWhileOpenIsNotCalledFullOrLocked) {
    const TempFolder folder;
    auto made = ProjectFile::create(folder / "a", journalOf(200).steps(), "fayline");
    std::filesystem::resize_file(folder / "a", 4'096);
    const auto written = made->file->append(nextStep(made->file->journal()));
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, "file.damaged") << written.error().line();
}

TEST(FaultTest, testFileLockedByAnotherProgramSaysSoWithinTwoSeconds) {
    const TempFolder folder;
    auto made = ProjectFile::create(folder / "a", journalOf(5).steps(), "fayline");
    sqlite3* native = nullptr;
    ASSERT_EQ(sqlite3_open_v2((folder / "a").c_str(), &native, SQLITE_OPEN_READWRITE, nullptr), 0);
    ASSERT_EQ(sqlite3_exec(native, "BEGIN EXCLUSIVE", nullptr, nullptr, nullptr), SQLITE_OK);
    const auto begun = std::chrono::steady_clock::now();
    const Step step = nextStep(made->file->journal());
    EXPECT_EQ(made->file->append(step).error().code, "file.locked");
    EXPECT_LT(std::chrono::steady_clock::now() - begun, std::chrono::milliseconds(2'500));
    sqlite3_close(native);
    EXPECT_TRUE(made->file->append(step));
}

}  // namespace
}  // namespace fayline
