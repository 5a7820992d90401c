#include <fcntl.h>
#include <gtest/gtest.h>
#include <signal.h>
#include <sqlite3.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <chrono>
#include <cstdlib>
#include <fstream>

#include "store/project_file.h"
#include "support.h"

namespace fayline {
namespace {

using namespace test;

/// Another process that has the file open for editing until it is killed.
class Holder {
  public:
    explicit Holder(const std::filesystem::path& path) {
        int ends[2];
        EXPECT_EQ(::pipe(ends), 0);
        child_ = ::fork();
        if (child_ == 0) {
            const auto held = ProjectFile::open(path, OpenMode::readWrite);
            const char ready = held && held->outcome == FileOutcome::ok ? '+' : '-';
            if (::write(ends[1], &ready, 1) != 1) ::_exit(1);
            for (;;) ::pause();
        }
        char ready = ' ';
        EXPECT_EQ(::read(ends[0], &ready, 1), 1);
        EXPECT_EQ(ready, '+');
        ::close(ends[0]);
        ::close(ends[1]);
    }
    Holder(const Holder&) = delete;
    Holder& operator=(const Holder&) = delete;
    ~Holder() { kill(); }
    void kill() {
        if (child_ <= 0) return;
        ::kill(child_, SIGKILL);
        ::waitpid(child_, nullptr, 0);
        child_ = -1;
    }

