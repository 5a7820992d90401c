#include "aside.h"

#include <fcntl.h>
#include <stdio.h>
#include <unistd.h>

#include <QUuid>
#include <cerrno>

#include "problems.h"

namespace fayline::store {
namespace {

/// 0 or errno.
int syncPath(const std::filesystem::path& path, int flags) {
    const int descriptor = ::open(path.c_str(), flags | O_CLOEXEC);
    if (descriptor < 0) return errno;
    const int failed = ::fsync(descriptor) == 0 ? 0 : errno;
    ::close(descriptor);
    return failed;
}

/// Renames without replacing; 0 or errno. File systems that cannot do so in one call link first.
int renameToFreeName(const std::filesystem::path& from, const std::filesystem::path& to) {
    if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0) return 0;
    if (errno != EINVAL && errno != ENOSYS) return errno;
    if (::link(from.c_str(), to.c_str()) != 0) return errno;
    ::unlink(from.c_str());
    return 0;
}

}  // namespace

FileAside::FileAside(std::filesystem::path target)
    : target_(std::move(target)),
      path_(target_.parent_path() /
            (".fayline-" + QUuid::createUuid().toString(QUuid::Id128).toStdString() + ".part")) {}

FileAside::~FileAside() {
    if (!path_.empty()) ::unlink(path_.c_str());
}

Result<void> FileAside::sync(const std::string& consequence) const {
    if (const int failed = syncPath(path_, O_RDONLY); failed != 0)
        return tl::unexpected(problemOfSystem(failed, target_, consequence));
    return {};
}

Result<void> FileAside::takeName(const std::string& consequence) {
    if (const int failed = renameToFreeName(path_, target_); failed != 0) {
        if (failed == EEXIST) return tl::unexpected(existsProblem(target_));
        return tl::unexpected(problemOfSystem(failed, target_, consequence));
    }
    path_.clear();
    if (const int failed = syncPath(target_.parent_path(), O_RDONLY | O_DIRECTORY); failed != 0)
        return tl::unexpected(
            problemOfSystem(failed, target_, "the file is there but may be lost in a power cut"));
    return {};
}

}  // namespace fayline::store
