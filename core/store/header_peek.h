#pragma once

#include <cstdint>
#include <filesystem>

#include "connection.h"

namespace fayline::store {

/// What the first 100 bytes of a file say (sqlite.org/fileformat2.html, 1.3), read before SQLite
/// looks at anything in it.
struct FileHeader {
    bool isSqlite = false;
    bool reachesApplicationId = false;  ///< the file is long enough to hold one
    std::uint32_t applicationId = 0;
    std::uint32_t formatVersion = 0;  ///< user_version
    bool writeAheadLog = false;       ///< another program has switched the file to a log
};

/// Reads them through SQLite's own file layer, without locks, journal or parsing: closing a file of
/// our own would drop the locks that another connection in this program holds on it.
Sql<FileHeader> peekHeader(const std::filesystem::path& path);

}  // namespace fayline::store
