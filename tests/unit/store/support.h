#pragma once

#include <filesystem>
#include <functional>
#include <map>
#include <string>
#include <vector>

#include "sample_steps.h"
#include "store/project_file.h"

namespace fayline::test {

/// A folder of its own, open to every user, removed at the end.
class TempFolder {
  public:
    TempFolder();
    ~TempFolder();
    TempFolder(const TempFolder&) = delete;
    TempFolder& operator=(const TempFolder&) = delete;
    [[nodiscard]] std::filesystem::path operator/(const std::string& name) const {
        return path_ / name;
    }
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

  private:
    std::filesystem::path path_;
};

/// Reads or writes a file whole. Not for a project that is open in this process: closing the file
/// would drop SQLite's locks.
std::string bytesOf(const std::filesystem::path& path);
void writeBytes(const std::filesystem::path& path, const std::string& bytes);
/// Puts the bytes into the file that is there, as cp does.
void overwriteInPlace(const std::filesystem::path& path, const std::string& bytes);

std::vector<std::string> namesIn(const std::filesystem::path& folder);

/// Makes a project of so many steps and closes it.
void makeProject(const std::filesystem::path& path, std::int64_t steps);

/// Runs SQL on a file with the plain SQLite library; fails the test on an error.
void runSql(const std::filesystem::path& path, const std::string& sql);
/// The first column of the first row as text.
std::string sqlText(const std::filesystem::path& path, const std::string& sql);

/// "ok", "file.not_ours" …: how opening ended, in a word.
std::string openWord(const std::filesystem::path& path, OpenMode mode);

/// Runs the work in a process of its own; its exit code, or 128 + signal.
int inChild(const std::function<int()>& work);
/// The same as another user who may do little; work that fails to become that user gives 99.
int asNobody(const std::function<int()>& work);

}  // namespace fayline::test
