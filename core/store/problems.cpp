#include "problems.h"

#include <sqlite3.h>

#include <cerrno>
#include <cstring>

namespace fayline::store {
namespace {

struct Cause {
    const char* code;
    std::string what;
    const char* cure;
};

constexpr const char* saveElsewhere = "save a copy on another disk";
constexpr const char* makeRoom = "free some space and try again, or save a copy on another disk";
constexpr const char* giveRights =
    "allow writing to the file and its folder and try again, or save a copy elsewhere";

std::optional<Cause> causeOfSystem(int systemError) {
    switch (systemError) {
        case ENOSPC:
            return Cause{"file.full", "the disk is full", makeRoom};
        case EDQUOT:
            return Cause{"file.full", "your share of the disk is used up", makeRoom};
        case EFBIG:
            return Cause{"file.full", "files may not grow any larger here (a size limit is set)",
                         "lift the limit and try again, or save a copy on another disk"};
        case EROFS:
            return Cause{"file.read_only", "the disk can only be read",
                         "make it writable and try again, or save a copy on another disk"};
        case EACCES:
        case EPERM:
            return Cause{"file.read_only", "writing to the file or its folder is not allowed",
                         giveRights};
        case ENOENT:
            return Cause{"file.missing", "there is no such file or folder",
                         "the name of a file that is there"};
        case EEXIST:
            return Cause{"file.exists", "there is a file of that name already",
                         "a name that is not taken"};
        case ENOMEM:
            return Cause{"file.memory", "there is not enough memory", "close something"};
        default:
            return std::nullopt;
    }
}

Cause causeOfSql(const SqlFailure& failure) {
    if (failure.code == SQLITE_READONLY_DBMOVED)
        return {"file.moved", "the file was moved, deleted or replaced while it was open",
                "save a copy under a new name"};
    if (failure.code == SQLITE_READONLY_ROLLBACK)
        return {"file.read_only",
                "the last step was cut off half-way and has to be taken back first, which needs "
                "the right to write",
                giveRights};
    switch (failure.code & 0xFF) {
        case SQLITE_FULL:
            return {"file.full", "the disk is full", makeRoom};
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return {"file.locked", "another program keeps the file locked",
                    "close the other program and try again"};
        case SQLITE_NOMEM:
            return {"file.memory", "there is not enough memory", "close something and try again"};
        case SQLITE_CORRUPT:
        case SQLITE_NOTADB:
        case SQLITE_FORMAT:
            return {"file.damaged", "the file is damaged",
                    "go back to a copy, or save the steps that can be read under a new name"};
        case SQLITE_MISUSE:
            return {"file.driver", failure.message,
                    "Qt's SQLite driver and this program with one and the same SQLite library"};
        default:
            break;
    }
    if (auto cause = causeOfSystem(failure.systemError)) return *cause;
    switch (failure.code & 0xFF) {
        case SQLITE_READONLY:
        case SQLITE_PERM:
        case SQLITE_CANTOPEN:
            return {"file.read_only", "writing to the file or its folder is not allowed",
                    giveRights};
        default:
            break;
    }
    std::string what = "the disk reported an error (SQLite " + std::to_string(failure.code);
    if (failure.systemError != 0) what += std::string(", ") + std::strerror(failure.systemError);
    return {"file.io", what + ")", saveElsewhere};
}

Problem problem(const Cause& cause, const std::filesystem::path& path,
                const std::string& consequence) {
    return {cause.code, path.string(), cause.what + ", so " + consequence, cause.cure};
}

}  // namespace

Problem problemOf(const SqlFailure& failure, const std::filesystem::path& path,
                  const std::string& consequence) {
    return problem(causeOfSql(failure), path, consequence);
}

Problem problemOfSystem(int systemError, const std::filesystem::path& path,
                        const std::string& consequence) {
    const auto cause = causeOfSystem(systemError);
    return problem(
        cause ? *cause
              : Cause{"file.io", std::string("the disk reported: ") + std::strerror(systemError),
                      saveElsewhere},
        path, consequence);
}

Problem movedProblem(const std::filesystem::path& path, const std::string& consequence) {
    return problemOf({SQLITE_READONLY_DBMOVED, 0, {}}, path, consequence);
}

Problem changedOutsideProblem(const std::filesystem::path& path, const std::string& consequence) {
    return problem({"file.changed_outside",
                    "another program has changed the project in this file since it was opened",
                    "open the file again to go on from what is in it, or save a copy under a new "
                    "name to keep what is here"},
                   path, consequence);
}

Problem existsProblem(const std::filesystem::path& path) {
    return {"file.exists", path.string(), "there is a file of that name already; it is untouched",
            "a name that is not taken"};
}

bool isDamage(const SqlFailure& failure) {
    switch (failure.code & 0xFF) {
        case SQLITE_CORRUPT:
        case SQLITE_NOTADB:
        case SQLITE_FORMAT:
        case SQLITE_TOOBIG:
        case SQLITE_MISMATCH:
        case SQLITE_ERROR:
            return true;
        default:
            return false;
    }
}

}  // namespace fayline::store
