#include "file_lock.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <utility>

namespace fayline::store {
namespace {

std::string lockFolder() {
    const char* runtime = std::getenv("XDG_RUNTIME_DIR");
    struct stat found {};
    if (runtime != nullptr && runtime[0] == '/' && ::stat(runtime, &found) == 0 &&
        S_ISDIR(found.st_mode) && found.st_uid == ::geteuid() && ::access(runtime, W_OK) == 0)
        return runtime;
    return "/tmp";
}

/// The lock file may have been removed by its last holder between our opening and locking it.
bool stillNamed(int descriptor, const std::string& path) {
    struct stat ours {};
    struct stat named {};
    return ::fstat(descriptor, &ours) == 0 && ::stat(path.c_str(), &named) == 0 &&
           ours.st_dev == named.st_dev && ours.st_ino == named.st_ino;
}

}  // namespace

std::optional<FileIdentity> identityOf(const std::filesystem::path& path) {
    struct stat found {};
    if (::stat(path.c_str(), &found) != 0) return std::nullopt;
    return FileIdentity{found.st_dev, found.st_ino};
}

Result<std::optional<FileLock>> FileLock::tryTake(const FileIdentity& file, Kind kind) {
    const std::string path = lockFolder() + "/fayline-" + std::to_string(::geteuid()) + "-" +
                             std::to_string(file.device) + "-" + std::to_string(file.inode) +
                             ".lock";
    const int operation = (kind == Kind::exclusive ? LOCK_EX : LOCK_SH) | LOCK_NB;
    for (;;) {
        const int descriptor =
            ::open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, S_IRUSR | S_IWUSR);
        if (descriptor < 0)
            return tl::unexpected(
                Problem{"file.lock", path,
                        std::string("no lock file can be made here: ") + std::strerror(errno),
                        "a folder that can be written"});
        if (::flock(descriptor, operation) != 0) {
            ::close(descriptor);
            return std::optional<FileLock>();
        }
        if (stillNamed(descriptor, path))
            return std::optional<FileLock>(FileLock(descriptor, kind, path));
        ::close(descriptor);
    }
}

FileLock::FileLock(int descriptor, Kind kind, std::string path)
    : descriptor_(descriptor), kind_(kind), path_(std::move(path)) {}

FileLock::FileLock(FileLock&& other) noexcept
    : descriptor_(std::exchange(other.descriptor_, -1)),
      kind_(other.kind_),
      path_(std::move(other.path_)) {}

FileLock& FileLock::operator=(FileLock&& other) noexcept {
    if (this != &other) {
        release();
        descriptor_ = std::exchange(other.descriptor_, -1);
        kind_ = other.kind_;
        path_ = std::move(other.path_);
    }
    return *this;
}

FileLock::~FileLock() {
    release();
}

void FileLock::release() {
    if (descriptor_ < 0) return;
    const bool alone = kind_ == Kind::exclusive || ::flock(descriptor_, LOCK_EX | LOCK_NB) == 0;
    if (alone) ::unlink(path_.c_str());
    ::close(descriptor_);
    descriptor_ = -1;
}

}  // namespace fayline::store
