#include "schema.h"

#include <algorithm>
#include <vector>

namespace fayline::store {

const std::array<Table, 5> tables = {{
    {"change",
     "CREATE TABLE change(step INTEGER NOT NULL, n INTEGER NOT NULL, what TEXT NOT NULL, old TEXT, "
     "new TEXT, PRIMARY KEY(step, n)) STRICT, WITHOUT ROWID"},
    {"head",
     "CREATE TABLE head(id INTEGER PRIMARY KEY CHECK(id = 1), step INTEGER NOT NULL, "
     "hash TEXT NOT NULL, project TEXT NOT NULL) STRICT"},
    {"journal",
     "CREATE TABLE journal(step INTEGER PRIMARY KEY, at TEXT NOT NULL, who TEXT NOT NULL, "
     "why TEXT NOT NULL, title TEXT NOT NULL, kind TEXT NOT NULL, target INTEGER, "
     "hash TEXT NOT NULL) STRICT"},
    {"project",
     "CREATE TABLE project(key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, "
     "WITHOUT ROWID"},
    {"snapshot",
     "CREATE TABLE snapshot(step INTEGER PRIMARY KEY, decisions INTEGER NOT NULL, "
     "state TEXT NOT NULL) STRICT"},
}};

Sql<void> makeTables(Connection& connection) {
    const std::string numbers[] = {"PRAGMA application_id=" + std::to_string(applicationId),
                                   "PRAGMA user_version=" + std::to_string(formatVersion)};
    for (const std::string& pragma : numbers)
        if (auto done = connection.run(pragma.c_str()); !done) return done;
    for (const Table& table : tables)
        if (auto done = connection.run(table.sql); !done) return done;
    return {};
}

Sql<std::optional<ForeignPart>> foreignPart(Connection& connection) {
    Query query(connection,
                "SELECT CAST(type AS BLOB), CAST(name AS BLOB), CAST(tbl_name AS BLOB), "
                "CAST(sql AS BLOB) FROM sqlite_schema");
    std::vector<std::string> seen;
    for (;;) {
        const auto more = query.next();
        if (!more) return tl::unexpected(more.error());
        if (!*more) break;
        const std::string name = query.text(1);
        const auto* const ours = std::find_if(
            tables.begin(), tables.end(), [&](const Table& table) { return name == table.name; });
        const bool known = ours != tables.end();
        if (!known || std::find(seen.begin(), seen.end(), name) != seen.end())
            return std::optional(ForeignPart{name, false});
        if (query.text(0) != "table" || query.text(2) != name || query.text(3) != ours->sql)
            return std::optional(ForeignPart{name, true});
        seen.push_back(name);
    }
    for (const Table& table : tables)
        if (std::find(seen.begin(), seen.end(), table.name) == seen.end())
            return std::optional(ForeignPart{table.name, true});
    return std::optional<ForeignPart>();
}

}  // namespace fayline::store
