#include "connection.h"

#include <sqlite3.h>

#include <QSqlDriver>
#include <QSqlError>
#include <QUuid>
#include <QVariant>
#include <cstring>

#include "guards.h"

namespace fayline::store {
namespace {

constexpr std::chrono::seconds longestWait{2};
constexpr int betweenTriesMilliseconds = 4;

/// Waits for a lock for two seconds, looking often: a program that writes step upon step leaves the
/// file free for an instant only, which SQLite's own growing pauses miss.
int waitForLock(void* waitingSince, int tries) {
    auto& since = *static_cast<std::chrono::steady_clock::time_point*>(waitingSince);
    const auto now = std::chrono::steady_clock::now();
    if (tries == 0) since = now;
    if (now - since >= longestWait) return 0;
    sqlite3_sleep(betweenTriesMilliseconds);
    return 1;
}

/// The native handle, only if Qt's driver and this program share one SQLite library: two copies in
/// one process would undo each other's locks (sqlite.org, How To Corrupt, 2.2.1).
sqlite3* sharedHandle(const QSqlDatabase& database) {
    const QVariant handle = database.driver()->handle();
    if (!handle.isValid() || std::strcmp(handle.typeName(), "sqlite3*") != 0) return nullptr;
    QSqlQuery query(database);
    if (!query.exec(QStringLiteral("SELECT sqlite_source_id()")) || !query.next()) return nullptr;
    if (query.value(0).toString() != QString::fromUtf8(sqlite3_sourceid())) return nullptr;
    return *static_cast<sqlite3* const*>(handle.constData());
}

}  // namespace

std::string fileUri(const std::filesystem::path& path, std::string_view options) {
    static constexpr std::string_view plain =
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789/-._~";
    static constexpr std::string_view digits = "0123456789ABCDEF";
    std::string uri = "file://";
    for (const char letter : std::filesystem::absolute(path).string()) {
        if (plain.find(letter) != std::string_view::npos) {
            uri += letter;
            continue;
        }
        const auto byte = static_cast<unsigned char>(letter);
        uri += '%';
        uri += digits[byte >> 4U];
        uri += digits[byte & 15U];
    }
    return uri + "?" + std::string(options);
}

Sql<std::unique_ptr<Connection>> Connection::open(const std::filesystem::path& path, Access access,
                                                  bool mayWrite) {
    const char* mode = access == Access::readOnly    ? "mode=ro"
                       : access == Access::readWrite ? "mode=rw"
                                                     : "mode=rwc";
    std::unique_ptr<Connection> connection(
        new Connection(QUuid::createUuid().toString(QUuid::WithoutBraces)));
    QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), connection->name_);
    if (!database.isValid())
        return tl::unexpected(SqlFailure{SQLITE_MISUSE, 0, "Qt's SQLite driver is not installed"});
    database.setConnectOptions(QStringLiteral("QSQLITE_OPEN_URI"));
    database.setDatabaseName(QString::fromStdString(fileUri(path, mode)));
    if (!database.open())
        return tl::unexpected(SqlFailure{database.lastError().nativeErrorCode().toInt(), 0,
                                         database.lastError().text().toStdString()});
    connection->native_ = sharedHandle(database);
    if (connection->native_ == nullptr)
        return tl::unexpected(
            SqlFailure{SQLITE_MISUSE, 0, "Qt's driver brings an SQLite library of its own"});
    sqlite3_extended_result_codes(connection->native_, 1);
    sqlite3_busy_handler(connection->native_, waitForLock, &connection->waitingSince_);
    if (!harden(connection->native_))
        return tl::unexpected(SqlFailure{SQLITE_MISUSE, 0, "SQLite refuses to be hardened"});
    if (auto settled = connection->settle(access); !settled) return tl::unexpected(settled.error());
    if (access != Access::create) allowOnlyOwnStatements(connection->native_, mayWrite);
    return connection;
}

Sql<void> Connection::settle(Access access) {
    for (const char* pragma :
         {"PRAGMA cell_size_check=ON", "PRAGMA mmap_size=0", "PRAGMA foreign_keys=ON",
          "PRAGMA temp_store=MEMORY", "PRAGMA fullfsync=ON"})
        if (auto done = run(pragma); !done) return done;
    // A new file is written aside and synced whole before it takes its name.
    if (access == Access::create) {
        if (auto done = run("PRAGMA journal_mode=MEMORY"); !done) return done;
        return run("PRAGMA synchronous=OFF");
    }
    return run("PRAGMA synchronous=EXTRA");
}

Connection::~Connection() {
    {
        QSqlDatabase open = database();
        open.close();
    }
    QSqlDatabase::removeDatabase(name_);
}

SqlFailure Connection::failure() const {
    const int code = sqlite3_extended_errcode(native_);
    // SQLite sets the system's number for these two only; else it is left over from earlier.
    const bool fresh = (code & 0xFF) == SQLITE_IOERR || (code & 0xFF) == SQLITE_CANTOPEN;
    return {code, fresh ? sqlite3_system_errno(native_) : 0, sqlite3_errmsg(native_)};
}

Sql<void> Connection::run(const char* sql) {
    return Query(*this, sql).run();
}

void Connection::rollBack() {
    if (sqlite3_get_autocommit(native_) == 0) static_cast<void>(run("ROLLBACK"));
}

bool Connection::hasMoved() const {
    int moved = 0;
    sqlite3_file_control(native_, "main", SQLITE_FCNTL_HAS_MOVED, &moved);
    return moved != 0;
}

void Connection::forgetPages() {
    sqlite3_db_release_memory(native_);
}

Query::Query(const Connection& connection, const char* sql)
    : connection_(connection), query_(connection.database()) {
    query_.setForwardOnly(true);
    prepared_ = query_.prepare(QString::fromUtf8(sql));
}

Query& Query::bind(std::int64_t value) {
    query_.addBindValue(QVariant::fromValue<qlonglong>(value));
    return *this;
}

Query& Query::bind(std::string_view text) {
    static constexpr const char* empty = "";
    query_.addBindValue(
        QByteArray(text.empty() ? empty : text.data(), static_cast<qsizetype>(text.size())));
    return *this;
}

Query& Query::bindMaybe(const std::optional<std::string>& text) {
    if (text) return bind(std::string_view(*text));
    query_.addBindValue(QVariant(QMetaType::fromType<QByteArray>()));
    return *this;
}

Query& Query::bindMaybe(std::optional<std::int64_t> value) {
    if (value) return bind(*value);
    query_.addBindValue(QVariant(QMetaType::fromType<qlonglong>()));
    return *this;
}

Sql<void> Query::run() {
    started_ = true;
    if (prepared_ && query_.exec()) return {};
    return tl::unexpected(connection_.failure());
}

Sql<bool> Query::next() {
    if (!started_)
        if (auto begun = run(); !begun) return tl::unexpected(begun.error());
    if (query_.next()) return true;
    if (query_.lastError().isValid()) return tl::unexpected(connection_.failure());
    return false;
}

std::int64_t Query::integer(int column) const {
    return query_.value(column).toLongLong();
}

std::optional<std::int64_t> Query::maybeInteger(int column) const {
    const QVariant value = query_.value(column);
    return value.isNull() ? std::nullopt : std::optional<std::int64_t>(value.toLongLong());
}

std::string Query::text(int column) const {
    return query_.value(column).toByteArray().toStdString();
}

std::optional<std::string> Query::maybeText(int column) const {
    const QVariant value = query_.value(column);
    return value.isNull() ? std::nullopt : std::optional(value.toByteArray().toStdString());
}

}  // namespace fayline::store
