#pragma once

#include <filesystem>
#include <string>

#include "quantity/result.h"

namespace fayline::store {

/// A file being written under a name of its own beside its target; removed unless it takes the
/// target's name.
class FileAside {
  public:
    explicit FileAside(std::filesystem::path target);
    FileAside(const FileAside&) = delete;
    FileAside& operator=(const FileAside&) = delete;
    ~FileAside();

    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

    /// Brings the bytes to the disk.
    [[nodiscard]] Result<void> sync(const std::string& consequence) const;
    /// Takes the target's name, which must be free, and brings the folder to the disk.
    Result<void> takeName(const std::string& consequence);

  private:
    std::filesystem::path target_;
    std::filesystem::path path_;
};

}  // namespace fayline::store
