#include "inspect.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <chrono>
#include <thread>

#include "header_peek.h"
#include "problems.h"
#include "quantity/text.h"
#include "schema.h"

namespace fayline::store {
namespace {

constexpr std::uintmax_t checkedAtOnceBytes = 20'000'000;
/// SQLite takes 512 (os_unix.c, MAX_PATHNAME); this leaves room for its journal and for a file
/// aside.
constexpr std::size_t longestPathBytes = 450;
constexpr int lockTries = 10;
constexpr std::chrono::milliseconds betweenTries{20};
constexpr const char* nothingDone = "it was not opened and is as it was";

Inspection refused(FileOutcome outcome, std::string what, std::string allowed) {
    Inspection inspection;
    inspection.outcome = outcome;
    inspection.what = std::move(what);
    inspection.allowed = std::move(allowed);
    return inspection;
}

Inspection notOurs(std::string what) {
    return refused(FileOutcome::notOurs, std::move(what), "a .fayline file made by this program");
}

Inspection damaged(std::string what) {
    return refused(FileOutcome::damaged, "the file is damaged: " + std::move(what),
                   "go back to a copy, or save the steps that can be read under a new name");
}

/// Nothing if the header is that of a project.
std::optional<Inspection> refusedByHeader(const FileHeader& header) {
    if (!header.isSqlite) return notOurs("this is not a project of this program");
    if (!header.reachesApplicationId || header.applicationId != applicationId)
        return notOurs("this is a database of another program");
    if (header.writeAheadLog)
        return notOurs("another program has set this file to keep a log beside it (WAL)");
    if (header.formatVersion > formatVersion)
        return refused(FileOutcome::newer,
                       "this project is written in format " + std::to_string(header.formatVersion) +
                           ", which is newer than format " + std::to_string(formatVersion) +
                           " of this program",
                       "a newer version of the program");
    if (header.formatVersion < formatVersion) return damaged("its format number is 0");
    return std::nullopt;
}

/// A lock held by another window for an instant (a reader opening) is waited for.
Result<std::optional<FileLock>> takeLock(const FileIdentity& file, FileLock::Kind kind) {
    for (int i = 1;; ++i) {
        auto lock = FileLock::tryTake(file, kind);
        if (!lock || *lock || i == lockTries) return lock;
        std::this_thread::sleep_for(betweenTries);
    }
}

bool maySet(const std::filesystem::path& path, int rights) {
    return ::faccessat(AT_FDCWD, path.c_str(), rights, AT_EACCESS) == 0;
}

/// Why the file can only be read, or nothing.
std::optional<std::string> whyReadOnly(const std::filesystem::path& path) {
    if (nameTooLong(path))
        return "its name is too long for a safety file beside it, so nothing can "
               "be changed here";
    if (!maySet(path, W_OK)) return "the file can only be read, so nothing can be changed here";
    const auto folder = path.has_parent_path() ? path.parent_path() : std::filesystem::path(".");
    if (!maySet(folder, W_OK | X_OK))
        return "the folder can only be read, so that no safety file can be made in it and nothing "
               "can be changed here";
    return std::nullopt;
}

void checkTables(Inspection& inspection, const Sql<std::optional<ForeignPart>>& part) {
    if (!part) {
        inspection = damaged("SQLite says: " + part.error().message);
    } else if (*part && (*part)->missing) {
        inspection = damaged("its table " + quotable((*part)->name) + " is missing or altered");
    } else if (*part) {
        inspection = notOurs("the file contains parts this program did not write: " +
                             quotable((*part)->name));
    }
}

/// Everything inside the file. Fills rows also when the file is damaged.
Sql<void> checkInside(Inspection& inspection, bool pages) {
    const auto part = foreignPart(*inspection.connection);
    if (!part && !isDamage(part.error())) return tl::unexpected(part.error());
    checkTables(inspection, part);
    if (inspection.outcome == FileOutcome::damaged || inspection.outcome == FileOutcome::notOurs)
        return {};
    auto rows = readRows(*inspection.connection);
    if (!rows) return tl::unexpected(rows.error());
    std::string damage = rows->damage;
    if (pages && damage.empty()) {
        const auto check = quickCheck(*inspection.connection);
        if (!check) return tl::unexpected(check.error());
        if (*check) damage = "SQLite says: " + **check;
    }
    if (!damage.empty()) inspection = damaged(damage);
    inspection.rows = std::move(*rows);
    return {};
}

void settle(Inspection& inspection, FileOutcome outcome, std::string what) {
    inspection.outcome = outcome;
    inspection.what = std::move(what);
}

}  // namespace

bool nameTooLong(const std::filesystem::path& path) {
    const auto folder = path.has_parent_path() ? path.parent_path() : std::filesystem::path(".");
    const long most = ::pathconf(folder.c_str(), _PC_NAME_MAX);
    return most > 0 && path.filename().string().size() + std::string_view("-journal").size() >
                           static_cast<std::size_t>(most);
}

Result<void> pathFits(const std::filesystem::path& path, const std::string& consequence) {
    if (path.string().size() <= longestPathBytes) return {};
    return tl::unexpected(Problem{"file.name", path.string(),
                                  "the name with all its folders has " +
                                      std::to_string(path.string().size()) + " bytes, so " +
                                      consequence,
                                  "at most " + std::to_string(longestPathBytes)});
}

bool isUsable(FileOutcome outcome) {
    return outcome == FileOutcome::ok || outcome == FileOutcome::migrated ||
           outcome == FileOutcome::inUse || outcome == FileOutcome::readOnly;
}

Problem refusal(const Inspection& inspection, const std::filesystem::path& path) {
    return {"file." + std::string(fileOutcomeName(inspection.outcome)), path.string(),
            inspection.what, inspection.allowed};
}

Result<Inspection> inspect(const std::filesystem::path& path, OpenMode mode, PageCheck pages) {
    struct stat found {};
    if (::stat(path.c_str(), &found) != 0) {
        if (errno == ENOENT || errno == ENOTDIR)
            return refused(FileOutcome::missing, "there is no such file",
                           "the name of a project that is there");
        return tl::unexpected(problemOfSystem(errno, path, "the file cannot be looked at"));
    }
    if (auto fits = pathFits(path, nothingDone); !fits) return tl::unexpected(fits.error());
    if (!S_ISREG(found.st_mode)) return notOurs("this is not a file but a folder or device");
    if (!maySet(path, R_OK))
        return tl::unexpected(Problem{"file.unreadable", path.string(),
                                      "reading this file is not allowed", "the right to read it"});

    const auto denied = whyReadOnly(path);
    const bool editing = mode == OpenMode::readWrite;
    auto lock = takeLock({found.st_dev, found.st_ino},
                         editing && !denied ? FileLock::Kind::exclusive : FileLock::Kind::shared);
    const auto failed = [&](const SqlFailure& failure) {
        return tl::unexpected(problemOf(failure, path, nothingDone));
    };
    const bool held = lock && !*lock;
    // A reader only asks whether an editor is there; it keeps none out.
    const bool asking = !editing || denied;
    if (asking && lock) lock->reset();
    const auto header = peekHeader(path);
    if (!header) return failed(header.error());
    if (auto no = refusedByHeader(*header)) return std::move(*no);
    const bool mayWrite = editing && !denied && lock && !held;
    Inspection inspection;
    auto connection =
        Connection::open(path, denied ? Access::readOnly : Access::readWrite, mayWrite);
    if (!connection) {
        if (isDamage(connection.error()))
            return damaged("SQLite says: " + connection.error().message);
        return failed(connection.error());
    }
    inspection.connection = std::move(*connection);
    if (identityOf(path) != FileIdentity{found.st_dev, found.st_ino})
        return tl::unexpected(movedProblem(path, nothingDone));

    const bool small = static_cast<std::uintmax_t>(found.st_size) <= checkedAtOnceBytes;
    if (auto checked = checkInside(inspection, small || pages == PageCheck::always); !checked)
        return failed(checked.error());
    if (!isUsable(inspection.outcome)) return inspection;

    if (held)
        settle(inspection, FileOutcome::inUse,
               "the project is open for editing elsewhere, so it can only be read here");
    else if (denied)
        settle(inspection, FileOutcome::readOnly, *denied);
    else if (!lock)
        settle(inspection, FileOutcome::readOnly,
               lock.error().line() + ", so others cannot be kept out and nothing can be changed");
    else if (inspection.rows.badSnapshot)
        inspection.what = "a check kept after step " +
                          std::to_string(*inspection.rows.badSnapshot) +
                          " does not match the steps; the steps themselves are whole";
    if (mayWrite) inspection.lock = std::move(*lock);
    return inspection;
}

}  // namespace fayline::store
