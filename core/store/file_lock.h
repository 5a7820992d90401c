#pragma once

#include <sys/types.h>

#include <filesystem>
#include <optional>
#include <string>

#include "quantity/result.h"

namespace fayline::store {

/// Device and inode: the same for every name of a file.
struct FileIdentity {
    dev_t device = 0;
    ino_t inode = 0;
    bool operator==(const FileIdentity&) const = default;
};

/// Nothing if there is no such file.
std::optional<FileIdentity> identityOf(const std::filesystem::path& path);

/// Keeps a second window on this machine from editing the same file. The kernel holds the lock and
/// drops it when the program ends, however it ends; it lies on a file of its own in XDG_RUNTIME_DIR
/// or /tmp, named by device and inode, so that nothing stands beside the project.
class FileLock {
  public:
    enum class Kind { shared, exclusive };

    /// Nothing if someone else holds it. A problem if no lock file can be made.
    static Result<std::optional<FileLock>> tryTake(const FileIdentity& file, Kind kind);

    FileLock(FileLock&& other) noexcept;
    FileLock& operator=(FileLock&& other) noexcept;
    ~FileLock();

  private:
    FileLock(int descriptor, Kind kind, std::string path);
    void release();

    int descriptor_ = -1;
    Kind kind_ = Kind::shared;
    std::string path_;
};

}  // namespace fayline::store
