#include "header_peek.h"

#include <sqlite3.h>

#include <array>
#include <cstring>
#include <string_view>

namespace fayline::store {
namespace {

constexpr std::string_view magic{"SQLite format 3\0", 16};
constexpr int versionAt = 60;
constexpr int applicationAt = 68;
constexpr std::size_t writeVersionAt = 18;
constexpr std::size_t readVersionAt = 19;

using Bytes = std::array<unsigned char, 100>;

std::uint32_t bigEndian(const unsigned char* at) {
    std::uint32_t value = 0;
    for (int i = 0; i < 4; ++i) value = value << 8U | at[i];
    return value;
}

struct CloseLater {
    sqlite3* native = nullptr;
    CloseLater() = default;
    CloseLater(const CloseLater&) = delete;
    CloseLater& operator=(const CloseLater&) = delete;
    ~CloseLater() { sqlite3_close(native); }
};

}  // namespace

Sql<FileHeader> peekHeader(const std::filesystem::path& path) {
    CloseLater opened;
    const auto failed = [&](int code) {
        return tl::unexpected(
            SqlFailure{code, sqlite3_system_errno(opened.native), sqlite3_errstr(code)});
    };
    const std::string uri = fileUri(path, "mode=ro&immutable=1");
    const int rc = sqlite3_open_v2(uri.c_str(), &opened.native,
                                   SQLITE_OPEN_READONLY | SQLITE_OPEN_URI, nullptr);
    if (rc != SQLITE_OK) return failed(sqlite3_extended_errcode(opened.native));
    sqlite3_file* file = nullptr;
    if (sqlite3_file_control(opened.native, "main", SQLITE_FCNTL_FILE_POINTER, &file) !=
            SQLITE_OK ||
        file == nullptr || file->pMethods == nullptr)
        return failed(SQLITE_CANTOPEN);
    sqlite3_int64 size = 0;
    if (const int got = file->pMethods->xFileSize(file, &size); got != SQLITE_OK)
        return failed(got);
    Bytes bytes{};
    const auto most = static_cast<sqlite3_int64>(bytes.size());
    if (size > 0) {
        const int got =
            file->pMethods->xRead(file, bytes.data(), static_cast<int>(std::min(size, most)), 0);
        if (got != SQLITE_OK) return failed(got);
    }
    FileHeader header;
    header.isSqlite = std::memcmp(bytes.data(), magic.data(), magic.size()) == 0;
    header.reachesApplicationId = size >= applicationAt + 4;
    header.applicationId = bigEndian(bytes.data() + applicationAt);
    header.formatVersion = bigEndian(bytes.data() + versionAt);
    header.writeAheadLog = bytes[writeVersionAt] == 2 || bytes[readVersionAt] == 2;
    return header;
}

}  // namespace fayline::store
