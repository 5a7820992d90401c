#include "support.h"

#include <fcntl.h>
#include <grp.h>
#include <gtest/gtest.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <iterator>

namespace fayline::test {

TempFolder::TempFolder() {
    std::string name = (std::filesystem::temp_directory_path() / "fayline-test-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr) ADD_FAILURE() << "no folder could be made";
    path_ = name;
    ::chmod(name.c_str(), 0777);
}

TempFolder::~TempFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
}

std::string bytesOf(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

void writeBytes(const std::filesystem::path& path, const std::string& bytes) {
    std::ofstream out(path, std::ios::binary | std::ios::trunc);
    out << bytes;
}

void overwriteInPlace(const std::filesystem::path& path, const std::string& bytes) {
    const int descriptor = ::open(path.c_str(), O_WRONLY | O_CLOEXEC);
    ASSERT_GE(descriptor, 0);
    EXPECT_EQ(::ftruncate(descriptor, 0), 0);
    EXPECT_EQ(::pwrite(descriptor, bytes.data(), bytes.size(), 0),
              static_cast<ssize_t>(bytes.size()));
    ::close(descriptor);
}

std::vector<std::string> namesIn(const std::filesystem::path& folder) {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        names.push_back(entry.path().filename().string());
    std::sort(names.begin(), names.end());
    return names;
}

void makeProject(const std::filesystem::path& path, std::int64_t steps) {
    const auto made = ProjectFile::create(path, journalOf(steps).steps(), "fayline test");
    EXPECT_TRUE(made) << made.error().line();
}

void runSql(const std::filesystem::path& path, const std::string& sql) {
    sqlite3* native = nullptr;
    EXPECT_EQ(
        sqlite3_open_v2(path.c_str(), &native, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, nullptr),
        SQLITE_OK);
    char* message = nullptr;
    EXPECT_EQ(sqlite3_exec(native, sql.c_str(), nullptr, nullptr, &message), SQLITE_OK)
        << sql << ": " << (message != nullptr ? message : "");
    sqlite3_free(message);
    sqlite3_close(native);
}

std::string sqlText(const std::filesystem::path& path, const std::string& sql) {
    sqlite3* native = nullptr;
    sqlite3_stmt* statement = nullptr;
    std::string text = "no row";
    sqlite3_open_v2(path.c_str(), &native, SQLITE_OPEN_READONLY, nullptr);
    if (sqlite3_prepare_v2(native, sql.c_str(), -1, &statement, nullptr) == SQLITE_OK &&
        sqlite3_step(statement) == SQLITE_ROW && sqlite3_column_type(statement, 0) != SQLITE_NULL)
        text = reinterpret_cast<const char*>(sqlite3_column_text(statement, 0));
    sqlite3_finalize(statement);
    sqlite3_close(native);
    return text;
}

std::string openWord(const std::filesystem::path& path, OpenMode mode) {
    const auto opened = ProjectFile::open(path, mode);
    return opened ? std::string(fileOutcomeName(opened->outcome)) : opened.error().code;
}

int inChild(const std::function<int()>& work) {
    const pid_t child = ::fork();
    if (child == 0) ::_exit(work());
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
}

int asNobody(const std::function<int()>& work) {
    return inChild([&] {
        constexpr unsigned nobody = 65534;
        if (::geteuid() == 0 &&
            (::setgroups(0, nullptr) != 0 || ::setgid(nobody) != 0 || ::setuid(nobody) != 0))
            return 99;
        ::unsetenv("XDG_RUNTIME_DIR");
        return work();
    });
}

}  // namespace fayline::test
