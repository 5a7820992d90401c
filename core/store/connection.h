#pragma once

#include <QSqlDatabase>
#include <QSqlQuery>
#include <chrono>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>

struct sqlite3;

namespace fayline::store {

/// A failed call of SQLite.
struct SqlFailure {
    int code = 0;         ///< extended result code
    int systemError = 0;  ///< errno, 0 if the system had no part in it
    std::string message;  ///< SQLite's own words, for logs and tests
};

template <typename T>
using Sql = tl::expected<T, SqlFailure>;

enum class Access { readOnly, readWrite, create };

/// `file:` URI of a path, every byte that has a meaning in a URI written as %XX.
std::string fileUri(const std::filesystem::path& path, std::string_view options);

/// One hardened SQLite connection through Qt SQL. Belongs to the thread that opens it.
class Connection {
  public:
    /// readOnly and readWrite never make a file. With `mayWrite` false the connection can take back
    /// a step cut off half-way but change nothing itself.
    static Sql<std::unique_ptr<Connection>> open(const std::filesystem::path& path, Access access,
                                                 bool mayWrite);

    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;
    ~Connection();

    [[nodiscard]] sqlite3* native() const { return native_; }
    [[nodiscard]] QSqlDatabase database() const { return QSqlDatabase::database(name_, false); }
    [[nodiscard]] SqlFailure failure() const;

    Sql<void> run(const char* sql);
    /// Ends a transaction that is still open; nothing if SQLite has ended it itself.
    void rollBack();
    /// Whether the file at the path is no longer the one opened.
    [[nodiscard]] bool hasMoved() const;
    /// Forgets pages read earlier, so that the next statement sees the file as it is.
    void forgetPages();

  private:
    explicit Connection(QString name) : name_(std::move(name)) {}
    Sql<void> settle(Access access);

    QString name_;
    sqlite3* native_ = nullptr;
    std::chrono::steady_clock::time_point waitingSince_;
};

/// One statement. Texts go in and come out byte for byte: bind to CAST(? AS TEXT), select
/// CAST(x AS BLOB).
class Query {
  public:
    Query(const Connection& connection, const char* sql);

    Query& bind(std::int64_t value);
    Query& bind(std::string_view text);
    Query& bindMaybe(const std::optional<std::string>& text);
    Query& bindMaybe(std::optional<std::int64_t> value);

    Sql<void> run();
    /// Moves to the next row; false after the last.
    Sql<bool> next();

    [[nodiscard]] std::int64_t integer(int column) const;
    [[nodiscard]] std::optional<std::int64_t> maybeInteger(int column) const;
    [[nodiscard]] std::string text(int column) const;
    [[nodiscard]] std::optional<std::string> maybeText(int column) const;

  private:
    const Connection& connection_;
    QSqlQuery query_;
    bool prepared_ = false;
    bool started_ = false;
};

}  // namespace fayline::store
