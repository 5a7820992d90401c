#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "connection.h"
#include "project/journal.h"

namespace fayline::store {

/// The one row of table head: the tip of the journal and the seal of table project.
struct Head {
    std::int64_t step = 0;
    std::string hash;
    std::string project;
    bool operator==(const Head&) const = default;
};

/// All that a file holds, as far as it reads whole and in order.
struct Rows {
    Journal journal;
    std::map<std::string, std::string> facts;
    std::string seal;
    std::optional<std::int64_t> firstBadStep;
    std::string damage;  ///< what is wrong, in words; empty if nothing is
    std::optional<std::int64_t> badSnapshot;
};

/// SHA-256 of the rows of table project; texts laid out as in stepHash: "fayline.project/1", how
/// many rows, each key and value in byte order of the keys.
std::string sealOf(const std::map<std::string, std::string>& facts);

/// Reads everything, in one transaction. Damage is in the result; a failure is of the reading.
Sql<Rows> readRows(Connection& connection);
/// SQLite's own check of every page; what it says if not "ok".
Sql<std::optional<std::string>> quickCheck(Connection& connection);

Sql<Head> readHead(const Connection& connection);
Sql<void> writeHead(Connection& connection, const Head& head);
Sql<void> writeStep(Connection& connection, const Step& step);
/// Keeps a check of the state after the journal's last step, if its number calls for one.
Sql<void> writeSnapshotIfDue(Connection& connection, const Journal& journal);

}  // namespace fayline::store