  private:
    pid_t child_ = -1;
};

TEST(TwoWritersTest, testSecondProcessMayReadButNotEdit) {
    const TempFolder folder;
    const auto path = folder / "a.fayline";
    makeProject(path, 5);
    Holder holder(path);
    {
        const auto second = ProjectFile::open(path, OpenMode::readWrite);
        ASSERT_TRUE(second);
        EXPECT_EQ(second->outcome, FileOutcome::inUse);
        EXPECT_FALSE(second->says.empty());
        EXPECT_EQ(second->file->steps().size(), 5U);
        EXPECT_EQ(second->file->append(nextStep(second->file->journal())).error().code,
                  "file.read_only");
    }
    EXPECT_EQ(ProjectFile::verify(path)->outcome, FileOutcome::inUse);
    holder.kill();
    const auto begun = std::chrono::steady_clock::now();
    EXPECT_EQ(openWord(path, OpenMode::readWrite), "ok") << "no stale lock is left by a kill";
    EXPECT_LT(std::chrono::steady_clock::now() - begun, std::chrono::seconds(1));
}

TEST(TwoWritersTest, testSecondWindowOfOneProcessMayNotEditEither) {
    const TempFolder folder;
    const auto path = folder / "a.fayline";
    auto first = ProjectFile::create(path, journalOf(5).steps(), "fayline");
    std::filesystem::create_hard_link(path, folder / "b.fayline");
    std::filesystem::create_symlink(path, folder / "c.fayline");
    for (const char* name : {"a.fayline", "b.fayline", "c.fayline"})
        EXPECT_EQ(openWord(folder / name, OpenMode::readWrite), "in_use") << name;
    EXPECT_TRUE(first->file->append(nextStep(first->file->journal())));
    first->file.reset();
    EXPECT_EQ(openWord(path, OpenMode::readWrite), "ok");
}

TEST(TwoWritersTest, testReadersDoNotKeepAWriterOut) {
    const TempFolder folder;
    const auto path = folder / "a.fayline";
    makeProject(path, 5);
    const auto reader = ProjectFile::open(path, OpenMode::readOnly);
    auto writer = ProjectFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(reader && writer);
    EXPECT_EQ(writer->outcome, FileOutcome::ok);
    EXPECT_TRUE(writer->file->append(nextStep(writer->file->journal())));
}

TEST(TwoWritersTest, testNoLockFileIsLeft) {
    const TempFolder folder;
    const TempFolder runtime;
    EXPECT_EQ(inChild([&] {
                  ::setenv("XDG_RUNTIME_DIR", runtime.path().c_str(), 1);
                  makeProject(folder / "a.fayline", 3);
                  auto file = ProjectFile::open(folder / "a.fayline", OpenMode::readWrite);
                  if (namesIn(runtime.path()).size() != 1) return 1;
                  file->file.reset();
                  static_cast<void>(ProjectFile::verify(folder / "a.fayline"));
                  return namesIn(runtime.path()).empty() ? 0 : 2;
              }),
              0);
}

/// Two processes that do not see each other's lock files: only SQLite's locks and the comparison of
/// tips stand between them. Each reopens when told that the project changed outside.
TEST(TwoWritersTest, testWithoutLockFilesNoStepIsOverwritten) {
    const TempFolder folder;
    const auto path = folder / "a.fayline";
    makeProject(path, 0);
    constexpr int each = 60;
    std::vector<pid_t> children;
    for (const char* name : {"one", "two"}) {
        const auto runtime = folder / name;
        std::filesystem::create_directory(runtime);
        const pid_t child = ::fork();
        if (child == 0) {
            ::setenv("XDG_RUNTIME_DIR", runtime.c_str(), 1);
            std::ofstream acked(folder / (std::string(name) + ".acked"));
            int done = 0;
            while (done < each) {
                auto opened = ProjectFile::open(path, OpenMode::readWrite);
                if (!opened || opened->outcome != FileOutcome::ok) ::_exit(3);
                while (done < each) {
                    const Step step = opened->file->journal()
                                          .prepareNote(name, {name, "", "2026-11-25T10:42:07Z"})
                                          .value();
                    const auto written = opened->file->append(step);
                    if (!written && written.error().code == "file.changed_outside") break;
                    if (!written) ::_exit(4);
                    acked << step.number << ' ' << step.hash << '\n';
                    ++done;
                }
            }
            acked.close();
            ::_exit(0);
        }
        children.push_back(child);
    }
    for (const pid_t child : children) {
        int status = 0;
        ::waitpid(child, &status, 0);
        EXPECT_EQ(status, 0);
    }
    const auto opened = ProjectFile::open(path, OpenMode::readOnly);
    ASSERT_TRUE(opened) << opened.error().line();
    EXPECT_EQ(opened->file->steps().size(), 2U * each);
    for (const char* name : {"one", "two"}) {
        std::ifstream acked(folder / (std::string(name) + ".acked"));
        std::size_t number = 0;
        std::string hash;
        int count = 0;
        for (; acked >> number >> hash; ++count)
            EXPECT_EQ(opened->file->steps().at(number - 1).hash, hash) << name;
        EXPECT_EQ(count, each);
    }
}

TEST(TwoWritersTest, testCheckingWhileAnotherWritesNeverFindsDamage) {
    const TempFolder folder;
    const auto path = folder / "a.fayline";
    makeProject(path, 20);
    const pid_t writer = ::fork();
    if (writer == 0) {
        auto file = ProjectFile::open(path, OpenMode::readWrite);
        for (int i = 0; i < 150; ++i)
            if (!file->file->append(nextStep(file->file->journal()))) ::_exit(1);
        ::_exit(0);
    }
    int checks = 0;
    std::int64_t last = 0;
    int status = 0;
    while (::waitpid(writer, &status, WNOHANG) == 0) {
        const auto verified = ProjectFile::verify(path);
        ASSERT_TRUE(verified) << verified.error().line();
        EXPECT_TRUE(verified->outcome == FileOutcome::ok || verified->outcome == FileOutcome::inUse)
            << verified->says;
        EXPECT_GE(verified->step, last);
        last = verified->step;
        ++checks;
    }
    EXPECT_EQ(status, 0) << "the writer was never kept from writing";
    EXPECT_GT(checks, 0);
    EXPECT_EQ(ProjectFile::verify(path)->step, 170);
}

/// Whether the kernel refuses another process the byte that SQLite locks before it writes
/// (sqlite.org/fileformat2.html 1.2, lock-byte page).
bool othersAreKeptOut(const std::filesystem::path& path) {
    return inChild([&] {
               const int descriptor = ::open(path.c_str(), O_RDWR);
               struct flock wanted {};
               wanted.l_type = F_WRLCK;
               wanted.l_whence = SEEK_SET;
               wanted.l_start = 0x40000001;
               wanted.l_len = 1;
               return ::fcntl(descriptor, F_SETLK, &wanted) != 0 && errno == EAGAIN ? 1 : 0;
           }) == 1;
}

TEST(TwoWritersTest, testLookingAtAFileDropsNoLockHeldOnIt) {
    const TempFolder folder;
    const auto path = folder / "a.fayline";
    makeProject(path, 5);
    sqlite3* native = nullptr;
    ASSERT_EQ(sqlite3_open_v2(path.c_str(), &native, SQLITE_OPEN_READWRITE, nullptr), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(native, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr), SQLITE_OK);
    EXPECT_TRUE(othersAreKeptOut(path));
    EXPECT_TRUE(ProjectFile::verify(path));
    EXPECT_TRUE(ProjectFile::open(path, OpenMode::readOnly));
    EXPECT_TRUE(othersAreKeptOut(path));
    // A plain file opened and closed does drop the lock: so the check above can fail.
    ::close(::open(path.c_str(), O_RDONLY));
    EXPECT_FALSE(othersAreKeptOut(path));
    sqlite3_close(native);
}

}  // namespace
}  // namespace fayline
