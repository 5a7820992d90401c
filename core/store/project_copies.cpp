#include <sqlite3.h>

#include <QDateTime>
#include <QUuid>
#include <chrono>
#include <thread>

#include "aside.h"
#include "inspect.h"
#include "parts.h"
#include "problems.h"
#include "schema.h"
#include "store/project_file.h"

namespace fayline {
namespace {

constexpr const char* noProject = "no project was made";
constexpr const char* noCopy = "no copy was made; the project itself is untouched";

store::Sql<void> fill(store::Connection& connection, const Journal& journal,
                      const std::map<std::string, std::string>& facts) {
    if (auto begun = connection.run("BEGIN IMMEDIATE"); !begun) return begun;
    if (auto made = store::makeTables(connection); !made) return made;
    for (const auto& [key, value] : facts)
        if (auto done = store::Query(connection,
                                     "INSERT INTO project(key, value) "
                                     "VALUES(CAST(? AS TEXT), CAST(? AS TEXT))")
                            .bind(key)
                            .bind(value)
                            .run();
            !done)
            return done;
    Journal written;
    for (const Step& step : journal.steps()) {
        if (auto done = store::writeSnapshotIfDue(connection, written); !done) return done;
        if (auto done = store::writeStep(connection, step); !done) return done;
        static_cast<void>(written.append(step));
    }
    if (auto done =
            connection.run("INSERT INTO head(id, step, hash, project) VALUES(1, 0, '', '')");
        !done)
        return done;
    if (auto done =
            store::writeHead(connection, {journal.tip(), journal.tipHash(), store::sealOf(facts)});
        !done)
        return done;
    return connection.run("COMMIT");
}

struct CloseLater {
    sqlite3* native = nullptr;
    CloseLater() = default;
    CloseLater(const CloseLater&) = delete;
    CloseLater& operator=(const CloseLater&) = delete;
    ~CloseLater() { sqlite3_close(native); }
};

/// Copies every page; the problem is of whichever side failed.
store::Sql<void> copyPages(sqlite3* from, const std::filesystem::path& to) {
    CloseLater target;
    const std::string uri = store::fileUri(to, "mode=rwc");
    int rc = sqlite3_open_v2(uri.c_str(), &target.native,
                             SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE | SQLITE_OPEN_URI, nullptr);
    const auto failed = [&](int code) {
        return tl::unexpected(
            store::SqlFailure{code, sqlite3_system_errno(target.native), sqlite3_errstr(code)});
    };
    if (rc != SQLITE_OK) return failed(sqlite3_extended_errcode(target.native));
    // The whole file is synced afterwards.
    sqlite3_exec(target.native, "PRAGMA journal_mode=MEMORY; PRAGMA synchronous=OFF", nullptr,
                 nullptr, nullptr);
    sqlite3_backup* backup = sqlite3_backup_init(target.native, "main", from, "main");
    if (backup == nullptr) return failed(sqlite3_extended_errcode(target.native));
    int tries = 200;
    do {
        rc = sqlite3_backup_step(backup, -1);
        if (rc == SQLITE_BUSY || rc == SQLITE_LOCKED)
            std::this_thread::sleep_for(std::chrono::milliseconds(10));
    } while ((rc == SQLITE_BUSY || rc == SQLITE_LOCKED) && --tries > 0);
    const int finished = sqlite3_backup_finish(backup);
    if (rc != SQLITE_DONE) return failed(rc);
    if (finished != SQLITE_OK) return failed(finished);
    return {};
}

/// Whether a file may be made under this name.
Result<void> nameIsFree(const std::filesystem::path& path, const std::string& consequence) {
    std::error_code error;
    if (!std::filesystem::is_directory(path.parent_path(), error))
        return tl::unexpected(Problem{"file.missing", path.string(),
                                      "there is no such folder, so " + consequence,
                                      "a folder that is there"});
    if (std::filesystem::symlink_status(path, error).type() !=
        std::filesystem::file_type::not_found)
        return tl::unexpected(store::existsProblem(path));
    if (auto fits = store::pathFits(path, consequence); !fits) return fits;
    if (store::nameTooLong(path))
        return tl::unexpected(
            Problem{"file.name", path.string(),
                    "the name is too long for a safety file beside it, so " + consequence,
                    "a name eight bytes shorter than the longest allowed here"});
    return {};
}

}  // namespace

Result<OpenResult> ProjectFile::create(const std::filesystem::path& path,
                                       const std::vector<Step>& firstSteps,
                                       const std::string& program) {
    const auto target = std::filesystem::absolute(path);
    if (auto is = nameIsFree(target, noProject); !is) return tl::unexpected(is.error());
    const FoldedJournal folded = Journal::fold(firstSteps);
    if (folded.problem) return tl::unexpected(*folded.problem);
    const std::map<std::string, std::string> facts = {
        {"created", QDateTime::currentDateTimeUtc().toString(Qt::ISODate).toStdString()},
        {"program", program},
        {"uuid", QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString()}};
    store::FileAside aside(target);
    {
        auto connection = store::Connection::open(aside.path(), store::Access::create, true);
        if (!connection)
            return tl::unexpected(store::problemOf(connection.error(), target, noProject));
        if (auto filled = fill(**connection, folded.journal, facts); !filled)
            return tl::unexpected(store::problemOf(filled.error(), target, noProject));
    }
    if (auto synced = aside.sync(noProject); !synced) return tl::unexpected(synced.error());
    if (auto named = aside.takeName(noProject); !named) return tl::unexpected(named.error());
    return open(target, OpenMode::readWrite);
}

Result<void> ProjectFile::copyTo(const std::filesystem::path& target) const {
    const auto wanted = std::filesystem::absolute(target);
    if (auto is = nameIsFree(wanted, noCopy); !is) return is;
    store::FileAside aside(wanted);
    parts_->connection->forgetPages();
    if (auto copied = copyPages(parts_->connection->native(), aside.path()); !copied)
        return tl::unexpected(store::problemOf(copied.error(), wanted, noCopy));
    if (auto synced = aside.sync(noCopy); !synced) return synced;
    {
        const auto copy =
            store::inspect(aside.path(), OpenMode::readOnly, store::PageCheck::always);
        if (!copy) return tl::unexpected(copy.error());
        if (copy->outcome != FileOutcome::ok)
            return tl::unexpected(
                Problem{"file.damaged", wanted.string(),
                        "the copy does not read back whole (" + copy->what + "), so " + noCopy,
                        "try again, or copy to another disk"});
        if (copy->rows.journal.tipHash() != parts_->journal.tipHash() ||
            copy->rows.seal != parts_->seal)
            return tl::unexpected(store::changedOutsideProblem(parts_->path, noCopy));
    }
    return aside.takeName(noCopy);
}

}  // namespace fayline
