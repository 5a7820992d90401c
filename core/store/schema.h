#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>

#include "connection.h"

namespace fayline::store {

/// "FAYL" at byte 68 of the file, by which file(1) and this program know it.
constexpr std::uint32_t applicationId = 0x4641594C;
/// At byte 60.
constexpr std::uint32_t formatVersion = 1;
/// A check of all that is decided is kept for every this many steps.
constexpr std::int64_t snapshotEvery = 1'000;

struct Table {
    const char* name;
    const char* sql;  ///< byte for byte as in the file
};

/// Every table of format 1; a file has these and nothing else.
extern const std::array<Table, 5> tables;

/// Makes the tables in an empty file and sets both numbers; to be called inside a transaction.
Sql<void> makeTables(Connection& connection);

/// What stands in the file's schema that format 1 does not have or has otherwise; nothing if it is
/// exactly ours.
struct ForeignPart {
    std::string name;
    bool missing = false;  ///< ours, but not there or altered
};
Sql<std::optional<ForeignPart>> foreignPart(Connection& connection);

}  // namespace fayline::store
